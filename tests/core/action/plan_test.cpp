// What a plan says: its lines, their order, and what it leaves open.

#include "action/plan.h"
#include "support/random_plan.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace hammerline {

using action::Hindrance;
using action::Plan;
using action::PlanTask;
using catalogue::ActionKind;
using catalogue::Quantity;
using keyboard::Note;
using units::Length;

namespace {

Length mm(double value)
{
    return Length::millimetres(value);
}

void judge(PlanTask &task, Quantity quantity, double low, double target, double high)
{
    task.set.entries[quantity].both = {{.note = Note(1), .low = mm(low), .target = mm(target), .high = mm(high)}};
}

void read(PlanTask &task, Quantity quantity, int note, double value)
{
    task.values.set(quantity, Note(note), {mm(value), 1});
}

void allow(PlanTask &task, Quantity quantity, double step, double most, double minutes)
{
    task.setup.adjustments[quantity] = {.step = mm(step), .most = mm(most), .minutes = minutes};
}

PlanTask emptyTask(ActionKind kind)
{
    PlanTask task;
    task.setup.action = task.set.action = kind;
    return task;
}

/// Note 40 of a vertical: let-off 0.6 too far from the string.
PlanTask letOffTask()
{
    PlanTask task = emptyTask(ActionKind::Vertical);
    judge(task, Quantity::LetOff, 2.4, 3.2, 4.0);
    read(task, Quantity::LetOff, 40, 4.6);
    allow(task, Quantity::LetOff, 0.05, 3, 0.5);
    return task;
}

bool listed(const Plan &plan, int note, Quantity quantity)
{
    return std::any_of(plan.remeasure.begin(), plan.remeasure.end(), [&](const action::Remeasure &again) {
        return again.note == Note(note) && again.quantity == quantity;
    });
}

} // namespace

TEST(Plan, nothingOutNothingMoved)
{
    PlanTask task = letOffTask();
    read(task, Quantity::LetOff, 40, 2.4);
    const Plan plan = action::bestPlan(task);
    EXPECT_TRUE(plan.moves.empty());
    EXPECT_EQ(plan.minutes, 0);
    EXPECT_EQ(plan.pairsInBefore, 1);
    EXPECT_EQ(plan.pairsInAfter, 1);
    EXPECT_NEAR(plan.closeness, 1, 1e-12);
}

TEST(Plan, onceTurnedAScrewIsTurnedToTheTarget)
{
    const Plan plan = action::bestPlan(letOffTask());
    ASSERT_EQ(plan.moves.size(), 1U);
    EXPECT_EQ(plan.moves.front().by, units::Amount(mm(-1.4)));
    EXPECT_NEAR(plan.closeness, 0, 1e-12);
    EXPECT_EQ(plan.minutes, 0.5);
}

TEST(Plan, turnsComeFromWhatATurnDoesWithItsSign)
{
    PlanTask task = letOffTask();
    EXPECT_FALSE(action::bestPlan(task).moves.front().turns);
    task.setup.adjustments[Quantity::LetOff].perTurn = mm(2.8);
    EXPECT_DOUBLE_EQ(action::bestPlan(task).moves.front().turns.value(), -0.5);
    task.setup.adjustments[Quantity::LetOff].perTurn = mm(-2.8);
    EXPECT_DOUBLE_EQ(action::bestPlan(task).moves.front().turns.value(), 0.5);
}

TEST(Plan, dipMovesNameThePunchings)
{
    PlanTask task = emptyTask(ActionKind::Grand);
    judge(task, Quantity::Dip, 9.8, 10, 10.2);
    read(task, Quantity::Dip, 1, 9.2);
    read(task, Quantity::Dip, 2, 10.5);
    allow(task, Quantity::Dip, 0.05, 1, 1);
    task.setup.adjustments[Quantity::Dip].punchings = {mm(0.05), mm(0.25), mm(0.5)};
    const Plan plan = action::bestPlan(task);
    ASSERT_EQ(plan.moves.size(), 2U);
    EXPECT_EQ(plan.moves[0].punchings.value(), (std::vector<Length>{mm(0.5), mm(0.25), mm(0.05)}));
    EXPECT_EQ(plan.moves[1].punchings.value(), std::vector<Length>{mm(0.5)});
    const std::vector<std::pair<Length, int>> toFetch{{mm(0.5), 1}};
    EXPECT_EQ(action::punchingsToFetch(plan), toFetch);
}

