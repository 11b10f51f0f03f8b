#include "action/contradictions.h"

#include <gtest/gtest.h>

namespace hammerline {

using action::Impossibility;
using catalogue::ActionKind;
using catalogue::Quantity;
using keyboard::Note;

namespace {

void read(readings::ValueTable &values, Quantity quantity, int note, double mm)
{
    values.set(quantity, Note(note), {units::Length::millimetres(mm), 1});
}

void readFour(readings::ValueTable &values, int note, double blow, double letOff, double dip, double aftertouch)
{
    read(values, Quantity::Blow, note, blow);
    read(values, Quantity::LetOff, note, letOff);
    read(values, Quantity::Dip, note, dip);
    read(values, Quantity::Aftertouch, note, aftertouch);
}

std::vector<Impossibility> found(const readings::ValueTable &values, const action::GaugeUncertainty &uncertainty = {})
{
    std::vector<Impossibility> kinds;
    for (const auto &each : action::contradictionsIn(values, {}, ActionKind::Grand, uncertainty))
        kinds.push_back(each.what);
    return kinds;
}

using Kinds = std::vector<Impossibility>;

} // namespace

TEST(Contradictions, ordinaryReadingsContradictNothing)
{
    readings::ValueTable values;
    readFour(values, 40, 46, 2, 10, 1.2);
    read(values, Quantity::Drop, 40, 1.2);
    read(values, Quantity::Checking, 40, 15);
    read(values, Quantity::DamperStart, 40, 23);
    EXPECT_EQ(found(values), Kinds{});
}

TEST(Contradictions, distancesOfOneHammerBoundEachOther)
{
    readings::ValueTable values;
    read(values, Quantity::Blow, 40, 46);
    read(values, Quantity::LetOff, 40, 47);
    read(values, Quantity::Drop, 40, 1);
    read(values, Quantity::Checking, 40, 46.5);
    read(values, Quantity::DamperStart, 40, 50);
    EXPECT_EQ(found(values),
              (Kinds{Impossibility::LetOffBeyondBlow, Impossibility::DropBelowRest, Impossibility::CheckBeyondBlow,
                     Impossibility::CheckBeforeLetOff, Impossibility::DamperAfterString}));
}

TEST(Contradictions, ratioThatNoActionHasNamesItsReadings)
{
    readings::ValueTable values;
    readFour(values, 40, 46, 2, 6, 1); // dip 6 for 10: a slip of the pencil
    const auto all = action::contradictionsIn(values, {}, ActionKind::Grand, {});
    ASSERT_EQ(all.size(), 1U);
    EXPECT_EQ(all.front().what, Impossibility::RatioOutOfReach);
    EXPECT_DOUBLE_EQ(all.front().beyond, 8.8);
    EXPECT_EQ(all.front().readings,
              (std::vector<Quantity>{Quantity::Blow, Quantity::LetOff, Quantity::Dip, Quantity::Aftertouch}));
}

TEST(Contradictions, whatTheGaugeMayBeWrongByIsGranted)
{
    readings::ValueTable values;
    readFour(values, 40, 46, 2, 6.4, 1); // 8.15
    EXPECT_EQ(found(values), Kinds{Impossibility::RatioOutOfReach});
    const action::GaugeUncertainty fine{{Quantity::Dip, units::Length::millimetres(0.05)}};
    const action::GaugeUncertainty coarse{{Quantity::Dip, units::Length::millimetres(0.2)}};
    EXPECT_EQ(found(values, fine), Kinds{Impossibility::RatioOutOfReach});
    EXPECT_EQ(found(values, coarse), Kinds{});
}

TEST(Contradictions, aftertouchCannotBeAllOfTheDip)
{
    readings::ValueTable values;
    read(values, Quantity::Dip, 40, 10);
    read(values, Quantity::Aftertouch, 40, 9.9);
    EXPECT_EQ(found(values), Kinds{});
    read(values, Quantity::LostMotion, 40, 0.3);
    EXPECT_EQ(found(values), Kinds{Impossibility::AftertouchBeyondDip});
}

TEST(Contradictions, upWeightAboveDownWeightWouldBeFrictionBelowNothing)
{
    readings::ValueTable values;
    values.set(Quantity::DownWeight, Note(40), {units::Mass::grams(28), 1});
    values.set(Quantity::UpWeight, Note(40), {units::Mass::grams(52), 1});
    EXPECT_EQ(found(values), Kinds{Impossibility::UpWeightAboveDownWeight});
}

TEST(RatiosApart, noteThatStandsApartIsFoundWithItsSuspects)
{
    readings::ValueTable values;
    for (int note = 40; note < 60; ++note) // a gentle taper with a little scatter, as actions have
        readFour(values, note, 46, 2, 10, 1.2 + 0.005 * (note % 3) + 0.002 * (note - 40));
    readFour(values, 52, 46, 2, 10, 2.0);
    const auto apart = action::ratiosApart(values, {}, {}, {});
    ASSERT_EQ(apart.size(), 1U);
    EXPECT_EQ(apart.front().note, Note(52));
    EXPECT_DOUBLE_EQ(apart.front().ratio, 5.5);
    EXPECT_EQ(apart.front().suspects.front().quantity, Quantity::Dip);
    EXPECT_NEAR(apart.front().suspects.front().byMm, 0.77, 0.02);
}

TEST(RatiosApart, differenceThatTheGaugesExplainIsNotReported)
{
    readings::ValueTable values;
    for (int note = 40; note < 60; ++note)
        readFour(values, note, 46, 2, 10, 1.2 + 0.005 * (note % 3));
    readFour(values, 52, 46, 2, 10, 1.4);
    EXPECT_EQ(action::ratiosApart(values, {}, {}, {}).size(), 1U);
    EXPECT_TRUE(action::ratiosApart(values, {}, {}, {{Quantity::Aftertouch, units::Length::millimetres(0.3)}}).empty());
}

TEST(RatiosApart, fewNeighboursSayNothing)
{
    readings::ValueTable values;
    readFour(values, 40, 46, 2, 10, 1.2);
    readFour(values, 42, 46, 2, 10, 3);
    EXPECT_TRUE(action::ratiosApart(values, {}, {}, {}).empty());
}

} // namespace hammerline
