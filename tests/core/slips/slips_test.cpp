#include "slips/slips.h"

#include <gtest/gtest.h>

namespace hammerline::slips {
namespace {

using catalogue::Quantity;
using keyboard::Note;
using units::Amount;
using units::Unit;

Amount mm(double value)
{
    return units::Length::millimetres(value);
}

/// An action that obeys the lever model with ratio 5 and strays a little, read up to note 20.
readings::ValueTable evenAction()
{
    readings::ValueTable values;
    for (int number = 1; number <= 20; ++number) {
        const double wobble = 0.05 * ((number * 7) % 5 - 2);
        values.set(Quantity::Blow, Note(number), {mm(46 + wobble), 1});
        values.set(Quantity::LetOff, Note(number), {mm(3 + wobble), 1});
        values.set(Quantity::Dip, Note(number), {mm(10), 1});
        values.set(Quantity::Aftertouch, Note(number), {mm(1.4 - wobble / 10), 1});
    }
    return values;
}

class Slips : public ::testing::Test {
protected:
    [[nodiscard]] std::optional<Suspicion> at(Quantity quantity, double value, Unit unit = Unit::Millimetre) const
    {
        const auto slip = suspect({quantity, Note(10), mm(value), unit}, {.pass = &pass});
        return slip ? std::optional(slip->suspicion) : std::nullopt;
    }
    readings::ValueTable pass = evenAction();
};

TEST_F(Slips, LetsHonestReadingsPass)
{
    for (const double value : {2.6, 2.9, 3.0, 3.2, 3.5})
        EXPECT_EQ(at(Quantity::LetOff, value), std::nullopt) << value;
}

TEST_F(Slips, SeesADigitTooManyOrAMarkForgotten)
{
    EXPECT_EQ(at(Quantity::LetOff, 31), Suspicion::TenTimesOff);
    EXPECT_EQ(at(Quantity::LetOff, 0.31), Suspicion::TenTimesOff);
    EXPECT_EQ(at(Quantity::Dip, 99), Suspicion::TenTimesOff);
    const auto slip = suspect({Quantity::LetOff, Note(10), mm(31), Unit::Millimetre}, {.pass = &pass});
    ASSERT_TRUE(slip && slip->meant);
    EXPECT_EQ(*slip->meant, mm(3.1));
}

TEST_F(Slips, SeesTheWrongUnit)
{
    EXPECT_EQ(at(Quantity::LetOff, 0.120), Suspicion::WrongUnit) << "inches in a column of millimetres";
    EXPECT_EQ(at(Quantity::LetOff, 120 * 25.4, Unit::Inch), Suspicion::WrongUnit) << "mils in a column of inches";
    const auto slip = suspect({Quantity::LetOff, Note(10), mm(3 * 25.4), Unit::Inch}, {.pass = &pass});
    ASSERT_TRUE(slip && slip->meantUnit);
    EXPECT_EQ(*slip->meantUnit, Unit::Millimetre);
    EXPECT_EQ(*slip->meant, mm(3));
}

TEST_F(Slips, SeesAJumpThatNothingExplains)
{
    EXPECT_EQ(at(Quantity::LetOff, 8.0), Suspicion::FarFromNeighbours);
    EXPECT_EQ(at(Quantity::Blow, 41.0), Suspicion::FarFromNeighbours);
}

TEST_F(Slips, SeesReadingsOfANoteThatContradictEachOther)
{
    EXPECT_EQ(at(Quantity::Aftertouch, 0.75), Suspicion::ContradictsNote);
    EXPECT_EQ(at(Quantity::Aftertouch, 1.3), std::nullopt);
}

TEST_F(Slips, AsksTheEarlierPassWhereNeighboursAreFew)
{
    const readings::ValueTable nothing;
    const Surroundings surroundings{.pass = &nothing, .earlier = &pass};
    EXPECT_TRUE(suspect({Quantity::LetOff, Note(10), mm(31)}, surroundings));
    EXPECT_FALSE(suspect({Quantity::LetOff, Note(10), mm(3.8)}, surroundings)) << "work was done in between";
}

TEST_F(Slips, AsksTheSetWhereNothingElseIsKnown)
{
    tolerance::ToleranceSet set;
    set.entries[Quantity::LetOff].both = {{.note = Note(1), .low = mm(2), .target = mm(3), .high = mm(4)}};
    EXPECT_TRUE(suspect({Quantity::LetOff, Note(10), mm(31)}, {.set = &set}));
    EXPECT_FALSE(suspect({Quantity::LetOff, Note(10), mm(6)}, {.set = &set})) << "a worn action";
}

TEST_F(Slips, KnowsNothingWhereNothingIsKnown)
{
    EXPECT_FALSE(suspect({Quantity::LetOff, Note(10), mm(999)}, {}));
}

TEST_F(Slips, ComparesNoReadingAcrossASectionBreak)
{
    const keyboard::Sections sections{{"bass", {Note(1), Note(20)}}, {"treble", {Note(21), Note(88)}}};
    EXPECT_FALSE(suspect({Quantity::LetOff, Note(21), mm(9)}, {.pass = &pass, .sections = sections}));
    EXPECT_TRUE(suspect({Quantity::LetOff, Note(21), mm(9)}, {.pass = &pass}));
}

} // namespace
} // namespace hammerline::slips
