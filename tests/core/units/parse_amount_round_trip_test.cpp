// Randomized: what is written can be read back to the last base unit. Seeds are fixed, so a failure comes again.
#include "units/parse_amount.h"

#include <gtest/gtest.h>

#include <random>

namespace hammerline::units {
namespace {

constexpr int rounds = 20'000;

TEST(RoundTrip, EveryLengthSurvivesItsExactDecimal)
{
    std::mt19937_64 random(1);
    std::uniform_int_distribution<std::int64_t> nanometres(-1'000'000'000, 1'000'000'000);
    for (int i = 0; i < rounds; ++i) {
        const Amount amount = Length::nanometres(nanometres(random));
        ASSERT_EQ(parseAmount(exactDecimal(amount), {.allowNegative = true}).value().value, amount);
    }
}

TEST(RoundTrip, EveryMassSurvivesItsExactDecimal)
{
    std::mt19937_64 random(2);
    std::uniform_int_distribution<std::int64_t> milligrams(0, 1'000'000);
    for (int i = 0; i < rounds; ++i) {
        const Amount amount = Mass::milligrams(milligrams(random));
        ASSERT_EQ(parseAmount(exactDecimal(amount) + "g", {.dimension = Dimension::Mass}).value().value, amount);
    }
}

TEST(RoundTrip, EveryAmountSurvivesADouble)
{
    std::mt19937_64 random(3);
    std::uniform_int_distribution<std::int64_t> count(-1'000'000'000, 1'000'000'000);
    for (int i = 0; i < rounds; ++i) {
        const Amount length(Dimension::Length, count(random)), mass(Dimension::Mass, count(random));
        ASSERT_EQ(Amount::fromDisplay(Dimension::Length, length.inDisplay()), length);
        ASSERT_EQ(Amount::fromDisplay(Dimension::Mass, mass.inDisplay()), mass);
    }
}

TEST(RoundTrip, EverySixtyFourthOfAnInchIsItsDecimalInch)
{
    for (int n = 0; n <= 64 * 39; ++n) {
        const auto fraction = parseAmount(std::to_string(n) + "/64", {}).value().value;
        ASSERT_EQ(fraction.baseCount(), std::int64_t{n} * 396'875);
        ASSERT_EQ(parseAmount(fixedDecimal(fraction, Unit::Inch, 6) + "in", {}).value().value, fraction);
    }
}

TEST(RoundTrip, RandomTextNeverHarms)
{
    std::mt19937_64 random(4);
    constexpr std::string_view letters = "0123456789.,/-+ \"mingle\t";
    std::uniform_int_distribution<std::size_t> letter(0, letters.size() - 1), length(0, 12);
    for (int i = 0; i < rounds; ++i) {
        std::string text(length(random), ' ');
        for (char &c : text)
            c = letters[letter(random)];
        const auto parsed = parseAmount(text, {.allowNegative = true});
        if (parsed)
            ASSERT_LE(parsed.value().value.magnitude(), Amount(Length::nanometres(1'000'000'000))) << text;
        else
            ASSERT_FALSE(parsed.fault().problem.empty());
    }
}

} // namespace
} // namespace hammerline::units
