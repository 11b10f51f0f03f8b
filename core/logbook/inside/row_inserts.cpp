#include "logbook/inside/row_inserts.h"

namespace hammerline::logbook::inside {

void RowInserts::add(const Row &row)
{
    if (row.table != m_table) {
        m_insert.emplace(m_database->use(row.table->insertSql()));
        m_table = row.table;
    }
    Statement &insert = **m_insert;
    bindAll(insert, row.cells);
    insert.bind(static_cast<int>(row.cells.size()) + 1, m_deed);
    insert.run();
    insert.again();
}

void bindAll(Statement &statement, std::span<const Cell> cells)
{
    int parameter = 0;
    for (const Cell &cell : cells)
        statement.bindCell(++parameter, cell);
}

} // namespace hammerline::logbook::inside
