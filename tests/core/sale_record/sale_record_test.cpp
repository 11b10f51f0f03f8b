#include "sale_record/sale_record.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace hammerline::sale_record {
namespace {

using catalogue::Quantity;
using keyboard::Note;
using readings::Purpose;
using tolerance::Status;
using units::Amount;
using units::Length;

Amount mm(double value)
{
    return Length::millimetres(value);
}

/// Let-off 3 mm with limits 2 and 4, on every note.
tolerance::ToleranceSet letOffOnly()
{
    tolerance::ToleranceSet set;
    set.name = "let-off only";
    tolerance::Entry entry;
    tolerance::Point point;
    point.note = Note(1);
    point.low = mm(2);
    point.target = mm(3);
    point.high = mm(4);
    entry.both = {point};
    set.entries[Quantity::LetOff] = entry;
    return set;
}

RecordInput fiveNotes()
{
    RecordInput input;
    input.instrument.name = "Front room upright";
    input.instrument.compass = {Note(40), Note(44)};
    input.set = letOffOnly();
    return input;
}

readings::Instant day(int number)
{
    return readings::Instant(std::chrono::hours(24 * number));
}

/// A pass on the given day that reads let-off from note 40 upwards.
void addPass(RecordInput &input, Purpose purpose, int dayNumber, const std::vector<double> &letOff)
{
    readings::Pass pass;
    pass.id = static_cast<readings::PassId>(input.passes.size() + 1);
    pass.purpose = purpose;
    pass.began = day(dayNumber);
    std::vector<readings::Reading> taken;
    int note = 40;
    for (const double value : letOff) {
        readings::Reading reading;
        reading.place = {Quantity::LetOff, Note(note++), 1};
        reading.value = mm(value);
        taken.push_back(reading);
    }
    input.passes.emplace_back(pass, taken);
}

SaleRecord assembled(const RecordInput &input)
{
    auto record = assemble(input);
    EXPECT_TRUE(record.ok());
    return std::move(record).value();
}

TEST(SaleRecord, WithoutAReadingThereIsNoRecord)
{
    RecordInput input = fiveNotes();
    EXPECT_FALSE(assemble(input).ok());
    addPass(input, Purpose::AsFound, 1, {});
    const auto refused = assemble(input);
    ASSERT_FALSE(refused.ok());
    EXPECT_THAT(refused.fault().problem, testing::HasSubstr("no readings"));
}

TEST(SaleRecord, BuyerAndPriceStayOutUnlessAskedFor)
{
    RecordInput input = fiveNotes();
    addPass(input, Purpose::AsLeft, 1, {3});
    input.dossier.work = {{.what = "hammers"}};
    input.dossier.sale = {"the parish hall", "3400", {}};
    EXPECT_FALSE(assembled(input).dossier.sale.said());
    EXPECT_EQ(assembled(input).dossier.work, input.dossier.work);
    input.tellSale = true;
    EXPECT_EQ(assembled(input).dossier.sale, input.dossier.sale);
}

TEST(SaleRecord, ASetForTheOtherActionIsRefused)
{
    RecordInput input = fiveNotes();
    addPass(input, Purpose::AsLeft, 1, {3});
    input.set.action = catalogue::ActionKind::Grand;
    const auto refused = assemble(input);
    ASSERT_FALSE(refused.ok());
    EXPECT_THAT(refused.fault().problem, testing::HasSubstr("grand"));
}

TEST(SaleRecord, TheNewestAsLeftPassSpeaksWhateverTheOrderOfThePasses)
{
    RecordInput input = fiveNotes();
    addPass(input, Purpose::AsLeft, 9, {3});
    addPass(input, Purpose::AsFound, 1, {5});
    addPass(input, Purpose::AsLeft, 5, {4});
    const SaleRecord record = assembled(input);
    EXPECT_EQ(record.asLeft.pass.began, day(9));
    ASSERT_TRUE(record.asFound.has_value());
    EXPECT_EQ(record.asFound->pass.began, day(1));
}

TEST(SaleRecord, APassWithoutReadingsIsPassedOver)
{
    RecordInput input = fiveNotes();
    addPass(input, Purpose::AsFound, 1, {});
    addPass(input, Purpose::AsFound, 2, {5});
    addPass(input, Purpose::AsLeft, 3, {3});
    addPass(input, Purpose::AsLeft, 4, {});
    const SaleRecord record = assembled(input);
    EXPECT_EQ(record.asFound->pass.began, day(2));
    EXPECT_EQ(record.asLeft.pass.began, day(3));
}

TEST(SaleRecord, ASettingPassSpeaksOnlyWhereNothingWasMeasuredAsLeft)
{
    RecordInput input = fiveNotes();
    addPass(input, Purpose::AsFound, 1, {5});
    addPass(input, Purpose::Setting, 2, {4});
    EXPECT_EQ(assembled(input).asLeft.pass.purpose, Purpose::Setting);
    addPass(input, Purpose::AsLeft, 3, {3});
    addPass(input, Purpose::Setting, 4, {3.5});
    EXPECT_EQ(assembled(input).asLeft.pass.purpose, Purpose::AsLeft);
}

TEST(SaleRecord, ARecheckIsTheStateInWhichItStands)
{
    RecordInput input = fiveNotes();
    addPass(input, Purpose::AsFound, 1, {5});
    addPass(input, Purpose::AsLeft, 2, {3});
    addPass(input, Purpose::Recheck, 300, {3.4});
    const SaleRecord record = assembled(input);
    EXPECT_EQ(record.asLeft.pass.purpose, Purpose::Recheck);
    EXPECT_EQ(record.asFound->pass.began, day(1));
}

TEST(SaleRecord, AnInstrumentMeasuredOnlyAsItCameHasNoBefore)
{
    RecordInput input = fiveNotes();
    addPass(input, Purpose::AsFound, 1, {5});
    const SaleRecord record = assembled(input);
    EXPECT_EQ(record.asLeft.pass.purpose, Purpose::AsFound);
    EXPECT_FALSE(record.asFound.has_value());
    EXPECT_TRUE(record.change.empty());
}

TEST(SaleRecord, ALaterRoundOfWorkHasItsOwnBefore)
{
    RecordInput input = fiveNotes();
    addPass(input, Purpose::AsFound, 1, {5});
    addPass(input, Purpose::AsLeft, 2, {3});
    addPass(input, Purpose::AsFound, 700, {3.8});
    addPass(input, Purpose::AsFound, 701, {3.9});
    addPass(input, Purpose::AsLeft, 702, {3});
    EXPECT_EQ(assembled(input).asFound->pass.began, day(700));
}

TEST(SaleRecord, PairsAreCountedWithTheMissingOnes)
{
    RecordInput input = fiveNotes();
    addPass(input, Purpose::AsLeft, 1, {3, 3.5, 9});
    const SaleRecord record = assembled(input);
    EXPECT_EQ(record.judgedPairs(), 5);
    EXPECT_EQ(record.pairsInside(), 2);
}

TEST(SaleRecord, PairsInDoubtAreInsideAndNearerToALimitThanTheirDoubtUnderEitherRule)
{
    RecordInput input = fiveNotes();
    addPass(input, Purpose::AsLeft, 1, {3.0, 3.95, 3.8, 2.05, 4.05});
    input.passes.back().first.gauge.expandedUncertainty = Length::millimetres(0.1);
    for (const auto rule : {tolerance::Rule::Simple, tolerance::Rule::Guarded}) {
        auto &entry = input.set.entries[Quantity::LetOff];
        entry.rule = rule;
        entry.expandedUncertainty = mm(0.3);
        // The gauge can tell 3.8 from the limit; the W of a guarded set, which makes it marginal, cannot.
        EXPECT_EQ(pairsInDoubtOf(assemble(input).value().asLeft), rule == tolerance::Rule::Guarded ? 3 : 2);
    }
}

TEST(SaleRecord, ExceptionsComeWorstFirstAndMissingNotesLast)
{
    RecordInput input = fiveNotes();
    addPass(input, Purpose::AsLeft, 1, {4.5, 3, 0.5, 3.2});
    const SaleRecord record = assembled(input);
    ASSERT_EQ(record.exceptions.size(), 3u);
    EXPECT_EQ(record.exceptions[0].note, Note(42));
    EXPECT_EQ(record.exceptions[1].note, Note(40));
    EXPECT_EQ(record.exceptions[2].note, Note(44));
    EXPECT_EQ(record.exceptions[2].status, Status::Missing);
}

TEST(SaleRecord, AOneSidedFaultStandsBehindThoseThatCanBeComparedAndBeforeTheMissing)
{
    RecordInput input = fiveNotes();
    auto lostMotion = input.set.entries[Quantity::LetOff];
    lostMotion.both.front().low.reset();
    lostMotion.both.front().target = mm(0);
    input.set.entries[Quantity::LostMotion] = lostMotion;
    addPass(input, Purpose::AsLeft, 1, {4.5, 3, 3, 3});
    readings::Reading far;
    far.place = {Quantity::LostMotion, Note(40), 1};
    far.value = mm(9);
    input.passes.front().second.push_back(far);
    const SaleRecord record = assembled(input);
    ASSERT_GE(record.exceptions.size(), 3u);
    EXPECT_EQ(record.exceptions[0].quantity, Quantity::LetOff);
    EXPECT_EQ(record.exceptions[1].quantity, Quantity::LostMotion);
    EXPECT_EQ(record.exceptions[2].status, Status::Missing);
}

TEST(SaleRecord, ChangeComparesAsFoundWithAsLeft)
{
    RecordInput input = fiveNotes();
    addPass(input, Purpose::AsFound, 1, {5, 5, 5, 5, 3});
    addPass(input, Purpose::AsLeft, 2, {3, 3, 3, 3, 3});
    const SaleRecord record = assembled(input);
    const auto &change = record.change.at(Quantity::LetOff);
    EXPECT_EQ(change.pairs, 5);
    EXPECT_EQ(change.mended, 4);
    EXPECT_NEAR(change.meanChange, -1.6, 1e-12);
}

TEST(SaleRecord, WhatWasFeltIsToldOfItsOwnPassByNote)
{
    RecordInput input = fiveNotes();
    addPass(input, Purpose::AsFound, 1, {3});
    addPass(input, Purpose::AsLeft, 2, {3});
    input.felt[1] = {{Note(43), "click"}, {Note(40), "rub"}};
    const SaleRecord record = assembled(input);
    EXPECT_THAT(record.asFound->felt, testing::ElementsAre(FeltFault{Note(40), "rub"}, FeltFault{Note(43), "click"}));
    EXPECT_THAT(record.asLeft.felt, testing::IsEmpty());
}

TEST(SaleRecord, ARecheckIsHeldAgainstTheNewestPassThatWasLeft)
{
    RecordInput input = fiveNotes();
    input.instrument.sections = {{"low", {Note(40), Note(41)}}, {"high", {Note(42), Note(44)}}};
    addPass(input, Purpose::AsLeft, 1, {2, 2, 2, 2, 2});
    addPass(input, Purpose::AsLeft, 2, {3, 3, 3, 3, 3});
    addPass(input, Purpose::Recheck, 400, {3, 3, 3.5, 3.5, 3.5});
    for (auto &pass : input.passes)
        pass.first.gauge.expandedUncertainty = Length::millimetres(0.1);
    const SaleRecord record = assembled(input);
    ASSERT_TRUE(record.since);
    EXPECT_EQ(record.since->before.id, 2);
    ASSERT_EQ(record.since->changes.size(), 3u) << "the whole, then its two sections";
    EXPECT_NEAR(record.since->changes[0].change.meanChange, 0.3, 1e-12);
    EXPECT_EQ(record.since->changes[1].way, analysis::Way::NotToldApart);
    EXPECT_EQ(record.since->changes[2].way, analysis::Way::Larger);
    EXPECT_EQ(record.since->changes[2].section, "high");
}

TEST(SaleRecord, NothingMovedSinceWhereNothingWasLeftBefore)
{
    RecordInput input = fiveNotes();
    addPass(input, Purpose::AsFound, 1, {2});
    addPass(input, Purpose::Recheck, 2, {3});
    EXPECT_FALSE(assembled(input).since);
    input.passes.back().first.purpose = Purpose::AsLeft;
    EXPECT_FALSE(assembled(input).since);
}

TEST(SaleRecord, WhatNobodyReadIsNamed)
{
    RecordInput input = fiveNotes();
    addPass(input, Purpose::AsLeft, 1, {3});
    const auto missing = assembled(input).notMeasured();
    EXPECT_THAT(missing, testing::Not(testing::Contains(Quantity::LetOff)));
    EXPECT_THAT(missing, testing::Contains(Quantity::Dip));
    EXPECT_THAT(missing, testing::Not(testing::Contains(Quantity::Drop))) << "a vertical has no drop";
}

} // namespace
} // namespace hammerline::sale_record
