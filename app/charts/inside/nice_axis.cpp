#include "charts/inside/nice_axis.h"

#include <QValueAxis>

#include <algorithm>
#include <cmath>

namespace hammerline::charts {

NiceRange niceRange(double low, double high, int ticks)
{
    if (high - low < 1e-9) {
        low -= 0.5;
        high += 0.5;
    }
    const double raw = (high - low) / std::max(ticks, 1);
    const double power = std::pow(10, std::floor(std::log10(raw)));
    const double ratio = raw / power;
    const double step = power * (ratio <= 1 ? 1 : ratio <= 2 ? 2 : ratio <= 5 ? 5 : 10);
    constexpr double slack = 1e-9; // a limit that is a round number needs no further step
    NiceRange range;
    range.step = step;
    range.from = std::floor(low / step + slack) * step;
    range.to = std::ceil(high / step - slack) * step;
    range.decimals = std::max(0, -static_cast<int>(std::floor(std::log10(step) + slack)));
    return range;
}

void apply(const NiceRange &range, QValueAxis &axis)
{
    axis.setRange(range.from, range.to);
    axis.setTickCount(static_cast<int>(std::lround((range.to - range.from) / range.step)) + 1);
    axis.setLabelFormat(QStringLiteral("%.%1f").arg(range.decimals));
}

} // namespace hammerline::charts
