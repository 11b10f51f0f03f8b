#pragma once
// One line of text as large as asked for, and smaller only where width or height force it: nothing is ever clipped. And
// the field that goes with it. The text scale leaves both alone: they are read from two metres as they are, and grown
// further they would push each other off a small screen.
// The largest size of the scale is raised where the screen packs its pixels so densely that capitals would fall below
// 12 mm, the height that reads from two metres.

#include "wording/palette.h"

#include <QLineEdit>
#include <QWidget>

namespace hammerline::bench {

/// The read-out size on the screen of `widget`: the scale's, or what gives capitals of 12 mm if that is larger. Screens
/// that claim less than 70 or more than 250 dots an inch are not believed.
[[nodiscard]] QFont readOutFont(const QWidget &widget);

class BigText : public QWidget {
    Q_OBJECT
public:
    explicit BigText(wording::TextSize size, QWidget *parent = nullptr);

    [[nodiscard]] const QString &text() const { return m_text; }
    /// Also the accessible name.
    void setText(const QString &text);
    /// An invalid colour is the text colour of the palette.
    void setInk(const QColor &ink);
    /// Reserves the width of this text, so that neighbours do not jump.
    void setWidest(const QString &widest);

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent *event) override;

private:
    [[nodiscard]] QFont fullFont() const;
    wording::TextSize m_size;
    QString m_text;
    QString m_widest;
    QColor m_ink;
};

/// A line to type into, in the read-out's size. What it held before it does not bring back: Undo empties it while
/// something stands in it; in the empty field all that is pressed with Ctrl is the window's first.
class BigField : public QLineEdit {
    Q_OBJECT
public:
    explicit BigField(QWidget *parent = nullptr);
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    bool event(QEvent *event) override;
    void keyPressEvent(QKeyEvent *event) override;
    void resizeEvent(QResizeEvent *event) override;

private:
    [[nodiscard]] int fullHeight() const;
};

} // namespace hammerline::bench
