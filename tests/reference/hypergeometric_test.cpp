// Source: the urn of the textbooks, 50 marbles, 5 of them green, 10 drawn: P(at most 2 green) = 0.9517396968; operating
// characteristics of lot 88 (n = 13, c = 0; n = 20, c = 1) by the hypergeometric distribution. A spot check turns the
// question round: M is still possible at a confidence just above 1 - P, and no longer just below.
#include "analysis/spot_check.h"

#include <gtest/gtest.h>

#include <cstdio>
#include <string>

namespace hammerline::reference {
namespace {

struct Published {
    int notes, sample, found, out;
    double probability; ///< of at most `found` in the sample
};

std::string confidence(double value)
{
    char text[32];
    std::snprintf(text, sizeof text, "%.12f", value);
    return text;
}

class Hypergeometric : public testing::TestWithParam<Published> {};

TEST_P(Hypergeometric, TurnsOverAtThePublishedProbability)
{
    const auto &[notes, sample, found, out, probability] = GetParam();
    constexpr double little = 1e-9;
    const auto above = analysis::spotCheck(notes, sample, found, confidence(1 - probability + little)).value();
    const auto below = analysis::spotCheck(notes, sample, found, confidence(1 - probability - little)).value();
    EXPECT_EQ(above.mostOut, out);
    EXPECT_EQ(below.mostOut, out - 1);
}

INSTANTIATE_TEST_SUITE_P(Urn, Hypergeometric,
                         testing::Values(Published{50, 10, 2, 5, 0.9517396968}, Published{50, 10, 0, 5, 0.310562782}));
INSTANTIATE_TEST_SUITE_P(
    LotOf88, Hypergeometric,
    testing::Values(Published{88, 13, 0, 1, 0.8522727272727273}, Published{88, 13, 0, 2, 0.7249216300940439},
                    Published{88, 13, 0, 4, 0.5212295605710389}, Published{88, 13, 0, 8, 0.26247453827981504},
                    Published{88, 13, 0, 16, 0.059058271494272646}, Published{88, 20, 1, 2, 0.9503657262277951},
                    Published{88, 20, 1, 4, 0.7790697674418605}, Published{88, 20, 1, 8, 0.4166486152676459},
                    Published{88, 20, 1, 16, 0.07143895314337993}));

} // namespace
} // namespace hammerline::reference
