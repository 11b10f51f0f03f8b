#pragma once
// The moves of a plan as one walks the action: one adjustment, then one section of the keyboard after the other.

#include "action/plan.h"

#include <QString>

#include <vector>

namespace hammerline::plan_sheet {

/// Moves [first, last) of a plan.
struct PlanGroup {
    catalogue::Quantity adjust{};
    std::string section{}; ///< empty: sections are not known, or the notes lie in none
    std::size_t first = 0;
    std::size_t last = 0;
    double minutes = 0;
};
/// In the order of the moves.
[[nodiscard]] std::vector<PlanGroup> groupsOf(const std::vector<action::Move> &moves,
                                              const keyboard::Sections &sections);
/// "Let-off, tenor: 12 notes, 6 min".
[[nodiscard]] QString headingOf(const PlanGroup &group);

/// "A0 to E2", or "all" where the rail moves every note.
[[nodiscard]] QString notesOf(const action::RailMove &rail);

} // namespace hammerline::plan_sheet
