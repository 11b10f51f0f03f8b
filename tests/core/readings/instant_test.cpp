#include "readings/instant.h"

#include <gtest/gtest.h>

#include <random>

namespace hammerline::readings {
namespace {

Instant at(std::int64_t milliseconds)
{
    return Instant(std::chrono::milliseconds(milliseconds));
}

TEST(Rfc3339, WritesMillisecondsOnlyWhereThereAreAny)
{
    EXPECT_EQ(rfc3339(at(0)), "1970-01-01T00:00:00Z");
    EXPECT_EQ(rfc3339(at(250)), "1970-01-01T00:00:00.250Z");
    EXPECT_EQ(rfc3339(at(-1)), "1969-12-31T23:59:59.999Z");
    EXPECT_EQ(rfc3339(at(1772442600000)), "2026-03-02T09:10:00Z");
    EXPECT_EQ(isoDate(at(1772442600000)), "2026-03-02");
}

TEST(Rfc3339, ReadsBackWhatItWrites)
{
    std::mt19937_64 random(5);
    std::uniform_int_distribution<std::int64_t> moment(-62'167'219'200'000, 253'402'300'799'999); // years 0 to 9999
    for (int i = 0; i < 20'000; ++i) {
        const Instant instant = at(moment(random));
        ASSERT_EQ(parseRfc3339(rfc3339(instant)).value(), instant) << rfc3339(instant);
    }
}

TEST(ParseRfc3339, CutsOffWhatIsFinerThanAMillisecond)
{
    EXPECT_EQ(parseRfc3339("1970-01-01T00:00:00.9999999999Z").value(), at(999));
    EXPECT_EQ(parseRfc3339("1970-01-01T00:00:00.5Z").value(), at(500));
}

TEST(ParseRfc3339, TakesALeapSecondAsTheSecondBefore)
{
    EXPECT_EQ(parseRfc3339("1990-12-31T23:59:60Z").value(), parseRfc3339("1990-12-31T23:59:59Z").value());
    EXPECT_FALSE(parseRfc3339("1990-12-30T23:59:60Z").ok()) << "only at the end of a month";
    EXPECT_FALSE(parseRfc3339("1990-12-31T23:58:60Z").ok());
}

TEST(ParseRfc3339, RefusesWhatTheStandardDoesNotKnow)
{
    for (const char *text : {"",
                             "2026-03-02",
                             "2026-03-02T09:10Z",
                             "2026-03-02T09:10:00",
                             "2026-03-02 09:10:00Z",
                             "2026-3-2T09:10:00Z",
                             "2026-02-29T09:10:00Z",
                             "2026-13-01T09:10:00Z",
                             "2026-00-01T09:10:00Z",
                             "2026-03-02T24:00:00Z",
                             "2026-03-02T09:60:00Z",
                             "2026-03-02T09:10:61Z",
                             "2026-03-02T09:10:00.Z",
                             "2026-03-02T09:10:00,5Z",
                             "2026-03-02T09:10:00+1:00",
                             "2026-03-02T09:10:00+24:00",
                             "2026-03-02T09:10:00+0100",
                             "2026-03-02T09:10:00ZZ",
                             " 2026-03-02T09:10:00Z",
                             "+2026-03-02T09:10:00Z",
                             "12026-03-02T09:10:00Z"})
        EXPECT_FALSE(parseRfc3339(text).ok()) << text;
}

} // namespace
} // namespace hammerline::readings
