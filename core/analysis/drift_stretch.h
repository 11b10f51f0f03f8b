#pragma once
// Which passes tell a drift: those between two regulations, since work moves more than time does.

#include "readings/readings.h"

#include <span>
#include <vector>

namespace hammerline::analysis {

/// The stretch that `chosen` lies in: from the newest as-left pass not after it (where there is none, from the first
/// pass) up to the next as-left pass, which is not part of it any more. Passes taken while the work was going on are
/// left out. Oldest first; `passes` in any order.
[[nodiscard]] std::vector<readings::Pass> driftStretch(std::span<const readings::Pass> passes,
                                                       const readings::Pass &chosen);

} // namespace hammerline::analysis
