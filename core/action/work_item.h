#pragma once
// A piece of planned work as the logbook names it: which screw or rail, by how much, and in how many turns where the
// plan said so. "let_off 40 by -0.6 mm, -0.25 turns", "dip 3 by 0.15 mm", "rail rest_rail by 1.5 mm" (uniform),
// "rail let_off_rail by 0.5 mm to -1 mm" (bass to treble), "rail rest_rail by 1.5 mm, set 2 mm" where more was asked of
// it than shall come of it. Amounts are of the quantity itself, exact.
//
// Without the amount, another move of the same screw would pass for done after the plan was made anew, and learning
// would be told of work that nobody did. Logbooks of before have names without it ("let_off 40"): they name no move
// of a plan that is made now; what was done then is what the plan that was kept asked for.

#include "action/learning.h"

#include <string>
#include <string_view>
#include <vector>

namespace hammerline::action {

[[nodiscard]] std::string itemOf(const Move &move);
[[nodiscard]] std::string itemOf(const RailMove &rail);

/// The item without its turns or setting: two items are the same work where this is equal, however the screw was seen
/// to answer.
[[nodiscard]] std::string_view workIn(std::string_view item);

/// The work that these items name, one move a screw: what was done to it in several goes adds up. An item without an
/// amount takes that of the best plan of `kept`; one that names nothing known is left out.
[[nodiscard]] DoneWork workFrom(const std::vector<std::string> &items, const PlanTask &kept);

} // namespace hammerline::action
