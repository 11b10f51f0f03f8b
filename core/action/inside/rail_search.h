#pragma once
// Where the rails should stand: exact, by halving boxes of positions.
//
// A box is a range of whole steps for each end of each rail. Every note is solved with its shift known to within the
// box, which gives a bound that no position of the box can beat; boxes that cannot beat the best position found so far
// are dropped. A box of one position is the plan itself. Rails that share no note, or that move checking while the
// others move blow and let-off, are searched apart: their notes' shares add up.

#include "action/inside/note_problem.h"

#include <vector>

namespace hammerline::action {

/// Whole steps of the two ends; equal for a uniform rail.
struct RailPosition {
    int bass = 0;
    int treble = 0;
    bool operator==(const RailPosition &) const = default;
};

/// One position for each rail of the setup; a rail that is forbidden or moves no note read stays.
[[nodiscard]] std::vector<RailPosition> bestRailPositions(const PlanTask &task, const std::vector<NoteProblem> &notes);

/// What the rails do to one note at these positions.
[[nodiscard]] Shift shiftOf(const PlanTask &task, const std::vector<RailPosition> &positions, keyboard::Note note);

[[nodiscard]] keyboard::NoteRange rangeOf(const Rail &rail, const keyboard::Compass &compass);

} // namespace hammerline::action
