#pragma once
// A line of words that goes on in further lines and is never cut: as wide as it is, it takes the height that it needs
// and its neighbours shrink. Qt's own gives way where a window is low.

#include <QLabel>

namespace hammerline::main_window {

class WholeLabel : public QLabel {
public:
    explicit WholeLabel(QWidget *parent = nullptr) : QLabel(parent)
    {
        setWordWrap(true);
        setTextFormat(Qt::PlainText);
    }
    [[nodiscard]] QSize minimumSizeHint() const override
    {
        return {QLabel::minimumSizeHint().width(), heightForWidth(width())};
    }

protected:
    void resizeEvent(QResizeEvent *event) override
    {
        QLabel::resizeEvent(event);
        updateGeometry();
    }
};

} // namespace hammerline::main_window
