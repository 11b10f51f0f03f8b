#include "logbook/verify_history.h"

#include "logbook/inside/deed_check.h"
#include "logbook/inside/history.h"
#include "logbook/inside/pictures.h"
#include "logbook/inside/schema.h"
#include "logbook/inside/sha256.h"
#include "logbook/inside/subject_rows.h"
#include "logbook/inside/transaction.h"

#include <algorithm>

namespace hammerline::logbook {

namespace {

using inside::Database;
using inside::SubjectRows;
using inside::VersionTable;

/// True where the tables of the steps stand as they were made, so that it makes sense to read them.
bool checkStructure(Database &database, std::vector<Alteration> &found)
{
    bool readable = true;
    for (const auto &difference : inside::schemaDifferences(database, inside::schemaNumber(database))) {
        found.push_back({0, difference.name, {}, "the " + difference.type + ' ' + difference.what});
        readable = readable && difference.what == "was added";
    }
    return readable;
}

/// What lies on the pages: rows out of order, an index without its row, a text where a number must be.
bool checkPages(Database &database, std::vector<Alteration> &found)
{
    inside::Statement check = database.prepare("PRAGMA integrity_check(20)");
    bool sound = true;
    while (check.step()) {
        if (check.text(0) == "ok")
            continue;
        found.push_back({0, {}, {}, "the file itself is damaged: " + check.text(0)});
        sound = false;
    }
    return sound;
}

/// Rows whose deed is not there, or whose deed is about another instrument or pass.
void findStrayedRows(Database &database, const std::vector<const VersionTable *> &tables,
                     std::vector<Alteration> &found)
{
    for (const VersionTable *table : tables) {
        inside::Statement strayed = database.prepare(table->strayedSql());
        while (strayed.step() && found.size() < mostAlterations)
            found.push_back(
                {strayed.integer(static_cast<int>(table->columns().size())), table->name(),
                 inside::describe(inside::rowOf(*table, strayed)),
                 "belongs to no deed that wrote it: was added or altered, or the deed's entry was removed"});
    }
}

void findImpossibleEntries(Database &database, std::vector<Alteration> &found)
{
    inside::Statement entries = database.prepare("SELECT deed FROM history WHERE deed < 1");
    while (entries.step() && found.size() < mostAlterations)
        found.push_back({entries.integer(0), "history", {}, "the entry was added"});
}

/// SQLite itself keeps the largest number ever given to an entry.
void checkEnd(Database &database, DeedId newest, std::vector<Alteration> &found)
{
    inside::Statement kept = database.prepare("SELECT name, iif(typeof(seq) = 'integer', seq, 0) FROM sqlite_sequence");
    int rows = 0;
    std::int64_t largest = 0;
    while (kept.step()) {
        ++rows;
        if (kept.text(0) == "history")
            largest = kept.integer(1);
    }
    if (largest > newest)
        found.push_back({newest + 1,
                         "history",
                         {},
                         "the end was removed: entries up to " + std::to_string(largest) + " had been written"});
    else if (largest < newest || rows != 1)
        found.push_back({0, "sqlite_sequence", {}, "was altered"});
}

/// Goes along the chain.
class ChainWalk {
public:
    ChainWalk(Database &database, const std::vector<const VersionTable *> &tables, HistoryCheck &check)
        : m_database(&database), m_rows(database, tables), m_check(&check)
    {
    }

    void walk()
    {
        constexpr int atATime = 500;
        while (m_check->alterations.size() < mostAlterations) {
            const auto deeds = inside::deedsAfter(*m_database, m_last, atATime);
            for (const auto &stored : deeds)
                take(stored);
            if (deeds.empty())
                return;
        }
    }
    [[nodiscard]] DeedId last() const { return m_last; }

private:
    void take(const inside::StoredDeed &stored)
    {
        if (stored.deed.id != m_last + 1) {
            reportGap(stored.deed.id);
            m_before = {};
        }
        const auto rows = m_rows.of(stored.deed);
        m_before = inside::checkDeed(stored, rows, m_before, m_check->alterations);
        m_last = stored.deed.id;
        m_check->deeds += 1;
        m_check->rows += std::ssize(rows);
        m_check->newestDigest = inside::hexOf(stored.digest);
    }

    void reportGap(DeedId next)
    {
        const std::string until = next == m_last + 2 ? std::string() : " to " + std::to_string(next - 1);
        m_check->alterations.push_back(
            {m_last + 1, "history", {}, "entry " + std::to_string(m_last + 1) + until + " was removed"});
    }

    Database *m_database;
    SubjectRows m_rows;
    HistoryCheck *m_check;
    inside::DigestsBefore m_before = inside::beforeTheFirst();
    DeedId m_last = 0;
};

void checkRows(Database &database, HistoryCheck &check)
{
    const auto tables = inside::presentTables(database);
    findImpossibleEntries(database, check.alterations);
    findStrayedRows(database, tables, check.alterations);
    ChainWalk chain(database, tables, check);
    chain.walk();
    inside::checkPictures(database, check.alterations);
    if (check.alterations.size() < mostAlterations)
        checkEnd(database, chain.last(), check.alterations);
}

} // namespace

std::string Alteration::text() const
{
    const std::string where = row.empty() ? table : row;
    std::string said = deed == 0 ? std::string() : "deed " + std::to_string(deed);
    if (!where.empty())
        said += (said.empty() ? "" : ", ") + where;
    return said.empty() ? what : said + ": " + what;
}

HistoryCheck verifyHistory(const std::string &path)
{
    Database database(path, Database::Mode::ReadOnly);
    const inside::Transaction reading(database, inside::Locking::Read);
    HistoryCheck check;
    const bool readable = checkStructure(database, check.alterations);
    if (checkPages(database, check.alterations) && readable)
        checkRows(database, check);
    std::ranges::stable_sort(check.alterations, {}, &Alteration::deed);
    if (check.alterations.size() > mostAlterations)
        check.alterations.resize(mostAlterations);
    return check;
}

std::vector<outcome::Fault> historyFaults(const std::string &path)
{
    const HistoryCheck check = verifyHistory(path);
    if (check.whole())
        return {};
    const auto count = check.alterations.size();
    return {{.file = path,
             .problem = "was edited by another program, in " +
                        (count < mostAlterations ? std::to_string(count) : "at least " + std::to_string(count)) +
                        (count == 1 ? " place: " : " places, first: ") + check.alterations.front().text() +
                        "; nobody can vouch for it, so it is neither sealed nor handed over. hammerline verify tells "
                        "all of it; a backup from before would be right"}};
}

} // namespace hammerline::logbook
