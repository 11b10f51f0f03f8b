// The planner beside a general solver (GLPK, note by note and with the same answer) on the same 88-note actions.
// Promised: a whole plan without rails within 5 ms, with one linear rail of 41 x 41 positions within 250 ms.

#include "support/plan_solver.h"
#include "support/random_plan.h"

#include <benchmark/benchmark.h>

namespace {

using namespace hammerline;
using catalogue::ActionKind;
using catalogue::Quantity;

constexpr std::uint64_t seeds = 8;

action::PlanTask wholeAction(std::int64_t seed, ActionKind kind, action::Aim aim)
{
    action::PlanTask task = support::wholeActionTask(static_cast<std::uint64_t>(seed), kind);
    task.aim = aim;
    return task;
}

void planWithoutRails(benchmark::State &state, ActionKind kind, action::Aim aim)
{
    std::vector<action::PlanTask> tasks;
    for (std::uint64_t seed = 1; seed <= seeds; ++seed)
        tasks.push_back(wholeAction(static_cast<std::int64_t>(seed), kind, aim));
    std::size_t next = 0;
    for (auto _ : state)
        benchmark::DoNotOptimize(action::bestPlan(tasks[next++ % tasks.size()]).pairsInAfter);
}

void solverNoteByNote(benchmark::State &state, ActionKind kind, action::Aim aim)
{
    const action::PlanTask task = wholeAction(1, kind, aim);
    for (auto _ : state)
        benchmark::DoNotOptimize(support::bestNoteByNote(task).worth.pairs);
}

void planWithRail(benchmark::State &state, ActionKind kind, Quantity quantity, action::Aim aim)
{
    action::PlanTask task = support::wholeActionWithRail(1, kind, quantity);
    task.aim = aim;
    for (auto _ : state)
        benchmark::DoNotOptimize(action::bestPlan(task).pairsInAfter);
}

/// One position of the 1681: what the solver would take for all is this times 1681.
void solverAtOneRailPosition(benchmark::State &state)
{
    const action::PlanTask task = support::wholeActionWithRail(1, ActionKind::Vertical, Quantity::Blow);
    for (auto _ : state)
        benchmark::DoNotOptimize(support::bestNoteByNote(task, {{-4, 2}}).worth.pairs);
}

} // namespace

BENCHMARK_CAPTURE(planWithoutRails, vertical, ActionKind::Vertical, action::Aim::In)->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(planWithoutRails, grand, ActionKind::Grand, action::Aim::In)->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(planWithoutRails, grandToTarget, ActionKind::Grand, action::Aim::Target)
    ->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(solverNoteByNote, vertical, ActionKind::Vertical, action::Aim::In)->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(solverNoteByNote, grand, ActionKind::Grand, action::Aim::In)->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(solverNoteByNote, grandToTarget, ActionKind::Grand, action::Aim::Target)
    ->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(planWithRail, restRail, ActionKind::Vertical, Quantity::Blow, action::Aim::In)
    ->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(planWithRail, letOffRail, ActionKind::Grand, Quantity::LetOff, action::Aim::In)
    ->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(planWithRail, checkRail, ActionKind::Grand, Quantity::Checking, action::Aim::In)
    ->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(planWithRail, restRailToTarget, ActionKind::Vertical, Quantity::Blow, action::Aim::Target)
    ->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(planWithRail, letOffRailToTargetOnAVertical, ActionKind::Vertical, Quantity::LetOff,
                  action::Aim::Target)
    ->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(planWithRail, letOffRailToTargetOnAGrand, ActionKind::Grand, Quantity::LetOff, action::Aim::Target)
    ->Unit(benchmark::kMillisecond);
BENCHMARK(solverAtOneRailPosition)->Unit(benchmark::kMillisecond);
