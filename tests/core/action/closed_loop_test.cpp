// Invented actions regulated to the end, by plans and by the textbook. The long table is closed_loop_table's.

#include "support/regulation.h"

#include <gtest/gtest.h>

namespace hammerline {

using catalogue::ActionKind;
using support::PlanStyle;
using support::RegulationOutcome;

namespace {

constexpr std::uint64_t actions = 5;

class ClosedLoop : public testing::TestWithParam<ActionKind> {
protected:
    static RegulationOutcome byPlans(const PlanStyle &style)
    {
        RegulationOutcome sum;
        for (std::uint64_t seed = 1; seed <= actions; ++seed)
            sum += support::regulateByPlans(support::SimulatedAction(seed, GetParam()), style);
        return sum;
    }
    static RegulationOutcome byTextbook(int rounds = support::mostRounds)
    {
        RegulationOutcome sum;
        for (std::uint64_t seed = 1; seed <= actions; ++seed)
            sum += support::regulateByTextbook(support::SimulatedAction(seed, GetParam()), rounds);
        return sum;
    }
};

} // namespace

TEST_P(ClosedLoop, plansTakeAtMostThreeFifthsOfTheTextbooksMinutesAndLeaveHalfAsMuchOut)
{
    const RegulationOutcome plans = byPlans({.marginalTakes = 3}), textbook = byTextbook();
    EXPECT_LE(plans.minutes, 0.6 * textbook.minutes);
    EXPECT_LE(2 * plans.trulyOut, textbook.trulyOut);
}

TEST_P(ClosedLoop, textbookGivenUpEarlyStillTakesLongerAndLeavesMoreOut)
{
    const RegulationOutcome plans = byPlans({.marginalTakes = 3}), textbook = byTextbook(3);
    EXPECT_LT(plans.minutes, textbook.minutes);
    EXPECT_LE(2 * plans.trulyOut, textbook.trulyOut);
}

TEST_P(ClosedLoop, plansThatLearnTakeAtMostHalf)
{
    const RegulationOutcome plans = byPlans({.learns = true, .marginalTakes = 3});
    EXPECT_LE(plans.minutes, 0.5 * byTextbook().minutes);
}

TEST_P(ClosedLoop, guardedPlansLeaveNothingTrulyOut)
{
    EXPECT_EQ(byPlans({.guarded = true, .marginalTakes = 3}).trulyOut, 0);
}

TEST_P(ClosedLoop, sameActionIsRegulatedTheSameWayTwice)
{
    const support::SimulatedAction action(9, GetParam());
    const RegulationOutcome one = support::regulateByPlans(action, {}), other = support::regulateByPlans(action, {});
    EXPECT_EQ(one.minutes, other.minutes);
    EXPECT_EQ(one.trulyOut, other.trulyOut);
}

INSTANTIATE_TEST_SUITE_P(OfBothKinds, ClosedLoop, testing::Values(ActionKind::Vertical, ActionKind::Grand),
                         [](const auto &each) { return std::string(catalogue::idOf(each.param)); });

} // namespace hammerline
