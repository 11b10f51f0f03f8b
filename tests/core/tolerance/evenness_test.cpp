#include "core/tolerance/sample_sets.h"
#include "tolerance/judge.h"

#include <gtest/gtest.h>

namespace hammerline::tolerance {
namespace {

using samples::mm;
using samples::Note;
using samples::Quantity;

std::optional<Note> below(Quantity quantity, int note, const std::vector<int> &read,
                          const keyboard::Sections &sections = {})
{
    readings::ValueTable::Column column;
    for (const int number : read)
        column[Note(number)] = {mm(1), 1};
    return neighbourBelow(column, quantity, Note(note), sections);
}

TEST(NeighbourBelow, IsTheNearestLowerNoteRead)
{
    EXPECT_EQ(below(Quantity::LetOff, 10, {7, 8, 10, 11}), Note(8));
}

TEST(NeighbourBelow, LiesAtMostFourNotesBelow)
{
    EXPECT_EQ(below(Quantity::LetOff, 10, {6}), Note(6));
    EXPECT_FALSE(below(Quantity::LetOff, 10, {5}));
}

TEST(NeighbourBelow, HasTheSameColourForDipKeyHeightAndAftertouch)
{
    // 4 is C1, 3 is B0, 5 is C#1, 2 is A#0.
    for (const auto quantity : {Quantity::Dip, Quantity::KeyHeight, Quantity::Aftertouch}) {
        EXPECT_EQ(below(quantity, 6, {3, 4, 5}), Note(4));
        EXPECT_EQ(below(quantity, 5, {2, 3, 4}), Note(2));
    }
    EXPECT_EQ(below(Quantity::Blow, 6, {3, 4, 5}), Note(5));
}

TEST(NeighbourBelow, IsNoneWhereTheColourIsFurtherAwayThanFour)
{
    // From C#1 (5) down to A#0 (2) are three; with only G#0 (0) read they are five.
    EXPECT_FALSE(below(Quantity::Dip, 5, {0, 3, 4}));
}

TEST(NeighbourBelow, StopsAtASectionBreak)
{
    const keyboard::Sections sections{{"bass", {Note(1), Note(26)}}, {"treble", {Note(27), Note(88)}}};
    EXPECT_FALSE(below(Quantity::LetOff, 27, {25, 26}, sections));
    EXPECT_EQ(below(Quantity::LetOff, 28, {26, 27}, sections), Note(27));
    EXPECT_EQ(below(Quantity::LetOff, 26, {24, 25}, sections), Note(25));
}

TEST(NeighbourBelow, DoesNotReachANoteInNoSection)
{
    const keyboard::Sections sections{{"bass", {Note(1), Note(26)}}, {"treble", {Note(28), Note(88)}}};
    EXPECT_FALSE(below(Quantity::LetOff, 28, {27}, sections));
    EXPECT_FALSE(below(Quantity::LetOff, 27, {26}, sections));
}

TEST(NeighbourBelow, EndsAtTheLowestNoteThereIs)
{
    EXPECT_FALSE(below(Quantity::LetOff, Note::lowest, {Note::lowest}));
}

const Verdict &verdictAt(const Judgement &judgement, Quantity quantity, int note)
{
    return *judgement.find(quantity, Note(note));
}

TEST(Uneven, IsMoreThanTheStepNotTheStepItself)
{
    const auto values = samples::table(Quantity::LetOff, {{1, 3.0}, {2, 3.6}, {3, 2.999999}});
    const auto judgement = judge(values, samples::letOffAndDip(), {}, {});
    EXPECT_FALSE(verdictAt(judgement, Quantity::LetOff, 2).uneven);
    EXPECT_TRUE(verdictAt(judgement, Quantity::LetOff, 3).uneven) << "downwards counts as well";
    EXPECT_EQ(verdictAt(judgement, Quantity::LetOff, 2).stepFromBelow, mm(0.6));
    EXPECT_EQ(verdictAt(judgement, Quantity::LetOff, 3).stepFromBelow, mm(-0.600001));
}

TEST(Uneven, IsNeverSaidWithoutAStep)
{
    auto set = samples::letOffAndDip();
    set.entries[Quantity::LetOff].step.reset();
    const auto judgement = judge(samples::table(Quantity::LetOff, {{1, 2}, {2, 9}}), set, {}, {});
    EXPECT_FALSE(verdictAt(judgement, Quantity::LetOff, 2).uneven);
    EXPECT_EQ(verdictAt(judgement, Quantity::LetOff, 2).stepFromBelow, mm(7));
}

TEST(Uneven, IsNeverSaidOfAnUnjudgedNote)
{
    auto set = samples::letOffAndDip();
    set.entries[Quantity::Dip].sharps.clear();
    const auto judgement = judge(samples::table(Quantity::Dip, {{2, 9}, {5, 12}}), set, {}, {});
    EXPECT_FALSE(verdictAt(judgement, Quantity::Dip, 5).uneven);
    EXPECT_EQ(verdictAt(judgement, Quantity::Dip, 5).stepFromBelow, mm(3));
}

TEST(Uneven, ComparesInsideTheCompassOnly)
{
    const auto values = samples::table(Quantity::LetOff, {{1, 3}, {2, 9}});
    const auto judgement = judge(values, samples::letOffAndDip(), {Note(2), Note(88)}, {});
    EXPECT_FALSE(verdictAt(judgement, Quantity::LetOff, 2).stepFromBelow);
}

} // namespace
} // namespace hammerline::tolerance
