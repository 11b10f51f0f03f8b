#pragma once
// A deed of more rows than one wants to hold at a time. Its entry is written first, without proof, since rows refer to
// it; then the rows as they come; and at last digest and marks into the entry's row, all in the transaction that the
// caller has open: nobody ever sees the entry without them. Entry, rows, digest and marks are the same as DeedWriter
// makes of the same rows, whatever batches they came in.

#include "logbook/inside/deed_digest.h"
#include "logbook/inside/row_inserts.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace hammerline::logbook::inside {

class LongDeed {
public:
    /// `entry.id` is ignored.
    LongDeed(Database &database, Deed entry);

    /// In the order of `before`. All rows are of the same instrument, pass or study.
    void add(const Row &row);
    /// From here on rows may stand before those that came; they are of the same table.
    void startBatch();
    /// The last thing to do before the transaction is committed. Rows of one batch are digested on their way into their
    /// tables; those of several are read again from there, in their order.
    void prove();

private:
    void proveAgain();
    void digestAgain(DeedDigest &digest, Blob &marks);

    Database *m_database;
    Deed m_entry;
    std::string m_previous;               ///< digest of the deed before
    std::optional<DeedDigest> m_digest{}; ///< absent: rows did not come in their order
    RowInserts m_inserts;
    std::vector<const VersionTable *> m_tables{}; ///< those that were written to
    Cell m_scope{};
    std::int64_t m_count = 0;
};

} // namespace hammerline::logbook::inside
