// The plan is the best there is: held against every plan tried one by one.

#include "action/plan.h"
#include "support/plan_brute_force.h"
#include "support/random_plan.h"

#include <gtest/gtest.h>

#include <string>

namespace hammerline {

using action::Plan;
using action::PlanTask;

namespace {

void expectBest(const PlanTask &task, const std::string &which)
{
    const Plan plan = action::bestPlan(task);
    const support::PlanWorth best = support::bestOfAllPlans(task);
    const auto worth = support::worthOf(task, plan);
    ASSERT_TRUE(worth) << which;
    EXPECT_EQ(plan.pairsInAfter, best.pairs) << which;
    EXPECT_NEAR(plan.minutes, best.minutes, 1e-9) << which;
    EXPECT_NEAR(plan.closeness, best.closeness, 2e-9) << which;
    EXPECT_EQ(worth->pairs, plan.pairsInAfter) << which;
    EXPECT_NEAR(worth->minutes, plan.minutes, 1e-9) << which;
    EXPECT_NEAR(worth->closeness, plan.closeness, 1e-9) << which;
}

void expectBestOverSeeds(std::uint64_t first, int count, const support::RandomPlanSize &size)
{
    for (std::uint64_t seed = first; seed < first + static_cast<std::uint64_t>(count); ++seed) {
        expectBest(support::randomPlanTask(seed, size), "seed " + std::to_string(seed));
        if (testing::Test::HasFailure())
            return;
    }
}

} // namespace

TEST(PlanOptimal, oneNoteWithoutRailsIsTheBestOfAllTurns)
{
    expectBestOverSeeds(1, 3000, {.notes = 1, .mostSteps = 1, .mostRailSteps = 0, .rails = 0});
}

TEST(PlanOptimal, moreStepsOnOneNote)
{
    expectBestOverSeeds(10'000, 150, {.notes = 1, .mostSteps = 2, .mostRailSteps = 0, .rails = 0});
}

TEST(PlanOptimal, oneRailOverThreeNotes)
{
    expectBestOverSeeds(20'000, 250, {.notes = 3, .mostSteps = 1, .mostRailSteps = 2, .rails = 1});
}

TEST(PlanOptimal, severalRailsAtOnce)
{
    expectBestOverSeeds(30'000, 120, {.notes = 2, .mostSteps = 1, .mostRailSteps = 1, .rails = 3});
}

// Where rail and screws move the same value, positions are told apart by what is left after whole steps of the screw.
TEST(PlanOptimal, letOffRailBesideLetOffScrewsToTheTarget)
{
    int tried = 0;
    for (std::uint64_t seed = 40'000; tried < 150; ++seed) {
        PlanTask task = support::randomPlanTask(seed, {.notes = 3, .mostSteps = 1, .mostRailSteps = 2, .rails = 1});
        task.aim = action::Aim::Target;
        const auto screw = task.setup.adjustments.find(catalogue::Quantity::LetOff);
        if (task.setup.rails.empty() || screw == task.setup.adjustments.end())
            continue;
        ++tried;
        action::Rail &rail = task.setup.rails.front();
        rail.quantity = catalogue::Quantity::LetOff;
        const std::int64_t step = rail.step.baseCount() / (tried % 2 == 0 ? 1 : 2);
        screw->second.step = units::Amount(units::Dimension::Length, step);
        screw->second.most = units::Amount(units::Dimension::Length, step * (1 + tried % 3));
        expectBest(task, "seed " + std::to_string(seed));
        if (testing::Test::HasFailure())
            return;
    }
}

} // namespace hammerline
