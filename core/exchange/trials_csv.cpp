#include "exchange/trials_csv.h"

#include "exchange/csv_text.h"
#include "exchange/inside/csv_header.h"
#include "exchange/inside/csv_rows.h"
#include "units/parse_amount.h"

#include <algorithm>
#include <array>
#include <map>
#include <tuple>

namespace hammerline::exchange {
namespace {

using analysis::Trial;
using outcome::Fault;

constexpr std::array<std::string_view, 4> columnNames{"note", "person", "take", "value"};
/// Columns that the figures of a study's chart have besides.
constexpr std::array<std::string_view, 3> limitNames{"low", "target", "high"};
enum ColumnIndex : std::size_t { noteColumn, personColumn, takeColumn, valueColumn };

constexpr const char *rightHeader = "the columns note,person,take,value would be right";

std::string onOneLine(std::string problem)
{
    std::ranges::replace_if(
        problem, [](char c) { return static_cast<unsigned char>(c) < 0x20; }, ' ');
    return problem;
}

/// Where each of the four stands, and the unit in the heading of the value.
struct TrialsHeader {
    std::array<std::size_t, columnNames.size()> places{};
    units::Unit unit = units::Unit::Millimetre;
};

class TrialsFile {
public:
    TrialsFile(std::string_view text, const TrialsCsvOptions &options) : m_rows(text), m_options(options) {}

    outcome::Outcome<std::vector<Trial>> read()
    {
        if (readHeaderRow())
            while (nextRow())
                if (hasAllFields())
                    readTrial();
        if (m_faults.empty() && m_trials.empty())
            add("the file has no trial; rows of note,person,take,value would be right");
        if (!m_faults.empty())
            return std::move(m_faults);
        return std::move(m_trials);
    }

private:
    /// The next row that holds anything. Rows that break the grammar are told and passed over.
    bool nextRow()
    {
        while (m_rows.next(m_row)) {
            if (m_row.blank() && m_row.broken.empty())
                continue;
            if (isSound())
                return true;
        }
        return false;
    }

    bool isSound()
    {
        if (!std::ranges::all_of(m_row.fields, isCleanUtf8))
            add("the row is not UTF-8 text; saving the file as CSV in UTF-8 would be right");
        else if (!m_row.broken.empty())
            add(std::string(m_row.broken));
        else
            return true;
        return false;
    }

    bool readHeaderRow()
    {
        m_header.unit = m_options.unit;
        if (!nextRow())
            return false;
        const std::size_t before = m_faults.size();
        std::array<int, columnNames.size()> seen{};
        for (std::size_t at = 0; at < m_row.fields.size(); ++at)
            readHeading(m_row.fields[at], at, seen);
        refuseLimits();
        for (std::size_t column = 0; column < seen.size(); ++column)
            if (seen[column] != 1)
                add("column '" + std::string(columnNames[column]) + "' stands " + std::to_string(seen[column]) +
                    " times; " + rightHeader);
        m_width = m_row.fields.size();
        return m_faults.size() == before;
    }

    void readHeading(std::string_view cell, std::size_t at, std::array<int, columnNames.size()> &seen)
    {
        const auto open = cell.find('(');
        const auto name = trimmedCell(cell.substr(0, open));
        if (std::ranges::find(limitNames, name) != limitNames.end())
            return m_limits.push_back(trimmedCell(cell));
        const auto column = std::ranges::find(columnNames, name);
        if (column == columnNames.end())
            return add(quotedCell(name) + " is no column of trials; " + rightHeader);
        const auto index = static_cast<std::size_t>(column - columnNames.begin());
        m_header.places[index] = at;
        ++seen[index];
        if (open != std::string_view::npos)
            readUnit(index, trimmedCell(cell).substr(trimmedCell(cell).find('(') + 1));
    }

    /// All of them at once: they come together, and together they are left out.
    void refuseLimits()
    {
        std::string names;
        for (const std::string_view heading : m_limits)
            names += (names.empty() ? "" : ", ") + quotedCell(heading);
        if (!names.empty())
            add(names + ": limits come with the figures of a study's chart and are no columns of trials; leaving them "
                        "out, or saving the study's trials instead of its chart, would be right");
    }

