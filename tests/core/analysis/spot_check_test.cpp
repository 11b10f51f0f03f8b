#include "analysis/spot_check.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <array>
#include <string>

namespace hammerline::analysis {
namespace {

using testing::ElementsAre;

int mostOut(int notes, int sample, int found, std::string_view confidence = "0.95")
{
    return spotCheck(notes, sample, found, confidence).value().mostOut;
}

TEST(SpotCheck, NeedsEightyFourOfEightyEightToProveNone)
{
    EXPECT_THAT(spotCheck(88, 1, 0, "0.95").value().sampleToProve,
                ElementsAre(SampleToProve{0, 84}, SampleToProve{1, 68}, SampleToProve{2, 55}, SampleToProve{4, 39},
                            SampleToProve{8, 24}));
}

TEST(SpotCheck, ProvesWithTheLeastSampleAndNotWithOneLess)
{
    for (int notes = 1; notes <= 97; notes += 12) {
        const auto check = spotCheck(notes, 1, 0, "0.9").value();
        for (const auto &[atMost, sample] : check.sampleToProve) {
            if (sample == 0) {
                EXPECT_LE(notes, atMost);
                continue;
            }
            EXPECT_LE(mostOut(notes, sample, 0, "0.9"), atMost);
            EXPECT_GT(mostOut(notes, sample - 1, 0, "0.9"), atMost);
        }
    }
}

TEST(SpotCheck, KnowsAllWhereAllWereChecked)
{
    for (int found = 0; found <= 52; ++found)
        EXPECT_EQ(mostOut(52, 52, found), found);
}

TEST(SpotCheck, KnowsNothingWithoutASample)
{
    EXPECT_EQ(mostOut(88, 0, 0), 88);
}

TEST(SpotCheck, LeavesWhatWasNotSampledOutWhereAllSampledWereOut)
{
    EXPECT_EQ(mostOut(88, 20, 20), 88);
}

TEST(SpotCheck, TakesTheConfidenceAsTheDecimalTyped)
{
    // N = 20, n = 19, M = 1: P(none found) = 1/20 exactly, which is not more than 1 - 0.95.
    EXPECT_EQ(mostOut(20, 19, 0, "0.95"), 0);
    EXPECT_EQ(mostOut(20, 19, 0, "0.9500"), 0);
    EXPECT_EQ(mostOut(20, 19, 0, ".95"), 0);
    EXPECT_EQ(mostOut(20, 19, 0, "0.95000000000000000000000001"), 1);
    // N = 10, n = 7, M = 1: 3/10 against 1 - 0.7, which doubles put at 0.30000000000000004.
    EXPECT_EQ(mostOut(10, 7, 0, "0.7"), 0);
}

TEST(SpotCheck, AllowsMoreOutTheMoreAreFound)
{
    // Worked out a second time with fractions of another language, for 13 of 88.
    const std::array expected{16, 26, 34, 41, 48, 55, 61, 67, 72, 77, 81, 85, 87, 88};
    for (std::size_t found = 0; found < expected.size(); ++found)
        EXPECT_EQ(mostOut(88, 13, static_cast<int>(found)), expected[found]);
}

TEST(SpotCheck, StaysQuickAtItsLargest)
{
    EXPECT_EQ(mostOut(10'000, 10'000, 5'000), 5'000);
    EXPECT_GT(mostOut(10'000, 5'000, 2'500), 5'000);
}

TEST(SpotCheckRefuses, CountsThatCannotBe)
{
    for (const auto &[notes, sample, found] :
         {std::array{0, 0, 0}, std::array{-1, 0, 0}, std::array{10'001, 1, 0}, std::array{88, 89, 0},
          std::array{88, -1, 0}, std::array{88, 13, 14}, std::array{88, 13, -1}})
        EXPECT_FALSE(spotCheck(notes, sample, found, "0.95").ok()) << notes << ' ' << sample << ' ' << found;
}

TEST(SpotCheckRefuses, ConfidencesThatAreNone)
{
    for (const char *text : {"", "0", "1", "0.", ".", "0.0", "1.0", "1.5", "-0.5", "95", "95%", "0.9e1", "9.5e-1",
                             "nan", "0.9 ", " 0.9", "00.9", "0x.9", "0.9.5"})
        EXPECT_FALSE(spotCheck(88, 13, 0, text).ok()) << text;
    EXPECT_FALSE(spotCheck(88, 13, 0, "0." + std::string(1000, '9')).ok());
}

TEST(SpotCheckRefuses, EverythingAtOnce)
{
    EXPECT_THAT(spotCheck(0, 5, 9, "2").faults(), testing::SizeIs(4));
}

} // namespace
} // namespace hammerline::analysis
