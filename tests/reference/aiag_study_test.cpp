// Source: AIAG, Measurement Systems Analysis, 4th ed. (2010): 10 parts, 3 appraisers, 3 trials, data and analysis of
// variance report. Parts stand for notes.
#include "check_data.h"

#include "analysis/gauge_study.h"

#include <cmath>
#include <tuple>

namespace hammerline::reference {
namespace {

using analysis::GaugeStudy;
using analysis::Trial;

GaugeStudy aiag()
{
    std::vector<Trial> trials;
    for (const auto &row : rowsOf("aiag_crossed.csv"))
        trials.push_back({keyboard::Note(std::stoi(row[2])), row[0], std::stoi(row[1]),
                          units::Length::millimetres(std::stod(row[3]))});
    return analysis::gaugeStudy(trials).value();
}

/// Equal to all printed digits.
void expectPrinted(double computed, double printed, int decimals)
{
    EXPECT_NEAR(computed, printed, 0.5 * std::pow(10.0, -decimals) * (1 + 1e-9));
}

TEST(AiagStudy, HasThePublishedAnalysisOfVariance)
{
    const auto study = aiag();
    EXPECT_EQ(study.notes, 10);
    EXPECT_EQ(study.people, 3);
    EXPECT_EQ(study.takes, 3);
    const auto &[note, person, interaction, repeatability, total] =
        std::tie(study.anova[0], study.anova[1], study.anova[2], study.anova[3], study.anova[4]);
    expectPrinted(note.sumOfSquares, 88.3619, 4);
    expectPrinted(person.sumOfSquares, 3.1673, 4);
    expectPrinted(interaction.sumOfSquares, 0.3590, 4);
    expectPrinted(repeatability.sumOfSquares, 2.7589, 4);
    expectPrinted(total.sumOfSquares, 94.6471, 4);
    expectPrinted(*note.meanSquare, 9.81799, 5);
    expectPrinted(*person.meanSquare, 1.58363, 5);
    expectPrinted(*interaction.meanSquare, 0.01994, 5);
    expectPrinted(*repeatability.meanSquare, 0.04598, 5);
    expectPrinted(*interaction.f, 0.434, 3);
    expectPrinted(*interaction.p, 0.974, 3);
}

TEST(AiagStudy, HasThePublishedComponentsWithoutInteraction)
{
    const auto study = aiag();
    EXPECT_TRUE(study.interactionPooled);
    expectPrinted(study.variance.repeatability, 0.03997, 5);
    expectPrinted(study.variance.reproducibility, 0.05146, 5);
    expectPrinted(study.variance.gauge, 0.09143, 5);
    expectPrinted(study.variance.note, 1.08645, 5);
    expectPrinted(study.variance.total, 1.17788, 5);
    expectPrinted(study.sd.gauge, 0.30237, 5);
    expectPrinted(study.sd.note, 1.04233, 5);
    expectPrinted(study.sd.total, 1.08530, 5);
    expectPrinted(study.percentOfTotalSd->gauge, 27.86, 2);
    expectPrinted(study.percentOfTotalSd->repeatability, 18.42, 2);
    expectPrinted(study.percentOfTotalSd->reproducibility, 20.90, 2);
    expectPrinted(study.percentOfTotalSd->note, 96.04, 2);
    EXPECT_EQ(study.distinctCategories, 4) << "5 by average and range, 4 by analysis of variance";
    expectPrinted(study.expandedUncertainty, 2 * 0.30237, 4);
}

// Two people, two notes, two takes: small enough to work by hand (a teaching example of the average and range method).
// The four cell means are 1.1, 2.1, 1.4, 2.4 and every take lies 0.1 from its cell's mean.
TEST(HandCheckableStudy, IsWhatPaperAndPencilSay)
{
    const auto trial = [](int note, const char *person, int take, double value) {
        return Trial{keyboard::Note(note), person, take, units::Length::millimetres(value)};
    };
    const auto study = analysis::gaugeStudy({trial(1, "X", 1, 1.0), trial(1, "X", 2, 1.2), trial(2, "X", 1, 2.0),
                                             trial(2, "X", 2, 2.2), trial(1, "Y", 1, 1.3), trial(1, "Y", 2, 1.5),
                                             trial(2, "Y", 1, 2.3), trial(2, "Y", 2, 2.5)})
                           .value();
    EXPECT_DOUBLE_EQ(study.anova[0].sumOfSquares, 2.0);  // 4 * 2 * 0.5^2
    EXPECT_DOUBLE_EQ(study.anova[1].sumOfSquares, 0.18); // 4 * 2 * 0.15^2
    EXPECT_EQ(study.anova[2].sumOfSquares, 0);
    EXPECT_DOUBLE_EQ(study.anova[3].sumOfSquares, 0.08); // 8 * 0.1^2
    EXPECT_TRUE(study.interactionPooled);
    EXPECT_DOUBLE_EQ(study.variance.repeatability, 0.016);                // 0.08 / 5
    EXPECT_DOUBLE_EQ(study.variance.reproducibility, (0.18 - 0.016) / 4); // 0.041
    EXPECT_DOUBLE_EQ(study.variance.note, (2.0 - 0.016) / 4);             // 0.496
    EXPECT_EQ(study.distinctCategories, 4);                               // 1.41 * 0.70427 / 0.23875 = 4.159
}

} // namespace
} // namespace hammerline::reference
