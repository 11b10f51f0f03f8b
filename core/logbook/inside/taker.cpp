#include "logbook/inside/taker.h"

#include "logbook/inside/broken.h"
#include "logbook/inside/record_rows.h"
#include "strict_json/strict_json.h"

namespace hammerline::logbook::inside {

Taker::Taker(const Row &row, const std::string &path)
    : m_row(&row), m_values(std::span(row.cells).subspan(row.table->firstValue())), m_path(&path)
{
}

std::string Taker::text()
{
    const auto *text = std::get_if<std::string>(&m_values[m_next++]);
    return text == nullptr ? std::string() : *text;
}

std::optional<std::int64_t> Taker::maybeNumber()
{
    const auto *number = std::get_if<std::int64_t>(&m_values[m_next++]);
    return number == nullptr ? std::nullopt : std::optional(*number);
}

std::optional<double> Taker::thousandths()
{
    const auto number = maybeNumber();
    return number ? std::optional(static_cast<double>(*number) / 1000) : std::nullopt;
}

keyboard::Note Taker::note()
{
    return noteOf(number(), *m_path);
}

std::optional<keyboard::Note> Taker::maybeNote()
{
    const auto stored = maybeNumber();
    return stored ? std::optional(noteOf(*stored, *m_path)) : std::nullopt;
}

units::Length Taker::length()
{
    return units::Length::nanometres(countOf(number(), *m_path));
}

keyboard::Sections Taker::runs()
{
    const std::string stored = text();
    if (stored.empty())
        return {};
    constexpr strict_json::Bounds bounds{.depth = 2, .kinds = strict_json::Kinds::TextsAndWholeNumbers};
    const auto json = strict_json::read(stored, bounds, [](const auto &) { return outcome::Fault{}; });
    if (!json || !json.value().is_array())
        throwUnknown();
    keyboard::Sections sections;
    for (const auto &run : json.value()) {
        if (!run.is_array() || run.size() != 3 || !run[0].is_string() || !run[1].is_number_integer() ||
            !run[2].is_number_integer())
            throwUnknown();
        sections.push_back({run[0], {noteOf(run[1], *m_path), noteOf(run[2], *m_path)}});
    }
    return sections;
}

std::vector<instrument::Fitting> Taker::fittings()
{
    std::vector<instrument::Fitting> found;
    for (auto &run : runs())
        found.push_back({run.notes, std::move(run.name)});
    return found;
}

void Taker::throwUnknown() const
{
    throwDamaged(*m_path, describe(*m_row) + ": " + m_row->table->columns()[m_row->table->firstValue() + m_next - 1] +
                              " is none that is known");
}

} // namespace hammerline::logbook::inside
