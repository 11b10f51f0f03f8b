#include "units/inside/decimal.h"

#include <gtest/gtest.h>

#include <string>

namespace hammerline::units::inside {
namespace {

TEST(TimesRounded, LooksAtEveryDigitOfALongFraction)
{
    // 1/50 800 000 in is half a nanometre; one digit in the far distance decides.
    const std::string half(200, '0');
    EXPECT_EQ(timesRounded({"0", "5" + half}, 1), 1);
    EXPECT_EQ(timesRounded({"0", "4" + std::string(200, '9')}, 1), 0);
    EXPECT_EQ(timesRounded({"1", "5" + half + "1"}, 2), 3);
}

TEST(TimesRounded, TakesEmptyParts)
{
    EXPECT_EQ(timesRounded({"", "125"}, 25'400'000), 3'175'000);
    EXPECT_EQ(timesRounded({"7", ""}, 1'000), 7'000);
    EXPECT_EQ(timesRounded({"", ""}, 1'000), 0);
}

TEST(TimesRounded, SaturatesInsteadOfOverflowing)
{
    EXPECT_EQ(timesRounded({std::string(5000, '9'), ""}, 25'400'000), saturated);
    EXPECT_EQ(timesRounded({std::string(5000, '0') + "1", ""}, 1'000), 1'000);
}

TEST(TimesRounded, IsTheSameForAShortNumberAsForALongOne)
{
    // Ten zeros in front change nothing but the way that it is reckoned.
    const std::string zeros(10, '0');
    for (const std::int64_t factor : {1, 3, 1'000, 25'400, 1'000'000, 25'400'000, 999'999'999})
        for (const char *whole : {"", "0", "3", "17", "999", "12345"})
            for (const char *fraction : {"", "0", "5", "25", "49", "999", "0005", "4999"})
                EXPECT_EQ(timesRounded({whole, fraction}, factor), timesRounded({zeros + whole, fraction}, factor))
                    << whole << '.' << fraction << " times " << factor;
    EXPECT_EQ(timesRounded({"999999999", ""}, 999'999'999), saturated);
    EXPECT_EQ(timesRounded({"", "000000001"}, 500'000'000), 1);
    EXPECT_EQ(timesRounded({"", "000000001"}, 499'999'999), 0);
}

} // namespace
} // namespace hammerline::units::inside
