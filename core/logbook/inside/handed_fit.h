#pragma once
// Whether what a hand-over says of its instrument fits the instrument: notes within its compass, quantities that its
// action has, tolerance sets that can be read.
//
// Compass and action may be corrected after readings were taken, and two logbooks may be brought together whose deeds
// are in another order; so what fits any version of the instrument in the document fits.

#include "logbook/inside/handed.h"

#include <string>

namespace hammerline::logbook::inside {

/// The first thing that does not fit: deed, place in the JSON, and what would be right. Empty: all fits. `handed` holds
/// nothing that unknownIn finds.
[[nodiscard]] std::string misfitIn(const Handed &handed, const SetCheck &setFaults);

} // namespace hammerline::logbook::inside
