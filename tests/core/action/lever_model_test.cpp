#include "action/lever_model.h"

#include <gtest/gtest.h>

namespace hammerline {

using action::carriedBy;
using action::RatioSource;
using catalogue::ActionKind;
using catalogue::Quantity;
using keyboard::Note;

namespace {

void read(readings::ValueTable &values, Quantity quantity, int note, double mm)
{
    values.set(quantity, Note(note), {units::Length::millimetres(mm), 1});
}

/// Blow, let-off, dip and aftertouch.
void readFour(readings::ValueTable &values, int note, double blow, double letOff, double dip, double aftertouch)
{
    read(values, Quantity::Blow, note, blow);
    read(values, Quantity::LetOff, note, letOff);
    read(values, Quantity::Dip, note, dip);
    read(values, Quantity::Aftertouch, note, aftertouch);
}

} // namespace

TEST(LeverModel, ratioIsHammerTravelOverFreeKeyTravel)
{
    readings::ValueTable values;
    readFour(values, 40, 46, 2, 10, 1);
    read(values, Quantity::LostMotion, 40, 0.2);
    EXPECT_DOUBLE_EQ(action::ownRatio(values, Note(40)).value(), 44.0 / 8.8);
}

TEST(LeverModel, missingLostMotionCountsAsNone)
{
    readings::ValueTable values;
    readFour(values, 40, 46, 2, 10, 1);
    EXPECT_DOUBLE_EQ(action::ownRatio(values, Note(40)).value(), 44.0 / 9);
}

TEST(LeverModel, ratiosOfThreeAndEightCountAndBeyondDoNot)
{
    readings::ValueTable values;
    readFour(values, 1, 26, 2, 9, 1);
    readFour(values, 2, 66, 2, 9, 1);
    readFour(values, 3, 25.999999, 2, 9, 1);
    readFour(values, 4, 66.000001, 2, 9, 1);
    readFour(values, 5, 46, 2, 1, 1);
    const action::OwnRatios ratios = action::ownRatios(values, {});
    ASSERT_EQ(ratios.size(), 2U);
    EXPECT_DOUBLE_EQ(ratios.at(Note(1)), 3);
    EXPECT_DOUBLE_EQ(ratios.at(Note(2)), 8);
}

TEST(LeverModel, noteWithoutItsOwnTakesTheMedianOfItsColourAndSection)
{
    const action::OwnRatios ratios{{Note(1), 4.0}, {Note(3), 5.0}, {Note(2), 7.0}, {Note(40), 6.0}};
    const keyboard::Sections sections{{"bass", {Note(1), Note(20)}}, {"treble", {Note(21), Note(88)}}};
    EXPECT_DOUBLE_EQ(action::ratioOf(ratios, Note(4), sections, 5.5).ratio, 4.5);
    EXPECT_DOUBLE_EQ(action::ratioOf(ratios, Note(4), {}, 5.5).ratio, 5.0);
    EXPECT_DOUBLE_EQ(action::ratioOf(ratios, Note(1), sections, 5.5).ratio, 4.0);
}

TEST(LeverModel, thenTheInstrumentThenTheSetup)
{
    const keyboard::Sections sections{{"bass", {Note(1), Note(20)}}, {"treble", {Note(21), Note(88)}}};
    const action::LeverRatio far = action::ratioOf({{Note(1), 4.0}, {Note(3), 5.0}}, Note(60), sections, 5.5);
    EXPECT_DOUBLE_EQ(far.ratio, 4.5);
    EXPECT_EQ(far.source, RatioSource::Instrument);
    const action::LeverRatio none = action::ratioOf({}, Note(60), sections, 5.5);
    EXPECT_DOUBLE_EQ(none.ratio, 5.5);
    EXPECT_EQ(none.source, RatioSource::Setup);
}

TEST(LeverModel, aftertouchIsPredictedFromTheOtherThree)
{
    readings::ValueTable values;
    read(values, Quantity::Blow, 40, 46);
    read(values, Quantity::LetOff, 40, 2);
    EXPECT_FALSE(action::predictedAftertouch(values, Note(40), 5));
    read(values, Quantity::Dip, 40, 10);
    EXPECT_DOUBLE_EQ(action::predictedAftertouch(values, Note(40), 5).value(), 1.2);
    read(values, Quantity::LostMotion, 40, 0.3);
    EXPECT_NEAR(action::predictedAftertouch(values, Note(40), 5).value(), 0.9, 1e-12);
}

TEST(LeverModel, whatEachChangeCarriesOnGrands)
{
    const auto grand = [](Quantity changed, Quantity other) { return carriedBy(changed, other, ActionKind::Grand, 5); };
    EXPECT_EQ(grand(Quantity::LetOff, Quantity::Aftertouch), 0.2);
    EXPECT_EQ(grand(Quantity::LetOff, Quantity::Drop), -1);
    EXPECT_EQ(grand(Quantity::Blow, Quantity::Aftertouch), -0.2);
    EXPECT_EQ(grand(Quantity::Blow, Quantity::LostMotion), 0);
    EXPECT_EQ(grand(Quantity::LostMotion, Quantity::Aftertouch), -1);
    EXPECT_EQ(grand(Quantity::Dip, Quantity::Aftertouch), 1);
    EXPECT_EQ(grand(Quantity::KeyHeight, Quantity::Dip), 1);
    EXPECT_EQ(grand(Quantity::Drop, Quantity::LetOff), 0);
}

TEST(LeverModel, restRailOfAVerticalTakesUpLostMotionAndLeavesAftertouch)
{
    EXPECT_EQ(carriedBy(Quantity::Blow, Quantity::LostMotion, ActionKind::Vertical, 5), -0.2);
    EXPECT_EQ(carriedBy(Quantity::Blow, Quantity::Aftertouch, ActionKind::Vertical, 5), 0);
}

TEST(LeverModel, aftertouchFollowsKeyHeightOnceNotTwice)
{
    action::Changes changes{};
    changes[static_cast<std::size_t>(Quantity::KeyHeight)] = 0.3;
    EXPECT_DOUBLE_EQ(action::changeOf(Quantity::Aftertouch, changes, ActionKind::Grand, 5), 0.3);
    EXPECT_DOUBLE_EQ(action::changeOf(Quantity::Dip, changes, ActionKind::Grand, 5), 0.3);
}

TEST(LeverModel, checkingDampersAndWeightsStandAlone)
{
    for (const Quantity alone : {Quantity::Checking, Quantity::DamperStart, Quantity::DownWeight, Quantity::UpWeight})
        for (const auto &info : catalogue::all()) {
            EXPECT_EQ(carriedBy(alone, info.quantity, ActionKind::Grand, 5), info.quantity == alone ? 1 : 0);
            EXPECT_EQ(carriedBy(info.quantity, alone, ActionKind::Grand, 5), info.quantity == alone ? 1 : 0);
        }
}

} // namespace hammerline
