#pragma once
// Tolerance sets as JSON (resources/schemas/tolerance-set.schema.json).

#include "outcome/outcome.h"
#include "tolerance/tolerance.h"

#include <string>
#include <string_view>
#include <vector>

namespace hammerline::exchange {

/// Any unknown key or fault of content refuses the text: the key's path and what would be right. `file` is to blame.
[[nodiscard]] outcome::Outcome<tolerance::ToleranceSet> readToleranceSet(std::string_view json,
                                                                         const std::string &file);
/// What is wrong with it; empty: it is a set. As taking an instrument over asks (logbook/logbook.h).
[[nodiscard]] std::vector<outcome::Fault> toleranceSetFaults(const std::string &json, const std::string &file);
/// Two-space indented, a newline at the end; reading it back gives the same set.
[[nodiscard]] std::string writeToleranceSet(const tolerance::ToleranceSet &set);

} // namespace hammerline::exchange
