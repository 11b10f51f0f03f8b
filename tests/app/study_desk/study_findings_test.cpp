#include "app/study_desk/study_fixture.h"

namespace hammerline::study_desk {
namespace {

class FindingsTest : public StudyTest {
protected:
    [[nodiscard]] Findings taken(double ben, double scatter, const std::string &gauge = "rule 3")
    {
        const auto study = planned(gauge);
        Taking taking(shop.book, study, clock());
        takeAll(taking, ben, scatter);
        const auto set = support::plainSet();
        return findingsOf(shop.book, study, &set).value();
    }
    [[nodiscard]] static bool says(const Findings &findings, const char *words)
    {
        return sentencesOf(findings).join(' ').contains(words);
    }
};

TEST_F(FindingsTest, ThereAreNoneWhileATrialIsMissing)
{
    const auto study = planned();
    Taking taking(shop.book, study, clock());
    ASSERT_TRUE(taking.enter("3.2").ok());
    EXPECT_FALSE(findingsOf(shop.book, study, nullptr));
    takeAll(taking);
    EXPECT_TRUE(findingsOf(shop.book, study, nullptr));
}

TEST_F(FindingsTest, TheFiguresAreThoseOfTheAnalysis)
{
    const Findings findings = taken(0.1, 0.02);
    const auto figures = analysis::gaugeStudy(findings.trials).value();
    EXPECT_EQ(findings.figures.expandedUncertainty, figures.expandedUncertainty);
    EXPECT_EQ(findings.figures.distinctCategories, figures.distinctCategories);
    EXPECT_EQ(findings.trials.size(), 12u);
    EXPECT_DOUBLE_EQ(findings.halfWidth.value(), 0.5);
}

TEST_F(FindingsTest, WhereTheSpreadComesFromDecidesWhatWouldHelp)
{
    EXPECT_TRUE(says(taken(0.3, 0.02, "a"), "agreeing on how it is held"));
    EXPECT_TRUE(says(taken(0.0, 0.05, "b"), "the same person reading again"));
}

TEST_F(FindingsTest, PeopleWhoAlwaysAgreeAreNotBelievedBlindly)
{
    const Findings findings = taken(0, 0);
    EXPECT_FALSE(findings.figures.distinctCategories);
    EXPECT_FALSE(findings.shareOfResolution);
    EXPECT_TRUE(says(findings, "shows no spread at all"));
}

TEST_F(FindingsTest, ACoarseScaleIsNamedByItsShare)
{
    auto study = planned();
    Taking taking(shop.book, study, clock());
    while (const auto stop = taking.asked())
        ASSERT_TRUE(taking.enter(stop->note.number() + stop->take == 32 ? "4" : "3").ok());
    const Findings findings = findingsOf(shop.book, study, nullptr).value();
    // half a step of 0.5 mm: 0.25 / 3 mm^2 over the gauge's variance
    EXPECT_NEAR(findings.shareOfResolution.value(), 0.25 / 3 / findings.figures.variance.gauge, 1e-12);
}

TEST_F(FindingsTest, AZeroLeftOutDoesNotMakeTheScaleCoarse)
{
    const auto study = planned();
    Taking taking(shop.book, study, clock());
    while (const auto stop = taking.asked())
        ASSERT_TRUE(taking.enter(stop->take == 1 ? "3.1" : "3.15").ok());
    const Findings findings = findingsOf(shop.book, study, nullptr).value();
    EXPECT_NEAR(findings.shareOfResolution.value(), 0.005 * 0.005 / 3 / findings.figures.variance.gauge, 1e-12);
}

TEST_F(FindingsTest, TheNewestFinishedStudyOfEachGaugeFeedsThePasses)
{
    static_cast<void>(taken(0.3, 0.02, "rule 3"));
    const Findings newer = taken(0.1, 0.02, "rule 3");
    static_cast<void>(taken(0.2, 0.02, "depth gauge"));
    static_cast<void>(planned("rule 3")); // not taken yet
    const auto gauges = newestOfEachGauge(shop.book);
    ASSERT_EQ(gauges.size(), 2u);
    EXPECT_EQ(gauges[0].study.gauge.name, "depth gauge");
    EXPECT_EQ(gauges[1].study.id, newer.study.id);
}

TEST_F(FindingsTest, TheUncertaintyOfAPassIsRoundedUpToTheMicrometre)
{
    Findings findings;
    findings.study.quantity = catalogue::Quantity::LetOff;
    findings.figures.expandedUncertainty = 0.1230004;
    EXPECT_EQ(expandedUncertaintyOf(findings), units::Length::nanometres(124'000));
    findings.figures.expandedUncertainty = 0.123;
    EXPECT_EQ(expandedUncertaintyOf(findings), units::Length::nanometres(123'000));
    findings.study.quantity = catalogue::Quantity::DownWeight;
    EXPECT_EQ(expandedUncertaintyOf(findings), units::Length());
    EXPECT_EQ(uncertaintyOf(findings), units::Amount(units::Mass::milligrams(123)));
}

TEST_F(FindingsTest, AStepTooCoarseToShowTheSpreadIsWhatPassesTakeOver)
{
    const auto study = planned();
    Taking taking(shop.book, study, clock());
    while (const auto stop = taking.asked())
        ASSERT_TRUE(taking.enter(stop->note == keyboard::Note(4) ? "3" : "4").ok());
    const Findings findings = findingsOf(shop.book, study, nullptr).value();
    EXPECT_EQ(findings.figures.expandedUncertainty, 0) << "everybody agrees, in whole millimetres";
    EXPECT_EQ(expandedUncertaintyOf(findings), units::Length::nanometres(578'000)) << "2 * 0.5 mm / sqrt(3), upwards";
    EXPECT_EQ(stepOf(findings), units::Length::millimetres(1));
}

TEST_F(FindingsTest, TheNewestStudyOfEachQuantityWithEachGaugeFeedsTheSets)
{
    static_cast<void>(taken(0.3, 0.02, "rule 3"));
    const Findings newer = taken(0.1, 0.02, "rule 3");
    auto weighed = planned("rule 3", catalogue::Quantity::DownWeight);
    Taking taking(shop.book, weighed, clock());
    takeAll(taking);
    const auto found = newestOfEachQuantity(shop.book);
    ASSERT_EQ(found.size(), 2u);
    EXPECT_EQ(found[0].study.id, newer.study.id);
    EXPECT_EQ(uncertaintyOf(found[1]).dimension(), units::Dimension::Mass);
    EXPECT_EQ(stepOf(found[1]), units::Length());
}

} // namespace
} // namespace hammerline::study_desk
