// What is in, but within the doubt of its reading, stands beside the queue, uneven or not.
#include "review/review.h"
#include "tolerance/doubt.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <random>

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

TEST(ReviewDoubt, WhatIsMarginalWaitsInTheQueueAlready)
{
    auto set = setOf(tolerance::Rule::Guarded);
    set.entries[Quantity::LetOff].expandedUncertainty = Length::millimetres(0.3);
    set.entries[Quantity::LetOff].step = Length::millimetres(0.5);
    const auto pass = passWith(0.3, {3.0, 3.8, 3.9}, set);
    EXPECT_THAT(notesOf(itemsOf(pass)), ElementsAre(2, 3));
    EXPECT_TRUE(inDoubtOf(pass).empty());
}

TEST(ReviewDoubt, WhatIsInAndUnevenIsAnItemAndInDoubtAsWell)
{
    auto set = setOf();
    set.entries[Quantity::LetOff].step = Length::millimetres(0.5);
    auto pass = passWith(0.3, {3.0, 3.8, 3.9, 3.0, 4.1}, set);
    const auto itemsAndDoubt = [&] { return std::pair(notesOf(itemsOf(pass)), notesOf(inDoubtOf(pass))); };
    EXPECT_EQ(itemsAndDoubt(), (std::pair<std::vector<int>, std::vector<int>>({2, 4, 5}, {2, 3})));
    EXPECT_TRUE(inDoubtOf(pass)[0].verdict.uneven);
    EXPECT_FALSE(inDoubtOf(pass)[1].verdict.uneven);
    decisions::Concession accepted;
    accepted.quantity = Quantity::LetOff;
    accepted.note = Note(2);
    accepted.kind = Kind::Uneven;
    accepted.value = Length::millimetres(3.8);
    pass.decided.concessions = {accepted};
    EXPECT_EQ(itemsAndDoubt(), (std::pair<std::vector<int>, std::vector<int>>({4, 5}, {2, 3})))
        << "what is accepted as uneven is no surer inside";
}

// Twenty passes of invented values, many of them uneven: whoever goes by values, limits and gauge alone, and asks
// neither the verdicts nor their doubt, comes to the same notes.
TEST(ReviewDoubt, EveryPairThatIsInIsCountedByItsDistanceFromTheLimitsAlone)
{
    auto set = setOf();
    set.entries[Quantity::LetOff].step = Length::millimetres(0.3);
    const double doubt = 2 * std::hypot(0.3 / 2, 0.0005 / std::sqrt(3.0)); // of the gauge, and of digits of 0.001 mm
    std::mt19937 random(20260302);
    std::ptrdiff_t unevenToo = 0;
    for (int round = 0; round < 20; ++round) {
        std::vector<double> values;
        std::vector<int> expected;
        for (int note = 1; note <= 88; ++note) {
            values.push_back(1.905 + 0.01 * static_cast<double>(random() % 220));
            const double inside = std::min(values.back() - 2, 4 - values.back());
            if (inside > 0 && inside < doubt)
                expected.push_back(note);
        }
        const auto found = inDoubtOf(passWith(0.3, values, set));
        EXPECT_EQ(notesOf(found), expected) << "round " << round;
        unevenToo += std::ranges::count_if(found, [](const Item &item) { return item.verdict.uneven; });
    }
    EXPECT_GT(unevenToo, 100) << "else nothing is put to the test";
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
