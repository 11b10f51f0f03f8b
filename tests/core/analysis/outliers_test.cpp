#include "analysis/outliers.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace hammerline::analysis {
namespace {

TEST(Outliers, TheScoreIsTheDistanceFromTheMedianInMads)
{
    // Median 3, MAD 1: 0.6745 of the distance.
    const std::vector<double> values{1, 2, 3, 4, 100};
    EXPECT_THAT(modifiedZScores(values),
                testing::ElementsAre(testing::DoubleNear(-1.349, 1e-9), testing::DoubleNear(-0.6745, 1e-9), 0,
                                     testing::DoubleNear(0.6745, 1e-9), testing::DoubleNear(65.4265, 1e-9)));
}

TEST(Outliers, OneWildValueDoesNotHideAnother)
{
    // Two of ten: the ordinary z-score of both is below 3.
    const std::vector<double> values{0.1, 0.2, 0.15, 0.12, 0.18, 0.11, 0.19, 0.16, 9, 9.1};
    const auto scores = modifiedZScores(values);
    EXPECT_GT(scores[8], outlyingScore);
    EXPECT_GT(scores[9], outlyingScore);
}

TEST(Outliers, TheOneThatMovedAmongManyThatDidNotIsFound)
{
    std::vector<double> values(87, 0.0);
    values.push_back(0.5);
    const auto scores = modifiedZScores(values);
    EXPECT_GT(scores.back(), outlyingScore);
    EXPECT_EQ(scores.front(), 0);
}

TEST(Outliers, WhereAllAreTheSameNoneStandsApart)
{
    EXPECT_THAT(modifiedZScores(std::vector<double>(5, 2.5)), testing::Each(0));
}

} // namespace
} // namespace hammerline::analysis
