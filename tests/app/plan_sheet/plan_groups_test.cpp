#include "plan_sheet/plan_groups.h"

#include <gtest/gtest.h>

namespace hammerline::plan_sheet {
namespace {

using catalogue::Quantity;
using keyboard::Note;

std::vector<action::Move> moves()
{
    std::vector<action::Move> made;
    for (const auto &[quantity, note] : {std::pair(Quantity::LetOff, 3), std::pair(Quantity::LetOff, 25),
                                         std::pair(Quantity::LetOff, 26), std::pair(Quantity::Dip, 3)})
        made.push_back({.note = Note(note), .adjust = quantity, .minutes = 0.5});
    return made;
}

TEST(PlanGroups, GoByAdjustmentThenSection)
{
    const keyboard::Sections sections{{"bass", {Note(1), Note(24)}}, {"treble", {Note(25), Note(88)}}};
    const auto groups = groupsOf(moves(), sections);
    ASSERT_EQ(groups.size(), 3U);
    EXPECT_EQ(headingOf(groups[0]), "Let-off, bass: 1 note, 1 min");
    EXPECT_EQ(headingOf(groups[1]), "Let-off, treble: 2 notes, 1 min");
    EXPECT_EQ(groups[1].first, 1U);
    EXPECT_EQ(groups[1].last, 3U);
    EXPECT_EQ(groups[2].adjust, Quantity::Dip);
}

TEST(PlanGroups, GoByAdjustmentAloneWhereSectionsAreNotKnown)
{
    const auto groups = groupsOf(moves(), {});
    ASSERT_EQ(groups.size(), 2U);
    EXPECT_EQ(headingOf(groups[0]), "Let-off: 3 notes, 2 min");
    EXPECT_TRUE(groupsOf({}, {}).empty());
}

TEST(PlanGroups, ARailNamesItsNotes)
{
    EXPECT_EQ(notesOf(action::RailMove{}), "all");
    EXPECT_EQ(notesOf(action::RailMove{.notes = keyboard::NoteRange{Note(1), Note(20)}}), "A0 to E2");
}

} // namespace
} // namespace hammerline::plan_sheet
