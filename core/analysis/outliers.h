#pragma once
// Which values of a list stand apart from the rest, by a stated rule: the modified z-score of Iglewicz and Hoaglin
// ("How to Detect and Handle Outliers", 1993), as in NIST/SEMATECH e-Handbook 1.3.5.17:
// M = 0.6745 (x - median) / MAD, an outlier where |M| > 3.5.
//
// Median and MAD are not pulled along by the outliers themselves, as mean and sd are. Where more than half of the
// values are the same, MAD is 0; then the mean absolute deviation from the median stands in for it, times 1.2533 (the
// ratio of sd to it in a normal distribution, √(π/2)), in place of MAD / 0.6745. Where that is 0 too, all are the same.

#include <span>
#include <vector>

namespace hammerline::analysis {

inline constexpr double outlyingScore = 3.5;

/// One a value, in their order; at least one value. All 0 where all values are the same.
[[nodiscard]] std::vector<double> modifiedZScores(std::span<const double> values);

} // namespace hammerline::analysis
