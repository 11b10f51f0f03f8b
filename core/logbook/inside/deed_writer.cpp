#include "logbook/inside/deed_writer.h"

#include "logbook/inside/deed_digest.h"
#include "logbook/inside/history.h"
#include "logbook/inside/row_inserts.h"

#include <algorithm>

namespace hammerline::logbook::inside {

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
    entry = write(std::move(entry), std::exchange(m_rows, {}));
    m_transaction.commit();
    return entry;
}

Deed DeedWriter::write(Deed entry, std::vector<Row> rows)
{
    std::ranges::sort(rows, before);
    entry.id = newestDeedId(*m_database) + 1;
    DeedDigest digest(entry, digestBefore(*m_database, entry.id));
    for (const Row &row : rows)
        digest.add(row);
    DeedDigest::Result proof = digest.finish();
    insertDeed(*m_database, {entry, std::move(proof.marks), std::move(proof.digest)});
    RowInserts inserts(*m_database, entry.id);
    for (const Row &row : rows)
        inserts.add(row);
    return entry;
}

} // namespace hammerline::logbook::inside
