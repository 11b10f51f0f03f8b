#include "tolerance/doubt.h"

#include "core/tolerance/sample_sets.h"
#include "units/parse_amount.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>

namespace hammerline::tolerance {
namespace {

using samples::mm;
using samples::Note;
using samples::Quantity;

readings::Reading read(const std::string &typed, units::Amount value, int note = 1, Quantity quantity = Quantity::Dip)
{
    readings::Reading made;
    made.place = {quantity, Note(note), 1};
    made.value = value;
    made.typed = typed;
    return made;
}

units::Amount nanometres(std::int64_t count)
{
    return units::Length::nanometres(count);
}

TEST(HalfResolution, IsHalfOfOneStepOfWhatWasTyped)
{
    EXPECT_EQ(halfResolutionOf(read("3.2", mm(3.2))), mm(0.05));
    EXPECT_EQ(halfResolutionOf(read("3,20 mm", mm(3.2))), mm(0.005));
    EXPECT_EQ(halfResolutionOf(read("1/64", nanometres(396'875))), nanometres(198'438)) << "1/128 in, rounded";
    EXPECT_EQ(halfResolutionOf(read("52", units::Mass::grams(52))), units::Amount(units::Mass::milligrams(500)));
}

TEST(HalfResolution, GoesByTheUnitThatGivesTheValue)
{
    EXPECT_EQ(halfResolutionOf(read("0.125", mm(3.175))), nanometres(12'700)) << "0.0005 in";
    EXPECT_EQ(halfResolutionOf(read("125", mm(3.175))), nanometres(12'700)) << "half a mil";
}

TEST(HalfResolution, CountsBareDigitsUnderAScaleByTheDigit)
{
    EXPECT_EQ(halfResolutionOf(read("31", mm(3.1))), mm(0.05));
    EXPECT_EQ(halfResolutionOf(read("5", nanometres(5 * 396'875))), nanometres(198'437));
}

TEST(HalfResolution, IsUnknownWhereTheTextDoesNotTell)
{
    EXPECT_FALSE(halfResolutionOf(read("", mm(3.1))));
    EXPECT_FALSE(halfResolutionOf(read("3.4 mm", mm(3.1))));
    EXPECT_FALSE(halfResolutionOf(read("0", mm(1)))) << "no digit to divide by";
}

// JCGM 100:2008, 4.3.7: a rectangular distribution of half-width a has the standard uncertainty a / sqrt(3); 5.1.2:
// parts add in quadrature.
TEST(Doubt, AddsGaugeAndResolutionInQuadrature)
{
    Limits limits;
    limits.expandedUncertainty = mm(0.2);
    const auto doubt = doubtOf(limits, {}, mm(0.05), units::Dimension::Length);
    ASSERT_TRUE(doubt);
    EXPECT_DOUBLE_EQ(doubt->gauge, 0.1);
    EXPECT_DOUBLE_EQ(doubt->resolution, 0.05 / std::sqrt(3.0));
    EXPECT_NEAR(doubt->combined(), std::sqrt(0.01 + 0.0025 / 3), 1e-15);
    EXPECT_NEAR(doubt->shareOfResolution(), (0.0025 / 3) / (0.01 + 0.0025 / 3), 1e-15);
}

TEST(Doubt, TakesThePassGaugeBeforeWhatTheSetCountsWith)
{
    readings::Gauge gauge;
    gauge.expandedUncertainty = units::Length::millimetres(0.1);
    Limits limits;
    limits.expandedUncertainty = mm(0.2);
    EXPECT_DOUBLE_EQ(doubtOf(limits, gauge, {}, units::Dimension::Length)->gauge, 0.05);
    limits.rule = Rule::Guarded;
    EXPECT_DOUBLE_EQ(doubtOf(limits, gauge, {}, units::Dimension::Length)->gauge, 0.1) << "W decides what is in";
    limits.expandedUncertainty = mm(0);
    EXPECT_DOUBLE_EQ(doubtOf(limits, gauge, {}, units::Dimension::Length)->gauge, 0.05);
    EXPECT_FALSE(doubtOf(Limits{}, gauge, {}, units::Dimension::Mass)) << "a gauge of lengths says nothing of grams";
    EXPECT_FALSE(doubtOf({}, {}, {}, units::Dimension::Length));
}

TEST(Doubt, CountsACoarserGaugeThanWasTyped)
{
    readings::Gauge gauge;
    gauge.resolution = units::Length::millimetres(0.5);
    const auto doubt = doubtOf({}, gauge, mm(0.05), units::Dimension::Length);
    EXPECT_DOUBLE_EQ(doubt->resolution, 0.25 / std::sqrt(3.0));
    EXPECT_DOUBLE_EQ(doubt->shareOfResolution(), 1);
}

TEST(Doubt, OfAStudiedGaugeReadAsFinelyAsItReadsIsTheLargerOfSpreadAndStep)
{
    readings::Gauge gauge;
    gauge.resolution = units::Length::millimetres(0.1);
    gauge.expandedUncertainty = units::Length::millimetres(0.2);
    const auto spread = doubtOf({}, gauge, mm(0.05), units::Dimension::Length);
    EXPECT_NEAR(spread->combined(), 0.1, 1e-15) << "the step is among the 0.1 mm already";
    EXPECT_NEAR(spread->shareOfResolution(), 0.0025 / 3 / 0.01, 1e-12) << "and its share of them is shown";
    gauge.expandedUncertainty = units::Length::millimetres(0.01);
    const auto step = doubtOf({}, gauge, mm(0.05), units::Dimension::Length);
    EXPECT_NEAR(step->combined(), 0.05 / std::sqrt(3.0), 1e-15) << "no gauge is better than its step";
    EXPECT_DOUBLE_EQ(step->shareOfResolution(), 1);
}

TEST(Doubt, OfWhatWasReadMoreCoarselyThanTheGaugeReadsHoldsTheCoarserStepOnce)
{
    readings::Gauge gauge;
    gauge.resolution = units::Length::millimetres(0.1);
    gauge.expandedUncertainty = units::Length::millimetres(0.2);
    const auto doubt = doubtOf({}, gauge, mm(0.5), units::Dimension::Length);
    EXPECT_NEAR(doubt->combined(), std::sqrt(0.01 - 0.0025 / 3 + 0.25 / 3), 1e-15);
    EXPECT_NEAR(doubtOf({}, gauge, mm(0.005), units::Dimension::Length)->combined(), 0.1, 1e-15)
        << "a zero written behind makes no gauge finer";
}

TEST(Doubt, CountsBothInFullWhereNobodySaysWhichStepTheUncertaintyHolds)
{
    readings::Gauge gauge;
    gauge.expandedUncertainty = units::Length::millimetres(0.2);
    const double both = std::sqrt(0.01 + 0.0025 / 3);
    EXPECT_NEAR(doubtOf({}, gauge, mm(0.05), units::Dimension::Length)->combined(), both, 1e-15);
    Limits limits;
    limits.expandedUncertainty = mm(0.2);
    readings::Gauge rule;
    rule.resolution = units::Length::millimetres(0.1);
    EXPECT_NEAR(doubtOf(limits, rule, mm(0.05), units::Dimension::Length)->combined(), both, 1e-15)
        << "a set does not know the gauge";
}

// 1/64 in read off a rule: half of one step, 0.1984375 mm, over the root of 3 (JCGM 100:2008, 4.3.7).
TEST(Doubt, OfASixtyFourthReadOffARuleIsRectangular)
{
    auto judgement =
        judge(samples::table(Quantity::Dip, {{1, 10.31875}}), samples::letOffAndDip(), {Note(1), Note(1)}, {});
    weighDoubt(judgement, {read("13/32", nanometres(10'318'750)), read("26/64", nanometres(10'318'750))}, {});
    const auto &verdict = *judgement.find(Quantity::Dip, Note(1));
    EXPECT_NEAR(verdict.doubt->resolution, 25.4 / 128 / std::sqrt(3.0), 1e-6) << "13/32 was 26/64 on the same rule";
    EXPECT_EQ(verdict.status, Status::In);
    EXPECT_TRUE(verdict.withinDoubt());
    EXPECT_DOUBLE_EQ(verdict.doubt->shareOfResolution(), 1);
}

TEST(Doubt, TellsWhatIsInOnlyByTheGaugesGrace)
{
    auto judgement =
        judge(samples::table(Quantity::Dip, {{1, 10.38}, {3, 10.2}}), samples::letOffAndDip(), {Note(1), Note(3)}, {});
    readings::Gauge gauge;
    gauge.expandedUncertainty = units::Length::millimetres(0.05);
    weighDoubt(judgement, {read("10.38", mm(10.38), 1), read("10.20", mm(10.2), 3)}, gauge);
    const auto &close = *judgement.find(Quantity::Dip, Note(1));
    EXPECT_EQ(close.status, Status::In) << "the rule is simple: the verdict stays";
    EXPECT_TRUE(close.withinDoubt());
    EXPECT_NEAR(close.conformanceProbability.value(), 0.7866, 0.0001) << "0.02 mm inside, u 0.02517 mm";
    EXPECT_FALSE(judgement.find(Quantity::Dip, Note(3))->withinDoubt());
    EXPECT_FALSE(judgement.find(Quantity::LetOff, Note(1))->doubt) << "missing: nothing to doubt";
}

/// The share of inches that one step is, of each value's doubt.
std::vector<double> stepsWeighed(const std::vector<std::string> &typed, const readings::Gauge &gauge)
{
    std::vector<readings::Reading> all;
    ToleranceSet set;
    set.entries[Quantity::Dip].both = {{.note = Note(1), .low = mm(0), .target = mm(10), .high = mm(60)}};
    for (const std::string &text : typed) {
        const units::TypedForm form{.dimension = units::Dimension::Length, .bareUnit = units::Unit::Inch};
        all.push_back(read(text, units::parseAmount(text, form).value().value, static_cast<int>(all.size()) + 1));
    }
    auto judgement = judge(readings::meansOf(all), set, {}, {});
    weighDoubt(judgement, all, gauge);
    std::vector<double> steps;
    for (std::size_t i = 0; i < all.size(); ++i)
        steps.push_back(judgement.find(Quantity::Dip, Note(static_cast<int>(i) + 1))->doubt->resolution *
                        std::sqrt(12) / 25.4);
    return steps;
}

TEST(Doubt, OfAFractionIsThatOfItsRuleHoweverFarItCouldBeReduced)
{
    using ::testing::DoubleNear;
    using ::testing::ElementsAre;
    const auto near = [](double step) { return DoubleNear(step, 1e-6); };
    EXPECT_THAT(stepsWeighed({"5/64", "3/32", "1/8", "1", "1 7/8"}, {}),
                ElementsAre(near(1.0 / 64), near(1.0 / 64), near(1.0 / 64), near(1.0 / 64), near(1.0 / 64)));
    EXPECT_THAT(stepsWeighed({"3/32", "1/8", "0.125"}, {}), ElementsAre(near(1.0 / 32), near(1.0 / 32), near(0.001)));
    readings::Gauge rule;
    rule.resolution = units::Length::nanometres(396'875); // 1/64 in
    EXPECT_THAT(stepsWeighed({"3/32", "1"}, rule), ElementsAre(near(1.0 / 64), near(1.0 / 64)));
}

TEST(Doubt, OfSeveralTakesTheCoarsestCounts)
{
    auto judgement = judge(samples::table(Quantity::Dip, {{1, 10}}), samples::letOffAndDip(), {Note(1), Note(1)}, {});
    weighDoubt(judgement, {read("10.00", mm(10)), read("10", mm(10)), read("10.0", mm(10))}, {});
    EXPECT_DOUBLE_EQ(judgement.find(Quantity::Dip, Note(1))->doubt->resolution, 0.5 / std::sqrt(3.0));
}

} // namespace
} // namespace hammerline::tolerance
