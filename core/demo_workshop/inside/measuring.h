#pragma once
// A person holds a gauge to an action and writes down what it shows.

#include "demo_workshop/demo_workshop.h"
#include "demo_workshop/inside/action_state.h"

namespace hammerline::demo_workshop {

[[nodiscard]] MadePass measure(const ActionState &state, const PianoPlan &plan, const PassPlan &pass,
                               const tolerance::ToleranceSet &set, Dice &dice);

/// Is the pair one that nobody can read at that moment (RFC 3339)?
[[nodiscard]] bool isGap(const PianoPlan &plan, catalogue::Quantity quantity, keyboard::Note note,
                         const std::string &moment);

/// One reading of a true value with the gauge of the pass, without moment and remark.
[[nodiscard]] readings::Reading readOnce(double truth, const readings::Place &place, const PassPlan &pass, Dice &dice);

/// What is written for a true value in mm or g; the gauge's resolution decides the digits.
[[nodiscard]] std::string written(double value, units::Dimension dimension, Writing writing);

} // namespace hammerline::demo_workshop
