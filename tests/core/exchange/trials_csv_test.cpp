#include "exchange/trials_csv.h"

#include "faults_of.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace hammerline::exchange {
namespace {

using keyboard::Note;
using testing::AllOf;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::StartsWith;

outcome::Outcome<std::vector<analysis::Trial>> read(std::string_view text, units::Unit unit = units::Unit::Millimetre)
{
    return readTrialsCsv(text, {.file = "trials.csv", .unit = unit});
}

units::Amount onlyValue(std::string_view text, units::Unit unit = units::Unit::Millimetre)
{
    const auto trials = read(text, unit);
    EXPECT_TRUE(trials.ok());
    return trials ? trials.value().front().value : units::Amount();
}

TEST(TrialsCsv, ReadsARowATrialWithColumnsInAnyOrder)
{
    const auto trials = read("value,take,person,note\r\n3.2,1,Ann,A0\r\n-0.56,2,Ben,49\r\n").value();
    ASSERT_EQ(trials.size(), 2U);
    EXPECT_EQ(trials[0].note, Note(1));
    EXPECT_EQ(trials[0].person, "Ann");
    EXPECT_EQ(trials[1].take, 2);
    EXPECT_EQ(trials[1].value, units::Amount(units::Length::millimetres(-0.56)));
}

TEST(TrialsCsv, TakesUnitsFromTheCellThenTheHeadingThenTheOption)
{
    const auto eighth = units::Amount(units::Length::millimetres(3.175));
    EXPECT_EQ(onlyValue("note,person,take,value (in)\n1,A,1,0.125\n"), eighth);
    EXPECT_EQ(onlyValue("note,person,take,value (in)\n1,A,1,3.175mm\n"), eighth);
    EXPECT_EQ(onlyValue("note,person,take,value\n1,A,1,0.125\n", units::Unit::Inch), eighth);
    EXPECT_EQ(onlyValue("note,person,take,value\n1,A,1,1/8\n"), eighth);
}

TEST(TrialsCsv, TakesMasses)
{
    const auto mass = units::Amount(units::Mass::grams(52));
    EXPECT_EQ(onlyValue("note,person,take,value\n1,A,1,52 g\n"), mass);
    EXPECT_EQ(onlyValue("note,person,take,value (g)\n1,A,1,52\n"), mass);
}

TEST(TrialsCsv, RefusesTheLimitsThatTheFiguresOfAChartHaveAndSaysWhatToLeaveOut)
{
    EXPECT_THAT(faultTexts(read("note,person,take,value (mm),low (mm),target (mm),high (mm)\n1,A,1,3.2,2.4,,4\n")),
                ElementsAre(AllOf(StartsWith("trials.csv:1: 'low (mm)', 'target (mm)', 'high (mm)': "),
                                  HasSubstr("figures of a study's chart"), HasSubstr("leaving them out"),
                                  HasSubstr("saving the study's trials"))));
    for (const std::string limit : {"low", "target", "high", " high (in) "})
        EXPECT_THAT(faultTexts(read("note," + limit + ",person,take,value\n1,2,A,1,3.2\n")),
                    ElementsAre(HasSubstr("leaving them out")))
            << limit;
    EXPECT_THAT(faultTexts(read("note,person,take,value,low,remark\n1,A,1,3.2,2.4,x\n")),
                ElementsAre(HasSubstr("'remark' is no column"), HasSubstr("'low'")));
}

TEST(TrialsCsv, WhatIsWrittenIsReadBackToTheLastDigit)
{
    const std::vector<analysis::Trial> trials{{Note(-3), "Ann, the second", 1, units::Length::nanometres(3'175'001)},
                                              {Note(49), "=1+1", 12, units::Length::nanometres(-1)},
                                              {Note(88), "'=\"x\"", 2, units::Length::nanometres(1'000'000'000)}};
    const std::string text = writeTrialsCsv(trials);
    EXPECT_THAT(text, StartsWith("note,person,take,value (mm)\n"));
    for (const auto unit : {units::Unit::Millimetre, units::Unit::Inch})
        EXPECT_EQ(read(text, unit).value(), trials);
    const std::vector<analysis::Trial> masses{{Note(1), "A", 1, units::Mass::grams(52.001)}};
    EXPECT_EQ(writeTrialsCsv(masses), "note,person,take,value (g)\nA0,A,1,52.001\n");
    EXPECT_EQ(read(writeTrialsCsv(masses)).value(), masses);
}

TEST(TrialsCsv, PassesOverBlankLinesAndTheByteOrderMark)
{
    EXPECT_TRUE(read("\xef\xbb\xbfnote,person,take,value\n\n1,A,1,3\n,,,\n").ok());
}

TEST(TrialsCsv, TellsEveryFaultWithItsLine)
{
    const auto trials = read("note,person,take,value\nH1,A,1,3\n1,,1,3\n1,A,0,3\n1,A,1,3.\n1,A,1\n");
    EXPECT_THAT(faultTexts(trials), ElementsAre(AllOf(StartsWith("trials.csv:2: "), HasSubstr("'H1'")),
                                                AllOf(StartsWith("trials.csv:3: "), HasSubstr("person")),
                                                AllOf(StartsWith("trials.csv:4: "), HasSubstr("take '0'")),
                                                AllOf(StartsWith("trials.csv:5: "), HasSubstr("digit is missing")),
                                                AllOf(StartsWith("trials.csv:6: "), HasSubstr("3 fields"))));
}

TEST(TrialsCsv, RefusesATrialTwiceAtTheSecondLine)
{
    EXPECT_THAT(faultTexts(read("note,person,take,value\n1,A,1,3\nA0,A,1,3\n")),
                ElementsAre(AllOf(StartsWith("trials.csv:3: "), HasSubstr("after line 2"))));
}

TEST(TrialsCsv, RefusesAnEmptyValue)
{
    EXPECT_THAT(faultTexts(read("note,person,take,value\n1,A,1,\n")), ElementsAre(HasSubstr("nothing is written")));
}

TEST(TrialsCsv, RefusesOtherColumnsAndMissingOnes)
{
    EXPECT_THAT(faultTexts(read("note,person,take,value,remark\n1,A,1,3,x\n")),
                ElementsAre(AllOf(StartsWith("trials.csv:1: "), HasSubstr("'remark'"))));
    EXPECT_THAT(faultTexts(read("note,person,value\n1,A,3\n")), ElementsAre(HasSubstr("'take' stands 0 times")));
    EXPECT_THAT(faultTexts(read("note,note,person,take,value\n")), ElementsAre(HasSubstr("'note' stands 2 times")));
    EXPECT_THAT(faultTexts(read("note (mm),person,take,value\n")), ElementsAre(HasSubstr("only 'value'")));
    EXPECT_THAT(faultTexts(read("note,person,take,value (furlong)\n")), ElementsAre(HasSubstr("'furlong'")));
}

TEST(TrialsCsv, RefusesAFileWithoutATrial)
{
    EXPECT_THAT(faultTexts(read("")), ElementsAre(HasSubstr("no trial")));
    EXPECT_THAT(faultTexts(read("note,person,take,value\n")), ElementsAre(HasSubstr("no trial")));
}

TEST(TrialsCsv, RefusesBytesThatAreNoUtf8AndQuotesThatDoNotEnd)
{
    EXPECT_FALSE(read("note,person,take,value\n1,\xff,1,3\n").ok());
    EXPECT_FALSE(read("note,person,take,value\n1,\"A,1,3\n").ok());
}

} // namespace
} // namespace hammerline::exchange
