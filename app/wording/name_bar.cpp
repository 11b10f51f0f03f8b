#include "wording/name_bar.h"

#include <QEvent>

#include <algorithm>
#include <array>

namespace hammerline::wording {

namespace {

struct Step {
    TextSize size;
    int space; ///< at either side of a name, beside what the stylesheet gives
};
constexpr std::array steps{Step{TextSize::Heading, 10}, Step{TextSize::Heading, 2}, Step{TextSize::Body, 10},
                           Step{TextSize::Body, 0},     Step{TextSize::Small, 4},   Step{TextSize::Small, 0}};
constexpr int padding = 6; ///< of a tab of this bar in the stylesheet of the house

int widthOf(const QTabBar &bar, const Step &step)
{
    const QFontMetrics metrics(wording::font(step.size));
    int width = 0;
    for (int tab = 0; tab < bar.count(); ++tab)
        width += metrics.horizontalAdvance(bar.tabText(tab)) + 2 * (padding + step.space);
    return width;
}

} // namespace

NameBar::NameBar(TextSize largest, QWidget *parent)
    : QTabBar(parent),
      m_largest(static_cast<std::size_t>(std::ranges::find(steps, largest, &Step::size) - steps.begin())),
      m_step(m_largest)
{
    setDrawBase(false);
    setExpanding(false);
    setElideMode(Qt::ElideNone);
    setFont(wording::font(largest));
}

QSize NameBar::tabSizeHint(int index) const
{
    const int text = QFontMetrics(wording::font(steps[m_step].size)).horizontalAdvance(tabText(index));
    return {text + 2 * (padding + steps[m_step].space), QTabBar::tabSizeHint(index).height()};
}

void NameBar::fit()
{
    std::size_t step = m_largest;
    while (step + 1 < steps.size() && widthOf(*this, steps[step]) > width())
        ++step;
    if (step == m_step)
        return;
    m_step = step;
    setFont(wording::font(steps[step].size));
    QEvent spaced(QEvent::FontChange); // the size may be the same, and only the space another
    changeEvent(&spaced);
}

void NameBar::resizeEvent(QResizeEvent *event)
{
    fit();
    QTabBar::resizeEvent(event);
}

void NameBar::tabInserted(int index)
{
    QTabBar::tabInserted(index);
    fit();
}

} // namespace hammerline::wording
