#include "route/route.h"

#include <algorithm>
#include <set>

namespace hammerline::route {

namespace {

using keyboard::Note;

std::vector<Note> notesOf(const keyboard::NoteRange &range)
{
    std::vector<Note> notes;
    for (int number = range.first.number(); number <= range.last.number(); ++number)
        notes.emplace_back(number);
    return notes;
}

/// The sections, with the whole compass as one where none are known.
keyboard::Sections sectionsOf(const Ground &ground)
{
    if (!ground.sections.empty())
        return ground.sections;
    return {keyboard::Section{.name = {}, .notes = ground.compass}};
}

std::vector<Note> naturalsThenSharps(const Ground &ground)
{
    std::vector<Note> notes = notesOf(ground.compass);
    std::stable_partition(notes.begin(), notes.end(),
                          [](Note note) { return note.colour() == keyboard::Colour::Natural; });
    return notes;
}

std::vector<Note> samplesOf(const keyboard::NoteRange &section, Samples samples)
{
    if (samples == Samples::SectionEnds)
        return section.count() == 1 ? std::vector{section.first} : std::vector{section.first, section.last};
    std::vector<Note> notes;
    for (int number = section.first.number(); number < section.last.number(); number += 5)
        notes.emplace_back(number);
    notes.push_back(section.last);
    return notes;
}

std::vector<Note> samplesFirst(const Choice &choice, const Ground &ground)
{
    std::vector<Note> notes;
    if (choice.samples == Samples::Listed)
        notes = choice.listed;
    else
        for (const keyboard::Section &section : sectionsOf(ground))
            std::ranges::copy(samplesOf(section.notes, choice.samples), std::back_inserter(notes));
    std::ranges::copy(notesOf(ground.compass), std::back_inserter(notes));
    return notes;
}

/// The notes of the compass in the order asked for, each once.
std::vector<Note> orderedNotes(const Choice &choice, const Ground &ground)
{
    std::vector<Note> wanted;
    switch (choice.order) {
    case Order::NaturalsThenSharps:
        wanted = naturalsThenSharps(ground);
        break;
    case Order::SamplesFirst:
        wanted = samplesFirst(choice, ground);
        break;
    case Order::Own:
        wanted = choice.listed;
        break;
    case Order::Chromatic:
    case Order::OnlyOut:
    case Order::OnlyMissing:
        wanted = notesOf(ground.compass);
    }
    std::set<Note> seen;
    std::erase_if(wanted, [&](Note note) { return !ground.compass.contains(note) || !seen.insert(note).second; });
    return wanted;
}

bool isWanted(const Stop &stop, Order order, const Ground &ground)
{
    if (order == Order::OnlyMissing)
        return !ground.values.value(stop.quantity, stop.note);
    if (order != Order::OnlyOut)
        return true;
    if (std::ranges::find(ground.sentBack, stop) != ground.sentBack.end())
        return true;
    const tolerance::Verdict *verdict = ground.judgement.find(stop.quantity, stop.note);
    return verdict != nullptr && verdict->status == tolerance::Status::Out;
}

} // namespace

std::vector<Stop> stopsOf(const Choice &choice, const Ground &ground)
{
    const std::vector<Note> notes = orderedNotes(choice, ground);
    std::vector<Stop> stops;
    const auto visit = [&](catalogue::Quantity quantity, Note note) {
        if (const Stop stop{quantity, note}; isWanted(stop, choice.order, ground))
            stops.push_back(stop);
    };
    if (choice.sweep == Sweep::AlongTheNotes) {
        for (const catalogue::Quantity quantity : choice.quantities)
            for (const Note note : notes)
                visit(quantity, note);
    } else {
        for (const Note note : notes)
            for (const catalogue::Quantity quantity : choice.quantities)
                visit(quantity, note);
    }
    return stops;
}

} // namespace hammerline::route
