#pragma once
// A route: the order in which a pass asks for its notes. A plain list of places, so that any order can be one (by note,
// by quantity, a drawn-up list); how a list came about is the business of its maker, not of the entry that follows it.

#include "catalogue/catalogue.h"
#include "keyboard/keyboard.h"
#include "readings/readings.h"

#include <vector>

namespace hammerline::bench {

/// Places of take 1, none twice.
using Route = std::vector<readings::Place>;

/// One quantity from the first note to the last.
[[nodiscard]] Route alongTheKeyboard(catalogue::Quantity quantity, const keyboard::Compass &compass);

/// All `quantities` of a note before the next note.
[[nodiscard]] Route noteByNote(const std::vector<catalogue::Quantity> &quantities, const keyboard::Compass &compass);

} // namespace hammerline::bench
