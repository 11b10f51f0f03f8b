#include "analysis/analysis.h"

#include <gtest/gtest.h>

#include <array>

namespace hammerline::analysis {
namespace {

TEST(MeanSd, DividesByOneLessThanTheCount)
{
    const std::array values{2.0, 4.0, 4.0, 4.0, 5.0, 5.0, 7.0, 9.0};
    const auto result = meanSd(values);
    EXPECT_DOUBLE_EQ(result.mean, 5);
    EXPECT_DOUBLE_EQ(result.sd.value(), 2.1380899352993950); // sqrt(32 / 7)
}

TEST(MeanSd, HasNoSpreadForASingleValue)
{
    const std::array one{3.2};
    EXPECT_EQ(meanSd(one).mean, 3.2);
    EXPECT_FALSE(meanSd(one).sd);
}

TEST(MeanSd, IsZeroForEqualValues)
{
    const std::vector<double> equal(88, 0.1);
    EXPECT_EQ(meanSd(equal).mean, 0.1);
    EXPECT_EQ(meanSd(equal).sd, 0);
}

TEST(MedianOf, IsTheMiddleOrTheMeanOfTheMiddleTwo)
{
    EXPECT_EQ(medianOf({3, 1, 2}), 2);
    EXPECT_EQ(medianOf({4, 1, 3, 2}), 2.5);
    EXPECT_EQ(medianOf({7}), 7);
}

TEST(MadOf, IsThePlainMedianOfDeviations)
{
    EXPECT_EQ(madOf({1, 1, 2, 2, 4, 6, 9}), 1);
    EXPECT_EQ(madOf({5}), 0);
}

} // namespace
} // namespace hammerline::analysis
