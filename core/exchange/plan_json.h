#pragma once
// The JSON answers of `plan` and `fit`, in the manner of answers_json.h.

#include "action/fit.h"
#include "action/plan.h"

#include <string>
#include <string_view>

namespace hammerline::exchange {

/// "hammerline-plan", version 1.
[[nodiscard]] std::string planJson(const action::Plan &plan);
/// "hammerline-fit", version 1.
[[nodiscard]] std::string fitJson(const action::Fit &fit);

/// Plain words for "why", as the JSON has them.
[[nodiscard]] std::string_view wordsOf(action::Hindrance why);

} // namespace hammerline::exchange
