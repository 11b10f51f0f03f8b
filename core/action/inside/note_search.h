#pragma once
// The best answer of one note for rails that stand (or stand to within the slack of a box: then a bound, never worse
// than the best of any position in the box).
//
// Quantities of a note fall into two kinds. Checking, damper start and the weights stand alone: each is one screw. The
// others are tied: let-off moves drop, key height moves dip, and all of them meet in aftertouch. Given the rest, the
// drop screw stands alone again and the last of the others is one screw (inside/one_screw.h); what is left is searched
// step by step outwards from the target, cut off by what the screws still to come can reach and cost.

#include "action/inside/note_problem.h"

namespace hammerline::action {

/// Every choice among the tied screws that the note has, cheapest first.
[[nodiscard]] std::vector<Round> roundsFor(const NoteProblem &problem);

/// key_height, blow, lost_motion, let_off, drop, dip and aftertouch.
[[nodiscard]] NoteAnswer bestTied(const NoteProblem &problem, const Shift &shift, Aim aim);
/// A score that no position in the box can beat, without trying steps: coarse and quick.
[[nodiscard]] Score boundTied(const NoteProblem &problem, const Shift &shift, Aim aim);
/// checking, damper_start, down_weight or up_weight.
[[nodiscard]] NoteAnswer bestAlone(const NoteProblem &problem, catalogue::Quantity quantity, const Shift &shift,
                                   Aim aim);

/// What a term stands at with every screw left alone, and to within what.
struct Standing {
    std::array<double, catalogue::quantityCount> value{};
    std::array<double, catalogue::quantityCount> slack{};
};
[[nodiscard]] Standing standingOf(const NoteProblem &problem, const Shift &shift);

} // namespace hammerline::action
