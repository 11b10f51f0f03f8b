#include "tolerance/judge.h"

#include "core/tolerance/sample_sets.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace hammerline::tolerance {
namespace {

using samples::mm;
using samples::Note;
using samples::Quantity;

const keyboard::Compass firstThree{Note(1), Note(3)};

TEST(Judge, JudgesWhatWasReadAndFindsWhatIsMissing)
{
    auto values = samples::table(Quantity::LetOff, {{1, 3.0}, {2, 4.5}});
    const auto judgement = judge(values, samples::letOffAndDip(), firstThree, {});
    ASSERT_EQ(judgement.verdicts.size(), 6U) << "three notes of let_off, three of dip, a column that nobody read";
    EXPECT_EQ(judgement.find(Quantity::LetOff, Note(1))->status, Status::In);
    EXPECT_EQ(judgement.find(Quantity::LetOff, Note(2))->status, Status::Out);
    EXPECT_EQ(judgement.find(Quantity::LetOff, Note(3))->status, Status::Missing);
    EXPECT_EQ(judgement.find(Quantity::Dip, Note(1))->status, Status::Missing);
    EXPECT_TRUE(judgement.anyOutOrMissing());
}

TEST(Judge, TellsDeviationFromTheTargetAndHalfWidths)
{
    const auto judgement = judge(samples::table(Quantity::LetOff, {{1, 2.0}}), samples::letOffAndDip(), firstThree, {});
    const auto &verdict = *judgement.find(Quantity::LetOff, Note(1));
    EXPECT_EQ(verdict.deviation, mm(-1.2));
    EXPECT_DOUBLE_EQ(verdict.halfWidths().value(), 1.5);
    EXPECT_TRUE(verdict.conformanceProbability);
}

TEST(Judge, LeavesOutWhatAMissingPairDoesNotHave)
{
    const auto judgement = judge({}, samples::letOffAndDip(), firstThree, {});
    const auto &verdict = judgement.verdicts.front();
    EXPECT_EQ(verdict.status, Status::Missing);
    EXPECT_FALSE(verdict.value || verdict.deviation || verdict.conformanceProbability || verdict.halfWidths());
    EXPECT_EQ(verdict.takes, 0);
    EXPECT_TRUE(verdict.limits);
}

TEST(Judge, LeavesQuantitiesUnjudgedThatTheSetDoesNotName)
{
    const auto judgement = judge(samples::table(Quantity::Blow, {{1, 45}}), samples::letOffAndDip(), firstThree, {});
    const auto &verdict = judgement.verdicts.front();
    EXPECT_EQ(verdict.quantity, Quantity::Blow) << "in the order of the catalogue";
    EXPECT_EQ(verdict.status, Status::Unjudged);
    EXPECT_FALSE(verdict.limits || verdict.deviation || verdict.conformanceProbability);
    EXPECT_THAT(judgement.of(Quantity::Blow), testing::SizeIs(1)) << "an unjudged note is never missing";
}

TEST(Judge, LeavesAColourUnjudgedThatTheSetDoesNotName)
{
    auto set = samples::letOffAndDip();
    set.entries.erase(Quantity::LetOff);
    set.entries[Quantity::Dip].sharps.clear();
    const auto judgement = judge(samples::table(Quantity::Dip, {{1, 10}, {2, 9}, {3, 10}}), set, firstThree, {});
    EXPECT_EQ(judgement.find(Quantity::Dip, Note(2))->status, Status::Unjudged);
    EXPECT_FALSE(judgement.anyOutOrMissing());
}

TEST(Judge, IgnoresReadingsOutsideTheCompass)
{
    auto set = samples::letOffAndDip();
    set.entries.erase(Quantity::Dip);
    const auto values = samples::table(Quantity::LetOff, {{1, 3}, {4, 3}});
    const auto judgement = judge(values, set, {Note(2), Note(3)}, {});
    EXPECT_FALSE(judgement.find(Quantity::LetOff, Note(1)));
    EXPECT_FALSE(judgement.find(Quantity::LetOff, Note(4)));
    EXPECT_THAT(judgement.verdicts, testing::SizeIs(2));
}

TEST(Judge, ListsByQuantityThenByNote)
{
    readings::ValueTable values = samples::table(Quantity::Dip, {{3, 10}, {1, 10}});
    values.set(Quantity::KeyHeight, Note(2), {mm(-1), 1});
    const auto judgement = judge(values, samples::letOffAndDip(), firstThree, {});
    std::vector<std::pair<Quantity, int>> order;
    for (const auto &verdict : judgement.verdicts)
        order.emplace_back(verdict.quantity, verdict.note.number());
    EXPECT_THAT(order, testing::ElementsAre(std::pair(Quantity::KeyHeight, 2), std::pair(Quantity::LetOff, 1),
                                            std::pair(Quantity::LetOff, 2), std::pair(Quantity::LetOff, 3),
                                            std::pair(Quantity::Dip, 1), std::pair(Quantity::Dip, 2),
                                            std::pair(Quantity::Dip, 3)));
}

TEST(Judge, IsNotOutForMarginalUnevenOrUnjudged)
{
    auto set = samples::letOffAndDip();
    set.entries.erase(Quantity::Dip);
    auto values = samples::table(Quantity::LetOff, {{1, 2.5}, {2, 3.4}, {3, 3.4}});
    values.set(Quantity::Blow, Note(1), {mm(45), 1});
    const auto judgement = judge(values, set, firstThree, {});
    EXPECT_EQ(judgement.find(Quantity::LetOff, Note(1))->status, Status::Marginal);
    EXPECT_TRUE(judgement.find(Quantity::LetOff, Note(2))->uneven);
    EXPECT_FALSE(judgement.anyOutOrMissing());
}

TEST(Judge, CountsTakes)
{
    readings::ValueTable values;
    values.set(Quantity::LetOff, Note(1), {mm(3), 3});
    EXPECT_EQ(judge(values, samples::letOffAndDip(), firstThree, {}).find(Quantity::LetOff, Note(1))->takes, 3);
}

TEST(Judge, JudgesNothingWithoutReadingsAndSet)
{
    EXPECT_THAT(judge({}, {}, {}, {}).verdicts, testing::IsEmpty());
}

} // namespace
} // namespace hammerline::tolerance
