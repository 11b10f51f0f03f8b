// What a readings file is refused for: the message, the line, and that every fault is told at once.
#include "exchange/readings_csv.h"

#include "core/exchange/faults_of.h"

#include <gmock/gmock.h>

namespace hammerline::exchange {
namespace {

using catalogue::ActionKind;
using testing::AllOf;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::StartsWith;

std::vector<std::string> refusals(const std::string &text, std::optional<ActionKind> action = {})
{
    CsvReadingOptions options;
    options.file = "r.csv";
    options.action = action;
    return faultTexts(readReadingsCsv(text, options));
}

TEST(ReadingsCsvRefusals, everyFaultIsToldWithItsLineInRisingOrder)
{
    EXPECT_THAT(
        refusals("note,let_off,dip\n1,x,10\nH4,1,2\n90,1,2\n1,,\n5,1\n6,1,y\n"),
        ElementsAre(StartsWith("r.csv:2: let_off 'x': "), StartsWith("r.csv:3: 'H4' is no note"),
                    "r.csv:4: note 90 (D8) is not on the instrument; a note from 1 to 88 would be right",
                    "r.csv:5: note A0 stands here again, after line 2; once would be right",
                    "r.csv:6: the row has 2 fields where the header has 3; as many would be right (a field with a "
                    "comma in it needs quotation marks)",
                    StartsWith("r.csv:7: dip 'y': ")));
}

TEST(ReadingsCsvRefusals, theLineIsTheFirstPhysicalLineOfTheRow)
{
    EXPECT_THAT(
        refusals(
            "note,quantity,value,remark\r\n1,dip,10,\"two\r\nlines\r\nand more\"\r\n2,dip,x,\"a\nb\"\r\n3,dip,y,\r\n"),
        ElementsAre(StartsWith("r.csv:5: dip 'x'"), StartsWith("r.csv:7: dip 'y'")));
}

TEST(ReadingsCsvRefusals, aNoteTwiceOrATakeTwiceIsAFaultAtTheSecondLine)
{
    EXPECT_THAT(refusals("note,dip\nA4,1\n\n49,1\n"),
                ElementsAre(StartsWith("r.csv:4: note A4 stands here again, after line 2")));
    EXPECT_THAT(refusals("note,quantity,value,take\n1,dip,1,\n1,dip,1,2\nA0,dip,1,1\n1,let_off,1,1\n"),
                ElementsAre("r.csv:4: dip of note A0, take 1 stands here again, after line 2; once would be right"));
    EXPECT_THAT(refusals("note,quantity,value,take\n1,dip,1,9\n1,dip,1,3\n1,dip,1,5\n1,dip,,3\n1,dip,1,9\n"),
                ElementsAre(StartsWith("r.csv:5: dip of note A0, take 3 stands here again, after line 3"),
                            StartsWith("r.csv:6: dip of note A0, take 9 stands here again, after line 2")))
        << "in whatever order the takes come";
}

TEST(ReadingsCsvRefusals, theHeadingSaysWhatMayStandThere)
{
    EXPECT_THAT(
        refusals("note,dip,colour\n1,1,red\n"),
        ElementsAre(AllOf(StartsWith("r.csv:1: 'colour' is no column that may stand here; these may: note, key_height"),
                          HasSubstr("note, quantity, value, unit, take, remark"))));
    EXPECT_THAT(
        refusals("note,quantity,value,colour\n1,dip,1,red\n"),
        ElementsAre(
            "r.csv:1: 'colour' is no column that may stand here; these may: note, quantity, value and, if wanted, "
            "unit, take, remark"));
    EXPECT_THAT(refusals("dip\n1\n"), ElementsAre(StartsWith("r.csv:1: there is no column 'note'")));
    EXPECT_THAT(refusals("note\n1\n"), ElementsAre(StartsWith("r.csv:1: there is no column of a quantity")));
    EXPECT_THAT(refusals("note,value\n1,1\n"), ElementsAre(StartsWith("r.csv:1: there is no column 'quantity'")));
    EXPECT_THAT(refusals("note,quantity\n1,dip\n"), ElementsAre(StartsWith("r.csv:1: there is no column 'value'")));
    EXPECT_THAT(refusals("note,dip,dip (in)\n1,1,1\n"),
                ElementsAre("r.csv:1: column 'dip' stands twice; once would be right"));
    EXPECT_THAT(refusals("note;dip\n1;1\n"), ElementsAre(HasSubstr("fields are separated by commas"),
                                                         StartsWith("r.csv:1: there is no column 'note'")));
}

TEST(ReadingsCsvRefusals, rowsAreStillJudgedWhereOneHeadingIsWrong)
{
    EXPECT_THAT(refusals("note,dip,colour\n1,x,red\n"),
                ElementsAre(StartsWith("r.csv:1: "), StartsWith("r.csv:2: dip 'x'")));
}

TEST(ReadingsCsvRefusals, aUnitMustFitItsQuantity)
{
    EXPECT_THAT(refusals("note,dip (g)\n1,1\n"),
                ElementsAre("r.csv:1: column 'dip': dip is a length; mm, in or mil would be right, not g"));
    EXPECT_THAT(refusals("note,up_weight (mm)\n1,1\n"),
                ElementsAre("r.csv:1: column 'up_weight': up_weight is a mass; g would be right, not mm"));
    EXPECT_THAT(refusals("note,dip (cm)\n1,1\n"), ElementsAre(HasSubstr("'cm' is no unit")));
    EXPECT_THAT(refusals("note (mm),dip\n1,1\n"), ElementsAre(HasSubstr("'note' has no unit")));
    EXPECT_THAT(refusals("note,quantity,value,unit\n1,dip,1,g\n2,dip,1,furlong\n3,up_weight,3mm,\n"),
                ElementsAre("r.csv:2: dip is a length; mm, in or mil would be right, not g",
                            HasSubstr("r.csv:3: 'furlong' is no unit"), HasSubstr("r.csv:4: up_weight '3mm'")));
}

TEST(ReadingsCsvRefusals, aQuantityThatTheActionLacksIsRefusedInEitherForm)
{
    EXPECT_THAT(refusals("note,drop\n1,1\n", ActionKind::Vertical),
                ElementsAre(StartsWith("r.csv:1: a vertical action has no drop; these may stand here: key_height")));
    EXPECT_THAT(refusals("note,quantity,value\n1,drop,1\n1,dorp,1\n", ActionKind::Vertical),
                ElementsAre(StartsWith("r.csv:2: a vertical action has no drop"),
                            StartsWith("r.csv:3: 'dorp' is no quantity")));
    EXPECT_THAT(refusals("note,drop\n1,1\n", ActionKind::Grand), testing::IsEmpty());
}

TEST(ReadingsCsvRefusals, aTakeIsAWholeNumberFromOne)
{
    for (const std::string take : {"0", "-1", "1.5", "x", "1000000", "99999999999999999999"})
        EXPECT_THAT(refusals("note,quantity,value,take\n1,dip,1," + take + "\n"),
                    ElementsAre(StartsWith("r.csv:2: take '" + take + "' is no number of a take")));
}

TEST(ReadingsCsvRefusals, aFileWithoutASingleReadingIsRefused)
{
    EXPECT_THAT(refusals(""),
                ElementsAre("r.csv:1: the file is empty; a first row such as note,let_off (mm) would be right"));
    EXPECT_THAT(refusals("\n\n"), ElementsAre(StartsWith("r.csv:1: the file is empty")));
    EXPECT_THAT(refusals("\nnote,dip\n1,\n2,\n"),
                ElementsAre("r.csv:2: the file has no reading; one value at least would be right"));
    EXPECT_THAT(refusals("note,quantity,value\n"), ElementsAre(HasSubstr("the file has no reading")));
}

TEST(ReadingsCsvRefusals, brokenQuotingIsToldAndTheNextRowsAreStillRead)
{
    EXPECT_THAT(refusals("note,dip\n1,1-3/4\"\n2,\"10\"mm\n3,x\n4,\"10\n5,10\n"),
                ElementsAre(StartsWith("r.csv:2: a quotation mark stands inside a field"),
                            StartsWith("r.csv:3: text follows a closing quotation mark"),
                            StartsWith("r.csv:4: dip 'x'"),
                            StartsWith("r.csv:5: a quotation mark is opened and never closed")));
    EXPECT_THAT(refusals("note,dip\n1,10\n\""), ElementsAre(StartsWith("r.csv:3: a quotation mark is opened")));
}

TEST(ReadingsCsvRefusals, whatIsNotUtf8IsRefused)
{
    for (const std::string bytes : {"\xff", "\xC0\xAF", "\xED\xA0\x80", "\xF5\x80\x80\x80", "\xE2\x99"})
        EXPECT_THAT(refusals("note,quantity,value,remark\n1,dip,10,ok\n2,dip,10," + bytes + "\n"),
                    ElementsAre("r.csv:3: the row is not UTF-8 text; saving the file as CSV in UTF-8 would be right"));
    EXPECT_THAT(refusals(std::string("note,dip\n1,1\0\n", 13)),
                ElementsAre(HasSubstr("r.csv:2: the row is not UTF-8 text")));
    EXPECT_THAT(refusals(std::string("\xff\xfen\0o\0t\0e\0", 10)),
                ElementsAre(HasSubstr("r.csv:1: the row is not UTF-8 text")));
}

TEST(ReadingsCsvRefusals, aDecimalCommaNeedsQuotationMarksAndADoubtfulOneIsRefused)
{
    EXPECT_THAT(refusals("note,dip\n1,3,2\n"), ElementsAre(HasSubstr("the row has 3 fields where the header has 2")));
    EXPECT_THAT(refusals("note,dip (mil)\n1,\"1,125\"\n"), ElementsAre(HasSubstr("doubtful")));
    EXPECT_THAT(refusals("note,dip\n1,1e3\n"), ElementsAre(StartsWith("r.csv:2: dip '1e3'")));
    EXPECT_THAT(refusals("note,dip\n1,1000.000001\n"), ElementsAre(HasSubstr("more than 1 m")));
}

TEST(ReadingsCsvRefusals, aFaultIsOnePhysicalLineWhateverTheCellHolds)
{
    const auto faults = refusals("note,dip\n1,\"a\nb\x1b[31m\"\n");
    ASSERT_EQ(faults.size(), 1u);
    EXPECT_EQ(faults[0].find_first_of("\n\r\x1b"), std::string::npos);
}

TEST(ReadingsCsvRefusals, aFileOfNothingButFaultsIsCutShort)
{
    std::string text = "note,dip\n";
    for (int row = 0; row < 150'000; ++row)
        text += "x,1\n";
    const auto faults = refusals(text);
    ASSERT_EQ(faults.size(), 100'001u);
    EXPECT_THAT(faults.back(), HasSubstr("there are more faults"));
}

} // namespace
} // namespace hammerline::exchange
