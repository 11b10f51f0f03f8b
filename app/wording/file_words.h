#pragma once
// The file of an instrument in the words of the trade: kinds of work, areas, grades, moments, and what drift says.

#include "analysis/drift.h"
#include "dossier/dossier.h"
#include "wording/number_form.h"

#include <QString>

namespace hammerline::wording {

[[nodiscard]] QString nameOf(dossier::WorkKind kind); ///< "Parts renewed"
[[nodiscard]] QString nameOf(dossier::Area area);     ///< "Keys"
[[nodiscard]] QString nameOf(dossier::Moment moment); ///< "As received"
[[nodiscard]] QString nameOf(dossier::Grade grade);   ///< "3, serviceable"
/// "A0 to E2", or "whole" where there are none.
[[nodiscard]] QString notesText(const std::optional<keyboard::NoteRange> &notes);
/// "12 h 30 min"; empty for an unknown time.
[[nodiscard]] QString timeText(const std::optional<std::chrono::minutes> &time);
/// "21.5 °C, 48 % r.h."; "not noted".
[[nodiscard]] QString climateText(const readings::Climate &climate);
/// "0.3 mm larger"; "cannot be told apart"; "0.3 mm larger, gauge unknown".
[[nodiscard]] QString driftText(const analysis::Drift &drift, const NumberForm &form);

} // namespace hammerline::wording
