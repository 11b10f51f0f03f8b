#pragma once
// Every plan there is, tried: the lever model and the order of plans written out once more, with nothing of the search's.

#include "action/plan.h"

namespace hammerline::support {

struct PlanWorth {
    int pairs = 0;
    double minutes = 0;
    double closeness = 0;
};

/// The best of all plans. Only for a few notes, steps and rails: every rail position times every turn of every screw.
[[nodiscard]] PlanWorth bestOfAllPlans(const action::PlanTask &task);

/// What a plan is worth by those rules, from its moves alone; absent where it is no plan (something below 0, a
/// move that is no whole step or too far, an adjustment that isn't there).
[[nodiscard]] std::optional<PlanWorth> worthOf(const action::PlanTask &task, const action::Plan &plan);

/// More pairs inside, then fewer minutes and closer; the aim says which of these two comes first.
[[nodiscard]] bool betterPlan(const PlanWorth &one, const PlanWorth &other, action::Aim aim);

} // namespace hammerline::support
