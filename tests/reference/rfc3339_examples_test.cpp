// Source: RFC 3339, Date and Time on the Internet: Timestamps (2002), §5.8 examples and §5.7 restrictions.
#include "readings/instant.h"

#include <gtest/gtest.h>

namespace hammerline::reference {
namespace {

using readings::parseRfc3339;

std::string utc(std::string_view text)
{
    return readings::rfc3339(parseRfc3339(text).value());
}

TEST(Rfc3339Examples, MeanTheMomentsThatTheStandardSays)
{
    EXPECT_EQ(utc("1985-04-12T23:20:50.52Z"), "1985-04-12T23:20:50.520Z");
    EXPECT_EQ(utc("1985-04-12t23:20:50.52z"), "1985-04-12T23:20:50.520Z");
    EXPECT_EQ(utc("1996-12-19T16:39:57-08:00"), "1996-12-20T00:39:57Z");
    EXPECT_EQ(utc("1937-01-01T12:00:27.87+00:20"), "1937-01-01T11:40:27.870Z");
    EXPECT_EQ(utc("2000-02-29T00:00:00Z"), "2000-02-29T00:00:00Z");
}

TEST(Rfc3339Examples, HaveTheirUnixSeconds)
{
    EXPECT_EQ(parseRfc3339("1996-12-19T16:39:57-08:00").value().time_since_epoch().count(), 851'042'397'000);
    EXPECT_EQ(parseRfc3339("1937-01-01T12:00:27.87+00:20").value().time_since_epoch().count(), -1'041'337'172'130);
}

TEST(Rfc3339Examples, HoldTheLeapSecondOf1990InBothZones)
{
    EXPECT_EQ(utc("1990-12-31T23:59:60Z"), "1990-12-31T23:59:59Z");
    EXPECT_EQ(utc("1990-12-31T15:59:60-08:00"), "1990-12-31T23:59:59Z");
}

TEST(Rfc3339Examples, RefuseWhatTheRestrictionsForbid)
{
    for (const char *text : {"1985-04-31T00:00:00Z", "2100-02-29T00:00:00Z", "2026-08-20T24:00:00Z", "1985-04-12 23:20",
                             "1985-4-12T23:20:50Z", "1985-04-12T23:20:50"})
        EXPECT_FALSE(parseRfc3339(text).ok()) << text;
}

} // namespace
} // namespace hammerline::reference
