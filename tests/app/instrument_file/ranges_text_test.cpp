#include "instrument_file/ranges_text.h"

#include <gtest/gtest.h>

namespace hammerline::instrument_file {
namespace {

using keyboard::Note;

TEST(RangesText, RunsAreNamedAndGoFromANoteToANote)
{
    const auto sections = parseSections("bass A0 to E2; tenor 21 to B4\n treble C5 to C8 ;");
    ASSERT_TRUE(sections);
    const keyboard::Sections expected{
        {"bass", {Note(1), Note(20)}}, {"tenor", {Note(21), Note(51)}}, {"treble", {Note(52), Note(88)}}};
    EXPECT_EQ(sections.value(), expected);
}

TEST(RangesText, ANameMayHaveSeveralWords)
{
    const auto fittings = parseFittings("three plain strings C4 to C8");
    ASSERT_TRUE(fittings);
    EXPECT_EQ(fittings.value().front().kind, "three plain strings");
}

TEST(RangesText, ExtendedBassesHaveNegativeNumbers)
{
    const auto sections = parseSections("bass -8 to 20");
    ASSERT_TRUE(sections);
    EXPECT_EQ(sections.value().front().notes.first, Note(-8));
}

TEST(RangesText, WhatIsWrittenReadsBack)
{
    const keyboard::Sections sections{{"long bass", {Note(-8), Note(26)}}, {"treble", {Note(27), Note(88)}}};
    const auto again = parseSections(textOf(sections));
    ASSERT_TRUE(again);
    EXPECT_EQ(again.value(), sections);
}

TEST(RangesText, BlankTextIsNoRuns)
{
    const auto sections = parseSections("  ; \n");
    ASSERT_TRUE(sections);
    EXPECT_TRUE(sections.value().empty());
}

TEST(RangesText, EveryRunThatCannotBeReadIsAFaultThatQuotesIt)
{
    const auto sections = parseSections("bass A0 to H2; tenor F2 B4; C5 to C8; treble C8 to C5; good C3 to C4");
    ASSERT_FALSE(sections);
    ASSERT_EQ(sections.faults().size(), 4u);
    EXPECT_NE(sections.faults()[0].problem.find("'bass A0 to H2'"), std::string::npos);
    EXPECT_NE(sections.faults()[1].problem.find("'to' is missing"), std::string::npos);
    EXPECT_NE(sections.faults()[2].problem.find("no name"), std::string::npos);
    EXPECT_NE(sections.faults()[3].problem.find("before it begins"), std::string::npos);
}

} // namespace
} // namespace hammerline::instrument_file
