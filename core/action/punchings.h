#pragma once
// Which punchings make up a thickness.

#include "units/units.h"

#include <vector>

namespace hammerline::action {

/// Of all lists from the shelf (repeats allowed, the empty one too), those whose sum comes nearest to |thickness|; of
/// these the one with the fewest pieces; of these the one with the thicker pieces first. Thickest first. `shelf` > 0
/// each.
[[nodiscard]] std::vector<units::Length> fewestPunchings(const std::vector<units::Length> &shelf,
                                                         units::Length thickness);

} // namespace hammerline::action
