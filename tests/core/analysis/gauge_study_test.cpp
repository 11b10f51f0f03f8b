#include "analysis/gauge_study.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <random>

namespace hammerline::analysis {
namespace {

using keyboard::Note;
using testing::HasSubstr;

Trial trial(int note, const std::string &person, int take, double mm)
{
    return {Note(note), person, take, units::Length::millimetres(mm)};
}

/// values[note][person][take]
using Cube = std::vector<std::vector<std::vector<double>>>;

std::vector<Trial> trialsOf(const Cube &cube)
{
    std::vector<Trial> trials;
    for (std::size_t n = 0; n < cube.size(); ++n)
        for (std::size_t p = 0; p < cube[n].size(); ++p)
            for (std::size_t t = 0; t < cube[n][p].size(); ++t)
                trials.push_back(trial(static_cast<int>(n) + 1, std::string(1, static_cast<char>('A' + p)),
                                       static_cast<int>(t) + 1, cube[n][p][t]));
    return trials;
}

GaugeStudy study(const Cube &cube)
{
    const auto outcome = gaugeStudy(trialsOf(cube));
    EXPECT_TRUE(outcome.ok());
    return outcome.value();
}

TEST(GaugeStudy, ListsSourcesInOrderAndAddsUp)
{
    const auto result = study({{{1, 2}, {3, 4}}, {{5, 9}, {7, 8}}});
    std::vector<std::string> sources;
    double sum = 0;
    int degrees = 0;
    for (const auto &row : result.anova)
        sources.push_back(row.source);
    for (std::size_t i = 0; i < 4; ++i) {
        sum += result.anova[i].sumOfSquares;
        degrees += result.anova[i].degreesOfFreedom;
    }
    EXPECT_THAT(sources, testing::ElementsAre("note", "person", "interaction", "repeatability", "total"));
    EXPECT_NEAR(sum, result.anova[4].sumOfSquares, 1e-12);
    EXPECT_EQ(degrees, result.anova[4].degreesOfFreedom);
    EXPECT_FALSE(result.anova[4].meanSquare || result.anova[4].f || result.anova[3].f);
}

TEST(GaugeStudy, PoolsAnInteractionThatMayBeChance)
{
    // Cell means 1.5, 3.5, 7, 7.5: worked by hand, interaction SS 1.125 (F 0.409…, p > 0.5), repeatability SS 9.5.
    const auto result = study({{{1, 2}, {3, 4}}, {{5, 9}, {7, 8}}});
    EXPECT_TRUE(result.interactionPooled);
    EXPECT_DOUBLE_EQ(result.anova[2].sumOfSquares, 1.125);
    EXPECT_DOUBLE_EQ(result.anova[3].sumOfSquares, 9.5);
    EXPECT_DOUBLE_EQ(result.variance.repeatability, (1.125 + 9.5) / 5);
    EXPECT_DOUBLE_EQ(result.anova[0].f.value(), 45.125 / 2.125) << "against the pooled mean square";
    EXPECT_DOUBLE_EQ(result.anova[2].f.value(), 1.125 / (9.5 / 4)) << "as before pooling";
}

TEST(GaugeStudy, KeepsAnInteractionThatStandsOut)
{
    // Person B reads note 2 far too low: interaction MS 18, repeatability MS 0.5.
    const auto result = study({{{1, 2}, {1, 2}}, {{9, 10}, {3, 4}}});
    EXPECT_FALSE(result.interactionPooled);
    EXPECT_DOUBLE_EQ(*result.anova[2].meanSquare, 18);
    EXPECT_DOUBLE_EQ(result.variance.repeatability, 0.5);
    EXPECT_DOUBLE_EQ(result.anova[1].f.value(), 1) << "people against interaction";
    EXPECT_DOUBLE_EQ(result.variance.reproducibility, (18 - 0.5) / 2) << "the kept interaction alone";
    EXPECT_DOUBLE_EQ(result.variance.gauge, 0.5 + 8.75);
}

TEST(GaugeStudy, HasNoTestWhereTheDivisorIsZero)
{
    const auto identical = study({{{0.1, 0.1}, {0.1, 0.1}}, {{0.1, 0.1}, {0.1, 0.1}}});
    for (const auto &row : identical.anova)
        EXPECT_FALSE(row.f || row.p) << row.source;
    EXPECT_FALSE(identical.interactionPooled);
    EXPECT_FALSE(identical.percentOfTotalSd || identical.distinctCategories);
    EXPECT_EQ(identical.expandedUncertainty, 0);
}

TEST(GaugeStudy, FindsAnExactZeroWhereDecimalsHaveNoBinaryForm)
{
    // Additive to the last digit: the interaction is 0, not the dust of rounding.
    const auto result = study({{{0.1, 0.3}, {0.2, 0.4}}, {{1.1, 1.3}, {1.2, 1.4}}});
    EXPECT_EQ(result.anova[2].sumOfSquares, 0);
    EXPECT_EQ(result.anova[2].p, 1);
    EXPECT_TRUE(result.interactionPooled);
    const auto perfect = study({{{0.1, 0.1}, {0.2, 0.2}}, {{1.1, 1.1}, {1.3, 1.3}}});
    EXPECT_EQ(perfect.anova[3].sumOfSquares, 0);
    EXPECT_FALSE(perfect.anova[2].f || perfect.anova[2].p);
    EXPECT_TRUE(perfect.anova[0].f);
}

TEST(GaugeStudy, HoldsNegativeComponentsAtZero)
{
    const auto result = study({{{1, 5}, {1, 5}}, {{1, 5}, {1, 5}}});
    EXPECT_EQ(result.variance.note, 0);
    EXPECT_EQ(result.variance.reproducibility, 0);
    EXPECT_EQ(result.distinctCategories, 1) << "at least one";
}

TEST(GaugeStudy, TakesNegativeValuesAndMovesWithThem)
{
    const auto low = study({{{-1, -2}, {-3, -4}}, {{-5, -9}, {-7, -8}}});
    const auto high = study({{{1, 2}, {3, 4}}, {{5, 9}, {7, 8}}});
    EXPECT_EQ(low.variance.gauge, high.variance.gauge);
    EXPECT_EQ(low.expandedUncertainty, 2 * low.sd.gauge);
}

TEST(GaugeStudy, DoesNotCareForTheOrderOfTrials)
{
    auto trials = trialsOf({{{1, 2}, {3, 4}}, {{5, 9}, {7, 8}}});
    const auto before = gaugeStudy(trials).value();
    std::shuffle(trials.begin(), trials.end(), std::mt19937(7));
    EXPECT_EQ(gaugeStudy(trials).value().variance.total, before.variance.total);
}

TEST(GaugeStudyRefuses, FewerThanTwoOfAnything)
{
    for (const Cube &cube : {Cube{{{1, 2}, {3, 4}}}, Cube{{{1, 2}}, {{3, 4}}}, Cube{{{1}, {2}}, {{3}, {4}}}, Cube{}})
        EXPECT_THAT(gaugeStudy(trialsOf(cube)).fault().problem, HasSubstr("at least 2 notes, 2 people and 2 takes"));
}

TEST(GaugeStudyRefuses, WhatIsNotCrossedOrNotBalanced)
{
    auto trials = trialsOf({{{1, 2}, {3, 4}}, {{5, 9}, {7}}});
    EXPECT_THAT(gaugeStudy(trials).fault().problem, HasSubstr("'B' on note 2 has 1 takes, not 2"));
    trials.pop_back();
    EXPECT_THAT(gaugeStudy(trials).fault().problem, HasSubstr("'B' on note 2 has 0 takes, not 2"));
}

TEST(GaugeStudyRefuses, ATakeTwice)
{
    auto trials = trialsOf({{{1, 2}, {3, 4}}, {{5, 9}, {7, 8}}});
    trials.push_back(trial(2, "B", 1, 7));
    EXPECT_THAT(gaugeStudy(trials).fault().problem, HasSubstr("take 1 twice"));
}

TEST(GaugeStudyRefuses, LengthsAmongMasses)
{
    auto trials = trialsOf({{{1, 2}, {3, 4}}, {{5, 9}, {7, 8}}});
    trials.back().value = units::Mass::grams(8);
    EXPECT_THAT(gaugeStudy(trials).fault().problem, HasSubstr("lengths stand among masses"));
}

} // namespace
} // namespace hammerline::analysis
