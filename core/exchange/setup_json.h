#pragma once
// Action setups as JSON (resources/schemas/action-setup.schema.json).

#include "action/action.h"
#include "outcome/outcome.h"

#include <string>
#include <string_view>

namespace hammerline::exchange {

/// Any unknown key or fault of content refuses the text: the key's path and what would be right. `file` is to blame.
[[nodiscard]] outcome::Outcome<action::Setup> readSetup(std::string_view json, const std::string &file);
[[nodiscard]] std::string writeSetup(const action::Setup &setup);

} // namespace hammerline::exchange
