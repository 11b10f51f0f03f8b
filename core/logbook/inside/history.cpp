#include "logbook/inside/history.h"

#include "logbook/inside/deed_digest.h"

namespace hammerline::logbook::inside {

namespace {

Deed deedOf(const Statement &row)
{
    Deed deed;
    deed.id = row.integer(0);
    deed.stamp = {readings::Instant(std::chrono::milliseconds(row.integer(1))), row.text(2)};
    deed.name = row.text(3);
    deed.subject = row.text(4);
    deed.reason = row.text(5);
    deed.undoes = row.optionalInteger(6);
    deed.instrument = row.optionalInteger(7).value_or(0);
    deed.pass = row.optionalInteger(8).value_or(0);
    return deed;
}

StoredDeed storedDeedOf(const Statement &row)
{
    return {deedOf(row), row.bytes(9), row.bytes(10)};
}

} // namespace

Cell numberOrNull(std::int64_t number)
{
    return number == 0 ? Cell() : Cell(number);
}

DeedId newestDeedId(Database &database)
{
    const Use query = database.use("SELECT max(deed) FROM history");
    return query->step() ? query->integer(0) : 0;
}

std::optional<StoredDeed> findDeed(Database &database, DeedId id)
{
    const Use query = database.use("SELECT deed, at, person, name, subject, reason, undoes, instrument, pass, marks, "
                                   "digest FROM history WHERE deed = ?1");
    query->bind(1, id);
    return query->step() ? std::optional(storedDeedOf(*query)) : std::nullopt;
}

std::vector<StoredDeed> deedsAfter(Database &database, DeedId after, int most)
{
    const Use query = database.use("SELECT deed, at, person, name, subject, reason, undoes, instrument, pass, marks, "
                                   "digest FROM history WHERE deed > ?1 ORDER BY deed LIMIT ?2");
    query->bind(1, after).bind(2, std::int64_t{most < 0 ? 0 : most});
    std::vector<StoredDeed> found;
    while (query->step())
        found.push_back(storedDeedOf(*query));
    return found;
}

std::optional<Deed> findEntry(Database &database, DeedId id)
{
    const Use query = database.use("SELECT deed, at, person, name, subject, reason, undoes, instrument, pass "
                                   "FROM history WHERE deed = ?1");
    query->bind(1, id);
    return query->step() ? std::optional(deedOf(*query)) : std::nullopt;
}

std::vector<Deed> entriesAfter(Database &database, DeedId after, int most)
{
    const Use query = database.use("SELECT deed, at, person, name, subject, reason, undoes, instrument, pass "
                                   "FROM history WHERE deed > ?1 ORDER BY deed LIMIT ?2");
    query->bind(1, after).bind(2, std::int64_t{most < 0 ? 0 : most});
    std::vector<Deed> found;
    while (query->step())
        found.push_back(deedOf(*query));
    return found;
}

std::optional<std::string> digestOf(Database &database, DeedId id)
{
    const Use query = database.use("SELECT digest FROM history WHERE deed = ?1");
    query->bind(1, id);
    return query->step() ? std::optional(query->bytes(0)) : std::nullopt;
}

std::string digestBefore(Database &database, DeedId id)
{
    return digestOf(database, id - 1).value_or(std::string(digestSize, '\0'));
}

void proveDeed(Database &database, DeedId id, std::string_view marks, std::string_view digest)
{
    const Use update = database.use("UPDATE history SET marks = ?2, digest = ?3 WHERE deed = ?1");
    update->bind(1, id).bindBytes(2, marks).bindBytes(3, digest);
    update->run();
}

void makeRoomForProof(Database &database, DeedId id, std::int64_t bytesOfMarks)
{
    const Use update = database.use("UPDATE history SET marks = zeroblob(?2), digest = zeroblob(?3) WHERE deed = ?1");
    update->bind(1, id).bind(2, bytesOfMarks).bind(3, std::int64_t{digestSize});
    update->run();
}

Blob proofOf(Database &database, DeedId id, const char *column)
{
    return database.blob("history", column, id);
}

void insertDeed(Database &database, const StoredDeed &stored)
{
    const Deed &deed = stored.deed;
    const Use insert = database.use("INSERT INTO history(deed, at, person, name, subject, reason, undoes, instrument, "
                                    "pass, marks, digest) VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11)");
    insert->bind(1, deed.id).bind(2, std::int64_t{deed.stamp.at.time_since_epoch().count()});
    insert->bind(3, deed.stamp.person).bind(4, deed.name).bind(5, deed.subject).bind(6, deed.reason);
    insert->bindCell(7, deed.undoes ? Cell(*deed.undoes) : Cell());
    insert->bindCell(8, numberOrNull(deed.instrument)).bindCell(9, numberOrNull(deed.pass));
    insert->bindBytes(10, stored.marks).bindBytes(11, stored.digest);
    insert->run();
}

} // namespace hammerline::logbook::inside
