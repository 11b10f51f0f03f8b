#pragma once
// Every plan there is, tried: the contract's §7 and §8 written out once more, with nothing of the search's.

#include "action/plan.h"

namespace hammerline::support {

struct PlanWorth {
    int pairs = 0;
    double minutes = 0;
    double closeness = 0;
};

/// The best of all plans. Only for a few notes, steps and rails: every rail position times every turn of every screw.
[[nodiscard]] PlanWorth bestOfAllPlans(const action::PlanTask &task);

/// What a plan is worth by the contract's rules, from its moves alone; absent where it is no plan (something below 0, a
/// move that is no whole step or too far, an adjustment that isn't there).
[[nodiscard]] std::optional<PlanWorth> worthOf(const action::PlanTask &task, const action::Plan &plan);

/// The contract's order of plans.
[[nodiscard]] bool betterPlan(const PlanWorth &one, const PlanWorth &other, action::Aim aim);

} // namespace hammerline::support
