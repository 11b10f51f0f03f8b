#pragma once
// A probability as a person reads it.

#include "wording/number_form.h"

#include <QString>

namespace hammerline::wording {

/// "97 %"; never a plain 0 or 100, which no normal distribution gives: "less than 1 %", "more than 99 %".
[[nodiscard]] QString probabilityText(double probability, const NumberForm &form);

} // namespace hammerline::wording
