#include "logbook/inside/broken.h"
#include "logbook/inside/decision_rows.h"
#include "logbook/inside/record_rows.h"
#include "logbook/inside/store.h"

#include <algorithm>

namespace hammerline::logbook {

namespace {

using inside::passTable;
using inside::spotCheckTable;

constexpr std::string_view checksSql = "SELECT DISTINCT p.pass FROM pass AS p JOIN spot_check AS s ON s.pass = p.pass "
                                       "WHERE p.instrument = ?1 ORDER BY p.pass";

} // namespace

readings::Pass Logbook::beginSpotCheck(readings::Pass begun, const decisions::SpotCheck &check, const Stamp &stamp)
{
    auto writer = m_inside->writer();
    if (m_inside->requirePass(check.checked) != begun.instrument)
        inside::throwRefused(path(), "the pass to check is of another instrument");
    begun = m_inside->numbered(std::move(begun));
    writer.add(passTable(), {begun.id}, inside::valuesOf(begun));
    writer.add(spotCheckTable(), {begun.id}, inside::valuesOf(check));
    static_cast<void>(
        writer.commit({.stamp = stamp,
                       .name = "spot-check-begun",
                       .subject = "pass " + std::to_string(check.checked) + ", " + std::to_string(check.notes.size()) +
                                  " notes, seed " + std::to_string(check.seed),
                       .instrument = begun.instrument,
                       .pass = begun.id}));
    return begun;
}

std::optional<decisions::SpotCheck> Logbook::spotCheck(readings::PassId pass) const
{
    const inside::Use query = m_inside->database.use(spotCheckTable().standingSql());
    query->bind(1, pass);
    return query->step() ? std::optional(inside::spotCheckOf(inside::rowOf(spotCheckTable(), *query), path()))
                         : std::nullopt;
}

std::vector<readings::Pass> Logbook::spotChecks(instrument::InstrumentId instrument) const
{
    const inside::Use query = m_inside->database.use(checksSql);
    query->bind(1, instrument);
    std::vector<readings::Pass> found;
    while (query->step())
        if (auto pass = m_inside->findPass(query->integer(0)))
            found.push_back(*std::move(pass));
    std::ranges::stable_sort(found, {}, &readings::Pass::began);
    return found;
}

} // namespace hammerline::logbook
