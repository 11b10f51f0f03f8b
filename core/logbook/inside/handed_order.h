#pragma once
// The order in which a hand-over tells its deeds.
//
// Two logbooks that brought each other up to date hold the same deeds of an instrument in different orders: what was
// taken over stands behind what was there. A document must not show it, so it has an order of its own: by moment, then
// by the person's name; but no deed before one that it builds upon, whatever the clocks said. A deed builds upon
//   * the one that took the instrument in, and the one that began its pass or the pass that it checks;
//   * the deed that it undoes or brings back;
//   * the one that wrote the version before, of each row that it wrote;
//   * where it signs a pass or opens it again: all before it about this pass; and all after it about this pass on it.
// None of these differs between logbooks: where two shops wrote to one place or went on with a pass that the other
// signed, taking over is a conflict.
//
// Deeds of one person at one and the same millisecond are told by the kind of row that they wrote, in the order of
// versionTables(), and else stay as they stand: they were done at one desk, one after the other, and that order goes
// along. (The kind, since the sale may come later than the rest.)

#include "logbook/inside/handed.h"

namespace hammerline::logbook::inside {

/// The deeds at `places` alone, in that order, numbered anew. None of them refers to one that is not there, or to one
/// behind it.
[[nodiscard]] Handed arranged(Handed handed, const std::vector<std::size_t> &places);

/// Numbered anew. `handed` has its deeds in an order that holds, such as that of a logbook.
[[nodiscard]] Handed inOrder(Handed handed);

} // namespace hammerline::logbook::inside
