#include "bench_sheet/inside/sheet_words.h"

#include <gtest/gtest.h>

namespace hammerline::bench_sheet {
namespace {

using catalogue::Quantity;
using keyboard::Note;
using units::Length;

units::Amount mm(double value)
{
    return Length::millimetres(value);
}

/// One point for the whole keyboard.
BenchSheetInput judgedBy(std::optional<units::Amount> low, units::Amount target, std::optional<units::Amount> high)
{
    BenchSheetInput input;
    input.set.emplace();
    input.set->entries[Quantity::LetOff].both = {{.note = Note(1), .low = low, .target = target, .high = high}};
    input.form.locale = QLocale(QLocale::English);
    return input;
}

QString lineOf(const BenchSheetInput &input)
{
    return limitsLine(input, {Quantity::LetOff, Note(40)});
}

TEST(SheetWords, LimitsHaveNoMoreDigitsThanTheyNeed)
{
    EXPECT_EQ(lineOf(judgedBy(mm(2.4), mm(3.2), mm(4))), QStringLiteral("2.4 \u00b7 3.2 \u00b7 4"));
    EXPECT_EQ(lineOf(judgedBy(mm(3.12), mm(10), mm(20))), QStringLiteral("3.12 \u00b7 10 \u00b7 20"));
}

TEST(SheetWords, LimitsHaveTheDigitsOfAFineGauge)
{
    auto fine = judgedBy(mm(3.125), mm(3.2), mm(3.3));
    fine.form.lengthDecimals = 3;
    EXPECT_EQ(lineOf(fine), QStringLiteral("3.125 \u00b7 3.2 \u00b7 3.3"));
}

TEST(SheetWords, LimitsThatDoNotEndAreDrawnInwards)
{
    const auto third = judgedBy(Length::nanometres(2'333'333), mm(3), Length::nanometres(3'666'667));
    EXPECT_EQ(lineOf(third), QStringLiteral("2.34 \u00b7 3 \u00b7 3.66"));
    const auto negative = judgedBy(Length::nanometres(-666'667), mm(0), Length::nanometres(-333));
    EXPECT_EQ(lineOf(negative), QStringLiteral("\u22120.66 \u00b7 0 \u00b7 \u22120.01"));
}

TEST(SheetWords, LimitsStandInTheUnitAndWithTheMarkOfThePass)
{
    auto input = judgedBy(mm(3.175), mm(6.35), mm(9.525));
    input.form.lengthUnit = units::Unit::Inch;
    input.form.locale = QLocale(QLocale::German);
    EXPECT_EQ(lineOf(input), QStringLiteral("0,125 \u00b7 0,25 \u00b7 0,375"));
    input.form.lengthUnit = units::Unit::Mil;
    EXPECT_EQ(lineOf(input), QStringLiteral("125 \u00b7 250 \u00b7 375"));
}

TEST(SheetWords, OneSidedLimitsSayTheirSide)
{
    EXPECT_EQ(lineOf(judgedBy(mm(0.5), mm(1), std::nullopt)), QStringLiteral("\u2265 0.5 \u00b7 1"));
    EXPECT_EQ(lineOf(judgedBy(std::nullopt, mm(1), mm(1.5))), QStringLiteral("1 \u00b7 \u2264 1.5"));
    EXPECT_EQ(lineOf(judgedBy(std::nullopt, mm(1), std::nullopt)), QStringLiteral("1"));
}

TEST(SheetWords, WhatIsNotJudgedHasNoLimits)
{
    EXPECT_EQ(limitsLine(judgedBy(mm(1), mm(2), mm(3)), {Quantity::Dip, Note(1)}), QString());
    EXPECT_EQ(limitsLine({}, {Quantity::LetOff, Note(1)}), QString());
}

TEST(SheetWords, DipAndDropTellWhereThisPassTakesThem)
{
    readings::Pass pass;
    EXPECT_TRUE(howOf(Quantity::Dip, pass).contains(QStringLiteral("front edge")));
    pass.dipDatum = readings::DipDatum::OverFrontPin;
    EXPECT_TRUE(howOf(Quantity::Dip, pass).contains(QStringLiteral("Over the front pin")));
    pass.dropDatum = readings::DropDatum::FromString;
    EXPECT_TRUE(howOf(Quantity::Drop, pass).contains(QStringLiteral("from the string")));
}

TEST(SheetWords, EveryOrderHasItsOwnWords)
{
    QStringList texts;
    for (int order = 0; order <= static_cast<int>(route::Order::Own); ++order)
        texts << routeText({.order = static_cast<route::Order>(order), .quantities = {Quantity::Blow}});
    EXPECT_EQ(texts.removeDuplicates(), 0);
    EXPECT_EQ(texts.front(), "bass to treble; one quantity along all notes: blow");
    EXPECT_EQ(routeText({.sweep = route::Sweep::NoteByNote, .quantities = {Quantity::Blow, Quantity::Dip}}),
              "bass to treble; all quantities of a note before the next: blow, dip");
}

} // namespace
} // namespace hammerline::bench_sheet
