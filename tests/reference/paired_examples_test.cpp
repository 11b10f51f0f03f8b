#include "check_data.h"

#include "analysis/analysis.h"

namespace hammerline::reference {
namespace {

// Source: Student (1908), The probable error of a mean, Biometrika 6; hours of sleep gained under two drugs.
TEST(StudentSleep, HasThePublishedPairedT)
{
    const std::vector<double> first{0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0, 2};
    const std::vector<double> second{1.9, 0.8, 1.1, 0.1, -0.1, 4.4, 5.5, 1.6, 4.6, 3.4};
    std::vector<double> changes;
    for (std::size_t i = 0; i < first.size(); ++i)
        changes.push_back(first[i] - second[i]);
    const auto result = analysis::pairedComparison(changes);
    EXPECT_NEAR(result.t.value(), -4.0621, 0.00005);
    EXPECT_EQ(result.degreesOfFreedom, 9);
    EXPECT_NEAR(result.p.value(), 0.002833, 0.0000005);
    EXPECT_NEAR(result.ci95Low.value(), -2.4598858, 0.00000005);
    EXPECT_NEAR(result.ci95High.value(), -0.7001142, 0.00000005);
    EXPECT_NEAR(result.meanChange, -1.58, 1e-12);
}

// Source: Bland and Altman (1986), Lancet i:307-310, table 1: peak expiratory flow by two meters, first readings.
// The paper takes 2 s for its limits (-79.7 and 75.5); other accounts take the exact normal quantile 1.959964
// (-78.0959 and 73.8606). Ours are mean ± 1.96 s of the published mean and s.
TEST(BlandAltman1986, HasThePublishedBiasAndLimitsOfAgreement)
{
    std::vector<double> differences;
    for (const auto &row : rowsOf("bland_altman_1986_pefr.csv"))
        differences.push_back(std::stod(row[1]) - std::stod(row[3]));
    ASSERT_EQ(differences.size(), 17U);
    const auto result = analysis::pairedComparison(differences);
    EXPECT_NEAR(result.meanChange, -2.11764705882, 5e-12);
    EXPECT_NEAR(result.sdChange.value(), 38.7651298736, 5e-11);
    EXPECT_NEAR(result.agreementLow.value(), -2.11764705882 - 1.96 * 38.7651298736, 5e-10);
    EXPECT_NEAR(result.agreementHigh.value(), -2.11764705882 + 1.96 * 38.7651298736, 5e-10);
    EXPECT_NEAR(result.ci95Low.value(), -22.0, 0.06) << "the paper works with rounded figures";
    EXPECT_NEAR(result.ci95High.value(), 17.8, 0.06);
}

} // namespace
} // namespace hammerline::reference
