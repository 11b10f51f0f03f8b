#include "sounding/saying.h"

#include <gtest/gtest.h>

namespace hammerline::sounding {
namespace {

using keyboard::Note;
using units::Amount;
using units::Length;

Amount mm(double value)
{
    return Length::millimetres(value);
}

wording::NumberForm gaugeOf(double resolution, units::Unit unit = units::Unit::Millimetre)
{
    return wording::formOf(unit, Length::millimetres(resolution), QLocale(QLocale::German));
}

/// Judged by 3.0 to 4.0 mm, target 3.5.
tolerance::Verdict verdictOf(double value)
{
    tolerance::Limits limits{.low = mm(3.0), .target = mm(3.5), .high = mm(4.0)};
    limits.expandedUncertainty = mm(0.1);
    limits.rule = tolerance::Rule::Guarded;
    return {.quantity = catalogue::Quantity::LetOff,
            .note = Note(41),
            .status = tolerance::judgeValue(mm(value), limits),
            .value = mm(value),
            .takes = 1,
            .limits = limits,
            .deviation = mm(value) - limits.target};
}

TEST(Saying, NamesNotesWithoutSigns)
{
    EXPECT_EQ(noteSaying(Note(41)), "C sharp 4");
    EXPECT_EQ(noteSaying(Note(1)), "A 0");
    EXPECT_EQ(noteSaying(Note(88)), "C 8");
    EXPECT_EQ(noteSaying(Note(-8)), "C 0");
    EXPECT_EQ(noteSaying(Note(Note::lowest)), "C minus 1");
    EXPECT_EQ(noteSaying(Note(Note::highest)), "G 9");
}

TEST(Saying, SpeaksDecimalsDigitByDigitWithoutZerosAtTheEnd)
{
    EXPECT_EQ(valueSaying(mm(3.1), gaugeOf(0.01)), "three point one");
    EXPECT_EQ(valueSaying(mm(0.05), gaugeOf(0.01)), "zero point zero five");
    EXPECT_EQ(valueSaying(mm(10.25), gaugeOf(0.01)), "10 point two five");
    EXPECT_EQ(valueSaying(mm(45), gaugeOf(0.1)), "45");
    EXPECT_EQ(valueSaying(mm(3), gaugeOf(1)), "three");
}

TEST(Saying, SpeaksInTheUnitOfThePass)
{
    EXPECT_EQ(valueSaying(mm(3.175), gaugeOf(0.0254, units::Unit::Inch)), "zero point one two five");
    EXPECT_EQ(valueSaying(units::Mass::grams(50.5), gaugeOf(0.1)), "50 point five");
}

TEST(Saying, SpeaksTheSignButNotOfNothing)
{
    EXPECT_EQ(valueSaying(mm(-0.3), gaugeOf(0.1)), "minus zero point three");
    EXPECT_EQ(valueSaying(mm(-0.01), gaugeOf(0.1)), "zero");
}

TEST(Saying, TellsNoteValueAndVerdict)
{
    const auto form = gaugeOf(0.1);
    EXPECT_EQ(readingSaying(verdictOf(2.8), form), "C sharp 4, two point eight, a little low");
    EXPECT_EQ(readingSaying(verdictOf(4.2), form), "C sharp 4, four point two, a little high");
    EXPECT_EQ(readingSaying(verdictOf(2.0), form), "C sharp 4, two, too low");
    EXPECT_EQ(readingSaying(verdictOf(5.5), form), "C sharp 4, five point five, too high");
    EXPECT_EQ(readingSaying(verdictOf(3.5), form), "C sharp 4, three point five, in");
    EXPECT_EQ(readingSaying(verdictOf(3.95), form), "C sharp 4, four, close to the upper limit");
    EXPECT_EQ(readingSaying(verdictOf(3.05), gaugeOf(0.01)),
              "C sharp 4, three point zero five, close to the lower limit");
}

TEST(Saying, OfAReadingThatNothingJudgesTellsTheValueAlone)
{
    tolerance::Verdict verdict;
    verdict.note = Note(40);
    verdict.value = mm(3.1);
    EXPECT_EQ(readingSaying(verdict, gaugeOf(0.1)), "C 4, three point one");
}

TEST(Saying, OfAMissingReadingTellsThatItIsMissing)
{
    tolerance::Verdict verdict;
    verdict.note = Note(40);
    verdict.status = tolerance::Status::Missing;
    EXPECT_EQ(readingSaying(verdict, gaugeOf(0.1)), "C 4, not read");
}

TEST(Saying, AsksForANoteAndForTheQuantityWhereItChanges)
{
    EXPECT_EQ(askedSaying(Note(41)), "C sharp 4");
    EXPECT_EQ(askedSaying(Note(41), catalogue::Quantity::LetOff), "C sharp 4, Let-off");
}

} // namespace
} // namespace hammerline::sounding
