// The intervals are held against simulated studies whose components are known: an interval of 95 % holds the true
// value in about 95 of 100 of them.

#include "analysis/study_intervals.h"

#include <gtest/gtest.h>

#include <random>

namespace hammerline::analysis {
namespace {

struct True {
    double repeatability, person, interaction, note;
};

/// 10 notes, 4 people, 3 takes; standard deviations in mm.
GaugeStudy simulated(const True &sd, std::mt19937_64 &numbers)
{
    std::normal_distribution<double> normal;
    std::vector<Trial> trials;
    double people[4] = {};
    for (double &person : people)
        person = sd.person * normal(numbers);
    for (int note = 1; note <= 10; ++note) {
        const double ofNote = sd.note * normal(numbers);
        for (int person = 0; person < 4; ++person) {
            const double pair = 100 + ofNote + people[person] + sd.interaction * normal(numbers);
            for (int take = 1; take <= 3; ++take)
                trials.push_back({keyboard::Note(note), std::string(1, static_cast<char>('A' + person)), take,
                                  units::Length::millimetres(pair + sd.repeatability * normal(numbers))});
        }
    }
    return gaugeStudy(trials).value();
}

struct Held {
    int repeatability = 0, reproducibility = 0, gauge = 0, note = 0, total = 0;
};

bool holds(const SdInterval &interval, double variance)
{
    return interval.low * interval.low <= variance && variance <= interval.high * interval.high;
}

constexpr int studies = 1000;

Held heldOf(const True &sd)
{
    std::mt19937_64 numbers(20'261'125);
    Held held;
    const double own = sd.repeatability * sd.repeatability, note = sd.note * sd.note;
    const double people = sd.person * sd.person + sd.interaction * sd.interaction;
    for (int study = 0; study < studies; ++study) {
        const auto of = intervalsOf(simulated(sd, numbers));
        held.repeatability += holds(of.repeatability, own);
        held.reproducibility += holds(of.reproducibility, people);
        held.gauge += holds(of.gauge, own + people);
        held.note += holds(of.note, note);
        held.total += holds(of.total, own + people + note);
    }
    return held;
}

void expectAbout95Percent(int held, const char *which)
{
    EXPECT_GE(held, studies * 92 / 100) << which;
    EXPECT_LE(held, studies * 99 / 100) << which;
}

TEST(StudyIntervals, HoldTheTrueComponentsAsOftenAsTheySayWithoutInteraction)
{
    const Held held = heldOf({.repeatability = 0.1, .person = 0.08, .interaction = 0, .note = 0.4});
    expectAbout95Percent(held.repeatability, "repeatability");
    expectAbout95Percent(held.reproducibility, "reproducibility");
    expectAbout95Percent(held.gauge, "gauge");
    expectAbout95Percent(held.note, "note");
    expectAbout95Percent(held.total, "total");
}

TEST(StudyIntervals, HoldTheTrueComponentsAsOftenAsTheySayWithInteraction)
{
    const Held held = heldOf({.repeatability = 0.1, .person = 0.1, .interaction = 0.15, .note = 0.5});
    expectAbout95Percent(held.repeatability, "repeatability");
    expectAbout95Percent(held.reproducibility, "reproducibility");
    expectAbout95Percent(held.gauge, "gauge");
    expectAbout95Percent(held.note, "note");
    expectAbout95Percent(held.total, "total");
}

TEST(StudyIntervals, EncloseTheirComponentAndWidenWithTheConfidence)
{
    std::mt19937_64 numbers(3);
    const GaugeStudy study = simulated({0.1, 0.1, 0.05, 0.4}, numbers);
    const auto at80 = intervalsOf(study, 0.8), at99 = intervalsOf(study, 0.99);
    for (const auto part : {&StudyIntervals::repeatability, &StudyIntervals::reproducibility, &StudyIntervals::gauge,
                            &StudyIntervals::note, &StudyIntervals::total}) {
        EXPECT_LE((at99.*part).low, (at80.*part).low);
        EXPECT_GE((at99.*part).high, (at80.*part).high);
    }
    EXPECT_LT(at80.gauge.low, study.sd.gauge);
    EXPECT_GT(at80.gauge.high, study.sd.gauge);
}

TEST(StudyIntervals, WhereNothingVariesThereIsNothingToBeDoubted)
{
    std::mt19937_64 numbers(3);
    const auto of = intervalsOf(simulated({0, 0, 0, 0}, numbers));
    EXPECT_EQ(of.gauge.low, 0);
    EXPECT_EQ(of.total.high, 0);
}

TEST(StudyIntervals, TheShareOfTheStepIsItsRectangularVariance)
{
    GaugeStudy study;
    study.variance.gauge = 0.03;
    // half a step of 0.15 mm: 0.15^2 / 3 = 0.0075 mm^2
    EXPECT_NEAR(shareOfResolution(study, 0.15).value(), 0.25, 1e-12);
    study.variance.gauge = 0;
    EXPECT_FALSE(shareOfResolution(study, 0.15));
}

} // namespace
} // namespace hammerline::analysis
