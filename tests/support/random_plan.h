#pragma once
// Invented planning tasks, the same for the same seed: readings off target, uneven sets, one-sided limits, guarded
// intervals (some of them empty), missing readings, predicted aftertouch, rails of every kind.

#include "action/plan.h"

#include <cstdint>

namespace hammerline::support {

struct RandomPlanSize {
    int notes = 2;
    int mostSteps = 2; ///< of single adjustments, either way
    int mostRailSteps = 2;
    int rails = 1; ///< at most
};

[[nodiscard]] action::PlanTask randomPlanTask(std::uint64_t seed, const RandomPlanSize &size);

/// An 88-note action with every quantity read, ordinary steps and ordinary faults; no rails.
[[nodiscard]] action::PlanTask wholeActionTask(std::uint64_t seed, catalogue::ActionKind kind);
/// The same with one linear rail of 41 x 41 positions on `quantity`.
[[nodiscard]] action::PlanTask wholeActionWithRail(std::uint64_t seed, catalogue::ActionKind kind,
                                                   catalogue::Quantity quantity);

} // namespace hammerline::support
