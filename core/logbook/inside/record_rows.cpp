#include "logbook/inside/record_rows.h"

#include "logbook/inside/broken.h"
#include "logbook/inside/taker.h"
#include "units/parse_amount.h"

#include <nlohmann/json.hpp>

#include <cmath>
#include <span>

namespace hammerline::logbook::inside {

namespace {

using catalogue::Quantity;

// Append only.
constexpr Quantity storedQuantities[] = {Quantity::KeyHeight,  Quantity::Blow,     Quantity::LostMotion,
                                         Quantity::LetOff,     Quantity::Drop,     Quantity::Dip,
                                         Quantity::Aftertouch, Quantity::Checking, Quantity::DamperStart,
                                         Quantity::DownWeight, Quantity::UpWeight};

Cell text(std::string_view from)
{
    return std::string(from);
}
Cell number(std::int64_t from)
{
    return from;
}

Cell thousandths(const std::optional<double> &from)
{
    return from ? Cell(static_cast<std::int64_t>(std::llround(*from * 1000))) : Cell();
}

/// Name and notes of a section or kind and notes of a fitting, whatever the member is called.
std::string runsText(const keyboard::Sections &sections)
{
    nlohmann::json runs = nlohmann::json::array();
    for (const auto &section : sections)
        runs.push_back({section.name, section.notes.first.number(), section.notes.last.number()});
    return runs.dump(-1, ' ', false, nlohmann::json::error_handler_t::replace);
}

std::string runsText(const std::vector<instrument::Fitting> &fittings)
{
    keyboard::Sections runs;
    for (const auto &fitting : fittings)
        runs.push_back({fitting.kind, fitting.notes});
    return runsText(runs);
}

std::optional<units::Unit> findUnit(const std::string &symbol)
{
    const auto unit = units::parseUnit(symbol);
    return unit ? std::optional(unit.value()) : std::nullopt;
}

void takeCompass(Taker &take, keyboard::Compass &compass, const Row &row, const std::string &path)
{
    compass.first = take.note();
    compass.last = take.note();
    if (compass.last < compass.first)
        throwDamaged(path, describe(row) + ": its last note lies below its first");
}

} // namespace

std::vector<Cell> valuesOf(const instrument::Instrument &of)
{
    return {text(of.uid),
            text(of.name),
            text(catalogue::idOf(of.action)),
            number(of.compass.first.number()),
            number(of.compass.last.number()),
            runsText(of.sections),
            text(of.maker),
            text(of.model),
            text(of.serial),
            of.year ? number(*of.year) : Cell(),
            of.size ? number(of.size->inNanometres()) : Cell(),
            runsText(of.stringing),
            runsText(of.dampers),
            text(of.condition),
            text(of.owner),
            text(of.remark),
            text(instrument::idOf(of.state)),
            text(of.toleranceId),
            text(of.toleranceText)};
}

std::vector<Cell> valuesOf(const readings::Pass &of)
{
    return {text(of.uid),
            number(of.instrument),
            text(readings::idOf(of.purpose)),
            number(of.began.time_since_epoch().count()),
            text(of.person),
            thousandths(of.climate.celsius),
            thousandths(of.climate.relativeHumidityPercent),
            text(of.gauge.name),
            number(of.gauge.resolution.inNanometres()),
            number(of.gauge.expandedUncertainty.inNanometres()),
            text(readings::idOf(of.dipDatum)),
            text(readings::idOf(of.dropDatum)),
            text(units::symbolOf(of.unit)),
            text(of.remark)};
}

instrument::Instrument instrumentOf(const Row &row, const std::string &path)
{
    Taker take(row, path);
    instrument::Instrument of;
    of.id = std::get<std::int64_t>(row.cells[0]);
    of.uid = take.text();
    of.name = take.text();
    of.action = take.known(catalogue::findAction(take.text()));
    takeCompass(take, of.compass, row, path);
    of.sections = take.runs();
    of.maker = take.text();
    of.model = take.text();
    of.serial = take.text();
    if (const auto year = take.maybeNumber())
        of.year = static_cast<int>(*year);
    if (const auto size = take.maybeNumber())
        of.size = units::Length::nanometres(countOf(*size, path));
    of.stringing = take.fittings();
    of.dampers = take.fittings();
    of.condition = take.text();
    of.owner = take.text();
    of.remark = take.text();
    of.state = take.known(instrument::findState(take.text()));
    of.toleranceId = take.text();
    of.toleranceText = take.text();
    return of;
}

Keyboard keyboardOf(const Row &row, const std::string &path)
{
    Taker take(row, path);
    static_cast<void>(take.text()); // uid
    static_cast<void>(take.text()); // name
    Keyboard of{.instrument = std::get<std::int64_t>(row.cells[0]),
                .action = take.known(catalogue::findAction(take.text()))};
    takeCompass(take, of.compass, row, path);
    of.sections = take.runs();
    return of;
}

readings::Pass passOf(const Row &row, const std::string &path)
{
    Taker take(row, path);
    readings::Pass of;
    of.id = std::get<std::int64_t>(row.cells[0]);
    of.uid = take.text();
    of.instrument = take.number();
    of.purpose = take.known(readings::findPurpose(take.text()));
    of.began = readings::Instant(std::chrono::milliseconds(take.number()));
    of.person = take.text();
    of.climate.celsius = take.thousandths();
    of.climate.relativeHumidityPercent = take.thousandths();
    of.gauge.name = take.text();
    of.gauge.resolution = take.length();
    of.gauge.expandedUncertainty = take.length();
    of.dipDatum = take.known(readings::findDipDatum(take.text()));
    of.dropDatum = take.known(readings::findDropDatum(take.text()));
    of.unit = take.known(findUnit(take.text()));
    of.remark = take.text();
    return of;
}

std::int64_t storedQuantity(Quantity quantity)
{
    // Mostly the number in the file is the place in the enum; the search is for a catalogue that was put in new order.
    const auto usual = static_cast<std::size_t>(quantity);
    if (usual < std::size(storedQuantities) && storedQuantities[usual] == quantity)
        return static_cast<std::int64_t>(usual) + 1;
    return std::ranges::find(storedQuantities, quantity) - std::begin(storedQuantities) + 1;
}

Quantity quantityOf(std::int64_t stored, const std::string &path)
{
    if (stored < 1 || stored > std::ssize(storedQuantities))
        throwDamaged(path, "there is no quantity " + std::to_string(stored));
    return storedQuantities[stored - 1];
}

keyboard::Note noteOf(std::int64_t stored, const std::string &path)
{
    if (stored < keyboard::Note::lowest || stored > keyboard::Note::highest)
        throwDamaged(path, "there is no note " + std::to_string(stored));
    return keyboard::Note(static_cast<int>(stored));
}

std::int64_t countOf(std::int64_t stored, const std::string &path)
{
    constexpr std::int64_t most = 1'000'000'000'000'000; // sums and differences of such counts have room in 64 bits
    if (stored < -most || stored > most)
        throwDamaged(path, "there is no amount " + std::to_string(stored));
    return stored;
}

} // namespace hammerline::logbook::inside
