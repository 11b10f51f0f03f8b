#pragma once
// Rows on their way into their tables.

#include "logbook/inside/database.h"
#include "logbook/inside/version_table.h"
#include "logbook/logbook.h"

#include <optional>

namespace hammerline::logbook::inside {

/// Inserts the rows of one deed. Rows of one table stand together, so its statement is looked up once for all of them.
class RowInserts {
public:
    RowInserts(Database &database, DeedId deed) : m_database(&database), m_deed(deed) {}

    void add(const Row &row);

private:
    Database *m_database;
    DeedId m_deed;
    const VersionTable *m_table = nullptr;
    std::optional<Use> m_insert{};
};

/// Binds the first parameters, from 1 on.
void bindAll(Statement &statement, std::span<const Cell> cells);

} // namespace hammerline::logbook::inside
