// What is in, but within the doubt of its reading, stands beside the queue and is no item of it.
#include "review/review.h"
#include "tolerance/doubt.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace hammerline::review {
namespace {

using catalogue::Quantity;
using keyboard::Note;
using testing::ElementsAre;
using units::Length;

/// Target 3 mm, limits 2 and 4, no uncertainty of its own.
tolerance::ToleranceSet setOf(tolerance::Rule rule = tolerance::Rule::Simple)
{
    tolerance::ToleranceSet set{.name = "three", .action = catalogue::ActionKind::Grand};
    auto &entry = set.entries[Quantity::LetOff];
    entry.both = {{.note = Note(1),
                   .low = Length::millimetres(2.0),
                   .target = Length::millimetres(3.0),
                   .high = Length::millimetres(4.0)}};
    entry.rule = rule;
    return set;
}

readings::Reading letOff(int note, double millimetres)
{
    const auto value = Length::millimetres(millimetres);
    return {.place = {Quantity::LetOff, Note(note), 1},
            .value = value,
            .typed = units::exactDecimal(value),
            .person = "Ada"};
}

/// Notes rising from A0, judged, and weighed with a gauge of this expanded uncertainty.
JudgedPass passWith(double uncertainty, const std::vector<double> &values, const tolerance::ToleranceSet &set)
{
    JudgedPass pass{.instrument = 3, .pass = 30};
    for (std::size_t note = 0; note < values.size(); ++note)
        pass.readings.push_back(letOff(static_cast<int>(note) + 1, values[note]));
    pass.judgement =
        tolerance::judge(readings::meansOf(pass.readings), set, {Note(1), Note(static_cast<int>(values.size()))}, {});
    const readings::Gauge gauge{.name = "rule", .expandedUncertainty = Length::millimetres(uncertainty)};
    tolerance::weighDoubt(pass.judgement, pass.readings, gauge);
    return pass;
}

std::vector<int> notesOf(const std::vector<Item> &items)
{
    std::vector<int> notes;
    for (const Item &item : items)
        notes.push_back(item.verdict.note.number());
    return notes;
}

TEST(ReviewDoubt, InWithinTheGaugesDoubtStandsBesideTheQueueAndIsNoItem)
{
    const auto pass = passWith(0.3, {3.0, 3.8, 4.1, 2.2, 3.6}, setOf());
    EXPECT_THAT(notesOf(itemsOf(pass)), ElementsAre(3)) << "out stays the only item";
    EXPECT_THAT(notesOf(inDoubtOf(pass)), ElementsAre(2, 4));
    EXPECT_EQ(inDoubtOf(pass)[0].kind, Kind::Marginal);
    EXPECT_EQ(inDoubtOf(pass)[0].verdict.status, tolerance::Status::In);
    EXPECT_EQ(inDoubtOf(pass)[0].person, "Ada");
}

TEST(ReviewDoubt, TheGaugeOfThePassDecidesAndAFinerOneLeavesNothingInDoubt)
{
    EXPECT_THAT(notesOf(inDoubtOf(passWith(0.5, {3.0, 3.8, 4.1, 2.2, 3.6}, setOf()))), ElementsAre(2, 4, 5));
    EXPECT_TRUE(inDoubtOf(passWith(0.02, {3.0, 3.8, 4.1, 2.2, 3.6}, setOf())).empty());
}

TEST(ReviewDoubt, WhatIsMarginalOrUnevenWaitsInTheQueueAlready)
{
    auto set = setOf(tolerance::Rule::Guarded);
    set.entries[Quantity::LetOff].expandedUncertainty = Length::millimetres(0.3);
    set.entries[Quantity::LetOff].step = Length::millimetres(0.5);
    const auto pass = passWith(0.3, {3.0, 3.8, 3.9}, set);
    EXPECT_THAT(notesOf(itemsOf(pass)), ElementsAre(2, 3));
    EXPECT_TRUE(inDoubtOf(pass).empty());
}

TEST(ReviewDoubt, NothingIsInDoubtBeforeItWasWeighed)
{
    auto pass = passWith(0.3, {3.8}, setOf());
    pass.judgement = tolerance::judge(readings::meansOf(pass.readings), setOf(), {Note(1), Note(1)}, {});
    EXPECT_TRUE(inDoubtOf(pass).empty());
}

TEST(ReviewDoubt, TheLeastProbablyInsideComesFirst)
{
    auto items = inDoubtOf(passWith(0.5, {3.7, 3.95, 2.2, 3.8}, setOf()));
    putLeastSureFirst(items);
    EXPECT_THAT(notesOf(items), ElementsAre(2, 3, 4, 1)) << "2.2 and 3.8 are as probable: by note";
    EXPECT_LT(items.front().verdict.conformanceProbability, items.back().verdict.conformanceProbability);
}

} // namespace
} // namespace hammerline::review
