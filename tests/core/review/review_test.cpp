#include "review/review.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace hammerline::review {
namespace {

using catalogue::Quantity;
using keyboard::Note;
using tolerance::Status;
using units::Amount;
using units::Length;

Amount mm(double value)
{
    return Length::millimetres(value);
}

/// Target 3 mm, limits 2 and 4: one millimetre of deviation is one half-width.
tolerance::Limits threeMillimetres()
{
    tolerance::Limits limits;
    limits.low = mm(2);
    limits.target = mm(3);
    limits.high = mm(4);
    return limits;
}

tolerance::Verdict verdict(Quantity quantity, int note, Status status, double deviation = 0)
{
    tolerance::Verdict made;
    made.quantity = quantity;
    made.note = Note(note);
    made.status = status;
    if (status != Status::Unjudged)
        made.limits = threeMillimetres();
    if (status != Status::Missing) {
        made.value = mm(3 + deviation);
        made.takes = 1;
    }
    if (status != Status::Missing && status != Status::Unjudged)
        made.deviation = mm(deviation);
    return made;
}

JudgedPass pass(instrument::InstrumentId instrument, std::vector<tolerance::Verdict> verdicts)
{
    return {instrument, instrument * 10, {std::move(verdicts)}};
}

std::vector<int> notesOf(const std::vector<Item> &items)
{
    std::vector<int> notes;
    for (const Item &item : items)
        notes.push_back(item.verdict.note.number());
    return notes;
}

TEST(Review, ReadingsThatAreInOrUnjudgedAreNoItems)
{
    const auto items = itemsOf(
        pass(1, {verdict(Quantity::LetOff, 1, Status::In, 0.2), verdict(Quantity::LetOff, 2, Status::Unjudged)}));
    EXPECT_TRUE(items.empty());
}

TEST(Review, EachTroubleIsNamedByItsKindAndKeepsTheOrderOfTheVerdicts)
{
    auto uneven = verdict(Quantity::LetOff, 3, Status::In, 0.1);
    uneven.uneven = true;
    const auto items = itemsOf(
        pass(1, {verdict(Quantity::LetOff, 1, Status::Marginal, 0.9), verdict(Quantity::LetOff, 2, Status::Missing),
                 uneven, verdict(Quantity::Dip, 1, Status::Out, -2)}));
    ASSERT_EQ(items.size(), 4u);
    EXPECT_EQ(items[0].kind, Kind::Marginal);
    EXPECT_EQ(items[1].kind, Kind::Missing);
    EXPECT_EQ(items[2].kind, Kind::Uneven);
    EXPECT_EQ(items[3].kind, Kind::Out);
    EXPECT_DOUBLE_EQ(items[3].halfWidths.value(), 2.0);
    EXPECT_FALSE(items[1].halfWidths.has_value());
    EXPECT_EQ(items[3].pass, 10);
}

TEST(Review, AReadingThatIsOutAndUnevenIsOneItem)
{
    auto both = verdict(Quantity::Blow, 7, Status::Out, 1.5);
    both.uneven = true;
    const auto items = itemsOf(pass(1, {both}));
    ASSERT_EQ(items.size(), 1u);
    EXPECT_EQ(items[0].kind, Kind::Out);
}

TEST(Review, AnUnjudgedReadingThatIsUnevenIsAnItem)
{
    auto unjudged = verdict(Quantity::Blow, 7, Status::Unjudged);
    unjudged.uneven = true;
    const auto items = itemsOf(pass(1, {unjudged}));
    ASSERT_EQ(items.size(), 1u);
    EXPECT_EQ(items[0].kind, Kind::Uneven);
    EXPECT_FALSE(items[0].halfWidths.has_value());
}

TEST(Review, TheQueueIsWorstFirstInHalfWidthsAcrossInstruments)
{
    const auto queue = queueOf(
        {pass(1, {verdict(Quantity::LetOff, 1, Status::Out, 1.2), verdict(Quantity::LetOff, 2, Status::Out, -3)}),
         pass(2, {verdict(Quantity::Blow, 3, Status::Out, 2)})});
    EXPECT_THAT(notesOf(queue), testing::ElementsAre(2, 3, 1));
}

TEST(Review, PairsWithoutAHalfWidthComeLast)
{
    auto oneSided = verdict(Quantity::LetOff, 2, Status::Out, 9);
    auto limits = *oneSided.limits;
    limits.low.reset();
    oneSided.limits = limits;
    const auto queue = queueOf({pass(1, {verdict(Quantity::LetOff, 1, Status::Missing), oneSided,
                                         verdict(Quantity::LetOff, 3, Status::Marginal, 0.8)})});
    EXPECT_THAT(notesOf(queue), testing::ElementsAre(3, 1, 2));
}

TEST(Review, EqualsStandByInstrumentThenQuantityThenNote)
{
    const auto queue =
        queueOf({pass(2, {verdict(Quantity::Blow, 9, Status::Out, 2)}),
                 pass(1, {verdict(Quantity::LetOff, 3, Status::Out, 2), verdict(Quantity::Blow, 8, Status::Out, -2),
                          verdict(Quantity::Blow, 5, Status::Out, 2)})});
    EXPECT_THAT(notesOf(queue), testing::ElementsAre(5, 8, 3, 9));
}

TEST(Review, KindsAreSpeltAsTheContractSpellsThem)
{
    EXPECT_EQ(idOf(Kind::Out), "out");
    EXPECT_EQ(idOf(Kind::Marginal), "marginal");
    EXPECT_EQ(idOf(Kind::Uneven), "uneven");
    EXPECT_EQ(idOf(Kind::Missing), "missing");
}

} // namespace
} // namespace hammerline::review
