// Source: NIST Statistical Reference Datasets, univariate summary statistics,
// https://www.itl.nist.gov/div898/strd/univ/homepage.html; certified to 15 digits. The digits are counted as NIST does:
// -log10 of the relative error.
#include "check_data.h"

#include "analysis/analysis.h"
#include "analysis/trend.h"

#include <cmath>

namespace hammerline::reference {
namespace {

struct Certified {
    const char *file;
    double mean;
    double sd;
    /// Digits that doubles leave to the standard deviation: NumAcc2 and NumAcc3 are stiff, because 1.1 or 1000000.1
    /// has no binary form.
    double sdDigits;
};

double digits(double computed, double certified)
{
    return computed == certified ? 15
                                 : std::min(15.0, -std::log10(std::abs(computed - certified) / std::abs(certified)));
}

class NistStrd : public testing::TestWithParam<Certified> {};

TEST_P(NistStrd, IsReachedToTheDigitsThatDoublesAllow)
{
    std::vector<double> values;
    for (const auto &row : rowsOf(GetParam().file))
        values.push_back(std::stod(row[0]));
    const auto result = analysis::meanSd(values);
    EXPECT_GE(digits(result.mean, GetParam().mean), 14.9);
    EXPECT_GE(digits(result.sd.value(), GetParam().sd), GetParam().sdDigits) << digits(*result.sd, GetParam().sd);
}

INSTANTIATE_TEST_SUITE_P(
    Univariate, NistStrd,
    testing::Values(Certified{"strd_univ_lew.csv", -177.435000000000, 277.332168044316, 14.9},
                    Certified{"strd_univ_lottery.csv", 518.958715596330, 291.699727470969, 14.9},
                    Certified{"strd_univ_michelso.csv", 299.852400000000, 0.0790105478190518, 13.8},
                    Certified{"strd_univ_numacc1.csv", 10000002, 1, 15},
                    Certified{"strd_univ_numacc2.csv", 1.2, 0.1, 14.9},
                    Certified{"strd_univ_numacc3.csv", 1000000.2, 0.1, 9.4},
                    Certified{"strd_univ_pidigits.csv", 4.53480000000000, 2.86733906028871, 14.9}));

// NIST StRD, linear regression, Norris, https://www.itl.nist.gov/div898/strd/lls/lls.shtml.
TEST(NistStrdLine, NorrisIsReachedToTwelveDigits)
{
    std::vector<double> x, y;
    for (const auto &row : rowsOf("strd_lin_norris.csv")) {
        y.push_back(std::stod(row[0]));
        x.push_back(std::stod(row[1]));
    }
    ASSERT_EQ(x.size(), 36u);
    const auto line = analysis::fitLine(x, y).value();
    EXPECT_GE(digits(line.intercept, -0.262323073774029), 12);
    EXPECT_GE(digits(line.slope, 1.00211681802045), 12);
    EXPECT_GE(digits(line.slopeSd.value(), 0.429796848199937e-3), 12);
}

} // namespace
} // namespace hammerline::reference
