#include "logbook/inside/long_deed.h"

#include "logbook/inside/blob.h"
#include "logbook/inside/history.h"

namespace hammerline::logbook::inside {

namespace {

constexpr std::int64_t marksHeld = 16'384;

Deed numbered(Database &database, Deed entry)
{
    entry.id = newestDeedId(database) + 1;
    return entry;
}

} // namespace

LongDeed::LongDeed(Database &database, Deed entry)
    : m_database(&database),
      m_entry(numbered(database, std::move(entry))),
      m_previous(digestBefore(database, m_entry.id)),
      m_inserts(database, m_entry.id)
{
    m_digest.emplace(m_entry, m_previous);
    insertDeed(database, {m_entry, {}, {}});
}

void LongDeed::add(const Row &row)
{
    if (m_tables.empty() || m_tables.back() != row.table)
        m_tables.push_back(row.table);
    m_scope = row.cells.front();
    m_inserts.add(row);
    ++m_count;
    if (m_digest)
        m_digest->add(row);
}

void LongDeed::startBatch()
{
    m_digest.reset();
}

void LongDeed::prove()
{
    if (!m_digest) {
        proveAgain();
        return;
    }
    const DeedDigest::Result proof = m_digest->finish();
    proveDeed(*m_database, m_entry.id, proof.marks, proof.digest);
}

void LongDeed::proveAgain()
{
    makeRoomForProof(*m_database, m_entry.id, m_count * std::int64_t{markSize});
    Blob marks = proofOf(*m_database, m_entry.id, "marks");
    DeedDigest digest(m_entry, m_previous);
    digestAgain(digest, marks);
    const DeedDigest::Result proof = digest.finish();
    marks.write(proof.marks);
    proofOf(*m_database, m_entry.id, "digest").write(proof.digest);
}

void LongDeed::digestAgain(DeedDigest &digest, Blob &marks)
{
    Row row;
    std::int64_t digested = 0;
    for (const VersionTable *table : m_tables) {
        const Use rows = m_database->use(table->ofDeedSql());
        rows->bindCell(1, m_scope).bind(2, m_entry.id);
        while (rows->step()) {
            takeRow(row, *table, *rows);
            digest.add(row);
            if (++digested % marksHeld == 0)
                marks.write(digest.takeMarks());
        }
    }
}

} // namespace hammerline::logbook::inside
