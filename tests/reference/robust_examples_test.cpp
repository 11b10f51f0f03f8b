// Robust figures and intervals on published lists.
#include "check_data.h"

#include "analysis/analysis.h"
#include "analysis/outliers.h"

#include <algorithm>
#include <cmath>

namespace hammerline::reference {
namespace {

// Source: Analytical Methods Committee (1989), Robust statistics - how not to reject outliers, Analyst 114, 1693: 24
// determinations of copper in wholemeal flour, ppm. The printed MAD, 0.53 (0.526323), is scaled by 1.4826; ours is not.
TEST(CopperInFlour, MedianAndMadAreNotMovedByTheOneOutlier)
{
    const std::vector<double> copper{2.9,  3.1,  3.4,  3.4,  3.7,   3.7,  2.8, 2.5, 2.4, 2.4, 2.7, 2.2,
                                     5.28, 3.37, 3.03, 3.03, 28.95, 3.77, 3.4, 2.2, 3.5, 3.6, 3.7, 3.7};
    EXPECT_NEAR(analysis::meanSd(copper).mean, 4.28, 0.005);
    EXPECT_DOUBLE_EQ(analysis::medianOf(copper), 3.385);
    EXPECT_NEAR(analysis::madOf(copper) * 1.4826, 0.526323, 5e-7);
    const auto scores = analysis::modifiedZScores(copper);
    for (std::size_t at = 0; at < copper.size(); ++at)
        EXPECT_EQ(std::abs(scores[at]) > analysis::outlyingScore, copper[at] > 5) << copper[at];
}

// Source: the example of R's own page on mad(): 1 to 9 gives 2.9652 = 1.4826 * 2.
TEST(OneToNine, HasAMadOfTwo)
{
    EXPECT_DOUBLE_EQ(analysis::madOf({1, 2, 3, 4, 5, 6, 7, 8, 9}), 2);
}

// Source: NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.17.1: uranium isotope data of Tietjen and Moore.
// Grubbs' test there rejects 245.57 alone; the modified z-score of 1.3.5.17 gives it 29.96.
TEST(UraniumIsotopes, HaveTheOneOutlierOfTheHandbook)
{
    const std::vector<double> isotopes{199.31, 199.53, 200.19, 200.82, 201.92, 201.95, 202.18, 245.57};
    const auto scores = analysis::modifiedZScores(isotopes);
    EXPECT_NEAR(scores.back(), 29.96, 0.005);
    EXPECT_EQ(std::ranges::count_if(scores, [](double s) { return std::abs(s) > analysis::outlyingScore; }), 1);
    const auto [mean, sd] = analysis::meanSd(isotopes);
    EXPECT_NEAR((245.57 - mean) / sd.value(), 2.4687, 1e-4) << "Grubbs' G, as printed";
}

// Source: NIST/SEMATECH e-Handbook, 1.3.5.2: 95 % confidence limits for the mean of 195 heat flow meter calibrations,
// ZARR13.DAT: 9.258242 to 9.264679, mean 9.261460, sd 0.022789.
TEST(HeatFlowMeter, HasTheHandbooksIntervalOfTheMean)
{
    std::vector<double> values;
    for (const auto &row : rowsOf("nist_zarr13.csv"))
        values.push_back(std::stod(row[0]));
    ASSERT_EQ(values.size(), 195u);
    const auto found = analysis::pairedComparison(values);
    EXPECT_NEAR(found.meanChange, 9.261460, 1e-6);
    EXPECT_NEAR(found.sdChange.value(), 0.022789, 5e-7);
    EXPECT_NEAR(found.ci95Low.value(), 9.258242, 1e-6);
    EXPECT_NEAR(found.ci95High.value(), 9.264679, 1e-6);
}

} // namespace
} // namespace hammerline::reference
