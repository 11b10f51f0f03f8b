#include "keyboard/keyboard.h"

#include <gtest/gtest.h>

namespace hammerline::keyboard {
namespace {

int numberOf(std::string_view text)
{
    const auto note = parseNote(text);
    EXPECT_TRUE(note.ok()) << text;
    return note ? note.value().number() : -1000;
}

TEST(Note, IsNumberedFromA0)
{
    EXPECT_EQ(Note(1).name(), "A0");
    EXPECT_EQ(Note(49).name(), "A4");
    EXPECT_EQ(Note(88).name(), "C8");
    EXPECT_EQ(Note(0).name(), "G#0");
    EXPECT_EQ(Note(-8).name(), "C0");
    EXPECT_EQ(Note(Note::lowest).name(), "C-1");
    EXPECT_EQ(Note(Note::highest).name(), "G9");
    EXPECT_EQ(Note(49).midi(), 69);
}

TEST(Note, HasThirtySixSharpsAmongEightyEight)
{
    int sharps = 0;
    for (int number = 1; number <= 88; ++number)
        sharps += Note(number).colour() == Colour::Sharp ? 1 : 0;
    EXPECT_EQ(sharps, 36);
    EXPECT_EQ(Note(0).colour(), Colour::Sharp);
    EXPECT_EQ(Note(1).colour(), Colour::Natural);
}

TEST(ParseNote, ReadsNamesInEitherCase)
{
    EXPECT_EQ(numberOf("C#4"), 41);
    EXPECT_EQ(numberOf("Db4"), 41);
    EXPECT_EQ(numberOf("c#4"), 41);
    EXPECT_EQ(numberOf("db4"), 41);
    EXPECT_EQ(numberOf(" A4 "), 49);
    EXPECT_EQ(numberOf("b4"), 51);
    EXPECT_EQ(numberOf("bb4"), 50);
}

TEST(ParseNote, ReadsPrintedAccidentals)
{
    EXPECT_EQ(numberOf("C\u266f4"), 41);
    EXPECT_EQ(numberOf("D\u266d4"), 41);
}

TEST(ParseNote, KeepsTheOctaveOfTheLetterAcrossTheBoundary)
{
    EXPECT_EQ(numberOf("Cb4"), numberOf("B3"));
    EXPECT_EQ(numberOf("B#3"), numberOf("C4"));
    EXPECT_EQ(numberOf("E#4"), numberOf("F4"));
}

TEST(ParseNote, ReadsNumbers)
{
    EXPECT_EQ(numberOf("49"), 49);
    EXPECT_EQ(numberOf("-8"), -8);
    EXPECT_EQ(numberOf("0"), 0);
    EXPECT_EQ(numberOf("-20"), -20);
    EXPECT_EQ(numberOf("107"), 107);
}

TEST(ParseNote, ReadsBackEveryNameAndNumberThatIsWritten)
{
    for (int number = Note::lowest; number <= Note::highest; ++number) {
        EXPECT_EQ(numberOf(Note(number).name()), number);
        EXPECT_EQ(numberOf(std::to_string(number)), number);
    }
}

TEST(ParseNote, RefusesWhatIsNoNote)
{
    for (const char *text : {"",     " ",   "H4",   "C",     "#4",  "C##4", "C#",  "C4x", "4C", "C 4",
                             "C44",  "C04", "C--1", "C-2",   "C+4", "108",  "-21", "1.5", "+5", "99999999999999",
                             "Cb-1", "G#9", "C4\n", "\u266f"})
        EXPECT_FALSE(parseNote(text).ok()) << text;
}

TEST(ParseNote, SaysWhatWouldBeRight)
{
    const auto note = parseNote("H4");
    EXPECT_NE(note.fault().problem.find("'H4'"), std::string::npos);
    EXPECT_NE(note.fault().problem.find("C#4"), std::string::npos);
}

TEST(NoteRange, CountsBothEnds)
{
    const NoteRange whole{Note(1), Note(88)};
    EXPECT_EQ(whole.count(), 88);
    EXPECT_TRUE(whole.contains(Note(1)) && whole.contains(Note(88)));
    EXPECT_FALSE(whole.contains(Note(0)) || whole.contains(Note(89)));
}

TEST(SameSection, IsTrueEverywhereWhereSectionsAreNotKnown)
{
    EXPECT_TRUE(sameSection({}, Note(1), Note(88)));
}

TEST(SameSection, EndsAtABreakAndLeavesOutsidersAlone)
{
    const Sections sections{{"bass", {Note(1), Note(26)}}, {"treble", {Note(30), Note(88)}}};
    EXPECT_TRUE(sameSection(sections, Note(1), Note(26)));
    EXPECT_FALSE(sameSection(sections, Note(26), Note(30)));
    EXPECT_FALSE(sameSection(sections, Note(27), Note(28)));
}

} // namespace
} // namespace hammerline::keyboard
