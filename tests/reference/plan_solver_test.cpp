// The best plan against a general solver that knows nothing of pianos: GLPK 5.0 (GNU Linear Programming Kit, Makhorin),
// fed the rules of a plan as a mixed-integer program.
//
// The solver holds a limit only to within its own tolerance, so that its best may lean on a limit missed by half a
// nanometre. Its plan is therefore judged exactly as well: it must never be better than ours, and where it stands up to
// that judgement, pairs, minutes and closeness must be equal.

#include "support/plan_solver.h"
#include "support/random_plan.h"

#include <gtest/gtest.h>

#include <string>

namespace hammerline {

using action::Aim;
using action::Plan;
using action::PlanTask;
using catalogue::ActionKind;
using catalogue::Quantity;

namespace {

/// True where the two were equal; false where the solver's plan did not stand up.
bool agrees(const PlanTask &task, const support::SolverAnswer &solver, const std::string &which)
{
    const Plan plan = action::bestPlan(task);
    const support::PlanWorth ours{plan.pairsInAfter, plan.minutes, plan.closeness};
    EXPECT_TRUE(solver.proved) << which;
    const auto judged = support::worthOf(task, solver.plan);
    EXPECT_FALSE(judged && support::betterPlan(*judged, ours, task.aim)) << which;
    if (!judged || judged->pairs != solver.worth.pairs)
        return false;
    EXPECT_EQ(ours.pairs, solver.worth.pairs) << which;
    EXPECT_NEAR(ours.minutes, solver.worth.minutes, 1e-6) << which;
    EXPECT_NEAR(ours.closeness, solver.worth.closeness, 1e-6) << which;
    return true;
}

void expectAgreement(std::uint64_t first, int count, const support::RandomPlanSize &size)
{
    int equal = 0;
    for (std::uint64_t seed = first; seed < first + static_cast<std::uint64_t>(count); ++seed) {
        const PlanTask task = support::randomPlanTask(seed, size);
        equal += agrees(task, support::bestBySolver(task), "seed " + std::to_string(seed)) ? 1 : 0;
        if (testing::Test::HasFailure())
            return;
    }
    EXPECT_GE(equal, count * 97 / 100);
}

/// The best over every position of the task's one rail, each solved note by note.
support::SolverAnswer bestOverPositions(const PlanTask &task, int most)
{
    support::SolverAnswer best;
    const bool linear = task.setup.rails.front().shape == action::RailShape::Linear;
    for (int bass = -most; bass <= most; ++bass)
        for (int treble = linear ? -most : bass; treble <= (linear ? most : bass); ++treble) {
            const support::SolverAnswer answer = support::bestNoteByNote(task, {{bass, treble}});
            if (answer.proved && (!best.proved || support::betterPlan(answer.worth, best.worth, task.aim)))
                best = answer;
        }
    return best;
}

} // namespace

TEST(PlanSolver, oneNoteInTwoThousandCasesOfFewSteps)
{
    expectAgreement(0, 2000, {.notes = 1, .mostSteps = 2, .mostRailSteps = 0, .rails = 0});
}

TEST(PlanSolver, oneNoteInAThousandCasesOfManySteps)
{
    expectAgreement(50'000, 1000, {.notes = 1, .mostSteps = 30, .mostRailSteps = 0, .rails = 0});
}

TEST(PlanSolver, notesUnderSeveralRailsAtOnce)
{
    expectAgreement(60'000, 300, {.notes = 2, .mostSteps = 3, .mostRailSteps = 3, .rails = 2});
}

TEST(PlanSolver, wholeActionsForBothAims)
{
    for (const ActionKind kind : {ActionKind::Vertical, ActionKind::Grand})
        for (const Aim aim : {Aim::In, Aim::Target}) {
            PlanTask task = support::wholeActionTask(5, kind);
            task.aim = aim;
            EXPECT_TRUE(agrees(task, support::bestNoteByNote(task), std::string(action::idOf(aim))));
        }
}

TEST(PlanSolver, wholeActionsUnderARailAtEveryPosition)
{
    for (const Quantity quantity : {Quantity::Blow, Quantity::LetOff}) {
        PlanTask task = support::wholeActionWithRail(6, ActionKind::Vertical, quantity);
        task.setup.rails.front().step = units::Length::millimetres(quantity == Quantity::Blow ? 1 : 0.4);
        task.setup.rails.front().most = units::Length::millimetres(quantity == Quantity::Blow ? 2 : 0.8);
        EXPECT_TRUE(agrees(task, bestOverPositions(task, 2), std::string(catalogue::idOf(quantity))));
    }
}

TEST(PlanSolver, wholeActionUnderALetOffRailToTheTargetAtEveryPosition)
{
    PlanTask task = support::wholeActionWithRail(7, ActionKind::Vertical, Quantity::LetOff);
    task.aim = Aim::Target;
    task.setup.rails.front().step = units::Length::millimetres(0.4);
    task.setup.rails.front().most = units::Length::millimetres(0.4);
    EXPECT_TRUE(agrees(task, bestOverPositions(task, 1), "let_off"));
}

} // namespace hammerline
