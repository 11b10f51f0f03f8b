#include "logbook/inside/subject_rows.h"

#include <algorithm>

namespace hammerline::logbook::inside {

namespace {

constexpr std::size_t mostKept = 16;

} // namespace

std::vector<const VersionTable *> presentTables(Database &database)
{
    std::vector<const VersionTable *> present;
    for (const VersionTable *table : versionTables()) {
        const Use query = database.use("SELECT 1 FROM sqlite_schema WHERE type = 'table' AND name = ?1");
        query->bind(1, table->name());
        if (query->step())
            present.push_back(table);
    }
    return present;
}

SubjectRows::SubjectRows(Database &database, std::vector<const VersionTable *> tables)
    : m_database(&database), m_tables(std::move(tables))
{
}

std::vector<Row> SubjectRows::of(const Deed &deed)
{
    std::vector<Row> rows;
    for (const Subject subject : {Subject{Scope::Instrument, deed.instrument}, Subject{Scope::Pass, deed.pass}}) {
        if (subject.id == 0)
            continue;
        const ByDeed &byDeed = ofSubject(subject);
        if (const auto found = byDeed.find(deed.id); found != byDeed.end())
            rows.insert(rows.end(), found->second.begin(), found->second.end());
    }
    if (deed.instrument == 0 && deed.pass == 0)
        addStudyRows(deed.id, rows);
    std::ranges::sort(rows, before);
    return rows;
}

void SubjectRows::addStudyRows(DeedId deed, std::vector<Row> &rows)
{
    for (const VersionTable *table : m_tables) {
        if (table->scope() != Scope::Study)
            continue;
        const Use query = m_database->use(table->byDeedSql());
        query->bind(1, deed);
        while (query->step())
            rows.push_back(rowOf(*table, *query));
    }
}

const SubjectRows::ByDeed &SubjectRows::ofSubject(const Subject &subject)
{
    const auto kept = m_kept.find(subject);
    if (kept != m_kept.end())
        return kept->second;
    if (m_kept.size() >= mostKept)
        m_kept.clear();
    ByDeed &byDeed = m_kept[subject];
    for (const VersionTable *table : m_tables) {
        if (table->scope() != subject.scope)
            continue;
        const Use query = m_database->use(table->ofScopeSql());
        query->bind(1, subject.id);
        while (query->step())
            byDeed[query->integer(static_cast<int>(table->columns().size()))].push_back(rowOf(*table, *query));
    }
    return byDeed;
}

} // namespace hammerline::logbook::inside
