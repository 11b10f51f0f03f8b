#include "route/route.h"

#include <algorithm>
#include <array>
#include <utility>

namespace hammerline::route {

namespace {

using keyboard::Note;

template <typename Enum, std::size_t N>
using Words = std::array<std::pair<Enum, std::string_view>, N>;

constexpr Words<Order, 6> orders{{{Order::Chromatic, "chromatic"},
                                  {Order::NaturalsThenSharps, "naturals-then-sharps"},
                                  {Order::SamplesFirst, "samples-first"},
                                  {Order::OnlyOut, "only-out"},
                                  {Order::OnlyMissing, "only-missing"},
                                  {Order::Own, "own"}}};
constexpr Words<Samples, 3> samplings{
    {{Samples::SectionEnds, "ends"}, {Samples::EveryFifth, "every-fifth"}, {Samples::Listed, "listed"}}};
constexpr Words<Sweep, 2> sweeps{{{Sweep::AlongTheNotes, "along-the-notes"}, {Sweep::NoteByNote, "note-by-note"}}};

template <typename Enum, std::size_t N>
std::string_view wordOf(const Words<Enum, N> &words, Enum wanted)
{
    return std::ranges::find(words, wanted, &std::pair<Enum, std::string_view>::first)->second;
}

template <typename Enum, std::size_t N>
bool readWord(const Words<Enum, N> &words, std::string_view text, Enum &into)
{
    const auto found = std::ranges::find(words, text, &std::pair<Enum, std::string_view>::second);
    if (found == words.end())
        return false;
    into = found->first;
    return true;
}

std::vector<std::string_view> split(std::string_view text, std::string_view separators)
{
    std::vector<std::string_view> parts;
    std::size_t at = 0;
    while ((at = text.find_first_not_of(separators, at)) != std::string_view::npos) {
        const std::size_t end = std::min(text.find_first_of(separators, at), text.size());
        parts.push_back(text.substr(at, end - at));
        at = end;
    }
    return parts;
}

std::string_view trimmed(std::string_view text)
{
    const std::size_t first = text.find_first_not_of(' ');
    if (first == std::string_view::npos)
        return {};
    return text.substr(first, text.find_last_not_of(' ') - first + 1);
}

std::vector<std::string_view> fieldsOf(std::string_view text)
{
    std::vector<std::string_view> fields;
    for (std::size_t at = 0; at <= text.size();) {
        const std::size_t end = std::min(text.find(';', at), text.size());
        fields.push_back(trimmed(text.substr(at, end - at)));
        at = end + 1;
    }
    return fields;
}

outcome::Fault fault(std::string problem)
{
    return outcome::Fault{.problem = std::move(problem)};
}

/// "C4..E4" or "40-44" as its two ends; a single note twice. A minus in front is a sign, not a range.
std::pair<std::string_view, std::string_view> endsOf(std::string_view item)
{
    if (const std::size_t dots = item.find(".."); dots != std::string_view::npos)
        return {item.substr(0, dots), item.substr(dots + 2)};
    if (const std::size_t dash = item.find('-', 1); dash != std::string_view::npos && dash + 1 < item.size())
        return {item.substr(0, dash), item.substr(dash + 1)};
    return {item, item};
}

void addOnce(std::vector<Note> &notes, Note note)
{
    if (std::ranges::find(notes, note) == notes.end())
        notes.push_back(note);
}

} // namespace

outcome::Outcome<std::vector<Note>> parseNoteList(std::string_view text)
{
    std::vector<Note> notes;
    for (const std::string_view item : split(text, " ,;\t\n\r")) {
        const auto [from, to] = endsOf(item);
        const auto first = keyboard::parseNote(from);
        const auto last = keyboard::parseNote(to);
        if (!first || !last)
            return fault("“" + std::string(item) + "” is no note; write names or numbers such as A0, C#4..E4, 88");
        if (last.value() < first.value())
            return fault("“" + std::string(item) + "” runs downwards; write the lower note first");
        for (int number = first.value().number(); number <= last.value().number(); ++number)
            addOnce(notes, Note(number));
    }
    return notes;
}

std::string textOf(const Choice &choice)
{
    std::string text(wordOf(orders, choice.order));
    text +=
        "; " + std::string(wordOf(samplings, choice.samples)) + "; " + std::string(wordOf(sweeps, choice.sweep)) + ";";
    for (const catalogue::Quantity quantity : choice.quantities)
        text += " " + std::string(catalogue::idOf(quantity));
    text += ";";
    for (const Note note : choice.listed)
        text += " " + std::to_string(note.number());
    return text;
}

outcome::Outcome<Choice> parseChoice(std::string_view text)
{
    const std::vector<std::string_view> fields = fieldsOf(text);
    Choice choice;
    if (fields.size() != 5 || !readWord(orders, fields[0], choice.order) ||
        !readWord(samplings, fields[1], choice.samples) || !readWord(sweeps, fields[2], choice.sweep))
        return fault(
            "not a route: an order, samples, a sweep, quantities and notes are wanted, with semicolons between");
    for (const std::string_view id : split(fields[3], " ")) {
        const auto quantity = catalogue::findQuantity(id);
        if (!quantity)
            return fault("“" + std::string(id) + "” is no quantity");
        if (std::ranges::find(choice.quantities, *quantity) == choice.quantities.end())
            choice.quantities.push_back(*quantity);
    }
    auto listed = parseNoteList(fields[4]);
    if (!listed)
        return listed.faults();
    choice.listed = std::move(listed).value();
    return choice;
}

} // namespace hammerline::route
