#pragma once
// What many readings say together: summaries of a pass, comparison of two. Distributions come from Boost.Math;
// plain sums are done here, in an order that keeps digits (checked against NIST StRD).

#include "catalogue/catalogue.h"
#include "readings/readings.h"
#include "tolerance/judge.h"

#include <map>
#include <optional>
#include <span>
#include <vector>

namespace hammerline::analysis {

/// Mean, and standard deviation with n - 1, to the digits that doubles allow (two passes, corrected, long double).
struct MeanSd {
    double mean = 0;
    std::optional<double> sd{}; ///< absent for fewer than two values
};
[[nodiscard]] MeanSd meanSd(std::span<const double> values); ///< at least one value
[[nodiscard]] double medianOf(std::vector<double> values);   ///< at least one value; mean of the middle two
/// Plain median absolute deviation from the median, not scaled to a normal sd.
[[nodiscard]] double madOf(std::vector<double> values);

/// One quantity over all notes read (of an unjudged colour too); lengths in mm, masses in g.
struct QuantitySummary {
    int count = 0; ///< notes read
    bool judged = false;
    int missing = 0; ///< these five only where judged
    int in = 0;
    int marginal = 0;
    int out = 0;
    int uneven = 0;
    /// Absent where nothing was read.
    std::optional<double> mean{}, sd{}, median{}, mad{}, min{}, max{};
    /// Largest difference that the rule for evenness compares; absent where it compares none.
    std::optional<double> largestStep{};
};
using Summaries = std::map<catalogue::Quantity, QuantitySummary>;

/// Every quantity that was read or is judged.
[[nodiscard]] Summaries summarise(const tolerance::Judgement &judgement, const tolerance::ToleranceSet *set);

/// Before and after, notes read in both paired (change = after - before).
struct Comparison {
    int pairs = 0;
    double meanChange = 0;
    std::optional<double> sdChange{}; ///< absent for one pair
    std::optional<double> t{}, p{};   ///< two-sided paired t; absent for one pair or where all changes are the same
    std::optional<int> degreesOfFreedom{};
    std::optional<double> ci95Low{}, ci95High{};           ///< of the mean change, Student
    std::optional<double> agreementLow{}, agreementHigh{}; ///< mean ± 1.96 sd (Bland and Altman 1986)
    /// With a set, over judged pairs. mended: out before, not out after; spoiled: the reverse.
    std::optional<int> outBefore{}, outAfter{}, mended{}, spoiled{};
};
using Comparisons = std::map<catalogue::Quantity, Comparison>;

/// Quantities read on at least one note in both. `set` may be null.
[[nodiscard]] Comparisons compare(const readings::ValueTable &before, const readings::ValueTable &after,
                                  const tolerance::ToleranceSet *set);

/// Two-sided paired Student t of a list of changes, the heart of compare; at least one change.
[[nodiscard]] Comparison pairedComparison(std::span<const double> changes);

} // namespace hammerline::analysis
