#include "analysis/inside/crossed_layout.h"

#include <algorithm>
#include <set>

namespace hammerline::analysis::inside {

namespace {

using outcome::Fault;
using units::Wide;

std::string cellText(keyboard::Note note, const std::string &person)
{
    return "'" + person + "' on note " + std::to_string(note.number());
}

std::optional<Fault> place(const Trial &trial, CrossedLayout &layout)
{
    if (trial.value.dimension() != layout.dimension)
        return Fault{.problem = cellText(trial.note, trial.person) +
                                ": lengths stand among masses; give the trials of one quantity"};
    if (!layout.cells[{trial.note, trial.person}].emplace(trial.take, trial.value.baseCount()).second)
        return Fault{.problem = cellText(trial.note, trial.person) + " has take " + std::to_string(trial.take) +
                                " twice; number the takes from 1"};
    return std::nullopt;
}

/// Every person, every note, in the order of output.
std::vector<Fault> gapsIn(const CrossedLayout &layout, const std::set<keyboard::Note> &notes,
                          const std::set<std::string> &people)
{
    std::vector<Fault> faults;
    for (const auto note : notes) {
        for (const auto &person : people) {
            const auto cell = layout.cells.find({note, person});
            const std::size_t takes = cell == layout.cells.end() ? 0 : cell->second.size();
            if (takes != static_cast<std::size_t>(layout.takes))
                faults.push_back({.problem = cellText(note, person) + " has " + std::to_string(takes) + " takes, not " +
                                             std::to_string(layout.takes) +
                                             "; everybody must read every note equally often"});
        }
    }
    return faults;
}

void refuseFew(int count, const char *what, std::vector<Fault> &faults)
{
    if (count < 2)
        faults.push_back({.problem = "the study has " + std::to_string(count) + " " + what +
                                     "; it takes at least 2 notes, 2 people and 2 takes"});
}

std::vector<Fault> measure(CrossedLayout &layout)
{
    std::set<keyboard::Note> notes;
    std::set<std::string> people;
    std::size_t takes = 0;
    for (const auto &[key, cell] : layout.cells) {
        notes.insert(key.first);
        people.insert(key.second);
        takes = std::max(takes, cell.size());
    }
    layout.notes = static_cast<int>(notes.size());
    layout.people = static_cast<int>(people.size());
    layout.takes = static_cast<int>(takes);
    auto faults = gapsIn(layout, notes, people);
    refuseFew(layout.notes, "notes", faults);
    refuseFew(layout.people, "people", faults);
    refuseFew(layout.takes, "takes", faults);
    return faults;
}

/// Sums of squared sums, each an exact whole number of squared base units.
struct Squares {
    Wide notes = 0, people = 0, cells = 0, trials = 0, grand = 0;
};

Wide square(Wide value)
{
    return value * value;
}

template <typename Key>
Wide sumOfSquares(const std::map<Key, Wide> &sums)
{
    Wide total = 0;
    for (const auto &[key, sum] : sums)
        total += square(sum);
    return total;
}

Squares squaresOf(const CrossedLayout &layout)
{
    Squares squares;
    std::map<keyboard::Note, Wide> notes;
    std::map<std::string, Wide> people;
    Wide grand = 0;
    for (const auto &[key, cell] : layout.cells) {
        Wide sum = 0;
        for (const auto &[take, value] : cell) {
            sum += value;
            squares.trials += square(value);
        }
        notes[key.first] += sum;
        people[key.second] += sum;
        squares.cells += square(sum);
        grand += sum;
    }
    squares.notes = sumOfSquares(notes);
    squares.people = sumOfSquares(people);
    squares.grand = square(grand);
    return squares;
}

} // namespace

outcome::Outcome<CrossedLayout> crossedLayout(const std::vector<Trial> &trials)
{
    CrossedLayout layout;
    std::vector<Fault> faults;
    if (!trials.empty())
        layout.dimension = trials.front().value.dimension();
    for (const auto &trial : trials)
        if (auto fault = place(trial, layout))
            faults.push_back(std::move(*fault));
    if (faults.empty())
        faults = measure(layout);
    if (!faults.empty())
        return faults;
    return layout;
}

CrossedSums sumsOfSquares(const CrossedLayout &layout)
{
    // Every sum of squares times the number of trials is a whole number: nothing is rounded before the division.
    // 1e9 base units and 1e9 trials stay within 128 bits.
    const Squares squares = squaresOf(layout);
    const Wide n = layout.notes, p = layout.people, trials = n * p * layout.takes;
    const Wide note = n * squares.notes - squares.grand, person = p * squares.people - squares.grand;
    const Wide cell = n * p * squares.cells - squares.grand, total = trials * squares.trials - squares.grand;
    const long double scale = layout.dimension == units::Dimension::Length ? 1e12L : 1e6L;
    const auto inDisplay = [&](Wide sum) {
        return static_cast<double>(static_cast<long double>(sum) / static_cast<long double>(trials) / scale);
    };
    return {.note = inDisplay(note),
            .person = inDisplay(person),
            .interaction = inDisplay(cell - note - person),
            .repeatability = inDisplay(total - cell),
            .total = inDisplay(total)};
}

} // namespace hammerline::analysis::inside
