#pragma once
// Holds one deed against its digest and, where that fails, finds out by the marks what was altered.

#include "logbook/inside/history.h"
#include "logbook/inside/version_table.h"
#include "logbook/verify_history.h"

#include <string>
#include <vector>

namespace hammerline::logbook::inside {

/// Digests the deed before may have had when this one was written: what stands in its entry, and what its content
/// makes. They differ where one of the two was altered. Both empty: the deed before is not there.
struct DigestsBefore {
    std::string stored{};
    std::string computed{};
};
[[nodiscard]] DigestsBefore beforeTheFirst();

/// Appends what is wrong; the digests for the next deed. `rows` in the order of `before`.
[[nodiscard]] DigestsBefore checkDeed(const StoredDeed &stored, const std::vector<Row> &rows,
                                      const DigestsBefore &digestsBefore, std::vector<Alteration> &found);

/// A row that its deed cannot have written: the entry is not there or is about something else.
[[nodiscard]] Alteration strayed(DeedId deed, const Row &row);

} // namespace hammerline::logbook::inside
