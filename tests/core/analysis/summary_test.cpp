#include "analysis/analysis.h"

#include "core/tolerance/sample_sets.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace hammerline::analysis {
namespace {

namespace samples = tolerance::samples;
using samples::mm;
using samples::Note;
using samples::Quantity;

Summaries summariesOf(const readings::ValueTable &values, const tolerance::ToleranceSet &set,
                      const keyboard::Compass &compass = {})
{
    return summarise(tolerance::judge(values, set, compass, {}), &set);
}

TEST(Summarise, CountsVerdictsAndDescribesValues)
{
    auto set = samples::letOffAndDip();
    set.entries.erase(Quantity::Dip);
    const auto values = samples::table(Quantity::LetOff, {{1, 3.0}, {2, 3.7}, {3, 4.5}, {4, 2.45}});
    const auto summary = summariesOf(values, set, {Note(1), Note(6)}).at(Quantity::LetOff);
    EXPECT_TRUE(summary.judged);
    EXPECT_EQ(summary.count, 4);
    EXPECT_EQ(summary.missing, 2);
    EXPECT_EQ(summary.in, 2);
    EXPECT_EQ(summary.marginal, 1);
    EXPECT_EQ(summary.out, 1);
    EXPECT_EQ(summary.uneven, 3);
    EXPECT_DOUBLE_EQ(summary.mean.value(), 3.4125);
    EXPECT_DOUBLE_EQ(summary.median.value(), 3.35);
    EXPECT_EQ(summary.min, 2.45);
    EXPECT_EQ(summary.max, 4.5);
    EXPECT_DOUBLE_EQ(summary.largestStep.value(), 2.05);
}

TEST(Summarise, KeepsAQuantityThatNobodyRead)
{
    const auto summary = summariesOf({}, samples::letOffAndDip()).at(Quantity::LetOff);
    EXPECT_EQ(summary.count, 0);
    EXPECT_EQ(summary.missing, 88);
    EXPECT_FALSE(summary.mean || summary.sd || summary.median || summary.mad || summary.min || summary.max);
    EXPECT_FALSE(summary.largestStep);
}

TEST(Summarise, GivesTheLargestStepWithoutALimitForIt)
{
    auto set = samples::letOffAndDip();
    set.entries[Quantity::LetOff].step.reset();
    const auto values = samples::table(Quantity::LetOff, {{1, 3.0}, {2, 3.5}});
    const auto summary = summariesOf(values, set).at(Quantity::LetOff);
    EXPECT_EQ(summary.largestStep, 0.5);
    EXPECT_EQ(summary.uneven, 0);
}

TEST(Summarise, GoesOverNotesOfAnUnjudgedColourToo)
{
    auto set = samples::letOffAndDip();
    set.entries[Quantity::Dip].sharps.clear();
    const auto values = samples::table(Quantity::Dip, {{1, 10}, {2, 8}, {5, 8.5}});
    const auto summary = summariesOf(values, set).at(Quantity::Dip);
    EXPECT_EQ(summary.count, 3);
    EXPECT_EQ(summary.in, 1);
    EXPECT_EQ(summary.min, 8);
    EXPECT_EQ(summary.largestStep, 0.5);
}

TEST(Summarise, DescribesAQuantityThatTheSetDoesNotName)
{
    const auto summary =
        summariesOf(samples::table(Quantity::Blow, {{1, 45}}), samples::letOffAndDip()).at(Quantity::Blow);
    EXPECT_FALSE(summary.judged);
    EXPECT_EQ(summary.count, 1);
    EXPECT_EQ(summary.mean, 45);
    EXPECT_FALSE(summary.sd);
}

TEST(Summarise, SaysNothingOfWhatIsNeitherReadNorJudged)
{
    EXPECT_THAT(summariesOf({}, {}), testing::IsEmpty());
    const auto summaries = summariesOf(samples::table(Quantity::Blow, {{1, 45}}), samples::letOffAndDip());
    EXPECT_EQ(summaries.size(), 3U);
}

TEST(Summarise, TellsWhatIsJudgedFromTheVerdictsWhereNoSetIsHandedIn)
{
    const auto judgement = tolerance::judge(samples::table(Quantity::Blow, {{1, 45}}), samples::letOffAndDip(), {}, {});
    const auto summaries = summarise(judgement, nullptr);
    EXPECT_FALSE(summaries.at(Quantity::Blow).judged);
    EXPECT_TRUE(summaries.at(Quantity::Dip).judged);
}

} // namespace
} // namespace hammerline::analysis
