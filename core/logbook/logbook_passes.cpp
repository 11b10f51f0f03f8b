#include "logbook/inside/broken.h"
#include "logbook/inside/long_deed.h"
#include "logbook/inside/reading_rows.h"
#include "logbook/inside/record_rows.h"
#include "logbook/inside/store.h"

#include <algorithm>
#include <span>

namespace hammerline::logbook {

namespace {

using inside::passTable;

constexpr std::string_view passesSql = "SELECT DISTINCT pass FROM pass WHERE instrument = ?1 AND NOT EXISTS "
                                       "(SELECT 1 FROM spot_check AS s WHERE s.pass = pass.pass) ORDER BY pass";
using readings::Reading;

Deed entryOf(const readings::Pass &pass, const Stamp &stamp, std::string_view name)
{
    return {.stamp = stamp,
            .name = std::string(name),
            .subject = std::string(readings::idOf(pass.purpose)),
            .instrument = pass.instrument,
            .pass = pass.id};
}

/// Quantity, note and take in one number, in the order of the rows.
std::uint64_t orderOf(const readings::Place &place)
{
    return (static_cast<std::uint64_t>(inside::storedQuantity(place.quantity)) << 48) |
           (static_cast<std::uint64_t>(place.note.number() - keyboard::Note::lowest) << 32) |
           static_cast<std::uint32_t>(place.take);
}

/// The readings in the order of their rows.
std::vector<std::pair<std::uint64_t, const Reading *>> inOrder(const std::vector<Reading> &readings)
{
    std::vector<std::pair<std::uint64_t, const Reading *>> order;
    order.reserve(readings.size());
    for (const Reading &reading : readings)
        order.emplace_back(orderOf(reading.place), &reading);
    std::ranges::sort(order);
    return order;
}

void addBatch(inside::LongDeed &deed, const readings::Pass &pass, const std::vector<Reading> &batch)
{
    inside::Row row;
    for (const auto &[place, reading] : inOrder(batch)) {
        inside::fillRow(row, pass.id, *reading, {pass.began, pass.person});
        deed.add(row);
    }
}

/// Gives what is held already.
readings::ReadingSource sourceOf(const std::vector<Reading> &readings)
{
    return [rest = std::span(readings)](std::vector<Reading> &batch) mutable -> outcome::Outcome<bool> {
        const auto next = rest.first(std::min(rest.size(), readings::mostInBatch));
        rest = rest.subspan(next.size());
        batch.assign(next.begin(), next.end());
        return !batch.empty();
    };
}

inside::Row rowOf(const readings::Pass &pass)
{
    inside::Row row{&passTable(), {pass.id, std::int64_t{1}}};
    for (auto &value : inside::valuesOf(pass))
        row.cells.push_back(std::move(value));
    return row;
}

} // namespace

std::vector<readings::Pass> Logbook::passes(instrument::InstrumentId instrument) const
{
    // The newest versions that say they are of the instrument: a pass never moves to another.
    const inside::Use query = m_inside->database.use(passesSql);
    query->bind(1, instrument);
    std::vector<readings::Pass> found;
    while (query->step())
        if (auto pass = m_inside->findPass(query->integer(0)))
            found.push_back(*std::move(pass));
    std::ranges::stable_sort(found, {}, &readings::Pass::began);
    return found;
}

std::optional<readings::Pass> Logbook::pass(readings::PassId id) const
{
    return m_inside->findPass(id);
}

readings::Pass Logbook::Inside::numbered(readings::Pass pass)
{
    if (!findInstrument(pass.instrument))
        inside::throwRefused(database.path(), "there is no instrument " + std::to_string(pass.instrument));
    pass.id = nextId("SELECT max(pass) FROM pass");
    if (pass.uid.empty())
        pass.uid = newUid();
    return pass;
}

readings::Pass Logbook::beginPass(readings::Pass begun, const Stamp &stamp)
{
    auto writer = m_inside->writer();
    begun = m_inside->numbered(std::move(begun));
    writer.add(passTable(), {begun.id}, inside::valuesOf(begun));
    static_cast<void>(writer.commit(entryOf(begun, stamp, "pass-begun")));
    return begun;
}

void Logbook::changePass(const readings::Pass &changed, const Stamp &stamp, const std::string &reason)
{
    auto writer = m_inside->writer();
    if (m_inside->requireOpen(changed.id) != changed.instrument)
        inside::throwRefused(path(), "a pass stays with its instrument");
    writer.add(passTable(), {changed.id}, inside::valuesOf(changed));
    Deed entry = entryOf(changed, stamp, "pass-changed");
    entry.reason = reason;
    static_cast<void>(writer.commit(std::move(entry)));
}

readings::Pass Logbook::importPass(readings::Pass begun, const std::vector<Reading> &readings, const Stamp &stamp)
{
    return importPassFrom(std::move(begun), sourceOf(readings), stamp).value();
}

outcome::Outcome<readings::Pass> Logbook::importPassFrom(readings::Pass begun, const readings::ReadingSource &source,
                                                         const Stamp &stamp)
{
    std::vector<Reading> batch;
    auto more = source(batch); // most files end here, before anybody has to wait for them
    if (!more)
        return more.faults();
    auto writer = m_inside->writer();
    begun = m_inside->numbered(std::move(begun));
    inside::LongDeed deed(m_inside->database, entryOf(begun, stamp, "pass-imported"));
    deed.add(rowOf(begun));
    while (more.value()) {
        addBatch(deed, begun, batch);
        more = source(batch);
        if (!more)
            return more.faults();
        if (more.value())
            deed.startBatch();
    }
    deed.prove();
    writer.commitAll();
    return begun;
}

} // namespace hammerline::logbook
