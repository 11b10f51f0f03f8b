#include "instrument/instrument.h"

#include <algorithm>
#include <array>

namespace hammerline::instrument {

namespace {

using Faults = std::vector<outcome::Fault>;

constexpr std::array<std::string_view, 5> stateIds{"taken-in", "in-work", "in-review", "signed-off", "delivered"};

/// Code points, for a limit that people can count.
std::size_t charactersIn(std::string_view utf8)
{
    return static_cast<std::size_t>(
        std::count_if(utf8.begin(), utf8.end(), [](char c) { return (static_cast<unsigned char>(c) & 0xc0) != 0x80; }));
}

bool hasControls(std::string_view text)
{
    return std::any_of(text.begin(), text.end(),
                       [](char c) { return static_cast<unsigned char>(c) < 0x20 || c == 0x7f; });
}

void checkName(const Instrument &instrument, Faults &faults)
{
    if (instrument.name.find_first_not_of(" \t") == std::string::npos)
        faults.push_back({.problem = "the instrument has no name; write what the shop calls it"});
    if (charactersIn(instrument.name) > 200)
        faults.push_back({.problem = "the name is longer than 200 characters; shorten it"});
    if (hasControls(instrument.name))
        faults.push_back({.problem = "the name holds control characters; write it on one line without tabs"});
}

std::string rangeText(const keyboard::NoteRange &notes)
{
    return std::to_string(notes.first.number()) + "-" + std::to_string(notes.last.number());
}

bool isInside(const keyboard::NoteRange &notes, const keyboard::Compass &compass)
{
    return notes.first <= notes.last && compass.contains(notes.first) && compass.contains(notes.last);
}

void checkCompass(const keyboard::Compass &compass, Faults &faults)
{
    const keyboard::NoteRange possible{keyboard::Note(keyboard::Note::lowest), keyboard::Note(keyboard::Note::highest)};
    if (!isInside(compass, possible))
        faults.push_back({.problem = "the compass " + rangeText(compass) + " is none; give a first note from " +
                                     std::to_string(keyboard::Note::lowest) + " and a last note not below it, up to " +
                                     std::to_string(keyboard::Note::highest)});
}

void checkRange(const std::string &what, const keyboard::NoteRange &notes, const keyboard::Compass &compass,
                Faults &faults)
{
    if (!isInside(notes, compass))
        faults.push_back({.problem = what + " lies on notes " + rangeText(notes) +
                                     "; keep it, low note first, inside " + rangeText(compass)});
}

void checkSections(const Instrument &instrument, Faults &faults)
{
    const keyboard::Section *before = nullptr;
    for (const auto &section : instrument.sections) {
        checkRange("section '" + section.name + "'", section.notes, instrument.compass, faults);
        if (before && section.notes.first <= before->notes.last)
            faults.push_back({.problem = "section '" + section.name + "' begins before '" + before->name +
                                         "' has ended; list sections from bass to treble without overlap"});
        before = &section;
    }
}

void checkFittings(const char *what, const std::vector<Fitting> &fittings, const keyboard::Compass &compass,
                   Faults &faults)
{
    for (const auto &fitting : fittings)
        checkRange(what + (" '" + fitting.kind + "'"), fitting.notes, compass, faults);
}

void checkFigures(const Instrument &instrument, Faults &faults)
{
    if (instrument.year && (*instrument.year < 1700 || *instrument.year > 2100))
        faults.push_back({.problem = "year " + std::to_string(*instrument.year) + " is outside 1700-2100"});
    if (instrument.size && *instrument.size <= units::Length())
        faults.push_back({.problem = "the size must be more than 0 mm; leave it empty where it is not known"});
}

} // namespace

std::string_view idOf(State state)
{
    return stateIds[static_cast<std::size_t>(state)];
}

std::optional<State> findState(std::string_view id)
{
    const auto found = std::find(stateIds.begin(), stateIds.end(), id);
    return found == stateIds.end() ? std::nullopt : std::optional(static_cast<State>(found - stateIds.begin()));
}

std::vector<outcome::Fault> faultsOf(const Instrument &instrument)
{
    Faults faults;
    checkName(instrument, faults);
    checkCompass(instrument.compass, faults);
    checkSections(instrument, faults);
    checkFittings("stringing", instrument.stringing, instrument.compass, faults);
    checkFittings("dampers", instrument.dampers, instrument.compass, faults);
    checkFigures(instrument, faults);
    return faults;
}

} // namespace hammerline::instrument
