#pragma once
// The best plan by a general solver: the rules of a plan as a mixed-integer program, solved three times, once for each
// criterion, each holding what the ones before it reached (GLPK, GNU Linear Programming Kit; tests only).

#include "support/plan_brute_force.h"

#include <utility>
#include <vector>

namespace hammerline::support {

struct SolverAnswer {
    PlanWorth worth{};   ///< as the solver reckons, with its tolerances (a limit missed by half a nanometre is met)
    action::Plan plan{}; ///< its rails and moves alone, to be judged exactly
    bool proved = false; ///< false: the solver gave up
};

/// Over these notes and all rails of the setup at once. Lever ratios are those of the whole task.
[[nodiscard]] SolverAnswer bestBySolver(const action::PlanTask &task, const std::vector<keyboard::Note> &notes);
/// Over all notes of the instrument.
[[nodiscard]] SolverAnswer bestBySolver(const action::PlanTask &task);
/// Whole steps of the two ends of each rail.
using RailSteps = std::vector<std::pair<int, int>>;
/// With the rails standing (empty: there are none) notes are independent programs; their worths add up.
[[nodiscard]] SolverAnswer bestNoteByNote(const action::PlanTask &task, const RailSteps &rails = {});

} // namespace hammerline::support
