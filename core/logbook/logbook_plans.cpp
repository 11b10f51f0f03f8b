#include "logbook/inside/broken.h"
#include "logbook/inside/store.h"

namespace hammerline::logbook {

using inside::actionSetupTable;
using inside::keptPlanTable;
using inside::workDoneTable;

std::optional<std::string> Logbook::keptPlan(readings::PassId pass) const
{
    const inside::Use query = m_inside->database.use(keptPlanTable().standingSql());
    query->bind(1, pass);
    return query->step() ? std::optional(query->text(2)) : std::nullopt;
}

void Logbook::keepPlan(readings::PassId pass, const std::string &inputs, const Stamp &stamp)
{
    auto writer = m_inside->writer();
    const auto instrument = m_inside->requirePass(pass);
    writer.add(keptPlanTable(), {pass}, {inputs});
    static_cast<void>(writer.commit({.stamp = stamp, .name = "plan-kept", .instrument = instrument, .pass = pass}));
}

std::vector<WorkDone> Logbook::workDone(readings::PassId pass) const
{
    const inside::Use query = m_inside->database.use(workDoneTable().standingSql());
    query->bind(1, pass);
    std::vector<WorkDone> found;
    while (query->step())
        found.push_back({.item = query->text(1),
                         .took = std::chrono::seconds(query->integer(3)),
                         .person = query->text(4),
                         .at = readings::Instant(std::chrono::milliseconds(query->integer(5)))});
    return found;
}

bool Logbook::logWork(readings::PassId pass, const std::string &item, std::chrono::seconds took, const Stamp &stamp)
{
    auto writer = m_inside->writer();
    const auto instrument = m_inside->requirePass(pass);
    const std::int64_t at = stamp.at.time_since_epoch().count();
    for (const WorkDone &done : workDone(pass))
        if (done.item == item)
            return false;
    writer.add(workDoneTable(), {pass, item}, {std::int64_t{took.count()}, stamp.person, at});
    static_cast<void>(writer.commit(
        {.stamp = stamp, .name = "work-logged", .subject = item, .instrument = instrument, .pass = pass}));
    return true;
}

bool Logbook::takeBackWork(readings::PassId pass, const std::string &item, const Stamp &stamp)
{
    auto writer = m_inside->writer();
    const auto instrument = m_inside->requirePass(pass);
    if (!writer.add(workDoneTable(), {pass, item}, {}))
        return false;
    static_cast<void>(writer.commit(
        {.stamp = stamp, .name = "work-taken-back", .subject = item, .instrument = instrument, .pass = pass}));
    return true;
}

std::optional<ActionSetup> Logbook::actionSetup(instrument::InstrumentId instrument) const
{
    const inside::Use query = m_inside->database.use(actionSetupTable().standingSql());
    query->bind(1, instrument);
    return query->step() ? std::optional(ActionSetup{query->text(2), query->text(3)}) : std::nullopt;
}

void Logbook::chooseActionSetup(instrument::InstrumentId instrument, const ActionSetup &chosen, const Stamp &stamp)
{
    auto writer = m_inside->writer();
    if (!m_inside->findInstrument(instrument))
        inside::throwRefused(path(), "there is no instrument " + std::to_string(instrument));
    writer.add(actionSetupTable(), {instrument}, {chosen.setup, chosen.aim});
    static_cast<void>(writer.commit({.stamp = stamp, .name = "setup-chosen", .instrument = instrument}));
}

} // namespace hammerline::logbook
