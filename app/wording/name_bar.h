#pragma once
// The names of pages, of which all are to be read at once: where the width does not hold them they are set closer and
// smaller, in steps of the scale of type. Only a window too narrow for the smallest step shows arrows.

#include "wording/palette.h"

#include <QTabBar>

namespace hammerline::wording {

class NameBar : public QTabBar {
    Q_OBJECT
public:
    explicit NameBar(TextSize largest, QWidget *parent = nullptr);

protected:
    [[nodiscard]] QSize tabSizeHint(int index) const override;
    void resizeEvent(QResizeEvent *event) override;
    void tabInserted(int index) override;

private:
    /// The largest step at which all names stand in the width.
    void fit();

    std::size_t m_largest;
    std::size_t m_step;
};

} // namespace hammerline::wording
