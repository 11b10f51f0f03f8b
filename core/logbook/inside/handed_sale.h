#pragma once
// What is left out of a hand-over where the sale stays here: buyer, price and remark, and that the instrument was
// delivered, as far as its history can do without.

#include "logbook/inside/handed.h"

namespace hammerline::logbook::inside {

/// Without the deeds of the sale, and without those from a delivery on that wrote nothing but the state. Where
/// something else was written of the instrument since, the delivery stays: each version of a thing follows the one
/// before, and a version altered would be in conflict with the true one when the whole document comes.
[[nodiscard]] Handed withoutSale(Handed handed);

} // namespace hammerline::logbook::inside
