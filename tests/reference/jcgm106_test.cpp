// Source: JCGM 106:2012, The role of measurement uncertainty in conformity assessment, examples of clause 7 (printed to
// two digits; quoted from memory) and 8.3 (risk at a guarded limit). The examples are no lengths: their figures stand
// here as millimetres.
#include "tolerance/tolerance.h"

#include <gtest/gtest.h>

namespace hammerline::reference {
namespace {

using tolerance::conformanceProbability;
using tolerance::Limits;

units::Amount mm(double value)
{
    return units::Length::millimetres(value);
}

TEST(Jcgm106, BreakdownVoltageBelowItsUpperLimit)
{
    const Limits limits{.target = mm(-5.5), .high = mm(-5.40), .expandedUncertainty = mm(0.10)};
    EXPECT_NEAR(conformanceProbability(mm(-5.47), limits), 0.92, 0.005);
    EXPECT_NEAR(conformanceProbability(mm(-5.47), limits), 0.919243, 5e-7);
}

TEST(Jcgm106, BurstPressureAboveItsLowerLimit)
{
    const Limits limits{.low = mm(490), .target = mm(500), .expandedUncertainty = mm(20)};
    EXPECT_NEAR(conformanceProbability(mm(507), limits), 0.96, 0.005);
    EXPECT_NEAR(conformanceProbability(mm(507), limits), 0.955435, 5e-7);
}

TEST(Jcgm106, ViscosityBetweenTwoLimits)
{
    const Limits limits{.low = mm(12.5), .target = mm(14), .high = mm(16.3), .expandedUncertainty = mm(3.6)};
    EXPECT_NEAR(conformanceProbability(mm(13.6), limits), 0.66, 0.005);
    EXPECT_NEAR(conformanceProbability(mm(13.6), limits), 0.662630, 5e-7);
}

TEST(Jcgm106, RiskAtALimitIsAHalfUnderTheSimpleRuleAndTwoPercentUnderTheGuarded)
{
    const Limits limits{.target = mm(0), .high = mm(3), .expandedUncertainty = mm(0.2)};
    EXPECT_NEAR(1 - conformanceProbability(mm(3), limits), 0.5, 1e-12);
    EXPECT_NEAR(1 - conformanceProbability(mm(2.8), limits), 0.022750131948, 1e-12);
}

} // namespace
} // namespace hammerline::reference
