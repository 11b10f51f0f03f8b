#include "units/parse_amount.h"

#include <gtest/gtest.h>

namespace hammerline::units {
namespace {

std::int64_t nanometres(std::string_view typed, Unit bare = Unit::Millimetre)
{
    const auto parsed = parseAmount(typed, {.bareUnit = bare});
    EXPECT_TRUE(parsed.ok()) << typed << ": " << (parsed.ok() ? "" : parsed.fault().problem);
    return parsed ? parsed.value().value.asLength().inNanometres() : -1;
}

std::int64_t milligrams(std::string_view typed)
{
    const auto parsed = parseAmount(typed, {.dimension = Dimension::Mass});
    EXPECT_TRUE(parsed.ok()) << typed;
    return parsed ? parsed.value().value.asMass().inMilligrams() : -1;
}

TEST(ParseAmount, ReadsEveryFormOfTheContract)
{
    EXPECT_EQ(nanometres("3.2"), 3'200'000);
    EXPECT_EQ(nanometres("3,2"), 3'200'000);
    EXPECT_EQ(nanometres("3.2mm"), 3'200'000);
    EXPECT_EQ(nanometres(".125in"), 3'175'000);
    EXPECT_EQ(nanometres("1/8"), 3'175'000);
    EXPECT_EQ(nanometres("1 3/4"), 44'450'000);
    EXPECT_EQ(nanometres("1-3/4\""), 44'450'000);
    EXPECT_EQ(nanometres("125mil"), 3'175'000);
    EXPECT_EQ(milligrams("52"), 52'000);
    EXPECT_EQ(milligrams("52g"), 52'000);
}

TEST(ParseAmount, LetsBlanksStandAroundAndBeforeTheUnit)
{
    EXPECT_EQ(nanometres("  3.2   mm\t"), 3'200'000);
    EXPECT_EQ(nanometres("1   3/4  in "), 44'450'000);
    EXPECT_EQ(milligrams(" 52 g "), 52'000);
}

TEST(ParseAmount, DoesNotCareForCase)
{
    EXPECT_EQ(nanometres("3.2 MM"), 3'200'000);
    EXPECT_EQ(nanometres("1/8 In"), 3'175'000);
    EXPECT_EQ(nanometres("125MIL"), 3'175'000);
    EXPECT_EQ(milligrams("52G"), 52'000);
}

TEST(ParseAmount, GivesABareDecimalTheUnitOfItsColumn)
{
    EXPECT_EQ(nanometres("0.125", Unit::Inch), 3'175'000);
    EXPECT_EQ(nanometres("125", Unit::Mil), 3'175'000);
    EXPECT_EQ(nanometres("3.175mm", Unit::Inch), 3'175'000);
}

TEST(ParseAmount, TakesABareFractionAsInchesWhateverTheColumnSays)
{
    EXPECT_EQ(nanometres("1/64", Unit::Millimetre), 396'875);
    EXPECT_EQ(nanometres("1/64", Unit::Mil), 396'875);
}

TEST(ParseAmount, HonoursAUnitAfterAFraction)
{
    EXPECT_EQ(nanometres("1/2 mm"), 500'000);
    EXPECT_EQ(nanometres("1 1/2mil"), 38'100);
    EXPECT_EQ(milligrams("1/2 g"), 500);
}

TEST(ParseAmount, RoundsWhatIsNoWholeNanometreHalfAwayFromZero)
{
    EXPECT_EQ(nanometres("1/3"), 8'466'667);
    EXPECT_EQ(nanometres("2/3"), 16'933'333);
    EXPECT_EQ(nanometres("0.0000005"), 1);
    EXPECT_EQ(nanometres("0.00000049999"), 0);
    EXPECT_EQ(milligrams("0.0005"), 1);
}

TEST(ParseAmount, TakesBothEndsOfTheRange)
{
    EXPECT_EQ(nanometres("0"), 0);
    EXPECT_EQ(nanometres("1000"), 1'000'000'000);
    EXPECT_EQ(milligrams("0"), 0);
    EXPECT_EQ(milligrams("1000"), 1'000'000);
    EXPECT_EQ(nanometres("0/8"), 0);
}

TEST(ParseAmount, TakesSignsOnlyWhereValuesMayBeNegative)
{
    const TypedForm keyHeight{.allowNegative = true};
    EXPECT_EQ(parseAmount("-0.5", keyHeight).value().value, Amount(Length::nanometres(-500'000)));
    EXPECT_EQ(parseAmount("+0.5", keyHeight).value().value, Amount(Length::nanometres(500'000)));
    EXPECT_EQ(parseAmount("-1 3/4", keyHeight).value().value, Amount(Length::nanometres(-44'450'000)));
    EXPECT_EQ(parseAmount("-1000", keyHeight).value().value, Amount(Length::nanometres(-1'000'000'000)));
    EXPECT_EQ(parseAmount("-0", keyHeight).value().value, Amount());
    EXPECT_FALSE(parseAmount("-0.5", {}).ok());
    EXPECT_FALSE(parseAmount("+0.5", {}).ok());
}

TEST(ParseAmount, TellsTheUnitThatWasTypedOrTaken)
{
    EXPECT_EQ(parseAmount("3.2", {}).value().unit, Unit::Millimetre);
    EXPECT_EQ(parseAmount("1/8", {}).value().unit, Unit::Inch);
    EXPECT_EQ(parseAmount("125mil", {}).value().unit, Unit::Mil);
    EXPECT_EQ(parseAmount("52", {.dimension = Dimension::Mass}).value().unit, Unit::Gram);
}

TEST(ParseAmount, TellsHalfTheResolutionOfWhatWasTyped)
{
    EXPECT_EQ(parseAmount("3.2", {}).value().halfResolution, Amount(Length::nanometres(50'000)));
    EXPECT_EQ(parseAmount("3", {}).value().halfResolution, Amount(Length::nanometres(500'000)));
    EXPECT_EQ(parseAmount("1/64", {}).value().halfResolution, Amount(Length::nanometres(198'438)));
    EXPECT_EQ(parseAmount("52.5", {.dimension = Dimension::Mass}).value().halfResolution, Amount(Mass::milligrams(50)));
}

TEST(ParseAmount, TakesACommaAsADecimalMarkWithMilBeforeOtherThanThreeDigits)
{
    EXPECT_EQ(nanometres("1,5 mil"), 38'100);
    EXPECT_EQ(nanometres("1,1250 mil"), 28'575);
    EXPECT_EQ(nanometres("1.125 mil"), 28'575);
    EXPECT_EQ(nanometres("1,125"), 1'125'000);
}

TEST(ParseUnit, ReadsEveryUnit)
{
    EXPECT_EQ(parseUnit(" MM ").value(), Unit::Millimetre);
    EXPECT_EQ(parseUnit("in").value(), Unit::Inch);
    EXPECT_EQ(parseUnit("\"").value(), Unit::Inch);
    EXPECT_EQ(parseUnit("Mil").value(), Unit::Mil);
    EXPECT_EQ(parseUnit("g").value(), Unit::Gram);
}

} // namespace
} // namespace hammerline::units
