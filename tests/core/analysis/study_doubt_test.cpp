// The whole way of a doubt, simulated: a gauge with a step is studied, a pass takes over what the study found, and then
// notes whose true value is known are read with it, rounded to a step. Seeds are fixed.

#include "analysis/study_intervals.h"
#include "tolerance/doubt.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>
#include <tuple>

namespace hammerline::analysis {
namespace {

/// Standard deviations in steps of the gauge, which is 0.1 mm.
struct Shop {
    double hand = 0;   ///< the same person again
    double people = 0; ///< one to the next
    int coarser = 1;   ///< steps of the gauge in one step of what is written down
};

constexpr double step = 0.1;

double rounded(double value, double to)
{
    return std::round(value / to) * to;
}

using Numbers = std::mt19937_64;

double trueValue(Numbers &numbers)
{
    return std::uniform_real_distribution<>(9.4, 10.6)(numbers);
}

/// Large, so that it says what such a gauge does and not what chance did: 80 notes, 20 people, 4 takes.
GaugeStudy studyOf(const Shop &shop, Numbers &numbers)
{
    std::normal_distribution<> normal(0, step);
    std::vector<Trial> trials;
    std::vector<double> people;
    for (int person = 0; person < 20; ++person)
        people.push_back(shop.people * normal(numbers));
    for (int note = 1; note <= 80; ++note) {
        const double value = trueValue(numbers);
        for (std::size_t person = 0; person < people.size(); ++person)
            for (int take = 1; take <= 4; ++take) {
                const double shown = rounded(value + people[person] + shop.hand * normal(numbers), step);
                trials.push_back({keyboard::Note(note), std::string(1, static_cast<char>('A' + person)), take,
                                  units::Length::nanometres(std::llround(shown * 1e6))});
            }
    }
    return gaugeStudy(trials).value();
}

/// Mean of several, since 20 people are few to know people by.
double uncertaintyFound(const Shop &shop, Numbers &numbers)
{
    constexpr int studies = 8;
    double variance = 0;
    for (int study = 0; study < studies; ++study)
        variance += studyOf(shop, numbers).variance.gauge / studies;
    return 2 * std::sqrt(variance);
}

struct Fared {
    double within = 0; ///< part of the readings off by no more than the expanded doubt
    double ratio = 0;  ///< doubt / what the readings are really off by, as standard deviations
};

Fared fared(const Shop &shop, const tolerance::Doubt &doubt, Numbers &numbers)
{
    constexpr int count = 40'000;
    std::normal_distribution<> normal(0, step);
    Fared fared;
    double squares = 0;
    for (int reading = 0; reading < count; ++reading) {
        const double value = trueValue(numbers);
        const double off =
            rounded(value + shop.people * normal(numbers) + shop.hand * normal(numbers), shop.coarser * step) - value;
        squares += off * off;
        fared.within += std::abs(off) <= doubt.expanded() ? 1.0 / count : 0;
    }
    fared.ratio = doubt.combined() / std::sqrt(squares / count);
    return fared;
}

class StudiedDoubt : public testing::TestWithParam<std::tuple<double, double, int>> {};

TEST_P(StudiedDoubt, CoversWhatReadingsAreOffByAndErrsLittle)
{
    const auto [hand, people, coarser] = GetParam();
    const Shop shop{hand, people, coarser};
    Numbers numbers(20'261'126);
    readings::Gauge gauge;
    gauge.resolution = units::Length::millimetres(step);
    gauge.expandedUncertainty = units::Length::millimetres(uncertaintyFound(shop, numbers));
    const auto doubt =
        tolerance::doubtOf({}, gauge, units::Length::millimetres(coarser * step / 2), units::Dimension::Length);
    ASSERT_TRUE(doubt);
    const Fared told = fared(shop, *doubt, numbers);
    EXPECT_GE(told.within, 0.94) << "k = 2 of a normal distribution: 0.9545; few people are known roughly";
    EXPECT_GE(told.ratio, 0.875) << "the header's figures";
    EXPECT_LE(told.ratio, 1.1);
}

INSTANTIATE_TEST_SUITE_P(FineAndCoarse, StudiedDoubt,
                         testing::Combine(testing::Values(0.02, 0.15, 0.3, 1.0, 3.0), testing::Values(0.0, 0.3, 1.0),
                                          testing::Values(1, 4)));

TEST(UncertaintyToJudgeBy, IsWhatTheStudyFoundOrTheStepWhicheverIsLarger)
{
    GaugeStudy study;
    study.expandedUncertainty = 0.2;
    EXPECT_DOUBLE_EQ(uncertaintyToJudgeBy(study, std::nullopt), 0.2);
    EXPECT_DOUBLE_EQ(uncertaintyToJudgeBy(study, 0.05), 0.2);
    EXPECT_DOUBLE_EQ(uncertaintyToJudgeBy(study, 0.5), 1 / std::sqrt(3.0));
}

} // namespace
} // namespace hammerline::analysis
