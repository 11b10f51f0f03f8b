#pragma once
// The entries of the history, as they lie in the file.

#include "logbook/inside/database.h"
#include "logbook/logbook.h"

#include <optional>
#include <string>
#include <vector>

namespace hammerline::logbook::inside {

/// An entry with what proves it.
struct StoredDeed {
    Deed deed{};
    std::string marks{};
    std::string digest{};
};

[[nodiscard]] DeedId newestDeedId(Database &database);
[[nodiscard]] std::optional<StoredDeed> findDeed(Database &database, DeedId id);
/// After `after`, oldest first, at most `most`.
[[nodiscard]] std::vector<StoredDeed> deedsAfter(Database &database, DeedId after, int most);
void insertDeed(Database &database, const StoredDeed &stored);

/// 0 stands for none in a Deed, NULL in the file.
[[nodiscard]] Cell numberOrNull(std::int64_t number);

} // namespace hammerline::logbook::inside
