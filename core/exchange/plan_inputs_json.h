#pragma once
// What a plan was made from, as text for keeping with its pass: aim, what was ruled out, setup, set and readings. The
// same inputs give the same plan, so the plan itself need not be kept.

#include "action/plan.h"
#include "outcome/outcome.h"

#include <string>
#include <string_view>

namespace hammerline::exchange {

/// "hammerline-plan-inputs", version 1; setup and set as their own documents, readings as CSV text (means of takes).
[[nodiscard]] std::string planInputsJson(const action::PlanTask &task);
[[nodiscard]] outcome::Outcome<action::PlanTask> readPlanInputs(std::string_view json);

} // namespace hammerline::exchange
