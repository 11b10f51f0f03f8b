// Conformance probabilities (JCGM 106:2012, clause 7: normal distribution about the reading) against figures of 60
// digits: mpmath 1.3.0, half of erfc(z / sqrt 2) on the side of the smaller tail. Far outside, where 1 - cdf has no
// digits left, near the limits, one-sided, and between limits that are next to nothing apart.
#include "tolerance/tolerance.h"

#include <gtest/gtest.h>

namespace hammerline::reference {
namespace {

using tolerance::Limits;
using tolerance::Rule;
using tolerance::Status;

constexpr std::nullopt_t none = std::nullopt;

units::Amount mm(double value)
{
    return units::Length::millimetres(value);
}

struct Case {
    double value;
    std::optional<double> low, high;
    double uncertainty; ///< standard
    double probability;
};

Limits limitsOf(const Case &of)
{
    Limits limits{.target = mm(of.value)};
    if (of.low)
        limits.low = mm(*of.low);
    if (of.high)
        limits.high = mm(*of.high);
    return limits;
}

class Conformance : public testing::TestWithParam<Case> {};

TEST_P(Conformance, HasTenDigitsInEveryTail)
{
    const Case &of = GetParam();
    const double found = tolerance::conformanceProbability(mm(of.value), limitsOf(of), of.uncertainty);
    if (of.probability == 0)
        EXPECT_EQ(found, 0);
    else
        EXPECT_NEAR(found / of.probability, 1, 1e-10) << found;
}

INSTANTIATE_TEST_SUITE_P(
    BetweenTwoLimits, Conformance,
    testing::Values(Case{10, 9.8, 10.4, 0.1, 0.97721819680998767}, Case{10.4, 9.8, 10.4, 0.1, 0.49999999901341235},
                    Case{9.8, 9.8, 10.4, 0.1, 0.49999999901341235}, Case{10.39, 9.8, 10.4, 0.005, 0.97724986805182079},
                    Case{11.4, 9.8, 10.4, 0.1, 7.6198530241605261e-24},
                    Case{8.8, 9.8, 10.4, 0.1, 7.6198530241605261e-24},
                    Case{13.4, 9.8, 10.4, 0.1, 4.9067139271481871e-198},
                    Case{6.8, 9.8, 10.4, 0.1, 4.9067139271481871e-198}, Case{-0.25, -0.75, 0.25, 0.05, 1},
                    Case{10, 9.999999, 10.000001, 0.1, 7.9788456078956728e-6},
                    Case{10.3, 9.999999, 10.000001, 0.1, 8.8636968250578406e-8}, Case{10, 10, 10, 0.1, 0},
                    Case{10, 9.8, 10.4, 100, 0.0023936488951117633}));

INSTANTIATE_TEST_SUITE_P(
    OneSided, Conformance,
    testing::Values(Case{10.4, none, 10.4, 0.1, 0.5}, Case{12.4, none, 10.4, 0.1, 2.7536241186062337e-89},
                    Case{13.7, none, 10.4, 0.1, 4.0611856209158551e-239},
                    Case{9.6, none, 10.4, 0.1, 0.99999999999999938}, Case{9.0, 9.8, none, 0.1, 6.2209605742717841e-16},
                    Case{7.8, 9.8, none, 0.1, 2.7536241186062337e-89}, Case{10.5, 9.8, none, 0.1, 0.99999999999872019},
                    Case{10.5, none, none, 0.1, 1}));

// Source: ILAC-G8:09/2019, table 1 (U = 2 u, normal): the risk of a false acceptance at the edge of acceptance, by how
// wide the guard band is; ISO 14253-1:2017 takes 0.83 U for 5 %.
TEST(GuardBands, HaveTheRisksThatIlacPrints)
{
    const auto risk = [](double widthOverU) {
        const Limits limits{.target = mm(0), .high = mm(10), .expandedUncertainty = mm(1)};
        return 1 - tolerance::conformanceProbability(mm(10 - widthOverU), limits);
    };
    EXPECT_NEAR(risk(0), 0.5, 1e-12);
    EXPECT_LT(risk(0.83), 0.05);
    EXPECT_GT(risk(0.82), 0.05);
    EXPECT_LT(risk(1), 0.025);
    EXPECT_LT(risk(1.5), 0.0016);
    EXPECT_LT(risk(3), 1e-6);
    EXPECT_LT(1 - risk(-1), 0.025) << "rejected only beyond the limit by U";
}

// Source: ISO 14253-1 (guard band W at both limits); limits ±0.10, W 0.02, edges counted in (marginal: nearer than W).
TEST(GuardBands, HaveTheZonesOfTheStandard)
{
    const Limits limits{
        .low = mm(-0.1), .target = mm(0), .high = mm(0.1), .expandedUncertainty = mm(0.02), .rule = Rule::Guarded};
    const auto statusOf = [&](double value) { return tolerance::judgeValue(mm(value), limits); };
    for (const double inside : {-0.08, 0.0, 0.08})
        EXPECT_EQ(statusOf(inside), Status::In) << inside;
    for (const double close : {-0.1, -0.09, -0.080001, 0.081, 0.1})
        EXPECT_EQ(statusOf(close), Status::Marginal) << close;
    for (const double outside : {-0.13, -0.100001, 0.100001, 0.121})
        EXPECT_EQ(statusOf(outside), Status::Out) << outside;
}

} // namespace
} // namespace hammerline::reference
