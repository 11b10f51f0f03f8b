#include "units/units.h"

#include <gtest/gtest.h>

namespace hammerline::units {
namespace {

Amount nm(std::int64_t count)
{
    return Length::nanometres(count);
}

Amount mg(std::int64_t count)
{
    return Mass::milligrams(count);
}

TEST(RoundedQuotient, RoundsHalvesAwayFromZero)
{
    EXPECT_EQ(roundedQuotient(1, 2), 1);
    EXPECT_EQ(roundedQuotient(-1, 2), -1);
    EXPECT_EQ(roundedQuotient(5, 2), 3);
    EXPECT_EQ(roundedQuotient(-5, 2), -3);
}

TEST(RoundedQuotient, RoundsBelowAHalfTowardsZero)
{
    EXPECT_EQ(roundedQuotient(4, 3), 1);
    EXPECT_EQ(roundedQuotient(-4, 3), -1);
    EXPECT_EQ(roundedQuotient(0, 7), 0);
}

TEST(RoundedQuotient, HoldsProductsThatOverflow64Bits)
{
    const Wide numerator = Wide{1'000'000'000'000} * 1'000'000'000'000;
    EXPECT_EQ(roundedQuotient(numerator, 1'000'000'000'000), 1'000'000'000'000);
}

TEST(FromDisplay, TakesTheShortestDecimalNotTheBinaryFraction)
{
    EXPECT_EQ(Amount::fromDisplay(Dimension::Length, 1.0000005), nm(1'000'001));
    EXPECT_EQ(Amount::fromDisplay(Dimension::Length, -1.0000005), nm(-1'000'001));
    EXPECT_EQ(Amount::fromDisplay(Dimension::Length, 1.0000004999), nm(1'000'000));
}

TEST(FromDisplay, KeepsMillimetresAndGramsExact)
{
    EXPECT_EQ(Length::millimetres(3.175), Length::nanometres(3'175'000));
    EXPECT_EQ(Mass::grams(52.5), Mass::milligrams(52'500));
    EXPECT_EQ(Length::millimetres(0), Length());
}

TEST(FromDisplay, StaysAtItsBoundForAbsurdNumbers)
{
    EXPECT_EQ(Amount::fromDisplay(Dimension::Length, 1e300).baseCount(), 1'000'000'000'000'000);
    EXPECT_EQ(Amount::fromDisplay(Dimension::Length, -1e300).baseCount(), -1'000'000'000'000'000);
    EXPECT_EQ(Amount::fromDisplay(Dimension::Mass, 5e-324), mg(0));
}

TEST(ExactDecimal, WritesNoTrailingZerosAndNoExponent)
{
    EXPECT_EQ(exactDecimal(nm(3'175'000)), "3.175");
    EXPECT_EQ(exactDecimal(nm(396'875)), "0.396875");
    EXPECT_EQ(exactDecimal(nm(1)), "0.000001");
    EXPECT_EQ(exactDecimal(nm(10'000'000)), "10");
    EXPECT_EQ(exactDecimal(nm(0)), "0");
    EXPECT_EQ(exactDecimal(nm(-500'000)), "-0.5");
    EXPECT_EQ(exactDecimal(mg(52'000)), "52");
    EXPECT_EQ(exactDecimal(mg(52'001)), "52.001");
}

TEST(FixedDecimal, RoundsHalvesAwayFromZeroInTheUnitAskedFor)
{
    EXPECT_EQ(fixedDecimal(nm(793'750), Unit::Millimetre, 4), "0.7938");
    EXPECT_EQ(fixedDecimal(nm(-793'750), Unit::Millimetre, 4), "-0.7938");
    EXPECT_EQ(fixedDecimal(nm(3'175'000), Unit::Inch, 3), "0.125");
    EXPECT_EQ(fixedDecimal(nm(3'175'000), Unit::Mil, 0), "125");
    EXPECT_EQ(fixedDecimal(mg(52'500), Unit::Gram, 0), "53");
}

TEST(FixedDecimal, WritesNoMinusBeforeZero)
{
    EXPECT_EQ(fixedDecimal(nm(-400), Unit::Millimetre, 2), "0.00");
}

TEST(Symbols, NameEveryUnit)
{
    EXPECT_STREQ(symbolOf(Unit::Millimetre), "mm");
    EXPECT_STREQ(symbolOf(Unit::Inch), "in");
    EXPECT_STREQ(symbolOf(Unit::Mil), "mil");
    EXPECT_STREQ(symbolOf(Unit::Gram), "g");
    EXPECT_STREQ(displaySymbol(Dimension::Length), "mm");
    EXPECT_STREQ(displaySymbol(Dimension::Mass), "g");
}

TEST(Amount, ComparesAndAddsWithinADimension)
{
    EXPECT_EQ(nm(3) + nm(4), nm(7));
    EXPECT_EQ(nm(3) - nm(4), nm(-1));
    EXPECT_EQ((-nm(3)).magnitude(), nm(3));
    EXPECT_LT(mg(1), mg(2));
    EXPECT_NE(nm(1), mg(1));
}

} // namespace
} // namespace hammerline::units
