#include "action/punchings.h"

#include <gtest/gtest.h>

namespace hammerline {

using units::Length;

namespace {

std::vector<Length> mm(const std::vector<double> &sizes)
{
    std::vector<Length> lengths;
    for (const double size : sizes)
        lengths.push_back(Length::millimetres(size));
    return lengths;
}

const std::vector<Length> shelf = mm({0.05, 0.13, 0.25, 0.5, 1.0});

} // namespace

TEST(Punchings, exactSumWithFewestPieces)
{
    EXPECT_EQ(action::fewestPunchings(shelf, Length::millimetres(0.8)), mm({0.5, 0.25, 0.05}));
    EXPECT_EQ(action::fewestPunchings(shelf, Length::millimetres(0.26)), mm({0.13, 0.13}));
}

TEST(Punchings, nearestSumWhereNoneIsExact)
{
    EXPECT_EQ(action::fewestPunchings(shelf, Length::millimetres(0.12)), mm({0.13}));
    EXPECT_EQ(action::fewestPunchings(mm({0.5, 0.25}), Length::millimetres(0.6)), mm({0.5}));
}

TEST(Punchings, signSaysNothing)
{
    EXPECT_EQ(action::fewestPunchings(shelf, Length::millimetres(-0.5)), mm({0.5}));
}

TEST(Punchings, lessThanHalfThePaperIsNoPaper)
{
    EXPECT_TRUE(action::fewestPunchings(mm({0.5}), Length::millimetres(0.2)).empty());
}

TEST(Punchings, betweenTwoSumsFewerPiecesThenThickerOnes)
{
    EXPECT_EQ(action::fewestPunchings(mm({0.4}), Length::millimetres(0.2)), mm({}));
    EXPECT_EQ(action::fewestPunchings(mm({0.2, 0.4}), Length::millimetres(0.3)), mm({0.4}));
}

TEST(Punchings, emptyShelfGivesNone)
{
    EXPECT_TRUE(action::fewestPunchings({}, Length::millimetres(0.3)).empty());
}

TEST(Punchings, shelfInInchesAndMillimetresTogether)
{
    const std::vector<Length> mixed{Length::nanometres(76'200), Length::nanometres(127'000), Length::millimetres(0.25)};
    EXPECT_EQ(action::fewestPunchings(mixed, Length::nanometres(203'200)),
              (std::vector<Length>{Length::nanometres(127'000), Length::nanometres(76'200)}));
}

} // namespace hammerline
