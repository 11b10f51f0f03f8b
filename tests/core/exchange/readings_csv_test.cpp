#include "exchange/readings_csv.h"

#include "core/exchange/faults_of.h"

#include <gmock/gmock.h>

namespace hammerline::exchange {
namespace {

using catalogue::ActionKind;
using catalogue::Quantity;
using readings::Reading;
using testing::IsEmpty;

CsvReadingOptions options(std::optional<ActionKind> action = {})
{
    CsvReadingOptions given;
    given.file = "r.csv";
    given.action = action;
    return given;
}

std::vector<Reading> readingsOf(const std::string &text, const CsvReadingOptions &given = options())
{
    const auto read = readReadingsCsv(text, given);
    EXPECT_THAT(faultTexts(read), IsEmpty()) << text;
    return read ? read.value() : std::vector<Reading>{};
}

std::int64_t onlyValue(const std::string &text, const CsvReadingOptions &given = options())
{
    const auto readings = readingsOf(text, given);
    EXPECT_EQ(readings.size(), 1u) << text;
    return readings.empty() ? -1 : readings[0].value.baseCount();
}

TEST(ReadingsCsv, theWideFormHasOneRowANoteAndAUnitInTheHeading)
{
    const auto readings = readingsOf("note,let_off (mm),dip (in)\n1,3.2,.39\nC#4,2,\n");
    ASSERT_EQ(readings.size(), 3u) << "an empty cell is a missing reading";
    EXPECT_EQ(readings[0].place, (readings::Place{Quantity::LetOff, keyboard::Note(1), 1}));
    EXPECT_EQ(readings[0].value.baseCount(), 3'200'000);
    EXPECT_EQ(readings[0].typed, "3.2");
    EXPECT_EQ(readings[1].value.baseCount(), 9'906'000);
    EXPECT_EQ(readings[1].typed, ".39 in") << "a bare decimal keeps the unit that its column gave it";
    EXPECT_EQ(readings[2].place.note, keyboard::Note(41));
}

TEST(ReadingsCsv, theLongFormHasOneRowATakeAndColumnsInAnyOrder)
{
    const auto readings = readingsOf("remark,take,value,note,unit,quantity\r\n"
                                     "\"sticky, slow\",2,1/8,A4,mm,let_off\r\n"
                                     ",,52,49,g,down_weight\r\n"
                                     ",,,50,mm,dip\r\n");
    ASSERT_EQ(readings.size(), 2u) << "an empty value is a missing reading";
    EXPECT_EQ(readings[0].place, (readings::Place{Quantity::LetOff, keyboard::Note(49), 2}));
    EXPECT_EQ(readings[0].value.baseCount(), 3'175'000) << "a bare fraction is inches whatever the row says";
    EXPECT_EQ(readings[0].typed, "1/8");
    EXPECT_EQ(readings[0].remark, "sticky, slow");
    EXPECT_EQ(readings[1].value, units::Amount(units::Mass::milligrams(52'000)));
    EXPECT_EQ(readings[1].place.take, 1) << "absent or empty is the first take";
}

TEST(ReadingsCsv, unitsAreTakenFromTheValueThenTheRowThenTheColumnThenTheCall)
{
    CsvReadingOptions inches = options();
    inches.unit = units::Unit::Inch;
    EXPECT_EQ(onlyValue("note,quantity,value (in),unit\n1,dip,10mm,mil\n"), 10'000'000);
    EXPECT_EQ(onlyValue("note,quantity,value (in),unit\n1,dip,100,MIL\n"), 2'540'000);
    EXPECT_EQ(onlyValue("note,quantity,value (in),unit\n1,dip,.5,\n"), 12'700'000);
    EXPECT_EQ(onlyValue("note,quantity,value\n1,dip,.5\n", inches), 12'700'000);
    EXPECT_EQ(onlyValue("note,quantity,value\n1,dip,.5\n"), 500'000);
    EXPECT_EQ(onlyValue("note,dip (mil)\n1,\"1,5\"\n"), 38'100);
    EXPECT_EQ(onlyValue("note,up_weight (g)\n1,22.5\n", inches), 22'500);
    EXPECT_EQ(onlyValue("note,dip\n1,\"1-3/4\"\"\"\n"), 44'450'000);
}

TEST(ReadingsCsv, marksLineEndsAndBlankLinesMayStand)
{
    const std::size_t two = 2;
    EXPECT_EQ(readingsOf("\xEF\xBB\xBFnote,dip\r\n1,10\r\n2,10\r\n").size(), two);
    EXPECT_EQ(readingsOf("\n\nnote,dip\n\n1,10\n   \n2,10\n,\n\n").size(), two) << "a row of commas alone is blank";
    EXPECT_EQ(readingsOf("note,dip\r1,10\r2,10").size(), two) << "lone CR, no line end after the last row";
    EXPECT_EQ(readingsOf(" note , dip(mm) \n 1 , 10 \n 2 , 10 mm \n").size(), two);
    EXPECT_EQ(readingsOf("dip,note\n10,1\n10,2\n").size(), two) << "the note may stand anywhere";
}

TEST(ReadingsCsv, keyHeightAloneMayBeNegative)
{
    EXPECT_EQ(onlyValue("note,key_height\n1,-0.25\n"), -250'000);
    EXPECT_FALSE(readReadingsCsv("note,dip\n1,-0.25\n", options()));
}

TEST(ReadingsCsv, valuesAreExactToTheLastDigit)
{
    EXPECT_EQ(onlyValue("note,dip\n1,1/64\n"), 396'875);
    EXPECT_EQ(onlyValue("note,dip (in)\n1,0.001\n"), 25'400);
    EXPECT_EQ(onlyValue("note,dip\n1,1/3in\n"), 8'466'667) << "what is no whole nanometre is rounded";
}

TEST(ReadingsCsv, whatIsWrittenReadsBackAsTheSameReadings)
{
    std::vector<Reading> readings;
    const auto add = [&](Quantity quantity, int note, int take, units::Amount value, const std::string &remark) {
        Reading reading;
        reading.place = {quantity, keyboard::Note(note), take};
        reading.value = value;
        reading.remark = remark;
        reading.typed = units::exactDecimal(value);
        readings.push_back(reading);
    };
    const auto length = [](std::int64_t count) { return units::Amount(units::Length::nanometres(count)); };
    add(Quantity::KeyHeight, -8, 1, length(-1), " two\r\nlines, \"quoted\" ");
    add(Quantity::Dip, 1, 1, length(396'875), "=HYPERLINK(\"x\")");
    add(Quantity::Dip, 1, 2, length(1'000'000'000), "'=was quoted already");
    add(Quantity::Dip, 2, 1, length(0), "'tis sticky");
    add(Quantity::Dip, 3, 1, length(1), "-1");
    add(Quantity::Dip, 4, 1, length(2), "\ttab");
    add(Quantity::UpWeight, 88, 1, units::Amount(units::Mass::milligrams(20'001)), "\xE2\x99\xAD flat");
    CsvReadingOptions given = options();
    given.compass.first = keyboard::Note(-8);
    EXPECT_EQ(readingsOf(writeReadingsCsv(readings), given), readings);
}

TEST(ReadingsCsv, theWriterSortsByPlaceAndDisarmsFormulas)
{
    Reading dip;
    dip.place = {Quantity::Dip, keyboard::Note(2), 1};
    dip.value = units::Length::nanometres(10'000'000);
    dip.remark = "@SUM(1)";
    Reading letOff = dip;
    letOff.place.quantity = Quantity::LetOff;
    letOff.value = units::Length::nanometres(3'175'000);
    letOff.remark = "";
    EXPECT_EQ(writeReadingsCsv({dip, letOff}), "note,quantity,value,unit,take,remark\r\n"
                                               "2,let_off,3.175,mm,1,\r\n"
                                               "2,dip,10,mm,1,'@SUM(1)\r\n");
}

TEST(ReadingsCsv, everyQuantityIsTakenWhereNoActionIsKnown)
{
    for (const auto &info : catalogue::all())
        EXPECT_EQ(readingsOf("note," + std::string(info.id) + "\n1,3\n").size(), 1u) << info.id;
}

} // namespace
} // namespace hammerline::exchange
