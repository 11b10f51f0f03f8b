#include "action/fit.h"

#include "action/inside/nearest_targets.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

namespace hammerline {

using action::Fit;
using action::FitTask;
using catalogue::Quantity;
using keyboard::Note;
using units::Length;

namespace {

tolerance::Points points(double low, double target, double high)
{
    return {{.note = Note(1),
             .low = Length::millimetres(low),
             .target = Length::millimetres(target),
             .high = Length::millimetres(high)}};
}

/// A grand whose naturals and sharps both have a ratio of 5.4, on notes 40 and 41.
FitTask task()
{
    FitTask task;
    task.set.action = catalogue::ActionKind::Grand;
    task.set.entries[Quantity::Blow].both = points(44, 46, 48);
    task.set.entries[Quantity::LetOff].both = points(1, 2, 3);
    task.set.entries[Quantity::Dip].both = points(9.5, 10, 10.5);
    task.set.entries[Quantity::Aftertouch].both = points(0.8, 1.1, 1.4);
    for (const int note : {40, 41}) {
        task.values.set(Quantity::Blow, Note(note), {Length::millimetres(45.2), 1});
        task.values.set(Quantity::LetOff, Note(note), {Length::millimetres(2), 1});
        task.values.set(Quantity::Dip, Note(note), {Length::millimetres(10), 1});
        task.values.set(Quantity::Aftertouch, Note(note), {Length::millimetres(2), 1});
    }
    return task;
}

double disagreement(const action::FittedNote &note, double lostMotion = 0)
{
    return (note.blow - note.letOff).inMillimetres() -
           note.ratio * ((note.dip - note.aftertouch).inMillimetres() - lostMotion);
}

} // namespace

TEST(Fit, newTargetsAgreeWithTheRatioAndStayInside)
{
    const auto fit = action::fitTargets(task());
    ASSERT_TRUE(fit);
    ASSERT_EQ(fit.value().notes.size(), 88U);
    for (const action::FittedNote &note : fit.value().notes) {
        EXPECT_NEAR(note.ratio, 5.4, 1e-12);
        EXPECT_TRUE(note.feasible);
        EXPECT_NEAR(disagreement(note), 0, 2e-5);
        EXPECT_GE(note.aftertouch, Length::millimetres(0.8));
        EXPECT_LE(note.aftertouch, Length::millimetres(1.4));
    }
}

TEST(Fit, saysWhatTheOldTargetsWouldGive)
{
    const auto fit = action::fitTargets(task());
    EXPECT_NEAR(fit.value().notes.front().aftertouchOfOldTargets.inMillimetres(), 10 - 44 / 5.4, 1e-6);
}

TEST(Fit, targetsThatAgreeAlreadyStay)
{
    FitTask same = task();
    same.set.entries[Quantity::Blow].both = points(44, 2 + 5.4 * 8.9, 52);
    const auto fit = action::fitTargets(same);
    EXPECT_EQ(fit.value().notes.front().blow, Length::millimetres(2 + 5.4 * 8.9));
    EXPECT_EQ(fit.value().notes.front().dip, Length::millimetres(10));
}

TEST(Fit, lostMotionOfTheSetTakesItsShareOfTheDip)
{
    FitTask loose = task();
    loose.set.entries[Quantity::LostMotion].both = points(0, 0.25, 0.5);
    const auto fit = action::fitTargets(loose);
    EXPECT_NEAR(disagreement(fit.value().notes.front(), 0.25), 0, 2e-5);
}

TEST(Fit, targetWithoutRoomIsHeld)
{
    FitTask held = task();
    held.set.entries[Quantity::Dip].both = points(10, 10, 10);
    const auto fit = action::fitTargets(held);
    EXPECT_EQ(fit.value().notes.front().dip, Length::millimetres(10));
    EXPECT_TRUE(fit.value().notes.front().feasible);
}

TEST(Fit, guardedIntervalsAreNarrower)
{
    FitTask guarded = task();
    guarded.set.entries[Quantity::Aftertouch].rule = tolerance::Rule::Guarded;
    guarded.set.entries[Quantity::Aftertouch].expandedUncertainty = Length::millimetres(0.25);
    const auto fit = action::fitTargets(guarded);
    EXPECT_LE(fit.value().notes.front().aftertouch, Length::millimetres(1.15));
}

TEST(Fit, whereNothingAgreesTheCornerThatComesNearestIsGiven)
{
    FitTask stiff = task();
    stiff.set.entries[Quantity::Blow].both = points(40, 40.1, 40.2);
    stiff.set.entries[Quantity::Dip].both = points(10.4, 10.45, 10.5);
    const auto fit = action::fitTargets(stiff);
    const action::FittedNote &note = fit.value().notes.front();
    EXPECT_FALSE(note.feasible);
    EXPECT_EQ(note.blow, Length::millimetres(40.2));
    EXPECT_EQ(note.letOff, Length::millimetres(1));
    EXPECT_EQ(note.dip, Length::millimetres(10.4));
    EXPECT_EQ(note.aftertouch, Length::millimetres(1.4));
}

TEST(Fit, noteForWhichTheSetLacksOneIsLeftOut)
{
    FitTask naturalsOnly = task();
    tolerance::Entry &dip = naturalsOnly.set.entries[Quantity::Dip];
    dip.naturals = dip.both;
    dip.both.clear();
    const auto fit = action::fitTargets(naturalsOnly);
    EXPECT_EQ(fit.value().notes.size(), 52U);
}

TEST(Fit, oneSidedLimitIsRefused)
{
    FitTask open = task();
    open.set.entries[Quantity::LetOff].both.front().high.reset();
    EXPECT_FALSE(action::fitTargets(open));
}

TEST(Fit, setWithoutOneOfTheFourIsRefused)
{
    FitTask without = task();
    without.set.entries.erase(Quantity::Aftertouch);
    EXPECT_FALSE(action::fitTargets(without));
}

TEST(Fit, readingsThatTellNoRatioAreRefused)
{
    FitTask silent = task();
    silent.values.clear(Quantity::Aftertouch, Note(40));
    silent.values.clear(Quantity::Aftertouch, Note(41));
    EXPECT_FALSE(action::fitTargets(silent));
}

TEST(Fit, colourWithoutARatioOfItsOwnTakesAll)
{
    FitTask naturals = task();
    naturals.values.clear(Quantity::Aftertouch, Note(41));
    const auto fit = action::fitTargets(naturals);
    EXPECT_EQ(fit.value().notes.size(), 88U);
    EXPECT_NEAR(fit.value().notes[1].ratio, 5.4, 1e-12);
}

TEST(Fit, newSetHasAPointForEveryNoteWithItsOldLimits)
{
    FitTask tapered = task();
    tapered.set.entries[Quantity::LetOff].both.push_back({.note = Note(88),
                                                          .low = Length::millimetres(0.5),
                                                          .target = Length::millimetres(1.5),
                                                          .high = Length::millimetres(2)});
    tapered.set.entries[Quantity::Drop].both = points(0.5, 1, 1.5);
    const auto fit = action::fitTargets(tapered);
    const tolerance::ToleranceSet &set = fit.value().set;
    EXPECT_TRUE(tolerance::faultsOf(set).empty());
    EXPECT_EQ(set.entries.at(Quantity::LetOff).both.size(), 88U);
    EXPECT_EQ(set.entries.at(Quantity::Drop), tapered.set.entries.at(Quantity::Drop));
    for (const action::FittedNote &note : fit.value().notes) {
        const auto before = tolerance::limitsAt(tapered.set, Quantity::LetOff, note.note);
        const auto now = tolerance::limitsAt(set, Quantity::LetOff, note.note);
        EXPECT_EQ(now->target, units::Amount(note.letOff));
        EXPECT_EQ(now->low, before->low);
        EXPECT_EQ(now->high, before->high);
    }
}

TEST(Fit, coloursKeepTheirOwnLists)
{
    FitTask coloured = task();
    tolerance::Entry &dip = coloured.set.entries[Quantity::Dip];
    dip.naturals = dip.both;
    dip.sharps = points(9.3, 9.8, 10.2);
    dip.both.clear();
    const auto fit = action::fitTargets(coloured);
    EXPECT_EQ(fit.value().set.entries.at(Quantity::Dip).naturals.size(), 52U);
    EXPECT_EQ(fit.value().set.entries.at(Quantity::Dip).sharps.size(), 36U);
}

// No point of the plane inside the box is nearer, however one steps away from the answer along the plane.
TEST(Fit, noStepAlongThePlaneComesNearer)
{
    std::mt19937_64 random(7);
    const auto draw = [&random](double low, double high) {
        return low + (high - low) * static_cast<double>(random() % 100'000) / 100'000;
    };
    int feasible = 0;
    for (int round = 0; round < 300; ++round) {
        const double r = draw(4, 7);
        std::array<action::Wish, 4> wishes{
            {{46, 44, 48, 2, 1}, {2, 1, 3, 1, -1}, {10, 9.5, 10.5, 0.5, -r}, {1, 0.6, 1.4, 0.4, r}}};
        for (action::Wish &wish : wishes)
            wish.target = draw(wish.low, wish.high);
        const action::NearestTargets nearest = action::nearestTargets(wishes, 0);
        if (!nearest.feasible)
            continue;
        ++feasible;
        const auto distance = [&wishes](const std::array<double, 4> &values) {
            double sum = 0;
            for (std::size_t i = 0; i < 4; ++i)
                sum += std::pow((values[i] - wishes[i].target) / wishes[i].halfWidth, 2);
            return sum;
        };
        for (int step = 0; step < 100; ++step) {
            std::array<double, 4> other = nearest.values;
            for (std::size_t i = 0; i < 3; ++i)
                other[i] += draw(-0.1, 0.1);
            other[3] = (-other[0] + other[1] + r * other[2]) / r;
            bool inside = true;
            for (std::size_t i = 0; i < 4; ++i)
                inside = inside && other[i] >= wishes[i].low && other[i] <= wishes[i].high;
            EXPECT_TRUE(!inside || distance(other) >= distance(nearest.values) - 1e-9);
        }
    }
    EXPECT_GT(feasible, 100);
}

} // namespace hammerline
