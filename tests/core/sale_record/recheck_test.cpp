// A recheck of a part: what was left stays what the record speaks of, and the recheck is told beside it.

#include "sale_record/sale_record.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace hammerline::sale_record {
namespace {

using catalogue::Quantity;
using keyboard::Note;
using readings::Purpose;
using tolerance::Status;

units::Amount mm(double value)
{
    return units::Length::millimetres(value);
}

/// Ten notes from C4 up, whose let-off shall be 3 mm, 2 mm to 4 mm; by the guarded rule with W = 0.2 mm.
RecordInput tenNotes()
{
    RecordInput input;
    input.instrument.name = "Front room upright";
    input.instrument.compass = {Note(40), Note(49)};
    tolerance::Point point;
    point.note = Note(40);
    point.low = mm(2);
    point.target = mm(3);
    point.high = mm(4);
    tolerance::Entry entry;
    entry.both = {point};
    entry.rule = tolerance::Rule::Guarded;
    entry.expandedUncertainty = mm(0.2);
    input.set.entries[Quantity::LetOff] = entry;
    return input;
}

void addPass(RecordInput &input, Purpose purpose, const std::vector<double> &letOff)
{
    readings::Pass pass;
    pass.id = static_cast<readings::PassId>(input.passes.size() + 1);
    pass.purpose = purpose;
    pass.began = readings::Instant(std::chrono::hours(24 * pass.id));
    std::vector<readings::Reading> taken;
    for (std::size_t i = 0; i < letOff.size(); ++i)
        taken.push_back({.place = {Quantity::LetOff, Note(40 + static_cast<int>(i)), 1}, .value = mm(letOff[i])});
    input.passes.emplace_back(pass, taken);
}

SaleRecord withRecheckOf(std::size_t notes)
{
    RecordInput input = tenNotes();
    addPass(input, Purpose::AsFound, std::vector<double>(10, 5));
    addPass(input, Purpose::AsLeft, std::vector<double>(10, 3));
    addPass(input, Purpose::Recheck, std::vector<double>(notes, 3.5));
    return assemble(input).value();
}

TEST(PartialRecheck, LeavesWhatWasLeftAndStandsBesideIt)
{
    const SaleRecord record = withRecheckOf(4);
    EXPECT_EQ(record.asFound->pass.purpose, Purpose::AsFound);
    EXPECT_EQ(record.asLeft.pass.purpose, Purpose::AsLeft);
    EXPECT_EQ(record.pairsInside(), 10);
    EXPECT_EQ(record.judgedPairs(), 10);
    ASSERT_TRUE(record.recheck);
    EXPECT_EQ(record.recheck->pass.id, 3);
    EXPECT_EQ(&record.newest(), &*record.recheck);
    ASSERT_TRUE(record.since);
    EXPECT_EQ(record.since->before.id, 2);
    EXPECT_EQ(record.since->changes.front().change.pairs, 4);
}

TEST(PartialRecheck, IsNotBlamedForWhatItDidNotReadAgain)
{
    const SaleRecord record = withRecheckOf(4);
    EXPECT_EQ(judgedPairsOf(*record.recheck), 4);
    EXPECT_EQ(pairsInOf(*record.recheck), 4);
    EXPECT_THAT(record.exceptions, testing::IsEmpty());
}

TEST(PartialRecheck, OfNineTenthsIsAWholeOne)
{
    EXPECT_FALSE(withRecheckOf(9).recheck);
    EXPECT_EQ(withRecheckOf(9).asLeft.pass.purpose, Purpose::Recheck);
    EXPECT_TRUE(withRecheckOf(8).recheck);
}

TEST(PartialRecheck, BringsWhatWasAcceptedAndSignedOfItAlong)
{
    RecordInput input = tenNotes();
    addPass(input, Purpose::AsLeft, std::vector<double>(10, 3));
    addPass(input, Purpose::Recheck, {4.5});
    input.decided[2].concessions = {
        {Quantity::LetOff, Note(40), decisions::Kind::Out, mm(4.5), "rail is bent", "Lead One", {}}};
    input.decided[2].standing = {{decisions::StandingChange::Change::Signed, 1, "Lead One", {}, ""}};
    const SaleRecord record = assemble(input).value();
    ASSERT_TRUE(record.recheck);
    ASSERT_EQ(record.concessions.size(), 1u);
    EXPECT_EQ(record.concessions.front().reason, "rail is bent");
    ASSERT_EQ(record.signatures.size(), 1u);
}

TEST(PairsIn, LeaveOutWhatAGuardedRuleCallsMarginal)
{
    RecordInput input = tenNotes();
    addPass(input, Purpose::AsLeft, {3, 3.9, 4, 4.1, 3.8});
    const SaleRecord record = assemble(input).value();
    EXPECT_EQ(pairsInsideOf(record.asLeft), 4);
    EXPECT_EQ(pairsInOf(record.asLeft), 2) << "3.9 and 4 lie nearer than 0.2 mm to the limit";
}

} // namespace
} // namespace hammerline::sale_record
