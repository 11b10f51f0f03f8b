#include "plan_sheet/plan_words.h"

#include <gtest/gtest.h>

namespace hammerline::plan_sheet {
namespace {

TEST(PlanWords, TurnsAreToldToTheNearestEighthThatAHandCanTell)
{
    EXPECT_EQ(turnsText(0.25), QStringLiteral("a quarter turn"));
    EXPECT_EQ(turnsText(-0.26), QStringLiteral("a quarter turn back"));
    EXPECT_EQ(turnsText(0.5), QStringLiteral("half a turn"));
    EXPECT_EQ(turnsText(0.37), QStringLiteral("3/8 of a turn"));
    EXPECT_EQ(turnsText(1.0), QStringLiteral("one turn"));
    EXPECT_EQ(turnsText(1.4), QStringLiteral("1 3/8 turns"));
    EXPECT_EQ(turnsText(2.01), QStringLiteral("2 turns"));
    EXPECT_EQ(turnsText(0.03), QStringLiteral("less than an eighth of a turn"));
}

TEST(PlanWords, PunchingsSayWhichGoInAndWhichComeOut)
{
    action::Move move;
    move.adjust = catalogue::Quantity::Dip;
    move.by = units::Length::millimetres(-0.63);
    move.punchings = {units::Length::millimetres(0.5), units::Length::millimetres(0.13)};
    EXPECT_EQ(howText(move, {}), QStringLiteral("put in 0.50 + 0.13 mm"));
    move.by = units::Length::millimetres(0.63);
    EXPECT_EQ(howText(move, {}), QStringLiteral("take out 0.50 + 0.13 mm"));
    move.punchings = std::vector<units::Length>{};
    EXPECT_FALSE(howText(move, {}).isEmpty());
}

TEST(PlanWords, NothingIsSaidOfTurnsThatNobodyMeasured)
{
    EXPECT_EQ(howText({.adjust = catalogue::Quantity::LetOff, .by = units::Length::millimetres(1)}, {}), QString());
}

TEST(PlanWords, NotesComeInRuns)
{
    EXPECT_EQ(notesText({keyboard::Note(1), keyboard::Note(4), keyboard::Note(5), keyboard::Note(6)}),
              QStringLiteral("A0, C1 to D1"));
    EXPECT_EQ(notesText({}), QString());
}

TEST(PlanWords, MinutesAreRoundedUp)
{
    EXPECT_EQ(timeText(0.5), QStringLiteral("1 min"));
    EXPECT_EQ(timeText(85), QStringLiteral("1 h 25 min"));
}

} // namespace
} // namespace hammerline::plan_sheet
