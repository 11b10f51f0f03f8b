#include "decisions/spot_findings.h"

#include <gtest/gtest.h>

namespace hammerline::decisions {
namespace {

using catalogue::Quantity;
using keyboard::Note;
using readings::ValueTable;

readings::NoteValue mm(double value)
{
    return {.value = units::Length::millimetres(value)};
}

ValueTable letOffs(int notes, double value)
{
    ValueTable table;
    for (int note = 1; note <= notes; ++note)
        table.set(Quantity::LetOff, Note(note), mm(value));
    return table;
}

/// Let-off 3 mm, good from 2.5 to 3.5.
tolerance::ToleranceSet letOffSet()
{
    tolerance::Entry entry;
    entry.both = {{.note = Note(1),
                   .low = units::Length::millimetres(2.5),
                   .target = units::Length::millimetres(3),
                   .high = units::Length::millimetres(3.5)}};
    tolerance::ToleranceSet set;
    set.entries[Quantity::LetOff] = entry;
    return set;
}

decisions::SpotCheck sampleOf(int size)
{
    decisions::SpotCheck check{.checked = 1, .seed = 7, .quantities = {Quantity::LetOff}};
    for (int note = 1; note <= size; ++note)
        check.notes.push_back(Note(note));
    return check;
}

SpotFinding findingOf(const decisions::SpotCheck &check, const ValueTable &before, const ValueTable &again)
{
    return spotFindings(check, before, again, letOffSet(), "0.95").value().front();
}

TEST(SpotFindings, SixtyEightGoodNotesOfEightyEightProveThatAtMostOneIsOut)
{
    const auto finding = findingOf(sampleOf(68), letOffs(88, 3.0), letOffs(68, 3.1));
    EXPECT_EQ(finding.notes, 88);
    EXPECT_EQ(finding.sample, 68);
    EXPECT_TRUE(finding.out.empty());
    EXPECT_EQ(finding.proof.value().mostOut, 1); // as `spot-check --notes 88 --sample 68 --found 0` answers
}

TEST(SpotFindings, ANoteFoundOutIsNamedAndWeakensTheProof)
{
    auto again = letOffs(68, 3.0);
    again.set(Quantity::LetOff, Note(5), mm(3.9));
    const auto finding = findingOf(sampleOf(68), letOffs(88, 3.0), again);
    EXPECT_EQ(finding.out, std::vector{Note(5)});
    EXPECT_EQ(finding.proof.value().mostOut, analysis::spotCheck(88, 68, 1, "0.95").value().mostOut);
    EXPECT_GT(finding.proof.value().mostOut, 1);
}

TEST(SpotFindings, TheSecondPersonIsComparedWithTheFirst)
{
    const auto finding = findingOf(sampleOf(10), letOffs(88, 3.0), letOffs(10, 3.2));
    EXPECT_EQ(finding.agreement.value().pairs, 10);
    EXPECT_NEAR(finding.agreement.value().meanChange, 0.2, 1e-12);
}

TEST(SpotFindings, ANoteThatWasNotDrawnProvesNothing)
{
    const auto finding = findingOf(sampleOf(10), letOffs(88, 3.0), letOffs(30, 3.9));
    EXPECT_EQ(finding.sample, 10);
    EXPECT_EQ(finding.out.size(), 10U);
    EXPECT_EQ(finding.agreement.value().pairs, 10);
}

TEST(SpotFindings, NothingIsProvedBeforeANoteIsReadAgain)
{
    const auto finding = findingOf(sampleOf(10), letOffs(88, 3.0), {});
    EXPECT_EQ(finding.sample, 0);
    EXPECT_FALSE(finding.proof);
    EXPECT_FALSE(finding.agreement);
}

TEST(SpotFindings, AConfidenceThatProvesNothingIsRefused)
{
    EXPECT_FALSE(spotFindings(sampleOf(10), letOffs(88, 3.0), letOffs(10, 3.0), letOffSet(), "1").ok());
}

} // namespace
} // namespace hammerline::decisions
