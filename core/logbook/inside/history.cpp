#include "logbook/inside/history.h"

namespace hammerline::logbook::inside {

namespace {

StoredDeed storedDeedOf(const Statement &row)
{
    StoredDeed stored;
    stored.deed.id = row.integer(0);
    stored.deed.stamp = {readings::Instant(std::chrono::milliseconds(row.integer(1))), row.text(2)};
    stored.deed.name = row.text(3);
    stored.deed.subject = row.text(4);
    stored.deed.reason = row.text(5);
    stored.deed.undoes = row.optionalInteger(6);
    stored.deed.instrument = row.optionalInteger(7).value_or(0);
    stored.deed.pass = row.optionalInteger(8).value_or(0);
    stored.marks = row.bytes(9);
    stored.digest = row.bytes(10);
    return stored;
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
