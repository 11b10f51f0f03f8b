#include "logbook/inside/deed_writer.h"

#include "logbook/inside/deed_digest.h"
#include "logbook/inside/history.h"

#include <algorithm>

namespace hammerline::logbook::inside {

namespace {

void bindAll(Statement &statement, std::span<const Cell> cells)
{
    int parameter = 0;
    for (const Cell &cell : cells)
        statement.bindCell(++parameter, cell);
}

/// Inserts the rows of one deed. Rows of one table stand together, so its statement is looked up once for all of them.
class RowInserts {
public:
    RowInserts(Database &database, DeedId deed) : m_database(&database), m_deed(deed) {}

    void add(const Row &row)
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

private:
    Database *m_database;
    DeedId m_deed;
    const VersionTable *m_table = nullptr;
    std::optional<Use> m_insert{};
};

std::string digestBefore(Database &database, DeedId newest)
{
    const auto before = findDeed(database, newest);
    return before ? before->digest : std::string(digestSize, '\0');
}

} // namespace

std::optional<Row> newestVersion(Database &database, const VersionTable &table, std::span<const Cell> keys)
{
    const Use query = database.use(table.newestSql());
    bindAll(*query, keys);
    return query->step() ? std::optional(rowOf(table, *query)) : std::nullopt;
}

DeedWriter::DeedWriter(Database &database) : m_database(&database), m_transaction(database) {}

bool DeedWriter::add(const VersionTable &table, std::vector<Cell> keys, std::vector<Cell> values)
{
    const auto newest = newestVersion(*m_database, table, keys);
    Row row{&table, std::move(keys)};
    row.cells.emplace_back(newest ? newest->version() + 1 : std::int64_t{1});
    row.cells.insert(row.cells.end(), std::make_move_iterator(values.begin()), std::make_move_iterator(values.end()));
    row.cells.resize(table.columns().size());
    m_rows.push_back(std::move(row));
    return newest && !newest->withdrawn();
}

Deed DeedWriter::commit(Deed entry)
{
    std::ranges::sort(m_rows, before);
    return commit(std::move(entry), [this](const auto &take) { std::ranges::for_each(m_rows, take); });
}

Deed DeedWriter::commit(Deed entry, const RowSource &rows)
{
    entry = write(std::move(entry), rows);
    m_transaction.commit();
    return entry;
}

Deed DeedWriter::write(Deed entry, std::vector<Row> rows)
{
    std::ranges::sort(rows, before);
    return write(std::move(entry), RowSource([&](const auto &take) { std::ranges::for_each(rows, take); }));
}

Deed DeedWriter::write(Deed entry, const RowSource &rows)
{
    const DeedId newest = newestDeedId(*m_database);
    entry.id = newest + 1;
    DeedDigest digest(entry, digestBefore(*m_database, newest));
    rows([&](const Row &row) { digest.add(row); });
    DeedDigest::Result proof = digest.finish();
    insertDeed(*m_database, {entry, std::move(proof.marks), std::move(proof.digest)});
    RowInserts inserts(*m_database, entry.id);
    rows([&](const Row &row) { inserts.add(row); });
    return entry;
}

} // namespace hammerline::logbook::inside
