#pragma once
// Readings that come in batches, where there may be more of them than one wants to hold at a time.

#include "readings/readings.h"

#include <cstddef>
#include <functional>
#include <vector>

namespace hammerline::readings {

/// A batch is at most so many: some megabytes, and more than a pass of one take a note ever has.
inline constexpr std::size_t mostInBatch = 16'384;

/// Puts the next readings into `batch`, instead of what was in it, in whatever order they come, no place twice in all
/// the batches. False: there are no more, and the batch is empty. A fault: there is nothing more to come, and what came
/// before does not hold either. It is not asked again after either of them.
using ReadingSource = std::function<outcome::Outcome<bool>(std::vector<Reading> &batch)>;

} // namespace hammerline::readings
