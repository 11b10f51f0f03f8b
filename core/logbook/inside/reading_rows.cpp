#include "logbook/inside/reading_rows.h"

#include "logbook/inside/record_rows.h"

#include <cassert>

namespace hammerline::logbook::inside {

std::vector<Cell> keysOf(readings::PassId pass, const readings::Place &place)
{
    return {pass, storedQuantity(place.quantity), std::int64_t{place.note.number()}, std::int64_t{place.take}};
}

std::vector<Cell> valuesOf(const readings::Reading &reading, const Stamp &usual)
{
    assert(reading.value.dimension() == catalogue::infoOf(reading.place.quantity).dimension);
    std::vector<Cell> values(6);
    values[0] = reading.value.baseCount();
    if (reading.typed != units::exactDecimal(reading.value))
        values[1] = reading.typed;
    if (!reading.remark.empty())
        values[2] = reading.remark;
    if (!reading.person.empty() && reading.person != usual.person)
        values[3] = reading.person;
    if (reading.at != readings::Instant{} && reading.at != usual.at)
        values[4] = std::int64_t{reading.at.time_since_epoch().count()};
    return values;
}

Row rowOf(readings::PassId pass, const readings::Reading &reading, const Stamp &usual)
{
    Row row{&readingTable(), keysOf(pass, reading.place)};
    row.cells.reserve(readingTable().columns().size());
    row.cells.emplace_back(std::int64_t{1});
    for (Cell &value : valuesOf(reading, usual))
        row.cells.push_back(std::move(value));
    return row;
}

std::string subjectOf(const readings::Place &place)
{
    const std::string text = std::string(catalogue::idOf(place.quantity)) + ' ' + place.note.name();
    return place.take == 1 ? text : text + " take " + std::to_string(place.take);
}

} // namespace hammerline::logbook::inside
