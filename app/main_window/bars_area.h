#pragma once
// What went wrong, one bar below the other: as high as their words need while the window has the room, and scrolled
// where it has not (twice the text size on a small screen). Nothing of them is cut, and the window is never made higher
// than its screen. No height while no bar shows.

#include <QScrollArea>

#include <initializer_list>

namespace hammerline::main_window {

class BarsArea : public QScrollArea {
    Q_OBJECT
public:
    explicit BarsArea(std::initializer_list<QWidget *> bars, QWidget *parent = nullptr);

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;
    bool eventFilter(QObject *watched, QEvent *event) override;

protected:
    void resizeEvent(QResizeEvent *event) override;

private:
    [[nodiscard]] int wishedHeight() const;
};

} // namespace hammerline::main_window
