#pragma once
// What the readings say besides what to turn: which of them can't all be true, what one common remedy would mend, and
// how this action has answered to earlier work.

#include "action/contradictions.h"
#include "action/learning.h"
#include "action/patterns.h"
#include "wording/number_form.h"

#include <QStringList>

#include <map>
#include <vector>

namespace hammerline::plan_sheet {

struct Findings {
    std::vector<action::Contradiction> contradictions{};
    std::vector<action::RatioApart> ratiosApart{};
    std::map<catalogue::Quantity, action::Pattern> patterns{};
    std::vector<action::Learned> learned{};
};

/// Everything but `learned`, which needs the passes before. The gauge's expanded uncertainty goes for every length.
[[nodiscard]] Findings findingsOf(const readings::ValueTable &values, const tolerance::ToleranceSet &set,
                                  const keyboard::Compass &compass, const keyboard::Sections &sections,
                                  units::Length gaugeUncertainty);

/// "C♯4: let-off is not nearer to the string than blow": readings to repeat.
[[nodiscard]] QStringList doubtLines(const Findings &findings, const wording::NumberForm &form);
/// "Let-off: 31 of 88 inside; one change for all would make it 60, a straight line 80. It looks like a tilt.": only
/// quantities with four notes or more outside.
[[nodiscard]] QStringList patternLines(const Findings &findings, const wording::NumberForm &form);
/// "Let-off, whole action: does 86 % of what is asked (70 to 95 %, 12 trials)".
[[nodiscard]] QStringList learnedLines(const Findings &findings, const wording::NumberForm &form);

} // namespace hammerline::plan_sheet
