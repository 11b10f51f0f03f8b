#include "action/patterns.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

namespace hammerline {

using action::Pattern;
using action::Remedy;
using action::Wanted;
using catalogue::Quantity;
using keyboard::Note;
using units::Length;

namespace {

int insideOf(const action::Straight &straight, const std::vector<Wanted> &wanted)
{
    int inside = 0;
    for (const Wanted &each : wanted) {
        const double change = 2 * straight.at(each.note); // halves of a base unit
        inside += (!each.low || static_cast<double>(*each.low) <= change + 1e-6) &&
                          (!each.high || change <= static_cast<double>(*each.high) + 1e-6)
                      ? 1
                      : 0;
    }
    return inside;
}

/// Every line through two ends, tried.
int mostByTrying(const std::vector<Wanted> &wanted)
{
    std::vector<std::pair<Note, double>> ends;
    for (const Wanted &each : wanted)
        for (const auto &end : {each.low, each.high})
            if (end)
                ends.emplace_back(each.note, static_cast<double>(*end) / 2);
    int most = 0;
    for (const auto &[note, value] : ends)
        for (const auto &[other, otherValue] : ends) {
            action::Straight line{.notes = {std::min(note, other), std::max(note, other)},
                                  .bass = note < other ? value : otherValue,
                                  .treble = note < other ? otherValue : value};
            most = std::max(most, insideOf(line, wanted));
        }
    return most;
}

std::vector<Wanted> randomWanted(std::mt19937_64 &random)
{
    std::vector<Wanted> wanted;
    for (int note = 1; note <= 88; note += 1 + static_cast<int>(random() % 9)) {
        const auto middle = static_cast<std::int64_t>(random() % 2000) - 1000;
        const auto half = static_cast<std::int64_t>(random() % 400);
        wanted.push_back({.note = Note(note), .low = middle - half, .high = middle + half});
        if (random() % 10 == 0)
            wanted.back().low.reset();
        if (random() % 10 == 0)
            wanted.back().high.reset();
    }
    return wanted;
}

tolerance::ToleranceSet letOffSet()
{
    tolerance::ToleranceSet set;
    set.entries[Quantity::LetOff].both = {{.note = Note(1),
                                           .low = Length::millimetres(1.6),
                                           .target = Length::millimetres(2),
                                           .high = Length::millimetres(2.4)}};
    return set;
}

template <typename Error>
Pattern patternFor(Error errorAt, const keyboard::Sections &sections = {})
{
    readings::ValueTable values;
    for (int note = 1; note <= 88; ++note)
        values.set(Quantity::LetOff, Note(note), {Length::millimetres(2 + errorAt(note)), 1});
    return action::patternOf(values, Quantity::LetOff, letOffSet(), {}, sections).value();
}

const keyboard::Sections sections{{"bass", {Note(1), Note(28)}}, {"treble", {Note(29), Note(88)}}};

} // namespace

TEST(Patterns, lineIsInsideAsManyIntervalsAsAnyTried)
{
    std::mt19937_64 random(11);
    for (int round = 0; round < 300; ++round) {
        const std::vector<Wanted> wanted = randomWanted(random);
        const action::Straight line = action::bestLine(wanted);
        EXPECT_EQ(line.inside, insideOf(line, wanted)) << round;
        EXPECT_GE(line.inside, mostByTrying(wanted)) << round;
        const action::Straight shift = action::bestShift(wanted);
        EXPECT_EQ(shift.inside, insideOf(shift, wanted)) << round;
        EXPECT_LE(shift.inside, line.inside) << round;
    }
}

TEST(Patterns, intervalThatIsAPointIsMetExactly)
{
    const std::vector<Wanted> wanted{{Note(1), 0, 0}, {Note(4), 1, 1}, {Note(88), 29, 29}};
    EXPECT_EQ(action::bestLine(wanted).inside, 3);
    EXPECT_EQ(action::bestLine({{Note(1), 0, 0}, {Note(4), 1, 1}, {Note(88), 30, 30}}).inside, 2);
}

TEST(Patterns, openIntervalsWithoutAnEndNeedNothing)
{
    const action::Straight line = action::bestLine({{.note = Note(3)}, {.note = Note(9)}});
    EXPECT_EQ(line.inside, 2);
    EXPECT_EQ(line.bass, 0);
}

TEST(Patterns, shiftStandsInTheMiddleOfWhatIsAllowed)
{
    const action::Straight shift = action::bestShift({{Note(1), 10, 50}, {Note(2), 20, 60}});
    EXPECT_EQ(shift.inside, 2);
    EXPECT_DOUBLE_EQ(shift.bass, 17.5);
}

TEST(Patterns, wholeRailTooFarIsAShift)
{
    const Pattern pattern = patternFor([](int note) { return 0.7 + 0.01 * (note % 5); });
    EXPECT_EQ(pattern.likely, Remedy::Shift);
    EXPECT_EQ(pattern.remedies[1].inside, 88);
}

TEST(Patterns, tiltedRailIsALine)
{
    const Pattern pattern = patternFor([](int note) { return 1.2 - 2.4 * (note - 1) / 87; });
    EXPECT_EQ(pattern.likely, Remedy::Line);
    EXPECT_EQ(pattern.remedies[2].inside, 88);
    EXPECT_NEAR(pattern.bow, 0, 0.05);
}

TEST(Patterns, stepAtABreakIsMendedBySections)
{
    const Pattern pattern = patternFor([](int note) { return note <= 28 ? 0.9 : -0.9; }, sections);
    EXPECT_EQ(pattern.likely, Remedy::ShiftBySection);
    EXPECT_EQ(pattern.remedies[3].inside, 88);
}

TEST(Patterns, scatteredNotesAreSingleNotes)
{
    const Pattern pattern = patternFor([](int note) { return note % 7 == 0 ? (note % 2 == 0 ? 0.8 : -0.8) : 0.0; });
    EXPECT_EQ(pattern.likely, Remedy::SingleNotes);
    EXPECT_EQ(pattern.inside, 76);
}

TEST(Patterns, bowIsTheMiddleAgainstTheEnds)
{
    const Pattern pattern = patternFor([](int note) { return 0.6 - 1.2 * std::pow((note - 44.5) / 43.5, 2); });
    EXPECT_GT(pattern.bow, 0.5);
}

TEST(Patterns, quantityThatIsNotJudgedHasNone)
{
    EXPECT_FALSE(action::patternOf({}, Quantity::LetOff, letOffSet(), {}, {}));
}

} // namespace hammerline
