#include "logbook/inside/store.h"

#include "logbook/inside/broken.h"
#include "logbook/inside/record_rows.h"

namespace hammerline::logbook {

inside::DeedWriter Logbook::Inside::writer()
{
    if (access == Access::ReadOnly)
        inside::throwRefused(database.path(), "the logbook was opened for reading only. Open it for writing to enter");
    return inside::DeedWriter(database);
}

std::optional<readings::Pass> Logbook::Inside::findPass(readings::PassId id)
{
    const inside::Cell key = id;
    const auto row = inside::newestVersion(database, inside::passTable(), {&key, 1});
    return row && !row->withdrawn() ? std::optional(inside::passOf(*row, database.path())) : std::nullopt;
}

std::optional<instrument::Instrument> Logbook::Inside::findInstrument(instrument::InstrumentId id)
{
    const inside::Cell key = id;
    const auto row = inside::newestVersion(database, inside::instrumentTable(), {&key, 1});
    return row && !row->withdrawn() ? std::optional(inside::instrumentOf(*row, database.path())) : std::nullopt;
}

instrument::InstrumentId Logbook::Inside::requirePass(readings::PassId id)
{
    const inside::Use query = database.use("SELECT instrument FROM pass WHERE pass = ?1 ORDER BY version DESC LIMIT 1");
    query->bind(1, id);
    if (!query->step() || query->isNull(0))
        inside::throwRefused(database.path(), "there is no pass " + std::to_string(id));
    return query->integer(0);
}

std::int64_t Logbook::Inside::nextId(std::string_view newestSql)
{
    const inside::Use query = database.use(newestSql);
    return query->step() ? query->integer(0) + 1 : 1;
}

std::string Logbook::Inside::newUid()
{
    const inside::Use query = database.use("SELECT lower(hex(randomblob(16)))");
    query->step();
    return query->text(0);
}

} // namespace hammerline::logbook
