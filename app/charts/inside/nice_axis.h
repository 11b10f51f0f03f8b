#pragma once
// An axis that begins, ends and steps at round numbers.

class QValueAxis;

namespace hammerline::charts {

struct NiceRange {
    double from = 0;
    double to = 1;
    double step = 1;
    int decimals = 0; ///< that tell neighbouring ticks apart
};

/// Widened to multiples of 1, 2 or 5 times a power of ten, in about `ticks` steps. low <= high; equal ends are spread.
[[nodiscard]] NiceRange niceRange(double low, double high, int ticks);
void apply(const NiceRange &range, QValueAxis &axis);

} // namespace hammerline::charts
