#pragma once
// What a spot check has found, made ready to be shown: figures of the core, sentences, and a chart for each quantity.
// Nothing is computed here that `spot-check` and `compare` do not compute.

#include "charts/charts.h"
#include "decisions/spot_findings.h"
#include "main_window/workshop.h"

#include <QStringList>

#include <map>
#include <optional>
#include <vector>

namespace hammerline::main_window {

struct SpotCheckTold {
    decisions::SpotCheck check{};
    readings::Pass checked{};
    readings::Pass again{};
    std::vector<decisions::SpotFinding> findings{}; ///< by quantity, as the check lists them
    int unread = 0;                                 ///< values of the sample that are not read again yet
    std::map<catalogue::Quantity, charts::ChartData> charts{};
};

inline constexpr const char *spotCheckConfidence = "0.95";

/// Of the chosen pass; absent where that is no spot check. Without a tolerance set nothing counts as out and nothing is
/// proved, but the two people are compared.
[[nodiscard]] std::optional<SpotCheckTold> spotCheckTold(const Workshop &workshop, const wording::NumberForm &form);

/// Which pass was checked, by whom; the sample and its seed; who read again.
[[nodiscard]] QString headingOf(const SpotCheckTold &told);
[[nodiscard]] QString originOf(const SpotCheckTold &told);
/// What the sample proves of the rest.
[[nodiscard]] QStringList proofOf(const decisions::SpotFinding &finding);
/// How far the two people agree.
[[nodiscard]] QStringList agreementOf(const decisions::SpotFinding &finding, const SpotCheckTold &told);

/// "84 notes prove that none is out, 68 that at most 1 is…", each with none of them found out.
[[nodiscard]] QString worthOfSamples(int notes);

} // namespace hammerline::main_window
