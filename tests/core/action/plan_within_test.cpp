// A plan that would take too long is given up, after the same number of tries every time.

#include "action/plan.h"
#include "support/random_plan.h"

#include <gtest/gtest.h>

namespace hammerline {
namespace {

using action::PlanTask;
using catalogue::ActionKind;
using catalogue::Quantity;
using units::Length;

bool same(const action::Plan &one, const action::Plan &other)
{
    const auto isSame = [](const action::Move &a, const action::Move &b) {
        return a.note == b.note && a.adjust == b.adjust && a.by == b.by;
    };
    return one.minutes == other.minutes && one.closeness == other.closeness && one.pairsInAfter == other.pairsInAfter &&
           std::equal(one.moves.begin(), one.moves.end(), other.moves.begin(), other.moves.end(), isSame);
}

/// Three rails as fine as screws on the same notes, above screws of a micrometre.
PlanTask finestOfAll()
{
    PlanTask task = support::wholeActionWithRail(5, ActionKind::Vertical, Quantity::LetOff);
    for (auto &[quantity, adjustment] : task.setup.adjustments)
        if (quantity != Quantity::DownWeight && quantity != Quantity::UpWeight)
            adjustment.step = Length::nanometres(1'000);
    task.setup.rails.front().step = Length::nanometres(1'000);
    for (const Quantity quantity : {Quantity::Blow, Quantity::LetOff}) {
        action::Rail rail = task.setup.rails.front();
        rail.id += "_and_" + std::string(catalogue::idOf(quantity));
        rail.quantity = quantity;
        task.setup.rails.push_back(rail);
    }
    task.aim = action::Aim::Target;
    return task;
}

TEST(PlanWithin, AUsualPlanIsTheSameAsWithoutABound)
{
    for (const auto kind : {ActionKind::Vertical, ActionKind::Grand}) {
        const PlanTask task = support::wholeActionTask(3, kind);
        const auto plan = action::bestPlanWithin(task, 300'000);
        ASSERT_TRUE(plan);
        EXPECT_TRUE(same(*plan, action::bestPlan(task)));
    }
    const PlanTask railed = support::wholeActionWithRail(3, ActionKind::Vertical, Quantity::Blow);
    const auto plan = action::bestPlanWithin(railed, 300'000);
    ASSERT_TRUE(plan);
    EXPECT_TRUE(same(*plan, action::bestPlan(railed)));
}

TEST(PlanWithin, WithoutATryNothingIsFound)
{
    EXPECT_FALSE(action::bestPlanWithin(support::wholeActionTask(3, ActionKind::Grand), 0));
    EXPECT_FALSE(action::bestPlanWithin(support::wholeActionWithRail(3, ActionKind::Vertical, Quantity::Blow), 0));
}

// Without the bound it would not end within the test's limit (tests.cmake).
TEST(PlanWithin, WhatWouldTakeTooLongIsGivenUp)
{
    EXPECT_FALSE(action::bestPlanWithin(finestOfAll(), 20'000));
}

} // namespace
} // namespace hammerline
