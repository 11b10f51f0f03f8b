#pragma once
// Takes of one note that lie further apart than the gauge can excuse: something moved between them, or one of them was
// not read where the other was. A mean of such takes is no better than one of them.

#include "readings/readings.h"
#include "tolerance/tolerance.h"

#include <map>
#include <optional>
#include <utility>
#include <vector>

namespace hammerline::tolerance {

struct TakesApart {
    units::Amount spread{};      ///< largest take - smallest
    units::Amount uncertainty{}; ///< expanded, of the gauge; the spread is larger
    bool operator==(const TakesApart &) const = default;
};

/// Expanded uncertainty that is stated for one reading: by the pass's gauge where it states one and measures lengths as
/// the quantity does, else by the set (null: no set). Absent where neither says anything.
[[nodiscard]] std::optional<units::Amount> statedUncertainty(catalogue::Quantity quantity, const readings::Gauge &gauge,
                                                             const ToleranceSet *set);

using PairsApart = std::map<std::pair<catalogue::Quantity, keyboard::Note>, TakesApart>;
/// Every note and quantity of a pass whose takes differ by more than that uncertainty. Readings in any order.
[[nodiscard]] PairsApart takesApart(const std::vector<readings::Reading> &readings, const readings::Gauge &gauge,
                                    const ToleranceSet *set);

} // namespace hammerline::tolerance
