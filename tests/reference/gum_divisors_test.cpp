// Source: JCGM 100:2008 (GUM), 4.3.3 (an uncertainty stated with its coverage factor), 4.3.7 and F.2.2.1 (resolution of
// an indication: a rectangular distribution, 0.29 of the step) and 5.1.2 (parts add in quadrature); the divisors 3 of
// U = 75 with k = 3, and sqrt(12) of a step of 0.01, as worked in public teaching copies of the guide: 25 and
// 0.0028868.
#include "tolerance/doubt.h"

#include <gtest/gtest.h>

#include <cmath>

namespace hammerline::reference {
namespace {

using units::Length;

/// Standard uncertainty of the rounding of what was typed.
double ofTyped(const std::string &typed, units::Amount value)
{
    readings::Reading reading;
    reading.place = {catalogue::Quantity::Blow, keyboard::Note(40), 1};
    reading.value = value;
    reading.typed = typed;
    return tolerance::doubtOf({}, {}, tolerance::halfResolutionOf(reading), units::Dimension::Length)->resolution;
}

TEST(GumDivisors, AStepIsWorthItsTwelfthRoot)
{
    EXPECT_NEAR(ofTyped("45.00", Length::millimetres(45.0)), 0.0028868, 5e-8);
    EXPECT_NEAR(ofTyped("45.0", Length::millimetres(45.0)), 0.29 * 0.1, 0.0005) << "as the guide rounds it";
    EXPECT_NEAR(ofTyped("1/64", Length::nanometres(396'875)), 25.4 / 64 / std::sqrt(12.0), 1e-6)
        << "half away from zero";
}

TEST(GumDivisors, AStatedUncertaintyIsDividedByItsCoverageFactor)
{
    tolerance::Limits limits{.target = Length::millimetres(45.0), .expandedUncertainty = Length::millimetres(0.075)};
    limits.coverageFactor = 3;
    EXPECT_NEAR(tolerance::doubtOf(limits, {}, {}, units::Dimension::Length)->gauge, 0.025, 1e-12);
    const readings::Gauge gauge{.name = "rule", .expandedUncertainty = Length::millimetres(0.05)};
    EXPECT_NEAR(tolerance::doubtOf(limits, gauge, {}, units::Dimension::Length)->gauge, 0.025, 1e-12) << "k = 2";
}

TEST(GumDivisors, PartsAddInQuadratureAndTheShareIsOneOfTheVariance)
{
    const tolerance::Doubt doubt{.gauge = 0.03, .resolution = 0.04};
    EXPECT_NEAR(doubt.combined(), 0.05, 1e-15);
    EXPECT_NEAR(doubt.expanded(), 0.1, 1e-15);
    EXPECT_NEAR(doubt.shareOfResolution(), 16.0 / 25, 1e-15);
}

} // namespace
} // namespace hammerline::reference
