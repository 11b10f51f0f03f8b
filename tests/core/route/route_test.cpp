#include "route/route.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <set>

namespace hammerline::route {
namespace {

using catalogue::Quantity;
using keyboard::Note;
using ::testing::ElementsAre;

std::vector<int> numbersOf(const Choice &choice, const Ground &ground)
{
    std::vector<int> numbers;
    for (const Stop &stop : stopsOf(choice, ground))
        numbers.push_back(stop.note.number());
    return numbers;
}

Ground twoSections()
{
    return {.compass = {Note(1), Note(14)},
            .sections = {{"bass", {Note(1), Note(8)}}, {"treble", {Note(9), Note(14)}}}};
}

TEST(Route, EveryOrderOfAWholeKeyboardVisitsEachStopOnce)
{
    const Ground ground{.compass = {}, .sections = {{"bass", {Note(1), Note(30)}}, {"treble", {Note(31), Note(88)}}}};
    for (const Order order : {Order::Chromatic, Order::NaturalsThenSharps, Order::SamplesFirst, Order::OnlyMissing})
        for (const Sweep sweep : {Sweep::AlongTheNotes, Sweep::NoteByNote}) {
            const auto stops =
                stopsOf({order, sweep, Samples::EveryFifth, {}, {Quantity::LetOff, Quantity::Dip}}, ground);
            EXPECT_EQ(stops.size(), 176U);
            EXPECT_EQ(std::set<Stop>(stops.begin(), stops.end()).size(), 176U);
        }
}

TEST(Route, TakesNaturalsBeforeSharps)
{
    const Choice choice{.order = Order::NaturalsThenSharps, .quantities = {Quantity::Dip}};
    EXPECT_THAT(numbersOf(choice, {.compass = {Note(1), Note(5)}}), ElementsAre(1, 3, 4, 2, 5));
}

TEST(Route, TakesSamplesOfEverySectionBeforeTheRest)
{
    const Choice ends{.order = Order::SamplesFirst, .quantities = {Quantity::Blow}};
    EXPECT_THAT(numbersOf(ends, twoSections()), ElementsAre(1, 8, 9, 14, 2, 3, 4, 5, 6, 7, 10, 11, 12, 13));
    Choice fifths = ends;
    fifths.samples = Samples::EveryFifth;
    EXPECT_THAT(numbersOf(fifths, twoSections()), ElementsAre(1, 6, 8, 9, 14, 2, 3, 4, 5, 7, 10, 11, 12, 13));
    Choice listed = ends;
    listed.samples = Samples::Listed;
    listed.listed = {Note(5), Note(2), Note(99)};
    EXPECT_EQ(numbersOf(listed, twoSections()).size(), 14U);
    EXPECT_EQ(numbersOf(listed, twoSections()).front(), 5);
}

TEST(Route, AsksAllQuantitiesOfANoteBeforeTheNextWhereToldSo)
{
    const Choice choice{.sweep = Sweep::NoteByNote, .quantities = {Quantity::Dip, Quantity::LetOff}};
    EXPECT_THAT(stopsOf(choice, {.compass = {Note(1), Note(2)}}),
                ElementsAre(Stop{Quantity::Dip, Note(1)}, Stop{Quantity::LetOff, Note(1)}, Stop{Quantity::Dip, Note(2)},
                            Stop{Quantity::LetOff, Note(2)}));
}

TEST(Route, WhatWasSentBackIsAskedForWithWhatIsOut)
{
    const Choice choice{.order = Order::OnlyOut, .quantities = {Quantity::LetOff}};
    Ground ground = twoSections();
    ground.sentBack = {{Quantity::LetOff, Note(9)}, {Quantity::Dip, Note(3)}, {Quantity::LetOff, Note(2)}};
    EXPECT_THAT(numbersOf(choice, ground), ElementsAre(2, 9));
}

TEST(Route, AsksOnlyForWhatIsOut)
{
    Ground ground{.compass = {Note(1), Note(3)}};
    ground.judgement.verdicts = {{.quantity = Quantity::LetOff, .note = Note(1), .status = tolerance::Status::In},
                                 {.quantity = Quantity::LetOff, .note = Note(2), .status = tolerance::Status::Out},
                                 {.quantity = Quantity::LetOff, .note = Note(3), .status = tolerance::Status::Missing}};
    EXPECT_THAT(numbersOf({.order = Order::OnlyOut, .quantities = {Quantity::LetOff}}, ground), ElementsAre(2));
}

TEST(Route, AsksOnlyForWhatIsMissing)
{
    Ground ground{.compass = {Note(1), Note(3)}};
    ground.values.set(Quantity::LetOff, Note(2), {units::Length::millimetres(3), 1});
    EXPECT_THAT(numbersOf({.order = Order::OnlyMissing, .quantities = {Quantity::LetOff}}, ground), ElementsAre(1, 3));
}

TEST(Route, FollowsTheUsersOwnList)
{
    const Choice choice{.order = Order::Own, .listed = {Note(40), Note(1), Note(88)}, .quantities = {Quantity::Dip}};
    EXPECT_THAT(numbersOf(choice, {}), ElementsAre(40, 1, 88));
}

TEST(RouteText, ComesBackAsItWas)
{
    const Choice choice{Order::SamplesFirst,
                        Sweep::NoteByNote,
                        Samples::Listed,
                        {Note(-8), Note(40)},
                        {Quantity::Dip, Quantity::LetOff}};
    const auto read = parseChoice(textOf(choice));
    ASSERT_TRUE(read.ok());
    EXPECT_EQ(read.value(), choice);
    EXPECT_EQ(textOf({}), "chromatic; ends; along-the-notes;;");
    EXPECT_TRUE(parseChoice(textOf({})).ok());
}

TEST(RouteText, RefusesWhatIsNoRoute)
{
    for (const char *text : {"", "chromatic", "sideways; ends; along-the-notes;;",
                             "chromatic; ends; along-the-notes; wobble;", "chromatic; ends; along-the-notes;; H9"})
        EXPECT_FALSE(parseChoice(text).ok()) << text;
}

TEST(NoteList, TakesNamesNumbersAndRanges)
{
    const auto notes = parseNoteList("A0, C4..E4 87-88; -3 40");
    ASSERT_TRUE(notes.ok());
    EXPECT_THAT(notes.value(),
                ElementsAre(Note(1), Note(40), Note(41), Note(42), Note(43), Note(44), Note(87), Note(88), Note(-3)));
}

TEST(NoteList, SaysWhatIsNoNote)
{
    EXPECT_FALSE(parseNoteList("A0, X4").ok());
    EXPECT_FALSE(parseNoteList("E4..C4").ok());
    EXPECT_FALSE(parseNoteList("1-").ok());
}

} // namespace
} // namespace hammerline::route
