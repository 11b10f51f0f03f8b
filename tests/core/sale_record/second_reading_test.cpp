#include "sale_record/sale_record.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace hammerline::sale_record {
namespace {

using catalogue::Quantity;
using keyboard::Note;
using units::Length;

units::Amount mm(double value)
{
    return Length::millimetres(value);
}

std::vector<readings::Reading> letOff(const std::vector<std::pair<int, double>> &values)
{
    std::vector<readings::Reading> taken;
    for (const auto &[note, value] : values)
        taken.push_back({.place = {Quantity::LetOff, Note(note), 1}, .value = mm(value)});
    return taken;
}

/// Ten notes at 3 mm (limits 2 and 4) read by the first person; the second reads three of them again.
RecordInput checkedInput()
{
    RecordInput input;
    input.instrument.name = "Front room upright";
    input.instrument.owner = "Invented Owner";
    input.instrument.compass = {Note(40), Note(49)};
    tolerance::Entry entry;
    entry.both = {{.note = Note(1), .low = mm(2), .target = mm(3), .high = mm(4)}};
    input.set.entries[Quantity::LetOff] = entry;
    std::vector<std::pair<int, double>> first;
    for (int note = 40; note < 50; ++note)
        first.emplace_back(note, 3);
    readings::Pass pass;
    pass.id = 7;
    pass.purpose = readings::Purpose::AsLeft;
    input.passes.emplace_back(pass, letOff(first));
    readings::Pass again = pass;
    again.id = 8;
    input.spotChecks = {
        {again,
         letOff({{41, 3.1}, {45, 4.1}, {48, 3.1}}),
         {.checked = 7, .seed = 5, .notes = {Note(41), Note(45), Note(48)}, .quantities = {Quantity::LetOff}}}};
    return input;
}

TEST(SecondReading, TellsWhatASampleProvesAndHowTwoPeopleAgree)
{
    const auto record = assemble(checkedInput()).value();
    ASSERT_EQ(record.secondReadings.size(), 1u);
    ASSERT_EQ(record.secondReadings.front().findings.size(), 1u);
    const auto &found = record.secondReadings.front().findings.front();
    EXPECT_EQ(found.notes, 10);
    EXPECT_EQ(found.readAgain(), 3);
    EXPECT_EQ(found.out, std::vector{Note(45)});
    // P(at most 1 of 3 | 8 of 10 out) = C(8,1) C(2,2) / C(10,3) = 8 / 120 > 0.05; with 9 out it is 0.
    EXPECT_EQ(found.proof.value().mostOut, 8);
    EXPECT_NEAR(found.agreement.value().meanChange, (0.1 + 1.1 + 0.1) / 3, 1e-12);
    EXPECT_TRUE(found.agreement->agreementLow);
}

TEST(SecondReading, AnotherPassesCheckAndAnUnreadOneAreNotTold)
{
    auto input = checkedInput();
    input.spotChecks.front().check.checked = 6;
    EXPECT_THAT(assemble(input).value().secondReadings, testing::IsEmpty());
    input = checkedInput();
    input.spotChecks.front().readings.clear();
    EXPECT_THAT(assemble(input).value().secondReadings, testing::IsEmpty());
}

TEST(SecondReading, TheOwnerIsToldWithTheSaleAlone)
{
    auto input = checkedInput();
    EXPECT_EQ(assemble(input).value().owner, "");
    input.tellSale = true;
    EXPECT_EQ(assemble(input).value().owner, "Invented Owner");
}

} // namespace
} // namespace hammerline::sale_record
