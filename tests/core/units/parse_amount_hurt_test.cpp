// What must be refused, with words that help.
#include "units/parse_amount.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace hammerline::units {
namespace {

std::string lengthFault(std::string_view typed, Unit bare = Unit::Millimetre)
{
    const auto parsed = parseAmount(typed, {.bareUnit = bare});
    return parsed ? "accepted as " + exactDecimal(parsed.value().value) : parsed.fault().problem;
}

std::string massFault(std::string_view typed)
{
    const auto parsed = parseAmount(typed, {.dimension = Dimension::Mass});
    return parsed ? "accepted as " + exactDecimal(parsed.value().value) : parsed.fault().problem;
}

class RefusedLength : public testing::TestWithParam<const char *> {};

TEST_P(RefusedLength, IsQuotedInTheFault)
{
    const std::string typed = GetParam();
    EXPECT_THAT(lengthFault(typed), testing::StartsWith("'" + typed + "'"));
}

INSTANTIATE_TEST_SUITE_P(ParseAmount, RefusedLength,
                         testing::Values("", " ", "3.", ".", ",", "3,", "3. mm", "mm", "1e3", "3.2e0", "1.125.5",
                                         "1,125,5", "1 125", "1'125", "0x10", "3.2 cm", "3.2 m", "3.2.mm", "--3", "3-",
                                         "1/", "/8", "1 /8", "1/ 8", "1 3", "1-3", "1 - 3/4", "1.5/8", "1 3/4/5",
                                         "3.2 mm mm", "inf", "nan", "3..2", "3 .2", "1/8\"\"", "52 g", "\xc2\xbd",
                                         "3.2\n"));

TEST(ParseAmountRefuses, AZeroDenominator)
{
    EXPECT_THAT(lengthFault("1/0"), testing::HasSubstr("divides by 0"));
    EXPECT_THAT(lengthFault("1 3/00"), testing::HasSubstr("divides by 0"));
}

TEST(ParseAmountRefuses, WhatLiesJustBeyondTheRange)
{
    EXPECT_THAT(lengthFault("1000.000001"), testing::HasSubstr("more than 1 m"));
    EXPECT_THAT(lengthFault("39.4in"), testing::HasSubstr("more than 1 m"));
    EXPECT_THAT(lengthFault("40/1"), testing::HasSubstr("more than 1 m"));
    EXPECT_THAT(massFault("1000.001"), testing::HasSubstr("more than 1 kg"));
    EXPECT_FALSE(parseAmount("-1000.000001", {.allowNegative = true}).ok());
}

TEST(ParseAmountRefuses, ACommaBeforeThreeDigitsWithMil)
{
    EXPECT_THAT(lengthFault("1,125 mil"), testing::HasSubstr("doubtful"));
    EXPECT_THAT(lengthFault("0,125mil"), testing::HasSubstr("doubtful"));
    EXPECT_THAT(lengthFault("1,125", Unit::Mil), testing::HasSubstr("doubtful"));
}

TEST(ParseAmountRefuses, AFractionOfAMassWithoutUnit)
{
    EXPECT_THAT(massFault("1/2"), testing::HasSubstr("inches"));
    EXPECT_THAT(massFault("52 mm"), testing::HasSubstr("no unit of this quantity"));
}

TEST(ParseAmountRefuses, LengthOfAbsurdDigitStringsWithoutOverflow)
{
    const std::string nines(100'000, '9');
    EXPECT_THAT(lengthFault(nines), testing::HasSubstr("more than 1 m"));
    EXPECT_THAT(lengthFault("1/" + nines), testing::HasSubstr("too many digits"));
    EXPECT_THAT(lengthFault(nines + "/8"), testing::HasSubstr("too many digits"));
    EXPECT_LT(lengthFault(nines).size(), 200U) << "a fault is one line, whatever was pasted";
}

TEST(ParseAmountRefuses, NotLongStringsThatMeanSmallNumbers)
{
    EXPECT_EQ(parseAmount(std::string(500, '0') + "3.2" + std::string(500, '0'), {}).value().value,
              Amount(Length::nanometres(3'200'000)));
    EXPECT_EQ(parseAmount("0001 003/0004", {}).value().value, Amount(Length::nanometres(44'450'000)));
}

TEST(ParseAmountRefuses, BytesThatAreNoText)
{
    for (int byte = 0; byte < 256; ++byte) {
        const std::string typed = std::string("3") + static_cast<char>(byte) + "1";
        const bool mayStand = (byte >= '0' && byte <= '9') || byte == '.' || byte == ',' || byte == '/';
        EXPECT_EQ(parseAmount(typed, {}).ok(), mayStand) << byte;
    }
}

TEST(ParseUnitRefuses, EverythingElse)
{
    for (const char *text : {"", "cm", "m", "mm.", "inch", "''", "kg", "mm in"})
        EXPECT_FALSE(parseUnit(text).ok()) << text;
}

} // namespace
} // namespace hammerline::units
