#include "keyboard_strip/strip_model.h"

#include "support/lively_pass.h"

#include <gtest/gtest.h>

namespace hammerline::keyboard_strip {
namespace {

using catalogue::Quantity;
using keyboard::Note;
using support::mm;
using tolerance::Limits;
using tolerance::Status;

tolerance::Judgement judged(const readings::ValueTable &values)
{
    return tolerance::judge(values, support::livelySet(), {}, support::livelySections());
}

StripSource sourceOf(const tolerance::Judgement &now, std::optional<Quantity> quantity)
{
    StripSource source;
    source.sections = support::livelySections();
    source.now = &now;
    source.quantity = quantity;
    source.form.locale = QLocale::c();
    return source;
}

TEST(HeightOf, TheBandRunsFromMinusOneToOneWhateverTheLimits)
{
    const Limits wide{.low = mm(2), .target = mm(4), .high = mm(6)};
    const Limits narrow{.low = mm(9.8), .target = mm(10), .high = mm(10.4)};
    EXPECT_DOUBLE_EQ(*heightOf(mm(6), wide), 1);
    EXPECT_DOUBLE_EQ(*heightOf(mm(2), wide), -1);
    EXPECT_NEAR(*heightOf(mm(10.4), narrow), 1, 1e-9);
    EXPECT_NEAR(*heightOf(mm(9.8), narrow), -1, 1e-9);
}

TEST(HeightOf, TheTargetNeedNotBeTheMiddle)
{
    const Limits narrow{.low = mm(9.8), .target = mm(10), .high = mm(10.4)};
    EXPECT_NEAR(*heightOf(mm(10), narrow), -1.0 / 3, 1e-9);
}

TEST(HeightOf, WithOneLimitItsDistanceFromTheTargetIsTheMeasure)
{
    EXPECT_DOUBLE_EQ(*heightOf(mm(0.5), {.low = mm(1), .target = mm(2)}), -1.5);
    EXPECT_DOUBLE_EQ(*heightOf(mm(4), {.target = mm(2), .high = mm(3)}), 2);
    EXPECT_FALSE(heightOf(mm(4), {.target = mm(2)}));
}

TEST(HeightOf, WithoutAnyWidthItIsOnTargetOrTwoOff)
{
    const Limits exact{.low = mm(2), .target = mm(2), .high = mm(2)};
    EXPECT_DOUBLE_EQ(*heightOf(mm(2), exact), 0);
    EXPECT_DOUBLE_EQ(*heightOf(mm(2.1), exact), 2);
    EXPECT_DOUBLE_EQ(*heightOf(mm(1.9), exact), -2);
    EXPECT_DOUBLE_EQ(*heightOf(mm(9), {.low = mm(2), .target = mm(2)}), 0);
    EXPECT_DOUBLE_EQ(*heightOf(mm(1), {.low = mm(2), .target = mm(2)}), -2);
}

TEST(ModelOf, ThereIsOneKeyForEveryNoteOfTheCompass)
{
    const auto now = support::livelyJudgement(1, {Note(-8), Note(88)});
    StripSource source = sourceOf(now, Quantity::LetOff);
    source.compass = {Note(-8), Note(88)};
    const StripModel model = modelOf(source);
    ASSERT_EQ(model.keys.size(), 97U);
    EXPECT_EQ(model.keys.front().note, Note(-8));
    EXPECT_EQ(model.find(Note(88))->note, Note(88));
    EXPECT_EQ(model.find(Note(89)), nullptr);
    EXPECT_EQ(model.find(Note(-9)), nullptr);
    EXPECT_EQ(model.caption, "Let-off");
}

TEST(ModelOf, MissingHasNoHeightAndOutLiesOutsideTheBand)
{
    readings::ValueTable values;
    values.set(Quantity::LetOff, Note(1), {mm(4.2), 1});
    const auto now = judged(values);
    const StripModel model = modelOf(sourceOf(now, Quantity::LetOff));
    EXPECT_EQ(model.keys[0].status, Status::Out);
    EXPECT_GT(*model.keys[0].now, 1);
    EXPECT_TRUE(model.keys[0].story.startsWith("A0, Let-off 4.20 mm: 1.00 mm too far from the string"));
    EXPECT_EQ(model.keys[1].status, Status::Missing);
    EXPECT_FALSE(model.keys[1].now);
    EXPECT_EQ(model.keys[1].valueText, "not read");
}

TEST(ModelOf, AQuantityThatIsNeitherReadNorJudgedLeavesTheKeyUnused)
{
    const auto now = judged({});
    const StripModel model = modelOf(sourceOf(now, Quantity::Blow));
    EXPECT_FALSE(model.keys[3].used);
    EXPECT_EQ(model.keys[3].story, "C1");
}

TEST(ModelOf, WithoutAQuantityTheWorstPairIsShownAndTheOthersNamed)
{
    readings::ValueTable values;
    values.set(Quantity::LetOff, Note(1), {mm(4.2), 1}); // 1.25 half-widths off
    values.set(Quantity::Dip, Note(1), {mm(11), 1});     // more than 3
    const auto now = judged(values);
    const StripModel model = modelOf(sourceOf(now, std::nullopt));
    EXPECT_TRUE(model.keys[0].story.startsWith("A0, Dip 11.00 mm"));
    EXPECT_TRUE(model.keys[0].story.endsWith("Also out: Let-off."));
}

TEST(ModelOf, OutGoesBeforeMissingAndMissingBeforeMarginal)
{
    readings::ValueTable values;
    values.set(Quantity::LetOff, Note(1), {mm(4.2), 1});
    values.set(Quantity::LetOff, Note(3), {mm(3.9), 1});
    const auto now = judged(values);
    const StripModel model = modelOf(sourceOf(now, std::nullopt));
    EXPECT_EQ(model.keys[0].status, Status::Out);
    EXPECT_EQ(model.keys[2].status, Status::Missing);
}

TEST(ModelOf, BeforeAndPlannedStandOnTheSameScaleAsNow)
{
    readings::ValueTable first;
    first.set(Quantity::LetOff, Note(1), {mm(4.8), 1});
    readings::ValueTable second;
    second.set(Quantity::LetOff, Note(1), {mm(4.0), 1});
    const auto before = judged(first);
    const auto now = judged(second);
    const std::map<PairOf, units::Amount> planned{{{Quantity::LetOff, Note(1)}, mm(3.2)}};
    StripSource source = sourceOf(now, Quantity::LetOff);
    source.before = &before;
    source.planned = &planned;
    const StripModel model = modelOf(source);
    EXPECT_NEAR(*model.keys[0].before, 2, 1e-9);
    EXPECT_NEAR(*model.keys[0].now, 1, 1e-9);
    EXPECT_NEAR(*model.keys[0].planned, 0, 1e-9);
    EXPECT_FALSE(model.keys[1].before);
}

TEST(ModelOf, FlagsAreKeptAndUnevenIsAddedFromTheJudgement)
{
    readings::ValueTable values;
    values.set(Quantity::LetOff, Note(1), {mm(2.5), 1});
    values.set(Quantity::LetOff, Note(2), {mm(3.9), 1});
    const auto now = judged(values);
    StripSource source = sourceOf(now, Quantity::LetOff);
    source.flags[Note(2)].fault = true;
    const StripModel model = modelOf(source);
    EXPECT_FALSE(model.keys[0].flags.uneven);
    EXPECT_EQ(model.keys[1].flags, (Flags{.fault = true, .uneven = true}));
}

} // namespace
} // namespace hammerline::keyboard_strip
