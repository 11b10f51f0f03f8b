#include "core/tolerance/sample_sets.h"

#include <gtest/gtest.h>

namespace hammerline::tolerance {
namespace {

using samples::mm;
using samples::Note;
using samples::point;
using samples::Quantity;

units::Amount targetAt(const ToleranceSet &set, int note)
{
    return limitsAt(set, Quantity::LetOff, Note(note)).value().target;
}

TEST(LimitsAt, GivesThePointsThemselves)
{
    const auto limits = limitsAt(samples::letOffAndDip(), Quantity::LetOff, Note(88)).value();
    EXPECT_EQ(limits.low, mm(1.2));
    EXPECT_EQ(limits.target, mm(1.6));
    EXPECT_EQ(limits.high, mm(2.0));
    EXPECT_EQ(limits.expandedUncertainty, mm(0.2));
    EXPECT_EQ(limits.rule, Rule::Guarded);
}

TEST(LimitsAt, InterpolatesByNoteNumberToTheRoundedNanometre)
{
    // 3.2 - 1.6 * 1/87 = 3.181609195…; 2.4 - 1.2 * 43/87 = 1.806896551…
    EXPECT_EQ(targetAt(samples::letOffAndDip(), 2), units::Amount(units::Length::nanometres(3'181'609)));
    EXPECT_EQ(limitsAt(samples::letOffAndDip(), Quantity::LetOff, Note(44))->low,
              units::Amount(units::Length::nanometres(1'806'897)));
}

TEST(LimitsAt, RoundsHalfANanometreAwayFromZero)
{
    ToleranceSet set;
    Point first, last;
    first.note = Note(1);
    last.note = Note(3);
    last.target = units::Length::nanometres(1);
    set.entries[Quantity::LetOff].both = {first, last};
    EXPECT_EQ(targetAt(set, 2), units::Amount(units::Length::nanometres(1)));
    set.entries[Quantity::LetOff].both[1].target = units::Length::nanometres(-1);
    EXPECT_EQ(targetAt(set, 2), units::Amount(units::Length::nanometres(-1)));
}

TEST(LimitsAt, StaysBeyondTheEnds)
{
    ToleranceSet set;
    set.entries[Quantity::LetOff].both = {point(20, 1, 2, 3), point(60, 2, 3, 4)};
    EXPECT_EQ(targetAt(set, 1), mm(2));
    EXPECT_EQ(targetAt(set, 88), mm(3));
}

TEST(LimitsAt, UsesPointsOutsideTheInstrument)
{
    ToleranceSet set;
    set.entries[Quantity::LetOff].both = {point(-10, 1, 2, 3), point(110, 3, 4, 5)};
    EXPECT_EQ(targetAt(set, 50), mm(3));
}

TEST(LimitsAt, TakesThePairOfPointsAroundTheNote)
{
    ToleranceSet set;
    set.entries[Quantity::LetOff].both = {point(1, 1, 2, 3), point(11, 2, 3, 4), point(21, 1, 2, 3)};
    EXPECT_EQ(targetAt(set, 6), mm(2.5));
    EXPECT_EQ(targetAt(set, 11), mm(3));
    EXPECT_EQ(targetAt(set, 16), mm(2.5));
}

TEST(LimitsAt, KnowsColours)
{
    const auto set = samples::letOffAndDip();
    EXPECT_EQ(limitsAt(set, Quantity::Dip, Note(1))->target, mm(10.0));
    EXPECT_EQ(limitsAt(set, Quantity::Dip, Note(2))->target, mm(9.7));
}

TEST(LimitsAt, IsAbsentForAColourOrQuantityThatIsNotGiven)
{
    auto set = samples::letOffAndDip();
    set.entries[Quantity::Dip].sharps.clear();
    EXPECT_TRUE(limitsAt(set, Quantity::Dip, Note(1)));
    EXPECT_FALSE(limitsAt(set, Quantity::Dip, Note(2)));
    EXPECT_FALSE(limitsAt(set, Quantity::Blow, Note(1)));
}

TEST(LimitsAt, LeavesAbsentLimitsAbsent)
{
    auto set = samples::letOffAndDip();
    for (auto &one : set.entries[Quantity::LetOff].both)
        one.low.reset();
    const auto limits = limitsAt(set, Quantity::LetOff, Note(44)).value();
    EXPECT_FALSE(limits.low);
    EXPECT_TRUE(limits.high);
    EXPECT_FALSE(limits.halfWidth());
}

TEST(HalfWidth, IsHalfTheDistanceOfTheLimits)
{
    EXPECT_DOUBLE_EQ(limitsAt(samples::letOffAndDip(), Quantity::LetOff, Note(1))->halfWidth().value(), 0.8);
    Limits pinned{.low = mm(2), .target = mm(2), .high = mm(2)};
    EXPECT_FALSE(pinned.halfWidth());
}

} // namespace
} // namespace hammerline::tolerance
