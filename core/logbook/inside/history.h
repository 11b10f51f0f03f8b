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

// The same without what proves it, which may be megabytes.
[[nodiscard]] std::optional<Deed> findEntry(Database &database, DeedId id);
[[nodiscard]] std::vector<Deed> entriesAfter(Database &database, DeedId after, int most);
[[nodiscard]] std::optional<std::string> digestOf(Database &database, DeedId id);
/// What the digest of a deed is chained to: zeros before the first.
[[nodiscard]] std::string digestBefore(Database &database, DeedId id);

/// Marks and digest of an entry that was inserted without them.
void proveDeed(Database &database, DeedId id, std::string_view marks, std::string_view digest);
/// Room for both; then they are written into `proofOf`, in pieces.
void makeRoomForProof(Database &database, DeedId id, std::int64_t bytesOfMarks);
/// `column`: marks or digest.
[[nodiscard]] Blob proofOf(Database &database, DeedId id, const char *column);

/// 0 stands for none in a Deed, NULL in the file.
[[nodiscard]] Cell numberOrNull(std::int64_t number);

} // namespace hammerline::logbook::inside
