#pragma once
// A plan in words: what to turn, by how much, what stays outside and why, what to measure again.

#include "action/work_item.h"
#include "wording/number_form.h"

#include <QString>

namespace hammerline::plan_sheet {

/// "a quarter turn", "1 3/8 turns": the nearest eighth, which is what a hand can tell; "less than an eighth of a turn".
/// With "back" where the turn goes against the way the setup counts as positive.
[[nodiscard]] QString turnsText(double turns);
/// "take out 0.50 + 0.13 mm", "put in 0.25 mm"; absent pieces: "no punching on the shelf comes near".
[[nodiscard]] QString punchingsText(const action::Move &move, const wording::NumberForm &form);
/// Turns where the setup says what a turn does, else punchings, else nothing: no published value exists.
[[nodiscard]] QString howText(const action::Move &move, const wording::NumberForm &form);
/// What is adjusted: "Let-off", or the rail with what it moves: "Rest rail (blow)".
[[nodiscard]] QString nameOf(const action::RailMove &rail);
/// "+1.50 mm", or "+0.50 mm bass, +1.50 mm treble"; what to set it to in brackets where it answers otherwise.
[[nodiscard]] QString byText(const action::RailMove &rail, const wording::NumberForm &form);
[[nodiscard]] QString whyText(action::Hindrance why);
/// Notes of one quantity in short: "A0, C#1 to E1, 88".
[[nodiscard]] QString notesText(const std::vector<keyboard::Note> &notes);
/// "1 h 25 min", "40 min".
[[nodiscard]] QString timeText(double minutes);

} // namespace hammerline::plan_sheet
