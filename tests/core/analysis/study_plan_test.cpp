#include "analysis/study_plan.h"

#include <gtest/gtest.h>

#include <set>

namespace hammerline::analysis {
namespace {

using keyboard::Note;

StudyPlan plan()
{
    return {.notes = {Note(3), Note(20), Note(44), Note(80)}, .people = {"Ada", "Ben", "Cleo"}, .takes = 3, .seed = 5};
}

TEST(StudyPlan, AsksForEveryStopOnce)
{
    const auto order = orderOf(plan());
    EXPECT_EQ(order.size(), 4u * 3u * 3u);
    EXPECT_EQ(std::set<StudyStop>(order.begin(), order.end()).size(), order.size());
}

TEST(StudyPlan, NobodyReadsANoteAgainBeforeAllHaveReadAll)
{
    const auto order = orderOf(plan());
    for (std::size_t stop = 0; stop < order.size(); ++stop)
        EXPECT_EQ(order[stop].take, static_cast<int>(stop / 12) + 1);
}

TEST(StudyPlan, InARoundThePersonChangesOnlyWhenAllNotesAreRead)
{
    const auto order = orderOf(plan());
    for (std::size_t stop = 0; stop < order.size(); ++stop)
        EXPECT_EQ(order[stop].person, order[stop / 4 * 4].person);
}

TEST(StudyPlan, TheOrderFollowsFromTheSeedAlone)
{
    EXPECT_EQ(orderOf(plan()), orderOf(plan()));
    StudyPlan other = plan();
    other.seed = 6;
    EXPECT_NE(orderOf(other), orderOf(plan()));
}

TEST(StudyPlan, EachRoundHasAnOrderOfItsOwn)
{
    StudyPlan long10 = plan();
    long10.takes = 10;
    const auto order = orderOf(long10);
    std::set<std::vector<int>> rounds;
    for (std::size_t round = 0; round < 10; ++round) {
        std::vector<int> notes;
        for (std::size_t stop = 0; stop < 12; ++stop)
            notes.push_back(order[round * 12 + stop].note.number());
        rounds.insert(notes);
    }
    EXPECT_GT(rounds.size(), 8u);
}

TEST(StudyPlan, WhatCannotBeTakenIsRefused)
{
    EXPECT_TRUE(faultsOf(plan()).empty());
    const auto refused = [](auto change) {
        StudyPlan changed = plan();
        change(changed);
        return !faultsOf(changed).empty();
    };
    EXPECT_TRUE(refused([](StudyPlan &p) { p.notes = {Note(3)}; }));
    EXPECT_TRUE(refused([](StudyPlan &p) { p.notes = {Note(3), Note(3)}; }));
    EXPECT_TRUE(refused([](StudyPlan &p) { p.notes = {Note(4), Note(3)}; }));
    EXPECT_TRUE(refused([](StudyPlan &p) { p.people = {"Ada"}; }));
    EXPECT_TRUE(refused([](StudyPlan &p) { p.people = {"Ada", "Ada"}; }));
    EXPECT_TRUE(refused([](StudyPlan &p) { p.people = {"Ada", ""}; }));
    EXPECT_TRUE(refused([](StudyPlan &p) { p.people = {"Ada", "Ben\nEve"}; }));
    EXPECT_TRUE(refused([](StudyPlan &p) { p.takes = 1; }));
    EXPECT_TRUE(refused([](StudyPlan &p) { p.takes = 11; }));
}

} // namespace
} // namespace hammerline::analysis
