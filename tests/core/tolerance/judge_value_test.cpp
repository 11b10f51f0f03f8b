#include "core/tolerance/sample_sets.h"

#include <gtest/gtest.h>

namespace hammerline::tolerance {
namespace {

using samples::mm;

const Limits simple{.low = mm(1), .target = mm(2), .high = mm(3), .expandedUncertainty = mm(0.2)};
const Limits guarded{
    .low = mm(1), .target = mm(2), .high = mm(3), .expandedUncertainty = mm(0.2), .rule = Rule::Guarded};

TEST(JudgeValue, HoldsLimitsThemselvesIn)
{
    EXPECT_EQ(judgeValue(mm(1), simple), Status::In);
    EXPECT_EQ(judgeValue(mm(3), simple), Status::In);
    EXPECT_EQ(judgeValue(mm(0.999999), simple), Status::Out);
    EXPECT_EQ(judgeValue(mm(3.000001), simple), Status::Out);
}

TEST(JudgeValue, IsMarginalNearerToALimitThanTheUncertainty)
{
    EXPECT_EQ(judgeValue(mm(1), guarded), Status::Marginal);
    EXPECT_EQ(judgeValue(mm(1.199999), guarded), Status::Marginal);
    EXPECT_EQ(judgeValue(mm(1.2), guarded), Status::In) << "as far as W is not nearer than W";
    EXPECT_EQ(judgeValue(mm(2.8), guarded), Status::In);
    EXPECT_EQ(judgeValue(mm(2.800001), guarded), Status::Marginal);
    EXPECT_EQ(judgeValue(mm(0.999999), guarded), Status::Out);
}

TEST(JudgeValue, IgnoresTheUncertaintyUnderTheSimpleRule)
{
    EXPECT_EQ(judgeValue(mm(1.1), simple), Status::In);
}

TEST(JudgeValue, IsInOnALimitUnderTheGuardedRuleWithoutUncertainty)
{
    Limits exact = guarded;
    exact.expandedUncertainty = mm(0);
    EXPECT_EQ(judgeValue(mm(1), exact), Status::In);
}

TEST(JudgeValue, CountsATenthOfANanometreAsOnTheLimit)
{
    EXPECT_EQ(judgeValue(3.00000009, simple), Status::In);
    EXPECT_EQ(judgeValue(3.00000011, simple), Status::Out);
    EXPECT_EQ(judgeValue(0.99999991, simple), Status::In);
    EXPECT_EQ(judgeValue(1.19999995, guarded), Status::In);
}

TEST(JudgeValue, KnowsOneSidedAndBarePairs)
{
    const Limits onlyHigh{.target = mm(2), .high = mm(3), .expandedUncertainty = mm(0.2), .rule = Rule::Guarded};
    EXPECT_EQ(judgeValue(mm(-100), onlyHigh), Status::In);
    EXPECT_EQ(judgeValue(mm(2.9), onlyHigh), Status::Marginal);
    EXPECT_EQ(judgeValue(mm(3.1), onlyHigh), Status::Out);
    EXPECT_EQ(judgeValue(mm(500), Limits{.target = mm(2), .rule = Rule::Guarded}), Status::In);
}

TEST(JudgeValue, IsMarginalEverywhereWhereTheUncertaintyFillsTheLimits)
{
    Limits narrow = guarded;
    narrow.expandedUncertainty = mm(1.5);
    EXPECT_EQ(judgeValue(mm(2), narrow), Status::Marginal);
}

TEST(ConformanceProbability, IsCertainWithoutUncertainty)
{
    Limits exact = simple;
    exact.expandedUncertainty = mm(0);
    EXPECT_EQ(conformanceProbability(mm(3), exact), 1);
    EXPECT_EQ(conformanceProbability(mm(3.000001), exact), 0);
}

TEST(ConformanceProbability, IsAHalfOnALimitThatIsFarFromTheOther)
{
    EXPECT_NEAR(conformanceProbability(mm(3), simple), 0.5, 1e-12);
}

TEST(ConformanceProbability, DividesByTheCoverageFactor)
{
    // One standard uncertainty inside the upper limit: Phi(1).
    Limits threefold = simple;
    threefold.coverageFactor = 4;
    EXPECT_NEAR(conformanceProbability(mm(2.9), simple), 0.8413447460685429, 1e-12);
    EXPECT_NEAR(conformanceProbability(mm(2.95), threefold), 0.8413447460685429, 1e-12);
}

TEST(ConformanceProbability, KeepsDigitsFarOutside)
{
    // Phi(-8) = 6.22096057427178e-16
    EXPECT_NEAR(conformanceProbability(mm(3.8), simple) / 6.22096057427178e-16, 1, 1e-9);
    EXPECT_NEAR(conformanceProbability(mm(0.2), simple) / 6.22096057427178e-16, 1, 1e-9);
}

TEST(ConformanceProbability, IsOneForABareTarget)
{
    EXPECT_EQ(conformanceProbability(mm(7), Limits{.target = mm(2), .expandedUncertainty = mm(1)}), 1);
}

TEST(ConformanceProbability, FallsToZeroNotToNoNumberForATinyUncertainty)
{
    Limits sharp = simple;
    sharp.expandedUncertainty = units::Length::nanometres(1);
    sharp.coverageFactor = 1e300;
    EXPECT_EQ(conformanceProbability(mm(4), sharp), 0);
    EXPECT_EQ(conformanceProbability(mm(2), sharp), 1);
}

} // namespace
} // namespace hammerline::tolerance
