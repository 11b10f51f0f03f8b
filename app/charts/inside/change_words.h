#pragma once
// Title and answer of the charts that hold several passes against each other.

#include "charts/charts.h"

namespace hammerline::charts {

/// Words of the catalogue in the middle of a sentence: small, but in a language that writes its nouns with a capital.
[[nodiscard]] QString inSentence(catalogue::Quantity quantity, const QLocale &locale);

/// Empty where the question is another's.
[[nodiscard]] QString titleOfChange(const ChartData &data);
[[nodiscard]] QString answerOfChange(const ChartData &data);

} // namespace hammerline::charts
