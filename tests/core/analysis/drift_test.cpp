#include "analysis/drift.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace hammerline::analysis {
namespace {

using catalogue::Quantity;
using keyboard::Note;
using readings::Purpose;
using units::Length;

readings::Gauge gauge(double expandedUncertainty, double resolution = 0)
{
    return {"a dial", Length::millimetres(resolution), Length::millimetres(expandedUncertainty)};
}

/// Let-off from note 1 upwards.
MeasuredPass pass(double expandedUncertainty, const std::vector<double> &letOff)
{
    MeasuredPass made;
    made.pass.gauge = gauge(expandedUncertainty);
    int note = 1;
    for (const double value : letOff)
        made.values.set(Quantity::LetOff, Note(note++), {Length::millimetres(value)});
    return made;
}

const keyboard::Sections twoSections{{"bass", {Note(1), Note(2)}}, {"treble", {Note(3), Note(4)}}};

TEST(Drift, IsToldApartOnlyBeyondTheUncertaintyOfADifference)
{
    // 0.3 and 0.4 mm together: 0.5 mm.
    const auto within = driftBetween(pass(0.3, {3, 3}), pass(0.4, {2.5, 2.5}), {}, nullptr).at(0);
    EXPECT_DOUBLE_EQ(within.toldApart.value(), 0.5);
    EXPECT_EQ(within.way, Way::NotToldApart);
    EXPECT_EQ(within.moved, 0);
    const auto beyond = driftBetween(pass(0.3, {3, 3}), pass(0.4, {2.49, 2.49}), {}, nullptr).at(0);
    EXPECT_EQ(beyond.way, Way::Smaller);
    EXPECT_EQ(beyond.moved, 2);
    EXPECT_EQ(driftBetween(pass(0.3, {3}), pass(0.4, {3.6}), {}, nullptr).at(0).way, Way::Larger);
}

TEST(Drift, ManyNotesMakeTheGaugeNoBetter)
{
    const std::vector<double> before(88, 3.0), after(88, 3.4);
    EXPECT_EQ(driftBetween(pass(0.3, before), pass(0.4, after), {}, nullptr).at(0).way, Way::NotToldApart);
}

TEST(Drift, IsToldOfTheWholeAndThenOfEachSection)
{
    const auto drifts = driftBetween(pass(0.1, {3, 3, 3, 3}), pass(0.1, {3, 3, 4, 5}), twoSections, nullptr);
    ASSERT_EQ(drifts.size(), 3u);
    EXPECT_EQ(drifts[0].section, "");
    EXPECT_EQ(drifts[1].section, "bass");
    EXPECT_EQ(drifts[2].section, "treble");
    EXPECT_DOUBLE_EQ(drifts[0].change.meanChange, 0.75);
    EXPECT_DOUBLE_EQ(drifts[1].change.meanChange, 0);
    EXPECT_DOUBLE_EQ(drifts[2].change.meanChange, 1.5);
    EXPECT_EQ(drifts[0].moved, 2);
    EXPECT_EQ(drifts[2].most, Note(4));
    EXPECT_DOUBLE_EQ(drifts[2].mostChange, 2);
}

TEST(Drift, LeavesOutNotesAndSectionsNotReadOnBothDays)
{
    const auto drifts = driftBetween(pass(0.1, {3, 3}), pass(0.1, {3, 3, 9}), twoSections, nullptr);
    ASSERT_EQ(drifts.size(), 2u);
    EXPECT_EQ(drifts[0].change.pairs, 2);
}

TEST(Drift, SaysNothingOfTheWayWhereNoUncertaintyIsKnown)
{
    const auto drift = driftBetween(pass(0, {3}), pass(0.1, {4}), {}, nullptr).at(0);
    EXPECT_EQ(drift.way, Way::Unknown);
    EXPECT_FALSE(drift.toldApart);
    EXPECT_FALSE(drift.moved);
    EXPECT_DOUBLE_EQ(drift.change.meanChange, 1);
}

TEST(DriftUncertainty, TakesTheResolutionWhereTheGaugeStatesNothingElse)
{
    EXPECT_DOUBLE_EQ(uncertaintyOf(Quantity::Blow, gauge(0.2, 0.1), nullptr).value(), 0.2);
    // A rectangle 0.1 mm wide has the standard deviation 0.1 / sqrt(12).
    EXPECT_NEAR(uncertaintyOf(Quantity::Blow, gauge(0.05, 0.1), nullptr).value(), 2 * 0.1 / std::sqrt(12.0), 1e-12)
        << "no gauge is better than its step";
    EXPECT_NEAR(uncertaintyOf(Quantity::Blow, gauge(0, 0.1), nullptr).value(), 2 * 0.1 / std::sqrt(12.0), 1e-12);
    EXPECT_FALSE(uncertaintyOf(Quantity::Blow, gauge(0, 0), nullptr));
}

TEST(DriftUncertainty, OfAMassIsWhatTheSetStatesBroughtToTwo)
{
    tolerance::ToleranceSet set;
    set.entries[Quantity::DownWeight].expandedUncertainty = units::Mass::grams(3);
    set.entries[Quantity::DownWeight].coverageFactor = 3;
    EXPECT_FALSE(uncertaintyOf(Quantity::DownWeight, gauge(0.2), nullptr));
    EXPECT_DOUBLE_EQ(uncertaintyOf(Quantity::DownWeight, gauge(0.2), &set).value(), 2);
}

readings::Pass onDay(readings::PassId id, Purpose purpose, int day)
{
    return {.id = id, .purpose = purpose, .began = readings::Instant(std::chrono::hours(24 * day))};
}

TEST(LeftBefore, IsTheNewestAsLeftPassWhateverWasRecheckedSince)
{
    const std::vector<readings::Pass> passes{onDay(1, Purpose::AsFound, 1), onDay(2, Purpose::AsLeft, 2),
                                             onDay(3, Purpose::AsLeft, 3),  onDay(4, Purpose::Recheck, 4),
                                             onDay(5, Purpose::Recheck, 5), onDay(6, Purpose::AsLeft, 6)};
    EXPECT_EQ(leftBefore(passes, passes[4]), &passes[2]);
    EXPECT_EQ(leftBefore(passes, passes[1]), nullptr);
}

TEST(LeftBefore, IsAnEarlierRecheckWhereNothingWasMeasuredAsLeft)
{
    const std::vector<readings::Pass> passes{onDay(1, Purpose::AsFound, 1), onDay(2, Purpose::Recheck, 2),
                                             onDay(3, Purpose::Recheck, 3)};
    EXPECT_EQ(leftBefore(passes, passes[2]), &passes[1]);
    EXPECT_EQ(leftBefore(passes, passes[1]), nullptr);
}

} // namespace
} // namespace hammerline::analysis
