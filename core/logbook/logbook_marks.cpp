#include "logbook/inside/reading_rows.h"
#include "logbook/inside/record_rows.h"
#include "logbook/inside/store.h"

namespace hammerline::logbook {

namespace {

using inside::Cell;
using inside::faultMarkTable;
using inside::passToleranceTable;

std::vector<Cell> keysOf(readings::PassId pass, const FaultMark &mark)
{
    return {pass, std::int64_t{mark.note.number()}, mark.fault};
}

Deed entryOf(readings::PassId pass, const FaultMark &mark, const Stamp &stamp, const std::string &reason)
{
    return {.stamp = stamp, .subject = mark.fault + ' ' + mark.note.name(), .reason = reason, .pass = pass};
}

} // namespace

std::vector<FaultMark> Logbook::faultMarks(readings::PassId pass) const
{
    const inside::Use query = m_inside->database.use(faultMarkTable().standingSql());
    query->bind(1, pass);
    std::vector<FaultMark> found;
    while (query->step())
        found.push_back({inside::noteOf(query->integer(1), path()), query->text(2)});
    return found;
}

bool Logbook::markFault(readings::PassId pass, const FaultMark &mark, const Stamp &stamp, const std::string &reason)
{
    auto writer = m_inside->writer();
    Deed entry = entryOf(pass, mark, stamp, reason);
    entry.name = "fault-marked";
    entry.instrument = m_inside->requireOpen(pass);
    if (writer.add(faultMarkTable(), keysOf(pass, mark), {std::int64_t{1}}))
        return false;
    static_cast<void>(writer.commit(std::move(entry)));
    return true;
}

bool Logbook::clearFault(readings::PassId pass, const FaultMark &mark, const Stamp &stamp, const std::string &reason)
{
    auto writer = m_inside->writer();
    Deed entry = entryOf(pass, mark, stamp, reason);
    entry.name = "fault-cleared";
    entry.instrument = m_inside->requireOpen(pass);
    if (!writer.add(faultMarkTable(), keysOf(pass, mark), {}))
        return false;
    static_cast<void>(writer.commit(std::move(entry)));
    return true;
}

std::optional<PassTolerance> Logbook::tolerance(readings::PassId pass) const
{
    const inside::Use query = m_inside->database.use(passToleranceTable().standingSql());
    query->bind(1, pass);
    return query->step() ? std::optional(PassTolerance{query->text(2), query->text(3)}) : std::nullopt;
}

void Logbook::rememberTolerance(readings::PassId pass, const PassTolerance &tolerance, const Stamp &stamp)
{
    auto writer = m_inside->writer();
    const auto instrument = m_inside->requireOpen(pass);
    writer.add(passToleranceTable(), {pass}, {tolerance.id, tolerance.text});
    static_cast<void>(writer.commit({.stamp = stamp,
                                     .name = "tolerance-remembered",
                                     .subject = tolerance.id,
                                     .instrument = instrument,
                                     .pass = pass}));
}

std::optional<PassRoute> Logbook::route(readings::PassId pass) const
{
    const inside::Use query = m_inside->database.use(inside::passRouteTable().standingSql());
    query->bind(1, pass);
    return query->step() ? std::optional(PassRoute{query->text(2), query->text(3)}) : std::nullopt;
}

void Logbook::chooseRoute(readings::PassId pass, const PassRoute &route, const Stamp &stamp)
{
    auto writer = m_inside->writer();
    const auto instrument = m_inside->requirePass(pass);
    writer.add(inside::passRouteTable(), {pass}, {route.route, route.typing});
    static_cast<void>(writer.commit({.stamp = stamp, .name = "route-chosen", .instrument = instrument, .pass = pass}));
}

std::vector<ConfirmedSlip> Logbook::confirmedSlips(readings::PassId pass) const
{
    const inside::Use query = m_inside->database.use(inside::confirmedSlipTable().standingSql());
    query->bind(1, pass);
    std::vector<ConfirmedSlip> found;
    while (query->step()) {
        const auto quantity = inside::quantityOf(query->integer(1), path());
        const auto dimension = catalogue::infoOf(quantity).dimension;
        found.push_back({{quantity, inside::noteOf(query->integer(2), path()), static_cast<int>(query->integer(3))},
                         units::Amount(dimension, query->integer(5)),
                         query->text(6)});
    }
    return found;
}

void Logbook::confirmSlip(readings::PassId pass, const ConfirmedSlip &slip, const Stamp &stamp)
{
    auto writer = m_inside->writer();
    const auto instrument = m_inside->requireOpen(pass);
    const readings::Place &place = slip.place;
    const std::string subject = inside::subjectOf(place);
    writer.add(inside::confirmedSlipTable(), inside::keysOf(pass, place), {slip.value.baseCount(), slip.suspicion});
    static_cast<void>(writer.commit(
        {.stamp = stamp, .name = "slip-confirmed", .subject = subject, .instrument = instrument, .pass = pass}));
}

} // namespace hammerline::logbook
