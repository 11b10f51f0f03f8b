#pragma once
// Before and after on one page: of every quantity the figures of compare(), which notes were mended and which spoiled,
// the same changes seen robustly, the notes that changed unlike the rest, and what can be claimed.
//
// A claim is made where the 95 % interval of the mean change leaves 0 out, which is the same as p < 0.05. It says
// nothing of the gauge: what a gauge has wrong it has wrong on every note alike, and averaging takes none of it away.
// So the expanded uncertainty of a difference (see drift.h) stands beside it.

#include "analysis/analysis.h"
#include "analysis/drift.h"

#include <optional>
#include <span>
#include <vector>

namespace hammerline::analysis {

struct MedianMad {
    double median = 0;
    double mad = 0; ///< plain, see madOf
};

struct Outlier {
    keyboard::Note note{};
    double change = 0;
    double score = 0; ///< modified z-score of the change among the changes, see outliers.h
};

enum class Claim {
    TooFew,   ///< one pair has no interval
    NoChange, ///< the interval reaches over 0: no change of the mean can be claimed
    Smaller,
    Larger,
};
/// "too-few", "no-change", "smaller", "larger".
[[nodiscard]] std::string_view idOf(Claim claim);
[[nodiscard]] Claim claimOf(const Comparison &comparison);

/// Lengths in mm, masses in g; over the notes read both times.
struct QuantityChange {
    catalogue::Quantity quantity{};
    Comparison change{}; ///< as compare() has it
    MedianMad before{}, after{}, changes{};
    std::vector<keyboard::Note> mended{}, spoiled{}; ///< rising; empty without a set
    std::vector<Outlier> outliers{};                 ///< by note
    Claim claim = Claim::TooFew;
    std::optional<double> toldApart{}; ///< expanded uncertainty of a difference; absent: not known

    /// A change that is claimed and yet no larger than what the gauges may have wrong on all notes alike.
    [[nodiscard]] bool withinGauge() const;
};

/// By quantity in the order of the catalogue, those read on at least one note in both. `set` may be null.
[[nodiscard]] std::vector<QuantityChange> beforeAndAfter(const MeasuredPass &before, const MeasuredPass &after,
                                                         const tolerance::ToleranceSet *set);

/// Which two passes say what the work came to: the first as found and the newest as left after it. Where there is none
/// of a kind, the first and the newest pass of all. Both null for fewer than two. `passes` in any order.
struct PassPair {
    const readings::Pass *before = nullptr;
    const readings::Pass *after = nullptr;
};
[[nodiscard]] PassPair usualPair(std::span<const readings::Pass> passes);

} // namespace hammerline::analysis
