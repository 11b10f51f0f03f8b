#pragma once
// From steps to the lines of a plan: moves in order with turns and punchings, the pairs afterwards, what stays outside
// and why, what to measure again.

#include "action/inside/rail_search.h"

#include <vector>

namespace hammerline::action {

/// All notes solved at the rails' best positions.
struct Solved {
    const PlanTask *task = nullptr;
    std::vector<NoteProblem> notes{};
    std::vector<RailPosition> rails{};
    std::vector<Shift> shifts{};       ///< one a note
    std::vector<NoteAnswer> answers{}; ///< one a note
};

[[nodiscard]] std::vector<RailMove> railMoves(const Solved &solved);
[[nodiscard]] std::vector<Move> movesOf(const Solved &solved);
[[nodiscard]] std::vector<Pair> pairsOf(const Solved &solved);
[[nodiscard]] std::vector<Unresolved> unresolvedOf(const Solved &solved, const std::vector<Pair> &pairs);
[[nodiscard]] std::vector<Remeasure> remeasureAfter(const Solved &solved, const Plan &plan);

} // namespace hammerline::action
