#include "action/inside/rail_search.h"

#include "action/inside/rail_box.h"

#include <algorithm>
#include <numeric>

namespace hammerline::action {

using catalogue::Quantity;

namespace {

bool tied(const Rail &rail)
{
    return rail.quantity != Quantity::Checking;
}

/// The notes whose share a rail can change.
std::vector<bool> notesMovedBy(const Rail &rail, const PlanTask &task, const std::vector<NoteProblem> &notes)
{
    std::vector<bool> moved;
    for (const NoteProblem &problem : notes)
        moved.push_back(rangeOf(rail, task.compass).contains(problem.note) &&
                        (tied(rail) || problem.terms[at(Quantity::Checking)].present));
    return moved;
}

bool shareANote(const std::vector<bool> &one, const std::vector<bool> &other)
{
    for (std::size_t i = 0; i < one.size(); ++i)
        if (one[i] && other[i])
            return true;
    return false;
}

/// Rails that must be searched together have the same number.
std::vector<std::size_t> groupsOf(const std::vector<Rail> &rails, const std::vector<std::vector<bool>> &moved)
{
    std::vector<std::size_t> group(rails.size());
    std::iota(group.begin(), group.end(), std::size_t{0});
    for (std::size_t i = 0; i < rails.size(); ++i)
        for (std::size_t j = 0; j < i; ++j) {
            if (tied(rails[i]) != tied(rails[j]) || group[i] == group[j] || !shareANote(moved[i], moved[j]))
                continue;
            const std::size_t joined = group[j], left = group[i];
            for (std::size_t &each : group)
                each = each == left ? joined : each;
        }
    return group;
}

bool mayMove(const Rail &rail, const PlanTask &task, const std::vector<bool> &moved)
{
    return !task.forbidden.rails.contains(rail.id) && rail.most >= rail.step &&
           std::find(moved.begin(), moved.end(), true) != moved.end();
}

/// The notes that any of the rails moves.
std::vector<const NoteProblem *> notesOf(const std::vector<std::size_t> &rails,
                                         const std::vector<std::vector<bool>> &moved,
                                         const std::vector<NoteProblem> &notes)
{
    std::vector<const NoteProblem *> chosen;
    for (std::size_t i = 0; i < notes.size(); ++i)
        for (const std::size_t rail : rails)
            if (moved[rail][i]) {
                chosen.push_back(&notes[i]);
                break;
            }
    return chosen;
}

} // namespace

keyboard::NoteRange rangeOf(const Rail &rail, const keyboard::Compass &compass)
{
    return rail.notes.value_or(compass);
}

std::vector<RailPosition> bestRailPositions(const PlanTask &task, const std::vector<NoteProblem> &notes)
{
    const std::vector<Rail> &rails = task.setup.rails;
    std::vector<std::vector<bool>> moved;
    for (const Rail &rail : rails)
        moved.push_back(notesMovedBy(rail, task, notes));
    const std::vector<std::size_t> group = groupsOf(rails, moved);
    std::vector<RailPosition> positions(rails.size());
    for (std::size_t number = 0; number < rails.size(); ++number) {
        std::vector<std::size_t> together;
        for (std::size_t i = 0; i < rails.size(); ++i)
            if (group[i] == number && mayMove(rails[i], task, moved[i]))
                together.push_back(i);
        if (!together.empty())
            RailBoxSearch(task, together, notesOf(together, moved, notes)).run(positions);
    }
    return positions;
}

Shift shiftOf(const PlanTask &task, const std::vector<RailPosition> &positions, keyboard::Note note)
{
    Shift shift;
    for (std::size_t i = 0; i < positions.size(); ++i) {
        const Rail &rail = task.setup.rails[i];
        const keyboard::NoteRange range = rangeOf(rail, task.compass);
        if (range.contains(note))
            addRail(rail, range, note, {positions[i], positions[i]}, shift);
    }
    return shift;
}

} // namespace hammerline::action
