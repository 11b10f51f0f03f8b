// What a plan leaves to be said: pairs that stay outside and why, and what to measure again.

#include "action/inside/note_search.h"
#include "action/inside/plan_lines.h"

#include <array>
#include <cmath>
#include <map>

namespace hammerline::action {

using catalogue::ActionKind;
using catalogue::Quantity;

namespace {

/// How far the note's screws can move a quantity from where the rails leave it.
double reachOf(const Solved &solved, const NoteProblem &problem, Quantity quantity)
{
    double reach = 0;
    for (const catalogue::QuantityInfo &info : catalogue::all()) {
        const Screw &screw = problem.screws[at(info.quantity)];
        reach += screw.most * screw.step *
                 std::abs(carriedBy(info.quantity, quantity, solved.task->setup.action, problem.ratio));
    }
    return reach;
}

bool aRailMoves(const Solved &solved, keyboard::Note note, Quantity quantity, double ratio)
{
    for (const Rail &rail : solved.task->setup.rails)
        if (rangeOf(rail, solved.task->compass).contains(note) && !solved.task->forbidden.rails.contains(rail.id) &&
            carriedBy(rail.quantity, quantity, solved.task->setup.action, ratio) != 0)
            return true;
    return false;
}

/// The same note with one pair alone to please.
bool couldComeIn(const NoteProblem &problem, Quantity quantity, const Shift &shift)
{
    NoteProblem alone = problem;
    for (std::size_t i = 0; i < alone.terms.size(); ++i)
        alone.terms[i].judged = i == at(quantity);
    const bool tied = quantity <= Quantity::Aftertouch;
    const NoteAnswer answer = tied ? bestTied(alone, shift, Aim::In) : bestAlone(alone, quantity, shift, Aim::In);
    return answer.feasible && answer.score.pairs == 1;
}

Hindrance hindranceOf(const Solved &solved, std::size_t note, Quantity quantity)
{
    const NoteProblem &problem = solved.notes[note];
    const Term &term = problem.terms[at(quantity)];
    const double reach = reachOf(solved, problem, quantity);
    if (reach == 0 && !aRailMoves(solved, problem.note, quantity, problem.ratio))
        return Hindrance::NothingMovesIt;
    if (couldComeIn(problem, quantity, solved.shifts[note]))
        return Hindrance::AtTheCostOf;
    const double start = standingOf(problem, solved.shifts[note]).value[at(quantity)];
    const bool spanned = start - reach <= term.low && start + reach >= term.high;
    return spanned ? Hindrance::BetweenSteps : Hindrance::OutOfReach;
}

struct Disturbance {
    Quantity moved;
    Quantity disturbed;
};
/// What moves with an adjustment though the lever model has no figure for it (order of work and dependencies of the
/// trade: after a blow change the lost motion again; capstans move dampers and checks; a new dip or key height, the
/// checks).
constexpr std::array<Disturbance, 8> disturbances{{{Quantity::KeyHeight, Quantity::Blow},
                                                   {Quantity::KeyHeight, Quantity::LostMotion},
                                                   {Quantity::KeyHeight, Quantity::LetOff},
                                                   {Quantity::KeyHeight, Quantity::Checking},
                                                   {Quantity::Dip, Quantity::Checking},
                                                   {Quantity::Blow, Quantity::DamperStart},
                                                   {Quantity::LostMotion, Quantity::Checking},
                                                   {Quantity::LostMotion, Quantity::DamperStart}}};

/// On a vertical the hammer rests on its rail: a higher key takes up lost motion. On a grand it lifts the hammer.
bool happensOn(ActionKind action, const Disturbance &disturbance)
{
    if (disturbance.moved != Quantity::KeyHeight)
        return true;
    return disturbance.disturbed != (action == ActionKind::Grand ? Quantity::LostMotion : Quantity::Blow);
}

using Again = std::map<std::pair<Quantity, keyboard::Note>, Quantity>;

void addAgain(const Solved &solved, const NoteProblem &problem, Quantity moved, Again &again)
{
    const ActionKind action = solved.task->setup.action;
    for (const Disturbance &disturbance : disturbances)
        if (disturbance.moved == moved && happensOn(action, disturbance))
            again.emplace(std::pair(disturbance.disturbed, problem.note), moved);
    // The model knows these, but has no value to move.
    for (const Quantity carried : {Quantity::LostMotion, Quantity::Drop, Quantity::Aftertouch})
        if (carried != moved && carriedBy(moved, carried, action, problem.ratio) != 0 &&
            !problem.terms[at(carried)].present)
            again.emplace(std::pair(carried, problem.note), moved);
}

} // namespace

std::vector<Unresolved> unresolvedOf(const Solved &solved, const std::vector<Pair> &pairs)
{
    std::map<keyboard::Note, std::size_t> index;
    for (std::size_t note = 0; note < solved.notes.size(); ++note)
        index.emplace(solved.notes[note].note, note);
    std::vector<Unresolved> unresolved;
    for (const Pair &pair : pairs)
        if (!pair.insideAfter)
            unresolved.push_back({pair.note, pair.quantity, hindranceOf(solved, index.at(pair.note), pair.quantity)});
    return unresolved;
}

std::vector<Remeasure> remeasureAfter(const Solved &solved, const Plan &plan)
{
    Again again;
    std::map<keyboard::Note, const NoteProblem *> problems;
    for (const NoteProblem &problem : solved.notes)
        problems.emplace(problem.note, &problem);
    for (const Move &move : plan.moves)
        addAgain(solved, *problems.at(move.note), move.adjust, again);
    for (std::size_t i = 0; i < solved.rails.size(); ++i) {
        if (solved.rails[i] == RailPosition{})
            continue;
        const Rail &rail = solved.task->setup.rails[i];
        for (const NoteProblem &problem : solved.notes)
            if (rangeOf(rail, solved.task->compass).contains(problem.note))
                addAgain(solved, problem, rail.quantity, again);
    }
    std::vector<Remeasure> list;
    for (const auto &[place, moved] : again)
        list.push_back({.note = place.second, .quantity = place.first, .movedBy = moved});
    return list;
}

} // namespace hammerline::action
