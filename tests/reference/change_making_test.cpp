// Punchings against published change-making cases: Exercism, canonical data of the exercise "change" (MIT), and Miller
// & Ranum, Problem Solving with Algorithms and Data Structures (63 from 1, 5, 10, 21, 25: three of 21, where the greedy
// way needs six). One coin is a hundredth of a millimetre. A sum that coins cannot make is made as nearly as can be
// here, so those cases are left out.

#include "action/punchings.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace hammerline {

namespace {

struct Case {
    std::vector<int> pieces;
    int sum;
    std::vector<int> expected; ///< thinnest first
};

const std::vector<Case> cases{
    {{1, 5, 10, 25, 100}, 25, {25}},
    {{1, 5, 10, 25, 100}, 15, {5, 10}},
    {{1, 4, 15, 20, 50}, 23, {4, 4, 15}},
    {{1, 5, 10, 21, 25}, 63, {21, 21, 21}},
    {{1, 2, 5, 10, 20, 50, 100}, 999, {2, 2, 5, 20, 20, 50, 100, 100, 100, 100, 100, 100, 100, 100, 100}},
    {{2, 5, 10, 20, 50}, 21, {2, 2, 2, 5, 10}},
    {{4, 5}, 27, {4, 4, 4, 5, 5, 5}},
    {{1, 5, 10, 21, 25}, 0, {}}};

units::Length thickness(int hundredths)
{
    return units::Length::nanometres(hundredths * 10'000);
}

std::vector<units::Length> thicknesses(const std::vector<int> &hundredths)
{
    std::vector<units::Length> lengths;
    for (const int each : hundredths)
        lengths.push_back(thickness(each));
    return lengths;
}

} // namespace

TEST(ChangeMaking, fewestPiecesOfThePublishedCases)
{
    for (const Case &each : cases) {
        std::vector<units::Length> expected = thicknesses(each.expected);
        std::reverse(expected.begin(), expected.end());
        EXPECT_EQ(action::fewestPunchings(thicknesses(each.pieces), thickness(each.sum)), expected) << each.sum;
    }
}

TEST(ChangeMaking, sumThatPiecesCannotMakeIsMadeAsNearlyAsCanBe)
{
    EXPECT_EQ(action::fewestPunchings(thicknesses({5, 10}), thickness(3)), thicknesses({5}));
    EXPECT_EQ(action::fewestPunchings(thicknesses({5, 10}), thickness(94)),
              thicknesses({10, 10, 10, 10, 10, 10, 10, 10, 10, 5}));
}

} // namespace hammerline
