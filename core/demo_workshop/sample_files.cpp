#include "demo_workshop/sample_files.h"

#include "demo_workshop/inside/dice.h"

#include <algorithm>
#include <cctype>
#include <map>

namespace hammerline::demo_workshop {
namespace {

using catalogue::Quantity;
using readings::Reading;

/// "Tamsel & Rook 118" -> "tamsel-rook-118".
std::string fileStem(const std::string &name)
{
    std::string stem;
    for (const char character : name) {
        if (std::isalnum(static_cast<unsigned char>(character)) != 0)
            stem += static_cast<char>(std::tolower(static_cast<unsigned char>(character)));
        else if (!stem.empty() && stem.back() != '-')
            stem += '-';
    }
    return stem;
}

std::string quoted(const std::string &cell)
{
    if (cell.find_first_of(",\"\r\n") == std::string::npos)
        return cell;
    std::string text = "\"";
    for (const char character : cell)
        text += character == '"' ? std::string("\"\"") : std::string(1, character);
    return text + "\"";
}

std::string unitFor(Quantity quantity, const readings::Pass &pass)
{
    return catalogue::infoOf(quantity).dimension == units::Dimension::Mass ? "g" : units::symbolOf(pass.unit);
}

std::string wideText(const MadePass &made)
{
    std::map<Quantity, bool> columns;
    std::map<keyboard::Note, std::map<Quantity, std::string>> rows;
    for (const Reading &reading : made.readings) {
        columns[reading.place.quantity] = true;
        rows[reading.place.note][reading.place.quantity] = reading.typed;
    }
    std::string text = "note";
    for (const auto &[quantity, used] : columns)
        text += "," + std::string(catalogue::idOf(quantity)) + " (" + unitFor(quantity, made.pass) + ")";
    text += '\n';
    for (const auto &[note, cells] : rows) {
        text += note.name();
        for (const auto &[quantity, used] : columns)
            text += "," + (cells.contains(quantity) ? quoted(cells.at(quantity)) : std::string());
        text += '\n';
    }
    return text;
}

std::string longText(const MadePass &made)
{
    std::string text = "note,quantity,value,unit,take,remark\n";
    for (const Reading &reading : made.readings)
        text += reading.place.note.name() + "," + std::string(catalogue::idOf(reading.place.quantity)) + "," +
                quoted(reading.typed) + "," + unitFor(reading.place.quantity, made.pass) + "," +
                std::to_string(reading.place.take) + "," + quoted(reading.remark) + "\n";
    return text;
}

bool needsLongForm(const MadePass &made)
{
    return std::ranges::any_of(
        made.readings, [](const Reading &reading) { return reading.place.take > 1 || !reading.remark.empty(); });
}

} // namespace

std::vector<SampleFile> readingFiles(const Workshop &workshop)
{
    std::vector<SampleFile> files;
    for (const MadeInstrument &made : workshop.instruments)
        for (const MadePass &pass : made.passes)
            files.push_back({.name = "readings/" + fileStem(made.instrument.name) + "-" +
                                     std::string(readings::idOf(pass.pass.purpose)) + ".csv",
                             .text = needsLongForm(pass) ? longText(pass) : wideText(pass)});
    return files;
}

std::vector<analysis::Trial> trials(std::uint64_t seed)
{
    constexpr std::int64_t step = 10'000; // nanometres
    Dice dice(seed, "trials");
    const std::map<std::string, double> people{{"Ada Sample", 0.0}, {"Ben Example", 0.06}, {"Cleo Invented", -0.03}};
    std::vector<analysis::Trial> made;
    for (int number = 4; number <= 85; number += 9) {
        const double truth = 2.4 - 0.01 * number + dice.normal(0.25);
        for (const auto &[person, bias] : people)
            for (int take = 1; take <= 3; ++take) {
                const auto read = units::Length::millimetres(truth + bias + dice.normal(0.04));
                const auto steps = units::roundedQuotient(read.inNanometres(), step);
                made.push_back({keyboard::Note(number), person, take, units::Length::nanometres(steps * step)});
            }
    }
    return made;
}

SampleFile trialFile(std::uint64_t seed)
{
    std::string text = "note,person,take,value\n";
    for (const analysis::Trial &trial : trials(seed))
        text += trial.note.name() + "," + trial.person + "," + std::to_string(trial.take) + "," +
                units::fixedDecimal(trial.value, units::Unit::Millimetre, 2) + "\n";
    return {.name = "trials/let-off-gauge.csv", .text = text};
}

} // namespace hammerline::demo_workshop