    /// `rest` is what follows the opening bracket.
    void readUnit(std::size_t column, std::string_view rest)
    {
        if (column != valueColumn || !rest.ends_with(')'))
            return add("only 'value' may carry a unit, such as value (mm)");
        const auto unit = units::parseUnit(rest.substr(0, rest.size() - 1));
        if (!unit)
            return add("column 'value': " + unit.fault().problem);
        m_header.unit = unit.value();
    }

    bool hasAllFields()
    {
        const bool all = m_row.fields.size() == m_width;
        if (!all)
            add("the row has " + std::to_string(m_row.fields.size()) + " fields where the header has " +
                std::to_string(m_width) + "; as many would be right");
        return all;
    }

    [[nodiscard]] std::string_view cell(std::size_t column) const
    {
        return trimmedCell(m_row.fields[m_header.places[column]]);
    }

    void readTrial()
    {
        const std::size_t before = m_faults.size();
        Trial trial;
        if (const auto note = keyboard::parseNote(cell(noteColumn)))
            trial.note = note.value();
        else
            add(note.fault().problem);
        trial.person = plainText(cell(personColumn));
        if (trial.person.empty())
            add("the person is missing; who read the value would be right");
        trial.take = readTake();
        trial.value = readValue();
        if (m_faults.size() == before && isFirst(trial))
            m_trials.push_back(std::move(trial));
    }

    int readTake()
    {
        constexpr std::size_t mostDigits = 6;
        const auto typed = cell(takeColumn);
        const bool digits = std::ranges::all_of(typed, [](char c) { return c >= '0' && c <= '9'; });
        const int take = digits && !typed.empty() && typed.size() <= mostDigits ? std::stoi(std::string(typed)) : 0;
        if (take < 1)
            add("take " + quotedCell(typed) + " is no number of a take; a whole number from 1 would be right");
        return take;
    }

    units::Amount readValue()
    {
        const auto typed = cell(valueColumn);
        const bool grams = m_header.unit == units::Unit::Gram || typed.ends_with('g') || typed.ends_with('G');
        const auto dimension = grams ? units::Dimension::Mass : units::Dimension::Length;
        const auto parsed =
            units::parseAmount(typed, {.dimension = dimension, .bareUnit = m_header.unit, .allowNegative = true});
        if (parsed)
            return parsed.value().value;
        add("value " + parsed.fault().problem);
        return {};
    }

    bool isFirst(const Trial &trial)
    {
        const auto [place, added] = m_seen.try_emplace({trial.note, trial.person, trial.take}, m_row.line);
        if (!added)
            add("note " + trial.note.name() + ", " + quotedCell(trial.person) + ", take " + std::to_string(trial.take) +
                " stands here again, after line " + std::to_string(place->second) + "; once would be right");
        return added;
    }

    void add(const std::string &problem)
    {
        m_faults.push_back({m_options.file, std::max<std::size_t>(m_row.line, 1), onOneLine(problem)});
    }

    CsvRows m_rows;
    const TrialsCsvOptions &m_options;
    CsvRow m_row{};
    TrialsHeader m_header{};
    std::size_t m_width = 0;
    std::vector<std::string_view> m_limits{}; ///< headings of limits, while the header is read
    std::map<std::tuple<keyboard::Note, std::string, int>, std::size_t> m_seen{}; ///< and the line
    std::vector<Trial> m_trials{};
    std::vector<Fault> m_faults{};
};

} // namespace

outcome::Outcome<std::vector<Trial>> readTrialsCsv(std::string_view text, const TrialsCsvOptions &options)
{
    return TrialsFile(text, options).read();
}

std::string writeTrialsCsv(const std::vector<Trial> &trials)
{
    const auto dimension = trials.empty() ? units::Dimension::Length : trials.front().value.dimension();
    std::string text = std::string("note,person,take,value (") + units::displaySymbol(dimension) + ")\n";
    for (const Trial &trial : trials)
        text += trialRow(trial) + '\n';
    return text;
}

std::string trialRow(const Trial &trial)
{
    return trial.note.name() + ',' + csvText(trial.person) + ',' + std::to_string(trial.take) + ',' +
           units::exactDecimal(trial.value);
}

} // namespace hammerline::exchange
