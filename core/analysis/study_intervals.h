#pragma once
// How well a gauge study knows its components: intervals about each variance, as standard deviations.
//
// Repeatability: exact, from chi-squared. The others are sums and differences of mean squares: modified large-sample
// limits after Ting, Burdick, Graybill, Jeyaratnam and Lu, "Confidence intervals on linear combinations of variance
// components that are unrestricted in sign", J. Statist. Comput. Simul. 35 (1990) 135-143, without the cross terms
// between mean squares of one sign, which are small (from memory; the tests hold them against simulated studies, and
// against generalized intervals, another method, on two published ones: the variances' limits differ by 4 % at most, of
// the total by 12 %). Few people give wide intervals: with two or three of them that of reproducibility often begins at
// 0 and ends far out.

#include "analysis/gauge_study.h"

namespace hammerline::analysis {

/// Standard deviations in mm or g. `high` is never below the component, `low` never above it, neither below 0.
struct SdInterval {
    double low = 0;
    double high = 0;
};

struct StudyIntervals {
    double confidence = 0.95; ///< two-sided, for each by itself
    SdInterval repeatability{}, reproducibility{}, gauge{}, note{}, total{};
};

/// `confidence` between 0 and 1, both excluded.
[[nodiscard]] StudyIntervals intervalsOf(const GaugeStudy &study, double confidence = 0.95);

/// Of the gauge's variance, the part that a step of this size explains by itself: the rectangular distribution of half
/// a step on either side (JCGM 100:2008, 4.3.7), in mm or g. Beyond 1 the readings agree better than the step allows to
/// tell: the study then understates what the gauge does. Absent where the gauge shows no spread at all.
[[nodiscard]] std::optional<double> shareOfResolution(const GaugeStudy &study, double halfStep);

/// Expanded uncertainty (k = 2) of one reading, to judge by, in mm or g: what the study found, or what half a step on
/// either side comes to alone where that is larger (tolerance/doubt.h). Not their sum: readings of a study are rounded
/// to the step, so that their spread holds it.
[[nodiscard]] double uncertaintyToJudgeBy(const GaugeStudy &study, std::optional<double> halfStep);

} // namespace hammerline::analysis
