#include "instrument_file/ranges_text.h"

namespace hammerline::instrument_file {

namespace {

std::string_view trimmed(std::string_view text)
{
    const auto first = text.find_first_not_of(" \t\r");
    if (first == std::string_view::npos)
        return {};
    return text.substr(first, text.find_last_not_of(" \t\r") - first + 1);
}

/// The last blank-separated word, taken off `text`.
std::string_view takeLastWord(std::string_view &text)
{
    text = trimmed(text);
    const auto blank = text.find_last_of(" \t");
    const std::string_view word = blank == std::string_view::npos ? text : text.substr(blank + 1);
    text = blank == std::string_view::npos ? std::string_view{} : trimmed(text.substr(0, blank));
    return word;
}

outcome::Fault unreadable(std::string_view run, const std::string &why)
{
    return {.problem = "'" + std::string(run) + "': " + why + "; write it as: bass A0 to E2"};
}

outcome::Outcome<keyboard::Section> parseRun(std::string_view run)
{
    std::string_view rest = run;
    const auto last = keyboard::parseNote(takeLastWord(rest));
    if (!last)
        return unreadable(run, "the last note is missing or no note");
    if (takeLastWord(rest) != "to")
        return unreadable(run, "'to' is missing between the notes");
    const auto first = keyboard::parseNote(takeLastWord(rest));
    if (!first)
        return unreadable(run, "the first note is missing or no note");
    if (rest.empty())
        return unreadable(run, "it has no name");
    if (last.value() < first.value())
        return unreadable(run, "it ends before it begins");
    return keyboard::Section{std::string(rest), {first.value(), last.value()}};
}

std::string runText(const std::string &name, const keyboard::NoteRange &notes)
{
    return name + " " + notes.first.name() + " to " + notes.last.name();
}

} // namespace

outcome::Outcome<keyboard::Sections> parseSections(std::string_view text)
{
    keyboard::Sections sections;
    std::vector<outcome::Fault> faults;
    while (!text.empty()) {
        const auto end = text.find_first_of(";\n");
        const std::string_view run = trimmed(text.substr(0, end));
        text = end == std::string_view::npos ? std::string_view{} : text.substr(end + 1);
        if (run.empty())
            continue;
        const auto section = parseRun(run);
        if (section)
            sections.push_back(section.value());
        else
            faults.push_back(section.fault());
    }
    if (!faults.empty())
        return faults;
    return sections;
}

outcome::Outcome<std::vector<instrument::Fitting>> parseFittings(std::string_view text)
{
    const auto sections = parseSections(text);
    if (!sections)
        return sections.faults();
    std::vector<instrument::Fitting> fittings;
    for (const keyboard::Section &section : sections.value())
        fittings.push_back({section.notes, section.name});
    return fittings;
}

std::string textOf(const keyboard::Sections &sections)
{
    std::string text;
    for (const keyboard::Section &section : sections)
        text += (text.empty() ? "" : "; ") + runText(section.name, section.notes);
    return text;
}

std::string textOf(const std::vector<instrument::Fitting> &fittings)
{
    std::string text;
    for (const instrument::Fitting &fitting : fittings)
        text += (text.empty() ? "" : "; ") + runText(fitting.kind, fitting.notes);
    return text;
}

} // namespace hammerline::instrument_file
