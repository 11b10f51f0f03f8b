#include "action/plan.h"

#include "action/inside/note_search.h"
#include "action/inside/plan_lines.h"

#include <map>

namespace hammerline::action {

using catalogue::Quantity;

namespace {

NoteAnswer answerOf(const NoteProblem &problem, const Shift &shift, Aim aim)
{
    NoteAnswer whole = bestTied(problem, shift, aim);
    for (const Quantity alone : {Quantity::Checking, Quantity::DamperStart, Quantity::DownWeight, Quantity::UpWeight}) {
        const NoteAnswer answer = bestAlone(problem, alone, shift, aim);
        whole.score += answer.score;
        whole.steps[at(alone)] = answer.steps[at(alone)];
    }
    return whole;
}

/// `effort` outlives what is solved; null: whatever it takes.
Solved solve(const PlanTask &task, Effort *effort)
{
    Solved solved{.task = &task, .notes = noteProblems(task)};
    for (NoteProblem &problem : solved.notes)
        problem.effort = effort;
    solved.rails = bestRailPositions(task, solved.notes);
    for (const NoteProblem &problem : solved.notes) {
        solved.shifts.push_back(shiftOf(task, solved.rails, problem.note));
        solved.answers.push_back(answerOf(problem, solved.shifts.back(), task.aim));
    }
    return solved;
}

Plan planOf(const PlanTask &task, const Solved &solved)
{
    Plan plan{.aim = task.aim};
    plan.rails = railMoves(solved);
    plan.moves = movesOf(solved);
    for (const RailMove &rail : plan.rails)
        plan.minutes += rail.minutes;
    for (const NoteAnswer &answer : solved.answers) {
        plan.minutes += answer.score.minutes;
        plan.closeness += answer.score.closeness;
    }
    plan.pairs = pairsOf(solved);
    for (const Pair &pair : plan.pairs) {
        plan.pairsInBefore += pair.insideBefore ? 1 : 0;
        plan.pairsInAfter += pair.insideAfter ? 1 : 0;
    }
    plan.unresolved = unresolvedOf(solved, plan.pairs);
    plan.remeasure = remeasureAfter(solved, plan);
    return plan;
}

} // namespace

std::string_view idOf(Aim aim)
{
    return aim == Aim::In ? "in" : "target";
}

std::optional<Aim> findAim(std::string_view id)
{
    for (const Aim aim : {Aim::In, Aim::Target})
        if (idOf(aim) == id)
            return aim;
    return std::nullopt;
}

Plan bestPlan(const PlanTask &task)
{
    return planOf(task, solve(task, nullptr));
}

std::optional<Plan> bestPlanWithin(const PlanTask &task, std::int64_t tries)
{
    Effort effort{tries + 1}; // with none left, something was not tried
    const Solved solved = solve(task, &effort);
    if (effort.isSpent())
        return std::nullopt;
    Plan plan = planOf(task, solved);
    return effort.isSpent() ? std::nullopt : std::optional(std::move(plan));
}

std::vector<std::pair<units::Length, int>> punchingsToFetch(const Plan &plan)
{
    std::map<units::Length, int, std::greater<>> counts;
    for (const Move &move : plan.moves)
        if (move.punchings && move.by.baseCount() < 0) // shallower: put in; deeper ones come out
            for (const units::Length piece : *move.punchings)
                ++counts[piece];
    return {counts.begin(), counts.end()};
}

} // namespace hammerline::action
