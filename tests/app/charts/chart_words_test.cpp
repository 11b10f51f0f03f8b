// What a chart says in words and figures.
#include "charts/charts.h"
#include "charts/inside/nice_axis.h"
#include "charts/inside/plotted.h"

#include "support/lively_pass.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace hammerline::charts {
namespace {

using catalogue::Quantity;
using keyboard::Note;
using support::mm;

ChartData judged(const readings::ValueTable &values, Quantity quantity)
{
    ChartData data;
    data.quantity = quantity;
    data.now = tolerance::judge(values, support::livelySet(), {}, {});
    data.form.locale = QLocale::c();
    return data;
}

readings::ValueTable threeLetOffs()
{
    readings::ValueTable values;
    values.set(Quantity::LetOff, Note(1), {mm(4.2), 1});
    values.set(Quantity::LetOff, Note(2), {mm(3.2), 1});
    values.set(Quantity::LetOff, Note(3), {mm(2.0), 1});
    return values;
}

TEST(ChartWords, TheTitleIsAQuestionAndTheAnswerStandsBelow)
{
    ChartData data = judged(threeLetOffs(), Quantity::LetOff);
    EXPECT_EQ(titleOf(data), "Where along the keyboard is let-off outside its limits?");
    EXPECT_EQ(answerOf(data), "2 of 3 notes read are out: 1 too large, 1 too small; 85 not read");
    data.question = Question::HowSpread;
    EXPECT_EQ(titleOf(data), "How far from its target is let-off?");
}

TEST(ChartWords, OneNoteIsSpokenOfAsOne)
{
    const auto answerFor = [](std::initializer_list<double> letOffs) {
        readings::ValueTable values;
        for (int note = 1; const double each : letOffs)
            values.set(Quantity::LetOff, Note(note++), {mm(each), 1});
        return answerOf(judged(values, Quantity::LetOff)).section(';', 0, 0);
    };
    EXPECT_EQ(answerFor({3.2}), "The one note read is not out");
    EXPECT_EQ(answerFor({4.2}), "The one note read is out: too large");
    EXPECT_EQ(answerFor({3.2, 2.0}), "1 of 2 notes read is out: too small");
    EXPECT_EQ(answerFor({3.2, 3.2}), "None of 2 notes read is out");
}

TEST(ChartWords, WhatIsNotJudgedIsNotCalledOut)
{
    readings::ValueTable values;
    values.set(Quantity::Blow, Note(1), {mm(46), 1});
    ChartData data = judged(values, Quantity::Blow);
    EXPECT_EQ(titleOf(data), "How does blow run along the keyboard?");
    EXPECT_EQ(answerOf(data), "Notes read: 1, none judged");
    data.question = Question::HowSpread;
    EXPECT_EQ(titleOf(data), "How widely is blow spread?");
}

TEST(ChartWords, WithoutReadingsItSaysSo)
{
    EXPECT_EQ(answerOf(judged({}, Quantity::LetOff)), "Nothing read yet");
}

TEST(ChartCsv, HasExactFiguresWithALineForEveryVerdict)
{
    ChartData data = judged(threeLetOffs(), Quantity::LetOff);
    data.form.locale = QLocale(QLocale::German);
    readings::ValueTable before;
    before.set(Quantity::LetOff, Note(1), {units::Length::nanometres(3175000), 1});
    data.before = tolerance::judge(before, support::livelySet(), {}, {});
    const std::string csv = chartCsv(data);
    EXPECT_TRUE(csv.starts_with("note,name,quantity,unit,value,low,target,high,status,before\n"
                                "1,A0,let_off,mm,4.2,2.4,3.2,4,out,3.175\n"));
    EXPECT_NE(csv.find("\n88,C8,let_off,mm,,1.2,1.6,2,missing,\n"), std::string::npos);
    EXPECT_EQ(std::count(csv.begin(), csv.end(), '\n'), 89);
}

TEST(ChartCsv, AnUnjudgedReadingHasEmptyLimits)
{
    readings::ValueTable values;
    values.set(Quantity::DownWeight, Note(1), {units::Mass::milligrams(52500), 1});
    EXPECT_NE(chartCsv(judged(values, Quantity::DownWeight)).find("\n1,A0,down_weight,g,52.5,,,,unjudged,\n"),
              std::string::npos);
}

TEST(Ladders, LimitsThatRunTogetherMakeOneBandAndThoseOfTwoColoursTwo)
{
    EXPECT_EQ(laddersOf(judged(threeLetOffs(), Quantity::LetOff)).size(), 1U);
    auto set = support::livelySet();
    set.entries[Quantity::Dip].sharps = {{.note = Note(1), .low = mm(9.4), .target = mm(9.6), .high = mm(9.9)}};
    ChartData data;
    data.quantity = Quantity::Dip;
    data.now = tolerance::judge({}, set, {}, {});
    const auto ladders = laddersOf(data);
    ASSERT_EQ(ladders.size(), 2U);
    EXPECT_EQ(ladders[0].size(), 52U);
    EXPECT_EQ(ladders[1].size(), 36U);
}

TEST(NiceAxis, BeginsEndsAndStepsAtRoundNumbers)
{
    const NiceRange range = niceRange(1.13, 4.02, 7);
    EXPECT_DOUBLE_EQ(range.step, 0.5);
    EXPECT_DOUBLE_EQ(range.from, 1);
    EXPECT_DOUBLE_EQ(range.to, 4.5);
    EXPECT_EQ(range.decimals, 1);
    EXPECT_EQ(niceRange(0.090, 0.135, 7).decimals, 2);
    EXPECT_EQ(niceRange(0, 120, 6).decimals, 0);
}

TEST(NiceAxis, EqualEndsAreSpread)
{
    const NiceRange range = niceRange(10, 10, 7);
    EXPECT_LT(range.from, 10);
    EXPECT_GT(range.to, 10);
}

} // namespace
} // namespace hammerline::charts
