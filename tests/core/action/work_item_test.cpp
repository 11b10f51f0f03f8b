#include "action/work_item.h"

#include <gtest/gtest.h>

namespace hammerline {

using action::itemOf;
using action::Move;
using action::RailMove;
using action::workFrom;
using action::workIn;
using catalogue::Quantity;
using keyboard::Note;

namespace {

units::Length mm(double value)
{
    return units::Length::millimetres(value);
}

Move letOff(int note, double by)
{
    return {.note = Note(note), .adjust = Quantity::LetOff, .by = mm(by)};
}

/// One note whose let-off is 0.5 mm wide, and a rail for it.
action::PlanTask task()
{
    action::PlanTask task;
    task.compass = {Note(40), Note(41)};
    task.setup.action = task.set.action = catalogue::ActionKind::Grand;
    task.setup.adjustments[Quantity::LetOff] = {.step = mm(0.05), .most = mm(3), .minutes = 1, .perTurn = mm(2)};
    task.setup.rails = {{.id = "rail",
                         .quantity = Quantity::Checking,
                         .shape = action::RailShape::Linear,
                         .step = mm(0.5),
                         .most = mm(5),
                         .minutes = 3}};
    task.values.set(Quantity::LetOff, Note(40), {mm(3), 1});
    task.set.entries[Quantity::LetOff].both = {{.note = Note(1), .low = mm(2), .target = mm(2.25), .high = mm(2.5)}};
    return task;
}

} // namespace

TEST(WorkItem, saysHowMuch)
{
    EXPECT_EQ(itemOf(letOff(40, -0.6)), "let_off 40 by -0.6 mm");
    EXPECT_EQ(itemOf(Move{.note = Note(-8), .adjust = Quantity::DownWeight, .by = units::Mass::grams(-2.5)}),
              "down_weight -8 by -2.5 g");
    EXPECT_EQ(itemOf(RailMove{.rail = "rest_rail", .bass = mm(1.5), .treble = mm(1.5)}), "rail rest_rail by 1.5 mm");
    EXPECT_EQ(itemOf(RailMove{.rail = "r", .bass = mm(0.5), .treble = mm(-1)}), "rail r by 0.5 mm to -1 mm");
}

TEST(WorkItem, otherTurnsAreTheSameWorkAndAnotherAmountIsNot)
{
    Move move = letOff(40, -0.6);
    move.turns = -0.25;
    EXPECT_EQ(itemOf(move), "let_off 40 by -0.6 mm, -0.25 turns");
    EXPECT_EQ(workIn(itemOf(move)), itemOf(letOff(40, -0.6)));
    EXPECT_NE(workIn(itemOf(letOff(40, -0.5))), workIn(itemOf(move)));
}

TEST(WorkItem, isReadBackWithTheTurnsThatWereTold)
{
    Move move = letOff(40, -0.6);
    move.turns = -0.3125;
    const auto work =
        workFrom({itemOf(move), itemOf(RailMove{.rail = "rail", .bass = mm(0.5), .treble = mm(-1)})}, task());
    ASSERT_EQ(work.moves.size(), 1U);
    EXPECT_EQ(work.moves[0].by, units::Amount(mm(-0.6)));
    EXPECT_EQ(work.moves[0].turns, -0.3125);
    ASSERT_EQ(work.rails.size(), 1U);
    EXPECT_EQ(work.rails[0].quantity, Quantity::Checking);
    EXPECT_EQ(work.rails[0].treble, units::Amount(mm(-1)));
}

TEST(WorkItem, aRailsSettingIsLoggedBesideWhatShallComeOfIt)
{
    const RailMove rail{
        .rail = "rail", .bass = mm(1), .treble = mm(-1.5), .setting = action::RailSetting{mm(1.5), mm(-2)}};
    EXPECT_EQ(itemOf(rail), "rail rail by 1 mm to -1.5 mm, set 1.5 mm to -2 mm");
    EXPECT_EQ(workIn(itemOf(rail)), "rail rail by 1 mm to -1.5 mm");
    const auto work = workFrom({itemOf(rail), "rail rail by 1 mm"}, task());
    ASSERT_EQ(work.rails.size(), 1U);
    EXPECT_EQ(work.rails[0].bass, units::Amount(mm(2)));
    EXPECT_EQ(work.rails[0].setting, (action::RailSetting{mm(2.5), mm(-1)}));
}

TEST(WorkItem, severalGoesAtOneScrewAddUp)
{
    const auto work = workFrom({"let_off 40 by -0.6 mm, -0.25 turns", "let_off 41 by 1 mm", "rail rail by 1 mm",
                                "let_off 40 by 0.05 mm, 0.025 turns", "rail rail by 0.5 mm to 1 mm"},
                               task());
    ASSERT_EQ(work.moves.size(), 2U);
    EXPECT_EQ(work.moves[0].by, units::Amount(mm(-0.55)));
    EXPECT_DOUBLE_EQ(work.moves[0].turns.value(), -0.225);
    ASSERT_EQ(work.rails.size(), 1U);
    EXPECT_EQ(work.rails[0].bass, units::Amount(mm(1.5)));
    EXPECT_EQ(work.rails[0].treble, units::Amount(mm(2)));
}

TEST(WorkItem, ofBeforeAmountsWereLoggedTakesThatOfThePlanThatWasKept)
{
    const auto work = workFrom({"let_off 40", "let_off 41", "rail rail"}, task());
    ASSERT_EQ(work.moves.size(), 1U);
    EXPECT_EQ(work.moves[0].by, units::Amount(mm(-0.75)));
    EXPECT_TRUE(work.rails.empty());
}

TEST(WorkItem, thatNamesNothingKnownIsLeftOut)
{
    const auto work = workFrom({"", "wobble 40 by 1 mm", "let_off x by 1 mm", "let_off 40 by 1 g", "let_off 40 by mm",
                                "let_off 40 by nan mm", "rail other by 1 mm", "rail rail by 1 mm to 1 g", "rail"},
                               task());
    EXPECT_TRUE(work.moves.empty());
    EXPECT_TRUE(work.rails.empty());
}

} // namespace hammerline
