#include "logbook/logbook.h"

#include "logbook/inside/broken.h"
#include "logbook/inside/history.h"
#include "logbook/inside/record_rows.h"
#include "logbook/inside/schema.h"
#include "logbook/inside/sha256.h"
#include "logbook/inside/store.h"

#include <cstdio>
#include <filesystem>
#include <utility>

namespace hammerline::logbook {

namespace {

using inside::Database;
using inside::Locking;
using inside::Transaction;

/// Up to this size a file is looked through when it is opened; beyond, `verifyHistory` is there for it.
constexpr std::uintmax_t mostToLookThrough = 4 * 1024 * 1024;

outcome::Fault isThereAlready(const std::string &path)
{
    return {path, 0, "a file is there already; choose another name"};
}

void fill(Database &database, const Stamp &stamp)
{
    database.run("PRAGMA journal_mode = WAL");
    {
        Transaction transaction(database);
        inside::makeSchema(database);
        transaction.commit();
    }
    static_cast<void>(inside::DeedWriter(database).commit({.stamp = stamp, .name = "logbook-created"}));
}

void requireWhole(Database &database)
{
    std::error_code none;
    const std::uintmax_t size = std::filesystem::file_size(database.path(), none);
    if (none)
        return;
    // SQLite itself takes what is missing of the last page for zeros. Beside an unfinished log a torn last page is what
    // a power cut may leave; the log has it whole.
    const bool torn = size % static_cast<std::uintmax_t>(database.number("PRAGMA page_size")) != 0;
    if (torn && !inside::hasUnfinishedLog(database.path()))
        inside::throwDamaged(database.path(), "its end was cut off");
    if (size > mostToLookThrough)
        return;
    inside::Statement check = database.prepare("PRAGMA quick_check(1)");
    if (check.step() && check.text(0) != "ok")
        inside::throwDamaged(database.path(), check.text(0));
}

} // namespace

outcome::Outcome<Logbook> Logbook::create(const std::string &path, const Stamp &stamp)
{
    if (!inside::claimNewFile(path))
        return isThereAlready(path);
    try {
        Database database(path, Database::Mode::ReadWrite);
        fill(database, stamp);
        database.hold();
        return Logbook(std::make_unique<Inside>(Inside{std::move(database), Access::ReadWrite}));
    } catch (const outcome::BrokenWorld &) {
        inside::removeUnfinished(path);
        throw;
    }
}

Logbook Logbook::open(const std::string &path, Access access)
{
    const bool writing = access == Access::ReadWrite;
    Database database(path, writing ? Database::Mode::ReadWrite : Database::Mode::ReadOnly);
    const int number = inside::schemaNumber(database);
    inside::requireSchema(database, number);
    requireWhole(database);
    if (writing) {
        inside::bringUpToDate(database);
        database.run("PRAGMA journal_mode = WAL");
        database.hold();
    } else if (number < inside::firstReadableStructure) {
        inside::throwRefused(path, "the logbook was made by an older Hammerline; open it once for writing to bring it "
                                   "up to date (a backup is made beside it), then it can be opened for reading only");
    }
    return Logbook(std::make_unique<Inside>(Inside{std::move(database), access}));
}

Logbook::Logbook(std::unique_ptr<Inside> inside) : m_inside(std::move(inside)) {}
Logbook::Logbook(Logbook &&) noexcept = default;
Logbook &Logbook::operator=(Logbook &&) noexcept = default;
Logbook::~Logbook() = default;

const std::string &Logbook::path() const
{
    return m_inside->database.path();
}
Access Logbook::access() const
{
    return m_inside->access;
}

outcome::Outcome<bool> Logbook::copyTo(const std::string &newPath) const
{
    if (!m_inside->database.copyTo(newPath))
        return isThereAlready(newPath);
    return true;
}

DeedId Logbook::newestDeed() const
{
    m_inside->database.requireHold();
    return inside::newestDeedId(m_inside->database);
}

std::vector<Deed> Logbook::deeds(DeedId after, int most) const
{
    return inside::entriesAfter(m_inside->database, after, most);
}

std::optional<Deed> Logbook::deed(DeedId id) const
{
    return inside::findEntry(m_inside->database, id);
}

std::string Logbook::digest(DeedId id) const
{
    return inside::hexOf(inside::digestOf(m_inside->database, id).value_or(std::string()));
}

std::optional<DeedId> Logbook::deedOf(const std::string &digest) const
{
    const inside::Use query =
        m_inside->database.use("SELECT deed FROM history WHERE lower(hex(digest)) = ?1 ORDER BY deed LIMIT 1");
    query->bind(1, digest);
    return query->step() ? std::optional(query->integer(0)) : std::nullopt;
}

} // namespace hammerline::logbook
