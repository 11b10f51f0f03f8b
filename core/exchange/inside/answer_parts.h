#pragma once
// The parts that more than one JSON answer is made of.

#include "analysis/analysis.h"
#include "exchange/inside/json_writer.h"
#include "readings/readings.h"
#include "tolerance/judge.h"

namespace hammerline::exchange {

/// The set as in its file, "format" and "version" included.
[[nodiscard]] OrderedJson toleranceSetTree(const tolerance::ToleranceSet &set);

/// One entry of "readings" in a check. "uneven" stands on judged readings alone: what is missing differs from nothing,
/// and of what is unjudged the value alone is given.
[[nodiscard]] OrderedJson verdictTree(const tolerance::Verdict &verdict);
[[nodiscard]] OrderedJson summariesTree(const analysis::Summaries &summaries);
[[nodiscard]] OrderedJson comparisonsTree(const analysis::Comparisons &comparisons);

} // namespace hammerline::exchange
