#include "core/tolerance/sample_sets.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <limits>

namespace hammerline::tolerance {
namespace {

using samples::mm;
using samples::Note;
using samples::point;
using samples::Quantity;
using testing::AllOf;
using testing::HasSubstr;

class SetFaults : public testing::Test {
protected:
    ToleranceSet set = samples::letOffAndDip();
    Entry &letOff = set.entries[Quantity::LetOff];

    std::string only() const
    {
        const auto faults = faultsOf(set);
        return faults.size() == 1 ? faults.front().problem : std::to_string(faults.size()) + " faults";
    }
};

TEST_F(SetFaults, AreNoneInASoundSet)
{
    EXPECT_THAT(faultsOf(set), testing::IsEmpty());
}

TEST_F(SetFaults, TellLimitsThatCross)
{
    letOff.both[0].low = mm(3.3);
    EXPECT_THAT(only(), AllOf(HasSubstr("let_off, note 1"), HasSubstr("low limit lies above the target")));
    letOff.both[0] = point(1, 2.4, 3.2, 3.1);
    EXPECT_THAT(only(), HasSubstr("high limit lies below the target"));
}

TEST_F(SetFaults, LetLimitsTouchTheTarget)
{
    letOff.both = {point(1, 3, 3, 3)};
    EXPECT_THAT(faultsOf(set), testing::IsEmpty());
}

TEST_F(SetFaults, TellANoteTwiceAndFallingNotes)
{
    letOff.both[1].note = Note(1);
    EXPECT_THAT(only(), AllOf(HasSubstr("let_off, note 1"), HasSubstr("two points")));
    letOff.both[1].note = Note(0);
    EXPECT_THAT(only(), HasSubstr("rising order"));
}

TEST_F(SetFaults, TellALimitAtSomePointsOnly)
{
    letOff.both[1].low.reset();
    EXPECT_THAT(only(), AllOf(HasSubstr("let_off"), HasSubstr("low limit stands at some points only")));
    letOff.both[0].low.reset();
    EXPECT_THAT(faultsOf(set), testing::IsEmpty());
}

TEST_F(SetFaults, LetTheTwoColoursDiffer)
{
    set.entries[Quantity::Dip].sharps[0].low.reset();
    EXPECT_THAT(faultsOf(set), testing::IsEmpty());
}

TEST_F(SetFaults, TellAQuantityThatTheActionDoesNotHave)
{
    set.entries[Quantity::Drop].both = {point(1, 1, 2, 3)};
    EXPECT_THAT(only(), AllOf(HasSubstr("drop"), HasSubstr("vertical")));
    set.action = catalogue::ActionKind::Grand;
    EXPECT_THAT(faultsOf(set), testing::IsEmpty());
}

TEST_F(SetFaults, TellEntriesWithoutPointsAndWithBothForms)
{
    letOff.naturals = letOff.both;
    EXPECT_THAT(only(), HasSubstr("give either"));
    letOff.naturals.clear();
    letOff.both.clear();
    EXPECT_THAT(only(), HasSubstr("no points"));
}

TEST_F(SetFaults, TellFiguresBelowTheirBounds)
{
    letOff.step = mm(-0.1);
    EXPECT_THAT(only(), HasSubstr("step is negative"));
    letOff.step = mm(0);
    letOff.expandedUncertainty = mm(-0.1);
    EXPECT_THAT(only(), HasSubstr("expanded uncertainty is negative"));
    letOff.expandedUncertainty = mm(0);
    for (const double factor :
         {0.0, -2.0, std::numeric_limits<double>::infinity(), std::numeric_limits<double>::quiet_NaN()}) {
        letOff.coverageFactor = factor;
        EXPECT_THAT(only(), HasSubstr("coverage factor"));
    }
}

TEST_F(SetFaults, TellMassesWhereLengthsBelong)
{
    letOff.both[0].target = units::Mass::grams(3);
    EXPECT_THAT(only(), HasSubstr("give them in mm"));
    letOff.both[0].target = mm(3.2);
    letOff.step = units::Mass::grams(1);
    EXPECT_THAT(only(), HasSubstr("step has the wrong unit"));
}

TEST_F(SetFaults, AreAllToldAtOnce)
{
    letOff.both[0].low = mm(9);
    letOff.step = mm(-1);
    set.entries[Quantity::Dip].coverageFactor = 0;
    EXPECT_THAT(faultsOf(set), testing::SizeIs(4)) << "low above target and above high, step, coverage factor";
}

} // namespace
} // namespace hammerline::tolerance
