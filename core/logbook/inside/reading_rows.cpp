#include "logbook/inside/reading_rows.h"

#include "logbook/inside/record_rows.h"

#include <cassert>
#include <span>

namespace hammerline::logbook::inside {

namespace {

constexpr std::size_t valueCount = 6; // value, typed, remark, person, at, origin

void setText(Cell &cell, std::string_view text, bool told)
{
    if (told)
        cell.emplace<std::string>(text);
    else
        cell = {};
}

void fillValues(std::span<Cell> values, const readings::Reading &reading, const Stamp &usual)
{
    assert(reading.value.dimension() == catalogue::infoOf(reading.place.quantity).dimension);
    values[0] = reading.value.baseCount();
    setText(values[1], reading.typed, reading.typed != units::exactDecimal(reading.value));
    setText(values[2], reading.remark, !reading.remark.empty());
    setText(values[3], reading.person, !reading.person.empty() && reading.person != usual.person);
    values[4] = {};
    if (reading.at != readings::Instant{} && reading.at != usual.at)
        values[4] = std::int64_t{reading.at.time_since_epoch().count()};
    values[5] = {};
}

} // namespace

std::vector<Cell> keysOf(readings::PassId pass, const readings::Place &place)
{
    return {pass, storedQuantity(place.quantity), std::int64_t{place.note.number()}, std::int64_t{place.take}};
}

std::vector<Cell> valuesOf(const readings::Reading &reading, const Stamp &usual)
{
    std::vector<Cell> values(valueCount);
    fillValues(values, reading, usual);
    return values;
}

void fillRow(Row &row, readings::PassId pass, const readings::Reading &reading, const Stamp &usual)
{
    constexpr std::size_t keyCount = 4;
    row.table = &readingTable();
    row.cells.resize(keyCount + 1 + valueCount);
    row.cells[0] = pass;
    row.cells[1] = storedQuantity(reading.place.quantity);
    row.cells[2] = std::int64_t{reading.place.note.number()};
    row.cells[3] = std::int64_t{reading.place.take};
    row.cells[keyCount] = std::int64_t{1};
    fillValues(std::span(row.cells).subspan(keyCount + 1), reading, usual);
}

std::string subjectOf(const readings::Place &place)
{
    const std::string text = std::string(catalogue::idOf(place.quantity)) + ' ' + place.note.name();
    return place.take == 1 ? text : text + " take " + std::to_string(place.take);
}

} // namespace hammerline::logbook::inside
