#pragma once
// Verdicts as a person at a bench reads them: how far, and which way in the words of the trade.

#include "review/review.h"
#include "tolerance/judge.h"

#include <string>
#include <vector>

namespace hammerline::command_line {

/// Millimetres or grams as far as a bench needs them: "2.41 mm", "52 g".
[[nodiscard]] std::string benchText(units::Amount amount);
[[nodiscard]] std::string benchText(double display, units::Dimension dimension);

/// Which way `quantity` is off: "too far from the string", "too deep", "too heavy".
[[nodiscard]] std::string_view directionOf(catalogue::Quantity quantity, bool aboveTarget);

/// "0.30 mm too far from the string", measured from the target; "not read" where missing.
[[nodiscard]] std::string sentenceOf(const tolerance::Verdict &verdict);

/// What is allowed: "1.80 to 3.60 mm", "at most 1.60 mm", "at least 0.80 mm".
[[nodiscard]] std::string limitsText(const tolerance::Limits &limits);

/// "1 note", "3 notes".
[[nodiscard]] std::string counted(int count, const std::string &one, const std::string &many);

/// Runs of neighbours drawn together: "A0, B0-D#1, C8".
[[nodiscard]] std::string notesText(const std::vector<keyboard::Note> &notes);

} // namespace hammerline::command_line
