#pragma once
// Has it drifted? One quantity over all the passes of an instrument: the mean of the same notes each time, the change
// since the first, and the straight line through the means with the interval of its slope, under the climate of each
// day.
//
// Only notes read in every pass count, so that no mean moves because other notes were read; a pass that read fewer than
// half as many notes as the fullest is left out, since it would leave too few. The line is fitted to the means of the
// passes, one point each: what a day has on all notes alike (a zero, a heated room) is part of the scatter about it.
// With two passes there is no interval.

#include "analysis/analysis.h"
#include "analysis/before_after.h"
#include "analysis/drift.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace hammerline::analysis {

/// Least squares, one straight line (NIST/SEMATECH e-Handbook 4.1.4.1); sums about the means.
struct Line {
    double intercept = 0;
    double slope = 0;
    std::optional<double> slopeSd{};               ///< absent for two points
    std::optional<double> slopeLow{}, slopeHigh{}; ///< 95 %, Student with n - 2
};
/// Absent for fewer than two points and where all x are the same.
[[nodiscard]] std::optional<Line> fitLine(std::span<const double> x, std::span<const double> y);

/// One pass; lengths in mm, masses in g.
struct TrendPoint {
    readings::Pass pass{};
    double mean = 0;
    std::optional<Comparison> sinceFirst{}; ///< absent for the first
    keyboard::Note most{};                  ///< that changed most since the first; of the first: the lowest note
    double mostChange = 0;
};

struct Trend {
    catalogue::Quantity quantity{};
    std::string section{};               ///< empty: the whole instrument
    std::vector<keyboard::Note> notes{}; ///< read in every one of the passes; rising
    std::vector<TrendPoint> points{};    ///< oldest first, at least two
    /// Of the means against years since the first; absent where all passes began at one moment.
    std::optional<Line> perYear{};
    std::optional<double> toldApart{}; ///< expanded uncertainty of the difference of first and last
    Claim claim = Claim::TooFew;       ///< of the slope

    /// Of the last against the first.
    [[nodiscard]] double lastChange() const { return points.back().mean - points.front().mean; }
};

/// By quantity, the whole first, then its sections (where there are at least two). `passes` in any order; `set` may be
/// null.
[[nodiscard]] std::vector<Trend> trendsOf(std::vector<MeasuredPass> passes, const keyboard::Sections &sections,
                                          const tolerance::ToleranceSet *set);

} // namespace hammerline::analysis
