#pragma once
// The strip: a keyboard in true proportion on which every key is its own small gauge. It runs along the foot of every
// view and is the one constant: what is selected here is what everything else speaks of.
//
// Mouse: hover tells, click chooses. Keyboard: Left and Right by one note, Up and Down by an octave, Home and End. A
// screen reader finds one child per key, with the note as its name and the verdict as its value.

#include "keyboard_strip/paint_strip.h"
#include "keyboard_strip/strip_model.h"

#include <QWidget>

#include <optional>

namespace hammerline::keyboard_strip {

class KeyboardStrip : public QWidget {
    Q_OBJECT
public:
    explicit KeyboardStrip(QWidget *parent = nullptr);

    [[nodiscard]] const StripModel &model() const { return m_model; }
    /// The selection stays where its note is still on the keyboard, else it goes to the first note.
    void setModel(StripModel model);
    /// One key changed; only its rectangle is painted again. A note that is not on the keyboard is ignored.
    void setKey(const StripKey &key);

    [[nodiscard]] keyboard::Note selected() const { return m_selected; }
    /// Selects without telling: for who already knows. A note that is not on the keyboard is ignored.
    void select(keyboard::Note note);
    void setLegendShown(bool shown);

    [[nodiscard]] QRect keyRect(keyboard::Note note) const;
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;
    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override;

    /// The user's choice, as by a click: selects, and emits noteTold and noteChosen.
    void choose(keyboard::Note note);

signals:
    /// The user chose a note by click, key or screen reader.
    void noteChosen(hammerline::keyboard::Note note);
    /// Something to say in a status line: the story of the key pointed at or chosen; empty when the mouse left.
    void noteTold(const QString &story);

protected:
    void paintEvent(QPaintEvent *event) override;
    void mousePressEvent(QMouseEvent *event) override;
    void mouseMoveEvent(QMouseEvent *event) override;
    void leaveEvent(QEvent *event) override;
    void keyPressEvent(QKeyEvent *event) override;
    void changeEvent(QEvent *event) override;
    bool event(QEvent *event) override;

private:
    [[nodiscard]] StripStyle currentStyle() const;
    [[nodiscard]] std::optional<keyboard::Note> noteAt(QPointF point) const;
    void repaintKey(keyboard::Note note);
    void pointAt(std::optional<keyboard::Note> note);

    StripModel m_model;
    keyboard::Note m_selected{};
    std::optional<keyboard::Note> m_pointedAt{};
    bool m_legendShown = false;
};

} // namespace hammerline::keyboard_strip
