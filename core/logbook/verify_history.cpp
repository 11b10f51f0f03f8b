#include "logbook/verify_history.h"

#include "logbook/inside/deed_check.h"
#include "logbook/inside/file_check.h"
#include "logbook/inside/history.h"
#include "logbook/inside/pictures.h"
#include "logbook/inside/sha256.h"
#include "logbook/inside/subject_rows.h"
#include "logbook/inside/transaction.h"

#include <algorithm>

namespace hammerline::logbook {

namespace {

using inside::Database;
using inside::SubjectRows;
using inside::VersionTable;

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
            found.push_back(inside::strayed(strayed.integer(static_cast<int>(table->columns().size())),
                                            inside::rowOf(*table, strayed)));
    }
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
            m_check->alterations.push_back(inside::gap(m_last + 1, stored.deed.id - 1));
            m_before = {};
        }
        const auto rows = m_rows.of(stored.deed);
        m_before = inside::checkDeed(stored, rows, m_before, m_check->alterations);
        m_last = stored.deed.id;
        m_check->deeds += 1;
        m_check->rows += std::ssize(rows);
        m_check->newestDigest = inside::hexOf(stored.digest);
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
    findStrayedRows(database, tables, check.alterations);
    ChainWalk chain(database, tables, check);
    chain.walk();
    inside::checkPictures(database, check.alterations);
    if (check.alterations.size() < mostAlterations)
        inside::checkNumbering(database, chain.last(), check.alterations);
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
    const bool readable = inside::checkStructure(database, check.alterations);
    if (checkPages(database, check.alterations) && readable)
        checkRows(database, check);
    std::ranges::stable_sort(check.alterations, {}, &Alteration::deed);
    if (check.alterations.size() > mostAlterations)
        check.alterations.resize(mostAlterations);
    return check;
}

} // namespace hammerline::logbook
