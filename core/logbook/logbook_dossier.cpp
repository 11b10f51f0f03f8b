#include "dossier/plain_jpeg.h"
#include "logbook/inside/broken.h"
#include "logbook/inside/dossier_rows.h"
#include "logbook/inside/pictures.h"
#include "logbook/inside/store.h"

#include <algorithm>

namespace hammerline::logbook {

namespace {

using dossier::Photograph;
using dossier::WorkEntry;
using inside::conditionTable;
using inside::Database;
using inside::photographTable;
using inside::Row;
using inside::saleTable;
using inside::VersionTable;
using inside::workEntryTable;
using instrument::InstrumentId;

Deed entryOf(InstrumentId instrument, const Stamp &stamp, std::string name, std::string subject)
{
    return {.stamp = stamp, .name = std::move(name), .subject = std::move(subject), .instrument = instrument};
}

/// What stands, by key.
std::vector<Row> standingRows(Database &database, const VersionTable &table, InstrumentId instrument)
{
    const inside::Use query = database.use(table.standingSql());
    query->bind(1, instrument);
    std::vector<Row> rows;
    while (query->step())
        rows.push_back(inside::rowOf(table, *query));
    return rows;
}

/// The deed that first wrote each thing that `firstSql` asks for, by its uid.
std::map<std::string, DeedId> firstDeeds(Database &database, std::string_view firstSql, InstrumentId instrument)
{
    const inside::Use query = database.use(firstSql);
    query->bind(1, instrument);
    std::map<std::string, DeedId> deeds;
    while (query->step())
        deeds[query->text(0)] = query->integer(1);
    return deeds;
}

std::vector<WorkEntry> workOf(Database &database, InstrumentId instrument)
{
    const auto first = firstDeeds(
        database, "SELECT entry, min(deed) FROM work_entry WHERE instrument = ?1 GROUP BY entry", instrument);
    std::vector<WorkEntry> work;
    for (const Row &row : standingRows(database, workEntryTable(), instrument))
        work.push_back(inside::workEntryOf(row, database.path()));
    std::ranges::sort(work, {}, [&](const WorkEntry &entry) { return std::pair(entry.day, first.at(entry.uid)); });
    return work;
}

std::vector<Photograph> photographsOf(Database &database, InstrumentId instrument)
{
    const auto first = firstDeeds(
        database, "SELECT photograph, min(deed) FROM photograph WHERE instrument = ?1 GROUP BY photograph", instrument);
    std::vector<Photograph> photographs;
    for (const Row &row : standingRows(database, photographTable(), instrument))
        photographs.push_back(inside::photographOf(row, database.path()));
    std::ranges::sort(photographs, {}, [&](const Photograph &each) { return first.at(each.uid); });
    return photographs;
}

/// The newest version with this uid, where it stands.
std::optional<Row> standing(Database &database, const VersionTable &table, InstrumentId instrument,
                            const std::string &uid)
{
    const std::vector<inside::Cell> keys{instrument, uid};
    auto row = inside::newestVersion(database, table, keys);
    return row && !row->withdrawn() ? std::move(row) : std::nullopt;
}

outcome::Fault isGone(const char *what)
{
    return {{}, 0, std::string("the ") + what + " is no longer there; somebody has taken it out meanwhile"};
}

} // namespace

instrument::Instrument Logbook::Inside::requireInstrument(InstrumentId id)
{
    auto found = findInstrument(id);
    if (!found)
        inside::throwRefused(database.path(), "there is no instrument " + std::to_string(id));
    return *std::move(found);
}

dossier::Dossier Logbook::dossier(InstrumentId instrument) const
{
    Database &database = m_inside->database;
    dossier::Dossier dossier;
    dossier.work = workOf(database, instrument);
    dossier.photographs = photographsOf(database, instrument);
    for (const Row &row : standingRows(database, conditionTable(), instrument))
        dossier.conditions.insert(inside::conditionOf(row, path()));
    for (const Row &row : standingRows(database, saleTable(), instrument))
        dossier.sale = inside::saleOf(row, path());
    return dossier;
}

outcome::Outcome<WorkEntry> Logbook::addWork(InstrumentId instrument, WorkEntry entry, const Stamp &stamp)
{
    auto writer = m_inside->writer();
    if (auto faults = dossier::faultsOf(entry, m_inside->requireInstrument(instrument).compass); !faults.empty())
        return faults;
    if (entry.uid.empty())
        entry.uid = m_inside->newUid();
    writer.add(workEntryTable(), {instrument, entry.uid}, inside::valuesOf(entry));
    static_cast<void>(writer.commit(entryOf(instrument, stamp, "work-written", entry.what)));
    return entry;
}

outcome::Outcome<bool> Logbook::changeWork(InstrumentId instrument, const WorkEntry &entry, const Stamp &stamp,
                                           const std::string &reason)
{
    auto writer = m_inside->writer();
    if (auto faults = dossier::faultsOf(entry, m_inside->requireInstrument(instrument).compass); !faults.empty())
        return faults;
    if (!standing(m_inside->database, workEntryTable(), instrument, entry.uid))
        return isGone("work");
    writer.add(workEntryTable(), {instrument, entry.uid}, inside::valuesOf(entry));
    Deed deed = entryOf(instrument, stamp, "work-changed", entry.what);
    deed.reason = reason;
    static_cast<void>(writer.commit(std::move(deed)));
    return true;
}

bool Logbook::strikeWork(InstrumentId instrument, const std::string &uid, const Stamp &stamp, const std::string &reason)
{
    auto writer = m_inside->writer();
    const auto row = standing(m_inside->database, workEntryTable(), instrument, uid);
    if (!row)
        return false;
    writer.add(workEntryTable(), {instrument, uid}, {});
    Deed deed = entryOf(instrument, stamp, "work-struck", inside::workEntryOf(*row, path()).what);
    deed.reason = reason;
    static_cast<void>(writer.commit(std::move(deed)));
    return true;
}

bool Logbook::sayCondition(InstrumentId instrument, const dossier::ConditionPlace &place,
                           const dossier::Condition &condition, const Stamp &stamp)
{
    auto writer = m_inside->writer();
    static_cast<void>(m_inside->requireInstrument(instrument));
    const std::vector<inside::Cell> keys{instrument, std::string(dossier::idOf(place.moment)),
                                         std::string(dossier::idOf(place.area))};
    const auto row = inside::newestVersion(m_inside->database, conditionTable(), keys);
    const bool stands = row && !row->withdrawn();
    if (stands ? inside::conditionOf(*row, path()).second == condition : !condition.said())
        return false;
    writer.add(conditionTable(), keys, inside::valuesOf(condition));
    static_cast<void>(
        writer.commit(entryOf(instrument, stamp, "condition-said", std::string(dossier::idOf(place.area)))));
    return true;
}

outcome::Outcome<Photograph> Logbook::addPhotograph(InstrumentId instrument, Photograph photograph,
                                                    std::string_view jpeg, const Stamp &stamp)
{
    const auto size = dossier::sizeOfPicture(jpeg);
    if (!size)
        return size.faults();
    auto writer = m_inside->writer();
    static_cast<void>(m_inside->requireInstrument(instrument));
    photograph.width = size.value().width;
    photograph.height = size.value().height;
    photograph.digest = inside::pictureDigest(jpeg);
    if (photograph.uid.empty())
        photograph.uid = m_inside->newUid();
    inside::keepPicture(m_inside->database, photograph.digest, jpeg);
    writer.add(photographTable(), {instrument, photograph.uid}, inside::valuesOf(photograph));
    static_cast<void>(writer.commit(entryOf(instrument, stamp, "photograph-added", photograph.view)));
    return photograph;
}

outcome::Outcome<bool> Logbook::changePhotograph(InstrumentId instrument, Photograph photograph, const Stamp &stamp)
{
    auto writer = m_inside->writer();
    const auto row = standing(m_inside->database, photographTable(), instrument, photograph.uid);
    if (!row)
        return isGone("photograph");
    const Photograph before = inside::photographOf(*row, path());
    photograph.digest = before.digest;
    photograph.width = before.width;
    photograph.height = before.height;
    writer.add(photographTable(), {instrument, photograph.uid}, inside::valuesOf(photograph));
    static_cast<void>(writer.commit(entryOf(instrument, stamp, "photograph-changed", photograph.view)));
    return true;
}

bool Logbook::removePhotograph(InstrumentId instrument, const std::string &uid, const Stamp &stamp)
{
    auto writer = m_inside->writer();
    const auto row = standing(m_inside->database, photographTable(), instrument, uid);
    if (!row)
        return false;
    writer.add(photographTable(), {instrument, uid}, {});
    static_cast<void>(
        writer.commit(entryOf(instrument, stamp, "photograph-removed", inside::photographOf(*row, path()).view)));
    return true;
}

std::optional<std::string> Logbook::picture(const std::string &digest) const
{
    return inside::findPicture(m_inside->database, digest);
}

void Logbook::noteSale(InstrumentId instrument, const dossier::Sale &sale, const Stamp &stamp)
{
    auto writer = m_inside->writer();
    static_cast<void>(m_inside->requireInstrument(instrument));
    writer.add(saleTable(), {instrument}, inside::valuesOf(sale));
    static_cast<void>(writer.commit(entryOf(instrument, stamp, "sale-noted", {})));
}

} // namespace hammerline::logbook
