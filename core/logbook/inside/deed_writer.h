#pragma once
// Writes one deed: the rows and then, in the same transaction, the entry that covers them. Nothing else in the tree
// writes to a logbook.

#include "logbook/inside/transaction.h"
#include "logbook/inside/version_table.h"
#include "logbook/logbook.h"

#include <functional>
#include <optional>
#include <vector>

namespace hammerline::logbook::inside {

/// Newest version of a thing, withdrawn or not.
[[nodiscard]] std::optional<Row> newestVersion(Database &database, const VersionTable &table,
                                               std::span<const Cell> keys);

/// Gives every row of a deed, in the order of `before`, the same each time it is called.
using RowSource = std::function<void(const std::function<void(const Row &)> &)>;

class DeedWriter {
public:
    /// Waits until nobody else writes: what is read from now on holds until `commit`.
    explicit DeedWriter(Database &database);

    /// A newer version of the thing with these keys; `values` one for one, empty: withdrawn. True where
    /// a version stood before.
    bool add(const VersionTable &table, std::vector<Cell> keys, std::vector<Cell> values);

    /// The entry with its number, on disk. `entry.id` is ignored.
    [[nodiscard]] Deed commit(Deed entry);
    /// The same for more rows than one wants to hold at a time; they are asked for twice, since the entry comes first.
    [[nodiscard]] Deed commit(Deed entry, const RowSource &rows);

    /// For several deeds that are to be there all or none: an entry with its rows, any order; then `commitAll`.
    [[nodiscard]] Deed write(Deed entry, std::vector<Row> rows);
    void commitAll() { m_transaction.commit(); }

private:
    [[nodiscard]] Deed write(Deed entry, const RowSource &rows);
    Database *m_database;
    Transaction m_transaction;
    std::vector<Row> m_rows;
};

} // namespace hammerline::logbook::inside
