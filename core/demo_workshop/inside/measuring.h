#pragma once
// A person holds a gauge to an action and writes down what it shows.

#include "demo_workshop/demo_workshop.h"
#include "demo_workshop/inside/action_state.h"

namespace hammerline::demo_workshop {

[[nodiscard]] MadePass measure(const ActionState &state, const PianoPlan &plan, const PassPlan &pass,
                               const tolerance::ToleranceSet &set, Dice &dice);

/// What is written for a true value in mm or g; the gauge's resolution decides the digits.
[[nodiscard]] std::string written(double value, units::Dimension dimension, Writing writing);

} // namespace hammerline::demo_workshop
