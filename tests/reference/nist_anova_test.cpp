// Source: NIST Statistical Reference Datasets, analysis of variance,
// https://www.itl.nist.gov/div898/strd/anova/anova.html, certified to 15 digits. They are one-way. A gauge study is
// two-way, but its row "note" is the one-way row between treatments, and its rows person, interaction and repeatability
// together are the one within, however the replicates are dealt out to people and takes. SiRstv has 5 replicates, which
// no layout of two people and two takes at least can hold. The values are entered as whole base units (one digit of
// theirs a nanometre), so that nothing is lost before the sums begin: where doubles leave 3 digits to SmLs04 and its
// kin, whole numbers leave all.
#include "check_data.h"

#include "analysis/gauge_study.h"

#include <cmath>

namespace hammerline::reference {
namespace {

struct OneWay {
    double between = 0, within = 0, f = 0;
    int betweenDegrees = 0, withinDegrees = 0;
};

/// Sums of squares in nanometres squared.
OneWay oneWay(const std::vector<analysis::Trial> &trials)
{
    const auto rows = analysis::gaugeStudy(trials).value().anova;
    constexpr double squareNanometres = 1e12; // in a square millimetre
    OneWay made{.between = rows[0].sumOfSquares * squareNanometres, .betweenDegrees = rows[0].degreesOfFreedom};
    for (std::size_t row = 1; row <= 3; ++row) {
        made.within += rows[row].sumOfSquares * squareNanometres;
        made.withinDegrees += rows[row].degreesOfFreedom;
    }
    made.f = made.between / made.betweenDegrees / (made.within / made.withinDegrees);
    return made;
}

/// Replicate `which` of a treatment, counted from 0, dealt out to people with so many takes each.
analysis::Trial trial(int treatment, int which, int takes, std::int64_t digits)
{
    return {keyboard::Note(treatment), "person " + std::to_string(which / takes), which % takes + 1,
            units::Length::nanometres(digits)};
}

/// "107.8681568" with 7 decimals, less 107: 8681568.
std::int64_t digitsOf(const std::string &text, std::int64_t less, int decimals)
{
    const double scale = std::pow(10.0, decimals);
    const auto point = text.find('.');
    const std::int64_t whole = std::stoll(text.substr(0, point)) - less;
    return whole * static_cast<std::int64_t>(scale) + std::stoll(text.substr(point + 1));
}

std::vector<analysis::Trial> trialsIn(const std::string &file, int takes, std::int64_t less, int decimals)
{
    std::vector<analysis::Trial> trials;
    int treatment = 0, which = 0;
    for (const auto &row : rowsOf(file)) {
        which = std::stoi(row[0]) == treatment ? which + 1 : 0;
        treatment = std::stoi(row[0]);
        trials.push_back(trial(treatment, which, takes, digitsOf(row[1], less, decimals)));
    }
    return trials;
}

/// To 14 digits at least.
void expectCertified(double computed, double certified)
{
    EXPECT_NEAR(computed / certified, 1, 1e-14);
}

TEST(NistAnova, AtomicWeightOfSilverIsReached)
{
    const OneWay found = oneWay(trialsIn("strd_anova_atmwtag.csv", 6, 107, 7));
    EXPECT_EQ(found.betweenDegrees, 1);
    EXPECT_EQ(found.withinDegrees, 46);
    expectCertified(found.between * 1e-14, 3.63834187500000E-09);
    expectCertified(found.within * 1e-14, 1.04951729166667E-08);
    expectCertified(found.f, 1.59467335677930E+01);
}

void expectSimonLesage(const OneWay &found, int replicates, double between, double within, double f)
{
    EXPECT_EQ(found.betweenDegrees, 8);
    EXPECT_EQ(found.withinDegrees, 9 * (replicates - 1));
    expectCertified(found.between * 1e-2, between);
    expectCertified(found.within * 1e-2, within);
    expectCertified(found.f, f);
}

TEST(NistAnova, SimonLesageOf21ReplicatesIsReachedWithOneConstantDigitAndWithSeven)
{
    expectSimonLesage(oneWay(trialsIn("strd_anova_smls01.csv", 7, 0, 1)), 21, 1.68, 1.8, 21);
    expectSimonLesage(oneWay(trialsIn("strd_anova_smls04.csv", 7, 0, 1)), 21, 1.68, 1.8, 21);
}

/// The data sets of Simon and Lesage are built, not measured: treatments 1.4, 1.3, 1.5, 1.3 ... with one replicate at
/// the centre and the rest a tenth above or below it in turns; in tenths.
std::vector<analysis::Trial> simonLesage(int replicates, int takes, std::int64_t constant)
{
    constexpr std::int64_t centres[] = {14, 13, 15, 13, 15, 13, 15, 13, 15};
    std::vector<analysis::Trial> trials;
    for (int treatment = 1; treatment <= 9; ++treatment)
        for (int which = 0; which < replicates; ++which) {
            const int off = which == 0 ? 0 : which % 2 == 1 ? -1 : 1;
            trials.push_back(trial(treatment, which, takes, constant + centres[treatment - 1] + off));
        }
    return trials;
}

// SmLs02 and SmLs03, SmLs05 and SmLs06 (a constant of 1000000 before them); SmLs07 to 09 would be 100 km in whole
// nanometres a tenth, which is refused.
TEST(NistAnova, SimonLesageOf201And2001ReplicatesIsReached)
{
    for (const std::int64_t constant : {0, 10'000'000}) {
        expectSimonLesage(oneWay(simonLesage(21, 7, constant)), 21, 1.68, 1.8, 21);
        expectSimonLesage(oneWay(simonLesage(201, 67, constant)), 201, 16.08, 18, 201);
        expectSimonLesage(oneWay(simonLesage(2001, 667, constant)), 2001, 160.08, 180, 2001);
    }
}

} // namespace
} // namespace hammerline::reference
