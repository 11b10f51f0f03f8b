// A second opinion: the same questions put to SciPy 1.10.1 (Debian 12), whose answers stand here as figures. Whatever
// was derived from its distributions was written anew for that, in Python, from the formulas and not from our code.
#include "check_data.h"

#include "analysis/analysis.h"
#include "analysis/spot_check.h"
#include "analysis/study_intervals.h"
#include "analysis/trend.h"

#include <cmath>

namespace hammerline::reference {
namespace {

using analysis::SdInterval;

analysis::GaugeStudy studyIn(const std::string &file, std::size_t part, std::size_t person, std::size_t take)
{
    std::vector<analysis::Trial> trials;
    for (const auto &row : rowsOf(file))
        trials.push_back({keyboard::Note(std::stoi(row[part])), row[person], std::stoi(row[take]),
                          units::Length::millimetres(std::stod(row[3]))});
    return analysis::gaugeStudy(trials).value();
}

/// Limits of a variance.
struct Limits {
    double low = 0, high = 0;
};

/// `generalized`: simulated, hence to fewer digits, and by another method, hence other limits.
void expectLimits(const SdInterval &found, const Limits &mls, const Limits &generalized, double apart)
{
    EXPECT_NEAR(found.low * found.low, mls.low, 1e-8 * mls.low + 5e-10);
    EXPECT_NEAR(found.high * found.high, mls.high, 1e-8 * mls.high + 5e-10);
    EXPECT_NEAR(found.low / std::sqrt(generalized.low), 1, apart);
    EXPECT_NEAR(found.high / std::sqrt(generalized.high), 1, apart);
}

// Data: Houf and Burman (1988), the worked example of Burdick, Borror and Montgomery, Design and Analysis of Gauge R&R
// Studies (2005), and of SAS/STAT, The VARCOMP Procedure, which prints no limits that we could read. SciPy: modified
// large-sample limits from its chi-squared and F, and generalized limits (Hamada and Weerahandi 2000; from memory) of 2
// million draws: another method, which for the total is known to reach further.
TEST(HoufBurman1988, HasTheSecondOpinionsIntervalsWithInteraction)
{
    const auto study = studyIn("houf_burman_1988.csv", 0, 1, 2);
    ASSERT_FALSE(study.interactionPooled);
    EXPECT_NEAR(study.anova[0].sumOfSquares, 3935.955555555556, 1e-9);
    EXPECT_NEAR(study.anova[2].f.value(), 5.27294685990339, 1e-12);
    EXPECT_NEAR(study.anova[2].p.value(), 5.060090058923989e-07, 1e-17);
    EXPECT_NEAR(study.variance.gauge, 1.803703704, 5e-10);
    EXPECT_NEAR(study.variance.note, 48.292592593, 5e-10);
    const auto of = analysis::intervalsOf(study);
    expectLimits(of.repeatability, {0.368157535, 0.757543045}, {0.3680, 0.7576}, 0.001);
    expectLimits(of.reproducibility, {0.693091684, 26.498636550}, {0.6658, 26.5996}, 0.03);
    expectLimits(of.gauge, {1.206225574, 27.017238837}, {1.1863, 27.1399}, 0.01);
    expectLimits(of.note, {22.694519080, 161.639184152}, {22.6414, 161.7001}, 0.002);
    expectLimits(of.total, {24.488435035, 166.222172905}, {25.4317, 178.6409}, 0.04);
}

// Data: AIAG (2010), see aiag_study_test.cpp.
TEST(AiagStudy, HasTheSecondOpinionsIntervalsWithoutInteraction)
{
    const auto study = studyIn("aiag_crossed.csv", 2, 0, 1);
    ASSERT_TRUE(study.interactionPooled);
    EXPECT_NEAR(study.anova[0].f.value(), 245.61391038552344, 1e-9);
    EXPECT_NEAR(study.anova[0].p.value() / 2.0210117945195147e-53, 1, 1e-9);
    EXPECT_NEAR(study.anova[1].p.value() / 1.337594623836505e-12, 1, 1e-9);
    EXPECT_NEAR(study.anova[2].p.value(), 0.9741064043290463, 1e-12);
    const auto of = analysis::intervalsOf(study);
    expectLimits(of.repeatability, {0.029889158, 0.056213476}, {0.0298923, 0.0562175}, 0.001);
    expectLimits(of.reproducibility, {0.012947098, 2.083626591}, {0.0129581, 2.0852691}, 0.002);
    expectLimits(of.gauge, {0.051735211, 2.123704395}, {0.0514666, 2.1262108}, 0.004);
    expectLimits(of.note, {0.511613496, 3.631239649}, {0.5114250, 3.6330390}, 0.001);
    expectLimits(of.total, {0.601753952, 4.434639056}, {0.6342044, 4.9515855}, 0.06);
}

// Data: Hollander and Wolfe (1973), depression scale factor IV of nine patients; scipy.stats.ttest_1samp.
// The interval: mpmath 1.3.0, since SciPy's quantile of t has 10 digits here.
TEST(DepressionScale, HasTheSecondOpinionsPairedT)
{
    const std::vector<double> first{1.83, 0.5, 1.62, 2.48, 1.68, 1.88, 1.55, 3.06, 1.3};
    const std::vector<double> second{0.878, 0.647, 0.598, 2.05, 1.06, 1.29, 1.06, 3.14, 1.29};
    std::vector<double> changes;
    for (std::size_t at = 0; at < first.size(); ++at)
        changes.push_back(second[at] - first[at]);
    const auto found = analysis::pairedComparison(changes);
    EXPECT_NEAR(found.t.value(), -3.0353754156485917, 1e-13);
    EXPECT_NEAR(found.p.value(), 0.016176627434908095, 1e-14);
    EXPECT_NEAR(found.ci95Low.value(), -0.75999906550560934, 1e-14);
    EXPECT_NEAR(found.ci95High.value(), -0.10377871227216844, 1e-14);
}

// Invented means of five passes; scipy.stats.linregress and t.ppf.
TEST(LineOfFivePasses, HasTheSecondOpinionsSlopeAndInterval)
{
    const std::vector<double> years{0, 0.9, 2.1, 3.0, 4.2}, means{45.1, 45.3, 45.25, 45.6, 45.7};
    const auto line = analysis::fitLine(years, means).value();
    EXPECT_NEAR(line.slope, 0.1408794788273623, 1e-13);
    EXPECT_NEAR(line.intercept, 45.10260586319218, 1e-12);
    EXPECT_NEAR(line.slopeSd.value(), 0.03138086134853037, 1e-13);
    EXPECT_NEAR(line.slopeLow.value(), 0.04101157257209409, 1e-12);
    EXPECT_NEAR(line.slopeHigh.value(), 0.2407473850826305, 1e-12);
}

struct Sampled {
    int notes, sample, found;
    const char *confidence;
    int mostOut;
};

class SecondOpinion : public testing::TestWithParam<Sampled> {};

// The largest M with scipy.stats.hypergeom.cdf(found, notes, M, sample) > 1 - confidence.
TEST_P(SecondOpinion, OfASampleAgrees)
{
    const Sampled &asked = GetParam();
    EXPECT_EQ(analysis::spotCheck(asked.notes, asked.sample, asked.found, asked.confidence).value().mostOut,
              asked.mostOut);
}

INSTANTIATE_TEST_SUITE_P(Hypergeometric, SecondOpinion,
                         testing::Values(Sampled{88, 13, 0, "0.95", 16}, Sampled{88, 20, 1, "0.95", 17},
                                         Sampled{88, 44, 2, "0.95", 9}, Sampled{85, 20, 0, "0.9", 8},
                                         Sampled{88, 30, 3, "0.99", 23}, Sampled{97, 25, 0, "0.95", 9},
                                         Sampled{500, 50, 1, "0.95", 43}, Sampled{1000, 80, 0, "0.9", 27},
                                         Sampled{10000, 300, 5, "0.95", 344}, Sampled{88, 88, 4, "0.95", 4},
                                         Sampled{88, 1, 0, "0.95", 83}, Sampled{88, 1, 1, "0.95", 88}));

TEST(SecondOpinion, OfTheLeastSamplesAgrees)
{
    const auto samples = [](int notes, const char *confidence) {
        std::vector<int> least;
        const auto check = analysis::spotCheck(notes, 1, 0, confidence).value();
        for (const auto &one : check.sampleToProve)
            least.push_back(one.sample);
        return least;
    };
    EXPECT_EQ(samples(88, "0.95"), (std::vector{84, 68, 55, 39, 24}));
    EXPECT_EQ(samples(85, "0.9"), (std::vector{77, 58, 46, 31, 19}));
    EXPECT_EQ(samples(97, "0.99"), (std::vector{97, 87, 76, 58, 38}));
}

} // namespace
} // namespace hammerline::reference
