#include "gauge_input/gauge_line.h"

#include <gtest/gtest.h>

namespace hammerline::gauge_input {
namespace {

std::string typedOf(const char *line, const LinePattern &pattern = {})
{
    const auto reading = readGaugeLine(line, pattern, {});
    return reading ? reading.value().typed.toStdString() : "refused: " + reading.fault().problem;
}

TEST(GaugeLine, TakesTheFirstNumberWithItsUnit)
{
    EXPECT_EQ(typedOf("3.175 mm"), "3.175mm");
    EXPECT_EQ(typedOf("01A+00003.175"), "3.175mm");
    EXPECT_EQ(typedOf("D1 +00003.175 mm OK", {QStringLiteral(R"(\+(?<value>[\d.]+) (?<unit>mm))")}), "3.175mm");
    EXPECT_EQ(typedOf(" .125 in"), ".125in");
}

TEST(GaugeLine, NeverTakesAPartOfANumber)
{
    EXPECT_EQ(typedOf("3.4.5"), "refused: no number in the gauge's line “3.4.5”");
    EXPECT_EQ(typedOf("3.175e2"), "refused: no number in the gauge's line “3.175e2”");
    EXPECT_EQ(typedOf("3.175e+2"), "refused: no number in the gauge's line “3.175e+2”");
}

TEST(GaugeLine, DropsPaddingThatGaugesSend)
{
    EXPECT_EQ(typedOf("+0003.20mm"), "3.20mm");
    EXPECT_EQ(typedOf("000.5"), "0.5mm");
    EXPECT_EQ(typedOf("0"), "0mm");
}

TEST(GaugeLine, TakesLocaleCommas)
{
    const auto reading = readGaugeLine("3,2 mm", {}, {});
    ASSERT_TRUE(reading.ok());
    EXPECT_EQ(reading.value().parsed.value, units::Amount(units::Length::nanometres(3'200'000)));
}

TEST(GaugeLine, TakesTheUnitOfThePatternWhereTheLineNamesNone)
{
    const auto reading = readGaugeLine("0.125", {.bareUnit = units::Unit::Inch}, {});
    ASSERT_TRUE(reading.ok());
    EXPECT_EQ(reading.value().parsed.value, units::Amount(units::Length::nanometres(3'175'000)));
}

TEST(GaugeLine, ABareNumberOfACaliperIsNoMass)
{
    EXPECT_FALSE(readGaugeLine("52", {}, {units::Dimension::Mass}).ok());
    EXPECT_TRUE(readGaugeLine("52", {.bareUnit = units::Unit::Gram}, {units::Dimension::Mass}).ok());
    EXPECT_FALSE(readGaugeLine("52", {.bareUnit = units::Unit::Gram}, {}).ok());
}

TEST(GaugeLine, RefusesANegativeLengthWhereNoneIsMeant)
{
    EXPECT_FALSE(readGaugeLine("-0.2mm", {}, {}).ok());
    EXPECT_TRUE(readGaugeLine("-0.2mm", {}, {.allowNegative = true}).ok());
}

TEST(GaugeLine, RefusesALineWithoutANumberAndSaysWhatCame)
{
    EXPECT_EQ(typedOf("\x02low batt\x03"), "refused: no number in the gauge's line “·low batt·”");
}

TEST(GaugeLine, SaysWhatIsWrongWithAPattern)
{
    EXPECT_TRUE(faultOf({}).isEmpty());
    EXPECT_TRUE(faultOf({QStringLiteral("(")}).contains(QStringLiteral("can't be read")));
    EXPECT_TRUE(faultOf({QStringLiteral("\\d+")}).contains(QStringLiteral("value")));
}

} // namespace
} // namespace hammerline::gauge_input
