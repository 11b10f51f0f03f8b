#include "analysis/trend.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace hammerline::analysis {
namespace {

using catalogue::Quantity;
using keyboard::Note;
using units::Length;

constexpr double daysAYear = 365.25;

/// Let-off from note 1 upwards; 0: not read.
MeasuredPass pass(double day, const std::vector<double> &letOff)
{
    MeasuredPass made;
    made.pass.began = readings::Instant(std::chrono::milliseconds(static_cast<std::int64_t>(day * 86'400'000)));
    int note = 1;
    for (const double value : letOff) {
        if (value > 0)
            made.values.set(Quantity::LetOff, Note(note), {Length::millimetres(value)});
        ++note;
    }
    return made;
}

TEST(Trend, IsTheSlopeOfTheMeansPerYear)
{
    const auto trend =
        trendsOf({pass(0, {3, 4}), pass(daysAYear, {3.1, 4.1}), pass(2 * daysAYear, {3.2, 4.2})}, {}, nullptr).at(0);
    ASSERT_EQ(trend.points.size(), 3u);
    EXPECT_NEAR(trend.points[0].mean, 3.5, 1e-12);
    EXPECT_NEAR(trend.perYear.value().slope, 0.1, 1e-9);
    EXPECT_NEAR(trend.lastChange(), 0.2, 1e-12);
    EXPECT_EQ(trend.claim, Claim::Larger);
    EXPECT_NEAR(trend.points[2].sinceFirst.value().meanChange, 0.2, 1e-12);
}

TEST(Trend, TwoPassesGiveNoClaim)
{
    EXPECT_EQ(trendsOf({pass(0, {3, 4}), pass(9, {9, 9})}, {}, nullptr).at(0).claim, Claim::TooFew);
    EXPECT_TRUE(trendsOf({pass(0, {3, 4})}, {}, nullptr).empty());
}

TEST(Trend, ScatterBetweenPassesIsNoDrift)
{
    const auto trend =
        trendsOf({pass(0, {3, 3}), pass(30, {3.4, 3.4}), pass(60, {2.9, 2.9}), pass(90, {3.2, 3.2})}, {}, nullptr);
    EXPECT_EQ(trend.at(0).claim, Claim::NoChange);
}

TEST(Trend, CountsOnlyNotesReadEveryTimeSoThatNoMeanMovesByWhatWasReadOnce)
{
    const auto trend = trendsOf({pass(0, {3, 9, 3}), pass(1, {3, 0, 3}), pass(2, {3, 9, 3})}, {}, nullptr).at(0);
    EXPECT_EQ(trend.notes.size(), 2u);
    for (const TrendPoint &point : trend.points)
        EXPECT_NEAR(point.mean, 3, 1e-12);
}

TEST(Trend, APassThatReadFewNotesIsLeftOut)
{
    const auto trend = trendsOf({pass(0, {3, 3, 3}), pass(1, {3}), pass(2, {3, 3, 3})}, {}, nullptr).at(0);
    EXPECT_EQ(trend.points.size(), 2u);
    EXPECT_EQ(trend.notes.size(), 3u);
}

TEST(Trend, IsToldOfEachSectionAndInTheOrderOfTime)
{
    const keyboard::Sections sections{{"bass", {Note(1), Note(1)}}, {"treble", {Note(2), Note(2)}}};
    const auto trends = trendsOf({pass(9, {3, 5}), pass(0, {3, 4})}, sections, nullptr);
    ASSERT_EQ(trends.size(), 3u);
    EXPECT_NEAR(trends[1].lastChange(), 0, 1e-12);
    EXPECT_NEAR(trends[2].lastChange(), 1, 1e-12);
    EXPECT_EQ(trends[2].section, "treble");
    EXPECT_EQ(trends[0].points[1].most, Note(2));
}

TEST(FitLine, NeedsTwoDifferentPlaces)
{
    EXPECT_FALSE(fitLine(std::vector{1.0, 1.0}, std::vector{1.0, 2.0}));
    EXPECT_FALSE(fitLine(std::vector{1.0}, std::vector{1.0}));
    EXPECT_DOUBLE_EQ(fitLine(std::vector{1.0, 2.0}, std::vector{1.0, 3.0}).value().slope, 2);
}

} // namespace
} // namespace hammerline::analysis
