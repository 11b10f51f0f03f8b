#include "logbook/inside/broken.h"
#include "logbook/inside/record_rows.h"
#include "logbook/inside/store.h"
#include "logbook/to_review.h"

namespace hammerline::logbook {

using inside::instrumentTable;
using instrument::State;

namespace {

// Every version in the order of the key, the newest of each instrument last: quicker than asking for the newest of each
// one, and what lies behind these columns in a row is not touched.
constexpr std::string_view linesSql =
    "SELECT instrument, uid IS NULL, name, state FROM instrument ORDER BY instrument, version";

State stateOf(const inside::Statement &row, const std::string &path)
{
    const auto state = instrument::findState(row.text(3));
    if (!state)
        inside::throwDamaged(path,
                             "instrument " + std::to_string(row.integer(0)) + ": its state is none that is known");
    return *state;
}

/// Whoever leaves the workshop's hands was signed for.
std::optional<outcome::Fault> leavesUnsigned(const Logbook &book, const instrument::Instrument &before,
                                             const instrument::Instrument &changed)
{
    if (changed.state < State::SignedOff || before.state >= State::SignedOff)
        return std::nullopt;
    const auto newest = newestReadPass(book, changed.id);
    if (newest ? book.refusal(newest->id).has_value() : changed.state == State::Delivered)
        return std::nullopt;
    return outcome::Fault{{},
                          0,
                          "\"" + changed.name + "\" is not signed off: " +
                              (newest ? "its newest pass is open. Sign the pass first" : "it has no readings yet")};
}

} // namespace

std::vector<instrument::Instrument> Logbook::instruments() const
{
    const inside::Use query = m_inside->database.use(instrumentTable().allStandingSql());
    std::vector<instrument::Instrument> found;
    while (query->step())
        found.push_back(inside::instrumentOf(inside::rowOf(instrumentTable(), *query), path()));
    return found;
}

std::vector<InstrumentLine> Logbook::instrumentLines() const
{
    const inside::Use query = m_inside->database.use(linesSql);
    std::vector<InstrumentLine> found;
    while (query->step()) {
        const auto id = query->integer(0);
        if (!found.empty() && found.back().id == id)
            found.pop_back();
        if (query->integer(1) == 0)
            found.push_back({id, query->text(2), stateOf(*query, path())});
    }
    return found;
}

std::optional<instrument::Instrument> Logbook::instrument(instrument::InstrumentId id) const
{
    return m_inside->findInstrument(id);
}

outcome::Outcome<instrument::Instrument> Logbook::addInstrument(instrument::Instrument added, const Stamp &stamp)
{
    if (auto faults = instrument::faultsOf(added); !faults.empty())
        return faults;
    auto writer = m_inside->writer();
    added.id = m_inside->nextId("SELECT max(instrument) FROM instrument");
    if (added.uid.empty())
        added.uid = m_inside->newUid();
    writer.add(instrumentTable(), {added.id}, inside::valuesOf(added));
    static_cast<void>(
        writer.commit({.stamp = stamp, .name = "instrument-added", .subject = added.name, .instrument = added.id}));
    return added;
}

outcome::Outcome<bool> Logbook::changeInstrument(const instrument::Instrument &changed, const Stamp &stamp,
                                                 const std::string &reason)
{
    if (auto faults = instrument::faultsOf(changed); !faults.empty())
        return faults;
    auto writer = m_inside->writer();
    const auto before = m_inside->findInstrument(changed.id);
    if (!before)
        return outcome::Fault{{}, 0, "there is no instrument " + std::to_string(changed.id)};
    if (auto fault = leavesUnsigned(*this, *before, changed))
        return *std::move(fault);
    writer.add(instrumentTable(), {changed.id}, inside::valuesOf(changed));
    static_cast<void>(writer.commit({.stamp = stamp,
                                     .name = "instrument-changed",
                                     .subject = changed.name,
                                     .reason = reason,
                                     .instrument = changed.id}));
    return true;
}

} // namespace hammerline::logbook
