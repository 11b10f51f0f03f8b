#include "command_line/inside/reading_input.h"

#include "exchange/exchange.h"
#include "units/parse_amount.h"

namespace hammerline::command_line {
namespace {

outcome::Fault named(const std::string &option, const outcome::Fault &fault)
{
    return {.problem = "--" + option + ": " + fault.problem};
}

outcome::Outcome<std::optional<catalogue::ActionKind>> agreedAction(const std::optional<std::string> &given,
                                                                    std::optional<catalogue::ActionKind> known)
{
    if (!given)
        return known;
    const auto action = catalogue::findAction(*given);
    if (!action)
        return outcome::Fault{.problem = "--action: \"" + *given + "\" is no action; write vertical or grand"};
    if (known && *known != *action)
        return outcome::Fault{.problem = "--action: \"" + *given + "\" does not agree with what is known already: " +
                                         std::string(catalogue::idOf(*known)) + "; leave it out or name the other set"};
    return std::optional(*action);
}

outcome::Outcome<keyboard::Note> noteOr(const std::string &option, const std::optional<std::string> &given,
                                        int otherwise)
{
    if (!given)
        return keyboard::Note(otherwise);
    const auto note = keyboard::parseNote(*given);
    return note ? note : named(option, note.fault());
}

} // namespace

outcome::Outcome<units::Unit> parseLengthUnit(const std::optional<std::string> &given)
{
    if (!given || *given == "mm")
        return units::Unit::Millimetre;
    if (*given == "in")
        return units::Unit::Inch;
    return outcome::Fault{.problem = "--unit: \"" + *given + "\" is not known here; write mm or in"};
}

void ReadingInput::declare(Options &options)
{
    options.value("action", "vertical|grand", "The action, where nothing else says it", m_action);
    options.value("unit", "mm|in", "Unit of lengths without one (mm)", m_unit);
    options.value("first", "NOTE", "First note of the instrument, as A0 or 1 (A0)", m_first);
    options.value("last", "NOTE", "Last note of the instrument, as C8 or 88 (C8)", m_last);
}

outcome::Outcome<exchange::CsvReadingOptions>
ReadingInput::csvOptions(std::optional<catalogue::ActionKind> action) const
{
    const auto agreed = agreedAction(m_action, action);
    const auto unit = parseLengthUnit(m_unit);
    const auto first = noteOr("first", m_first, 1);
    const auto last = noteOr("last", m_last, 88);
    std::vector<outcome::Fault> faults;
    const auto collect = [&faults](const auto &part) {
        if (!part)
            faults.insert(faults.end(), part.faults().begin(), part.faults().end());
    };
    collect(agreed);
    collect(unit);
    collect(first);
    collect(last);
    if (first && last && first.value() > last.value())
        faults.push_back({.problem = "--first: " + first.value().name() + " lies above the last note, " +
                                     last.value().name() + "; give the lower one first"});
    if (!faults.empty())
        return faults;
    return exchange::CsvReadingOptions{
        .action = agreed.value(), .compass = {first.value(), last.value()}, .unit = unit.value()};
}

outcome::Outcome<std::vector<readings::Reading>> readReadingsFile(const std::string &file,
                                                                  exchange::CsvReadingOptions options)
{
    const auto text = exchange::readFile(file);
    if (!text)
        return text.faults();
    options.file = file;
    return exchange::readReadingsCsv(text.value(), options);
}

outcome::Outcome<std::unique_ptr<exchange::CsvReadings>> openReadingsFile(const std::string &file,
                                                                          exchange::CsvReadingOptions options)
{
    auto text = exchange::openText(file);
    if (!text)
        return text.faults();
    options.file = file;
    return std::make_unique<exchange::CsvReadings>(std::move(text).value(), options);
}

} // namespace hammerline::command_line
