#pragma once
// Could a row of a hand-over be read again once it is written? What the tables' own readers refuse is refused here.

#include "logbook/inside/version_table.h"

#include <string>

namespace hammerline::logbook::inside {

/// What in a portable row (see handed.h) is none that a logbook holds; empty: nothing.
[[nodiscard]] std::string unknownIn(const Row &row);
/// The row as if everything it names had the number 1, so that the tables' own readers take it.
[[nodiscard]] Row numbered(Row row);

} // namespace hammerline::logbook::inside
