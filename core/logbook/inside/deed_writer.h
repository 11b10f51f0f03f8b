#pragma once
// Writes one deed: the entry and, in the same transaction, the rows that it covers. Nothing else in the tree writes to
// a logbook but LongDeed, for rows that are too many to be held; it works in the transaction of a DeedWriter.

#include "logbook/inside/transaction.h"
#include "logbook/inside/version_table.h"
#include "logbook/logbook.h"

#include <optional>
#include <vector>

namespace hammerline::logbook::inside {

/// Newest version of a thing, withdrawn or not.
[[nodiscard]] std::optional<Row> newestVersion(Database &database, const VersionTable &table,
                                               std::span<const Cell> keys);

class DeedWriter {
public:
    /// Waits until nobody else writes: what is read from now on holds until `commit`.
    explicit DeedWriter(Database &database);

    /// A newer version of the thing with these keys; `values` one for one, empty: withdrawn. True where
    /// a version stood before.
    bool add(const VersionTable &table, std::vector<Cell> keys, std::vector<Cell> values);

    /// The entry with its number, on disk. `entry.id` is ignored.
    [[nodiscard]] Deed commit(Deed entry);

    /// For several deeds that are to be there all or none: an entry with its rows, any order; then `commitAll`. The
    /// same ends a LongDeed.
    [[nodiscard]] Deed write(Deed entry, std::vector<Row> rows);
    void commitAll() { m_transaction.commit(); }

private:
    Database *m_database;
    Transaction m_transaction;
    std::vector<Row> m_rows;
};

} // namespace hammerline::logbook::inside
