// The lever model against published figures.
//
// - The relation (blow - let-off) / (dip - aftertouch) = product of the lever ratios, an average over the stroke:
//   Gravagne, on the Piano Technicians' list, in our words.
// - Ratios that published specifications imply (our arithmetic, to the two decimals stated with them).
// - Aftertouch gauge: adding a .005 in front punching takes .005 in off the aftertouch, removing one gives it.
// - Trial set: escapement before the gauge is touched: increase the blow; else decrease it.
// - Dip fixed: a blow error divided by the ratio shows in aftertouch.
// - Let-off nearer to the string with nothing else changed: the drop grows.
// Traps that come with them, kept out: strike-weight ratios of 5.5 to 6 are no travel ratios; where a maker gives no
// let-off or aftertouch the figure is filled in, so that the ratio is a check of arithmetic and not of a maker.

#include "action/lever_model.h"

#include <gtest/gtest.h>

#include <string>

namespace hammerline {

using action::carriedBy;
using catalogue::ActionKind;
using catalogue::Quantity;
using keyboard::Note;

namespace {

struct Published {
    std::string name;
    double blow, letOff, dip, aftertouch, ratio;
};

readings::ValueTable valuesOf(const Published &set)
{
    readings::ValueTable values;
    const auto read = [&values](Quantity quantity, double mm) {
        values.set(quantity, Note(40), {units::Length::millimetres(mm), 1});
    };
    read(Quantity::Blow, set.blow);
    read(Quantity::LetOff, set.letOff);
    read(Quantity::Dip, set.dip);
    read(Quantity::Aftertouch, set.aftertouch);
    return values;
}

const std::vector<Published> sets{
    {"trial set", 44, 2, 10, 1.143, 4.74},         {"short dip", 44.45, 1.59, 9.906, 1.27, 4.96},
    {"deep dip", 44.45, 1.59, 10.668, 1.27, 4.56}, {"long blow, short dip", 47.625, 1.59, 9.906, 1.27, 5.33},
    {"47, 2, 10", 47, 2, 10, 0.889, 4.94},         {"45, 1.5, 10.4", 45, 1.5, 10.4, 1.0, 4.63},
    {"47, 2, 10.5", 47, 2, 10.5, 1.0, 4.74},       {"upright, high", 48, 3, 10, 1.27, 5.15},
    {"upright, low", 45, 2, 10, 1.27, 4.93},       {"no aftertouch", 45, 1.5, 9, 0, 4.83}};

} // namespace

TEST(LeverExamples, publishedSetsImplyTheStatedRatios)
{
    for (const Published &set : sets)
        EXPECT_NEAR(action::ownRatio(valuesOf(set), Note(40)).value(), set.ratio, 0.0051) << set.name;
}

TEST(LeverExamples, aftertouchIsPredictedBackFromTheOtherThree)
{
    for (const Published &set : sets) {
        readings::ValueTable values = valuesOf(set);
        const double ratio = action::ownRatio(values, Note(40)).value();
        values.clear(Quantity::Aftertouch, Note(40));
        EXPECT_NEAR(action::predictedAftertouch(values, Note(40), ratio).value(), set.aftertouch, 1e-9) << set.name;
    }
}

TEST(LeverExamples, fiveThousandthsOfPunchingAreFiveThousandthsOfAftertouch)
{
    EXPECT_DOUBLE_EQ(0.045 - 0.005 * carriedBy(Quantity::Dip, Quantity::Aftertouch, ActionKind::Grand, 5), 0.040);
    EXPECT_DOUBLE_EQ(0.045 + 0.005 * carriedBy(Quantity::Dip, Quantity::Aftertouch, ActionKind::Grand, 5), 0.050);
}

TEST(LeverExamples, moreBlowMakesEscapementLater)
{
    EXPECT_LT(carriedBy(Quantity::Blow, Quantity::Aftertouch, ActionKind::Grand, 4.74), 0);
}

TEST(LeverExamples, blowErrorShowsInTheKeyDividedByTheRatio)
{
    for (const double ratio : {5.5, 7.0})
        EXPECT_DOUBLE_EQ(carriedBy(Quantity::Blow, Quantity::Aftertouch, ActionKind::Grand, ratio), -1 / ratio);
}

TEST(LeverExamples, letOffNearerToTheStringMakesTheDropGrow)
{
    EXPECT_DOUBLE_EQ((1.5875 - 3.175) * carriedBy(Quantity::LetOff, Quantity::Drop, ActionKind::Grand, 5), 1.5875);
}

TEST(LeverExamples, paperOfDipIsWorthFiveTimesItsBlowAtRatioFive)
{
    const double byDip = 0.127 * carriedBy(Quantity::Dip, Quantity::Aftertouch, ActionKind::Grand, 5);
    const double byBlow = -0.635 * carriedBy(Quantity::Blow, Quantity::Aftertouch, ActionKind::Grand, 5);
    EXPECT_NEAR(byDip, byBlow, 1e-12);
}

TEST(LeverExamples, strikeWeightRatioGivesAnImpossibleStroke)
{
    readings::ValueTable values = valuesOf(sets[1]);
    values.clear(Quantity::Aftertouch, Note(40));
    EXPECT_GT(action::predictedAftertouch(values, Note(40), 6.0).value(), 2.5); // a technician sets 0.8 to 1.3
}

} // namespace hammerline
