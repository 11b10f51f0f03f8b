#include "analysis/analysis.h"

#include "core/tolerance/sample_sets.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <array>

namespace hammerline::analysis {
namespace {

namespace samples = tolerance::samples;
using samples::Quantity;

TEST(PairedComparison, HasOnlyTheMeanForOnePair)
{
    const std::array one{0.5};
    const auto comparison = pairedComparison(one);
    EXPECT_EQ(comparison.pairs, 1);
    EXPECT_EQ(comparison.meanChange, 0.5);
    EXPECT_FALSE(comparison.sdChange || comparison.t || comparison.p || comparison.degreesOfFreedom);
    EXPECT_FALSE(comparison.ci95Low || comparison.ci95High || comparison.agreementLow || comparison.agreementHigh);
}

TEST(PairedComparison, HasNoTestWhereAllChangesAreTheSame)
{
    const std::array same{0.1, 0.1, 0.1};
    const auto comparison = pairedComparison(same);
    EXPECT_FALSE(comparison.t || comparison.p);
    EXPECT_EQ(comparison.sdChange, 0);
    EXPECT_EQ(comparison.degreesOfFreedom, 2);
    EXPECT_EQ(comparison.ci95Low, 0.1);
    EXPECT_EQ(comparison.agreementHigh, 0.1);
}

TEST(PairedComparison, WorksByHandForTwoPairs)
{
    // Changes 1 and 3: mean 2, sd sqrt 2, standard error 1, t = 2 with 1 degree of freedom, p = 1 - 2/pi * atan 2.
    const std::array two{1.0, 3.0};
    const auto comparison = pairedComparison(two);
    EXPECT_DOUBLE_EQ(comparison.t.value(), 2);
    EXPECT_NEAR(comparison.p.value(), 0.29516723530086653, 1e-12);
    EXPECT_NEAR(comparison.ci95High.value(), 2 + 12.706204736174707, 1e-9);
    EXPECT_NEAR(comparison.agreementLow.value(), 2 - 1.96 * 1.4142135623730951, 1e-12);
}

TEST(Compare, PairsNotesReadInBoth)
{
    const auto before = samples::table(Quantity::LetOff, {{1, 3.0}, {2, 3.0}, {3, 3.0}});
    const auto after = samples::table(Quantity::LetOff, {{2, 3.1}, {3, 3.3}, {4, 9.0}});
    const auto comparison = compare(before, after, nullptr).at(Quantity::LetOff);
    EXPECT_EQ(comparison.pairs, 2);
    EXPECT_DOUBLE_EQ(comparison.meanChange, 0.2);
    EXPECT_FALSE(comparison.outBefore || comparison.outAfter || comparison.mended || comparison.spoiled);
}

TEST(Compare, LeavesOutQuantitiesWithoutAPair)
{
    auto before = samples::table(Quantity::LetOff, {{1, 3.0}});
    before.set(Quantity::Dip, samples::Note(1), {samples::mm(10), 1});
    const auto after = samples::table(Quantity::LetOff, {{2, 3.0}});
    EXPECT_THAT(compare(before, after, nullptr), testing::IsEmpty());
    EXPECT_THAT(compare(before, before, nullptr), testing::SizeIs(2));
}

TEST(Compare, CountsMendedAndSpoiledOverJudgedPairs)
{
    const auto set = samples::letOffAndDip();
    const auto before = samples::table(Quantity::LetOff, {{1, 9}, {2, 9}, {3, 3}, {4, 3}});
    const auto after = samples::table(Quantity::LetOff, {{1, 3}, {2, 9}, {3, 9}, {4, 2.45}});
    const auto comparison = compare(before, after, &set).at(Quantity::LetOff);
    EXPECT_EQ(comparison.outBefore, 2);
    EXPECT_EQ(comparison.outAfter, 2);
    EXPECT_EQ(comparison.mended, 1);
    EXPECT_EQ(comparison.spoiled, 1) << "marginal is not out";
}

TEST(Compare, CountsNothingForAQuantityThatTheSetDoesNotName)
{
    const auto set = samples::letOffAndDip();
    const auto table = samples::table(Quantity::Blow, {{1, 45}, {2, 46}});
    const auto comparison = compare(table, table, &set).at(Quantity::Blow);
    EXPECT_FALSE(comparison.outBefore || comparison.mended);
    EXPECT_EQ(comparison.pairs, 2);
}

TEST(Compare, LeavesPairsOfAnUnjudgedColourOutOfTheCounts)
{
    auto set = samples::letOffAndDip();
    set.entries[Quantity::Dip].sharps.clear();
    const auto before = samples::table(Quantity::Dip, {{1, 12}, {2, 12}});
    const auto after = samples::table(Quantity::Dip, {{1, 10}, {2, 10}});
    const auto comparison = compare(before, after, &set).at(Quantity::Dip);
    EXPECT_EQ(comparison.pairs, 2);
    EXPECT_EQ(comparison.outBefore, 1);
    EXPECT_EQ(comparison.mended, 1);
}

} // namespace
} // namespace hammerline::analysis
