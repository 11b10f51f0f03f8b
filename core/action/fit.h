#pragma once
// Fitting targets to an action. Blow, let-off, dip and aftertouch are tied by one ratio: a set that asks
// for four targets which this action cannot reach together would make every technician fail. The fit moves the targets,
// within the acceptance intervals, as little as can be (least squares in half-widths) until they agree.

#include "action/lever_model.h"
#include "outcome/outcome.h"
#include "tolerance/tolerance.h"

#include <vector>

namespace hammerline::action {

struct FitTask {
    readings::ValueTable values{};
    tolerance::ToleranceSet set{};
    keyboard::Compass compass{};
    keyboard::Sections sections{};
};

/// The new targets of one note, whole nanometres.
struct FittedNote {
    keyboard::Note note{};
    double ratio = 0;
    bool feasible = false; ///< false: the intervals and the ratio do not meet; the point that comes nearest
    units::Length blow{};
    units::Length letOff{};
    units::Length dip{};
    units::Length aftertouch{};
    units::Length aftertouchOfOldTargets{}; ///< what the set's blow, let_off and dip would give on this action
};

struct Fit {
    std::vector<FittedNote> notes{}; ///< rising; notes for which the set lacks one of the four are left out
    tolerance::ToleranceSet set{};   ///< with a point for every note of the instrument in the four entries
};

/// Refused: one of the four one-sided at a note, no note with all four, no note that tells its ratio.
[[nodiscard]] outcome::Outcome<Fit> fitTargets(const FitTask &task);

} // namespace hammerline::action