TEST(Plan, movesStandInTheOrderOfWorkAndByNote)
{
    const Plan plan = action::bestPlan(support::wholeActionTask(3, ActionKind::Grand));
    ASSERT_GT(plan.moves.size(), 20U);
    const std::vector<Quantity> order{
        Quantity::KeyHeight, Quantity::Blow,     Quantity::LostMotion,  Quantity::LetOff,     Quantity::Drop,
        Quantity::Dip,       Quantity::Checking, Quantity::DamperStart, Quantity::DownWeight, Quantity::UpWeight};
    const auto rank = [&](const action::Move &move) {
        return std::pair(std::find(order.begin(), order.end(), move.adjust), move.note);
    };
    for (std::size_t i = 1; i < plan.moves.size(); ++i) {
        EXPECT_LT(rank(plan.moves[i - 1]), rank(plan.moves[i]));
        EXPECT_EQ(plan.moves[i].order, static_cast<int>(i) + 1);
    }
}

TEST(Plan, checkingIsMeasuredAgainWhereDipOrKeyHeightMoves)
{
    const Plan plan = action::bestPlan(support::wholeActionTask(3, ActionKind::Grand));
    for (const action::Move &move : plan.moves)
        EXPECT_TRUE((move.adjust != Quantity::Dip && move.adjust != Quantity::KeyHeight) ||
                    listed(plan, move.note.number(), Quantity::Checking));
    EXPECT_TRUE(std::is_sorted(plan.remeasure.begin(), plan.remeasure.end(), [](const auto &one, const auto &other) {
        return std::pair(one.quantity, one.note) < std::pair(other.quantity, other.note);
    }));
}

TEST(Plan, movedRestRailAsksForLostMotionThatWasNotRead)
{
    PlanTask task = emptyTask(ActionKind::Vertical);
    task.compass = {Note(1), Note(4)};
    judge(task, Quantity::Blow, 45, 46, 47);
    for (const int note : {1, 2, 3, 4})
        read(task, Quantity::Blow, note, 48.5);
    read(task, Quantity::LostMotion, 1, 0.9);
    task.setup.rails = {{.id = "rest_rail", .step = mm(0.5), .most = mm(5), .minutes = 12}};
    const Plan plan = action::bestPlan(task);
    ASSERT_EQ(plan.rails.size(), 1U);
    EXPECT_EQ(plan.rails.front().bass, units::Amount(mm(-2.5)));
    EXPECT_EQ(plan.rails.front().treble, units::Amount(mm(-2.5)));
    EXPECT_EQ(plan.minutes, 12);
    EXPECT_FALSE(listed(plan, 1, Quantity::LostMotion));
    EXPECT_TRUE(listed(plan, 2, Quantity::LostMotion));
}

TEST(Plan, railMayNotSendANoteBelowZero)
{
    PlanTask task = emptyTask(ActionKind::Vertical);
    task.compass = {Note(1), Note(2)};
    task.setup.leverRatio = 5;
    judge(task, Quantity::Blow, 45, 46, 47);
    for (const int note : {1, 2})
        read(task, Quantity::Blow, note, 44);
    read(task, Quantity::LostMotion, 2, 0.1); // nobody judges it, but a hammer cannot be pushed through its jack
    task.setup.rails = {{.id = "rest_rail", .step = mm(0.5), .most = mm(5), .minutes = 12}};
    EXPECT_TRUE(action::bestPlan(task).rails.empty());
    read(task, Quantity::LostMotion, 2, 0.2);
    const Plan plan = action::bestPlan(task);
    ASSERT_EQ(plan.rails.size(), 1U);
    EXPECT_EQ(plan.rails.front().bass, units::Amount(mm(1)));
}

TEST(Plan, saysWhyAPairStaysOutside)
{
    PlanTask task = letOffTask();
    judge(task, Quantity::Dip, 9.8, 10, 10.2);
    read(task, Quantity::Dip, 40, 9.5);
    EXPECT_EQ(action::bestPlan(task).unresolved.at(0).why, Hindrance::NothingMovesIt);
    allow(task, Quantity::Dip, 0.1, 0.2, 1);
    EXPECT_EQ(action::bestPlan(task).unresolved.at(0).why, Hindrance::OutOfReach);
    allow(task, Quantity::Dip, 0.8, 0.8, 1);
    EXPECT_EQ(action::bestPlan(task).unresolved.at(0).why, Hindrance::BetweenSteps);
    allow(task, Quantity::Dip, 0.1, 0.8, 1);
    EXPECT_TRUE(action::bestPlan(task).unresolved.empty());
}

