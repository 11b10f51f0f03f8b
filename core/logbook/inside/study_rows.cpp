#include "logbook/inside/study_rows.h"

#include "logbook/inside/broken.h"
#include "logbook/inside/record_rows.h"
#include "logbook/inside/taker.h"

#include <limits>
#include <sstream>

namespace hammerline::logbook::inside {

namespace {

std::string linesOf(const std::vector<std::string> &people)
{
    std::string lines;
    for (const std::string &person : people)
        lines += (lines.empty() ? "" : "\n") + person;
    return lines;
}

std::vector<std::string> peopleOf(const std::string &lines)
{
    std::vector<std::string> people;
    std::istringstream text(lines);
    for (std::string line; std::getline(text, line);)
        people.push_back(line);
    return people;
}

std::string numbersOf(const std::vector<keyboard::Note> &notes)
{
    std::string numbers;
    for (const keyboard::Note note : notes)
        numbers += (numbers.empty() ? "" : " ") + std::to_string(note.number());
    return numbers;
}

std::vector<keyboard::Note> notesOf(const std::string &numbers, const std::string &path)
{
    std::vector<keyboard::Note> notes;
    std::istringstream text(numbers);
    for (std::int64_t number = 0; text >> number;)
        notes.push_back(noteOf(number, path));
    return notes;
}

std::optional<units::Unit> findUnit(const std::string &symbol)
{
    const auto unit = units::parseUnit(symbol);
    return unit ? std::optional(unit.value()) : std::nullopt;
}

Cell cellOf(readings::Instant at)
{
    return std::int64_t{at.time_since_epoch().count()};
}

readings::Instant instantOf(std::int64_t milliseconds)
{
    return readings::Instant(std::chrono::milliseconds(milliseconds));
}

/// A number that fits where it goes; -1 where it does not, which no rule lets pass.
template <typename Number>
Number narrowed(std::int64_t number)
{
    return std::in_range<Number>(number) ? static_cast<Number>(number) : static_cast<Number>(-1);
}

} // namespace

std::vector<Cell> valuesOf(const PlannedStudy &study)
{
    return {study.gauge.name,
            study.gauge.resolution.inNanometres(),
            storedQuantity(study.quantity),
            linesOf(study.plan.people),
            numbersOf(study.plan.notes),
            std::int64_t{study.plan.takes},
            std::int64_t{study.plan.seed},
            std::string(units::symbolOf(study.unit)),
            study.instrument == 0 ? Cell() : Cell(study.instrument),
            study.person,
            cellOf(study.at)};
}

PlannedStudy studyOf(const Row &row, const std::string &path)
{
    Taker take(row, path);
    PlannedStudy study;
    study.id = std::get<std::int64_t>(row.cells[0]);
    study.gauge.name = take.text();
    study.gauge.resolution = take.length();
    study.quantity = quantityOf(take.number(), path);
    study.plan.people = peopleOf(take.text());
    study.plan.notes = notesOf(take.text(), path);
    study.plan.takes = narrowed<int>(take.number());
    study.plan.seed = narrowed<std::uint32_t>(take.number());
    study.unit = take.known(findUnit(take.text()));
    study.instrument = take.maybeNumber().value_or(0);
    study.person = take.text();
    study.at = instantOf(take.number());
    if (!faultsOf(study).empty())
        throwDamaged(path, describe(row) + ": nobody could take such a study");
    return study;
}

std::vector<Cell> keysOf(StudyId study, const analysis::StudyStop &stop)
{
    return {study, std::int64_t{stop.note.number()}, stop.person, std::int64_t{stop.take}};
}

std::vector<Cell> valuesOf(const ReadTrial &trial)
{
    return {trial.value.baseCount(), trial.typed, cellOf(trial.at)};
}

ReadTrial trialOf(const Row &row, units::Dimension dimension, const std::string &path)
{
    ReadTrial trial;
    trial.stop.note = noteOf(std::get<std::int64_t>(row.cells[1]), path);
    trial.stop.person = std::get<std::string>(row.cells[2]);
    trial.stop.take = narrowed<int>(std::get<std::int64_t>(row.cells[3]));
    Taker take(row, path);
    trial.value = units::Amount(dimension, countOf(take.number(), path));
    trial.typed = take.text();
    trial.at = instantOf(take.number());
    return trial;
}

} // namespace hammerline::logbook::inside
