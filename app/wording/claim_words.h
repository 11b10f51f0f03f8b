#pragma once
// What can be claimed of a change between two passes, in plain words.

#include "analysis/before_after.h"
#include "wording/number_form.h"

#include <QString>

#include <span>

namespace hammerline::wording {

/// "The mean moved by −0.30 mm; with 95 % confidence between −0.40 and −0.20 mm." or that no change can be claimed; and
/// what the gauges may have to do with it.
[[nodiscard]] QString claimText(const analysis::QuantityChange &change, const NumberForm &form);
/// "−0.40 to −0.20", of mm or g, in the unit of the form, which stands elsewhere; "–" where an end is absent.
[[nodiscard]] QString spanText(std::optional<double> low, std::optional<double> high, catalogue::Quantity quantity,
                               const NumberForm &form);
/// "+0.30 mm" of mm or g.
[[nodiscard]] QString figureText(double change, catalogue::Quantity quantity, const NumberForm &form);
/// "t 3.21, p 0.002"; "–" where there is no test.
[[nodiscard]] QString testText(const analysis::Comparison &comparison, const NumberForm &form);

} // namespace hammerline::wording
