#pragma once
// A plan as a sheet for the bench: rails, then note by note in the order of the work, then what stays open.

#include "action/plan.h"

#include <string>

namespace hammerline::command_line {

[[nodiscard]] std::string planText(const action::Plan &plan);

} // namespace hammerline::command_line