TEST(Plan, pairThatWouldCostAnotherIsLeftAndSaidToBe)
{
    PlanTask task = emptyTask(ActionKind::Grand);
    judge(task, Quantity::Dip, 9.8, 10, 10.2);
    judge(task, Quantity::Aftertouch, 0.8, 1, 1.2);
    read(task, Quantity::Dip, 40, 10);
    read(task, Quantity::Aftertouch, 40, 2);
    allow(task, Quantity::Dip, 0.1, 2, 1);
    const Plan plan = action::bestPlan(task);
    EXPECT_TRUE(plan.moves.empty());
    ASSERT_EQ(plan.unresolved.size(), 1U);
    EXPECT_EQ(plan.unresolved.front().why, Hindrance::AtTheCostOf);
}

TEST(Plan, forbiddenAdjustmentsAndRailsAreNotUsed)
{
    PlanTask task = letOffTask();
    task.forbidden.single.insert({Quantity::LetOff, Note(40)});
    EXPECT_TRUE(action::bestPlan(task).moves.empty());
    task = letOffTask();
    task.forbidden.everywhere.insert(Quantity::LetOff);
    EXPECT_TRUE(action::bestPlan(task).moves.empty());
    task.setup.rails = {
        {.id = "let_off_rail", .quantity = Quantity::LetOff, .step = mm(0.1), .most = mm(2), .minutes = 5}};
    EXPECT_EQ(action::bestPlan(task).rails.size(), 1U);
    task.forbidden.rails.insert("let_off_rail");
    EXPECT_TRUE(action::bestPlan(task).rails.empty());
}

TEST(Plan, predictedAftertouchIsAPairAndSaidToBePredicted)
{
    PlanTask task = emptyTask(ActionKind::Grand);
    task.setup.leverRatio = 5;
    judge(task, Quantity::Aftertouch, 0.9, 1.1, 1.3);
    read(task, Quantity::Blow, 40, 46);
    read(task, Quantity::LetOff, 40, 2);
    read(task, Quantity::Dip, 40, 9.8);
    allow(task, Quantity::Dip, 0.1, 1, 1);
    const Plan plan = action::bestPlan(task);
    ASSERT_EQ(plan.pairs.size(), 1U);
    EXPECT_TRUE(plan.pairs.front().predicted);
    EXPECT_NEAR(plan.pairs.front().before, 1.0, 1e-9);
    EXPECT_TRUE(plan.pairs.front().insideBefore);
    EXPECT_TRUE(plan.moves.empty());
}

TEST(Plan, guardedIntervalsAskForMoreThanTheLimits)
{
    PlanTask task = letOffTask();
    read(task, Quantity::LetOff, 40, 3.9);
    EXPECT_TRUE(action::bestPlan(task).moves.empty());
    task.set.entries[Quantity::LetOff].rule = tolerance::Rule::Guarded;
    task.set.entries[Quantity::LetOff].expandedUncertainty = mm(0.2);
    const Plan plan = action::bestPlan(task);
    EXPECT_EQ(plan.moves.size(), 1U);
    EXPECT_EQ(plan.pairs.front().status, tolerance::Status::In);
}

TEST(Plan, targetAimTurnsEveryScrewThatBringsItNearer)
{
    PlanTask task = letOffTask();
    read(task, Quantity::LetOff, 40, 3.4);
    EXPECT_TRUE(action::bestPlan(task).moves.empty());
    task.aim = action::Aim::Target;
    const Plan plan = action::bestPlan(task);
    ASSERT_EQ(plan.moves.size(), 1U);
    EXPECT_EQ(plan.moves.front().by, units::Amount(mm(-0.2)));
}

TEST(Plan, emptyTaskGivesAnEmptyPlan)
{
    const Plan plan = action::bestPlan(emptyTask(ActionKind::Grand));
    EXPECT_TRUE(plan.pairs.empty());
    EXPECT_TRUE(plan.moves.empty());
    EXPECT_EQ(plan.minutes, 0);
}

TEST(Plan, sameTaskGivesTheSamePlan)
{
    const PlanTask task = support::wholeActionWithRail(4, ActionKind::Vertical, Quantity::Blow);
    const Plan one = action::bestPlan(task), other = action::bestPlan(task);
    ASSERT_EQ(one.moves.size(), other.moves.size());
    for (std::size_t i = 0; i < one.moves.size(); ++i)
        EXPECT_EQ(one.moves[i].by, other.moves[i].by);
}

} // namespace hammerline
