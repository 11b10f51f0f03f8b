#pragma once
// What was read of a shop stays until somebody touches it.

#include "logbook/logbook.h"

#include <optional>
#include <set>

namespace hammerline::shop {

using Instruments = std::set<instrument::InstrumentId>;

/// The instruments that deeds after `seen` were about. Absent: so many deeds that everything is better read anew.
[[nodiscard]] std::optional<Instruments> touchedSince(const logbook::Logbook &book, logbook::DeedId seen);

} // namespace hammerline::shop
