#include "bench/entry_session.h"
#include "support/workshop_on_disk.h"

#include <gtest/gtest.h>

namespace hammerline::bench {
namespace {

using catalogue::Quantity;
using keyboard::Note;

class Entering : public ::testing::Test {
protected:
    [[nodiscard]] EntrySession sessionOf(const readings::Pass &pass)
    {
        return {shop.book, shop.grand, pass, support::plainSet(), [this] { return shop.stamp(); }};
    }
    [[nodiscard]] EntrySession letOff()
    {
        EntrySession session = sessionOf(shop.pass);
        session.follow({.quantities = {Quantity::LetOff}});
        return session;
    }

    support::WorkshopOnDisk shop;
};

TEST_F(Entering, IsOnDiskBeforeTheNextNoteIsAsked)
{
    EntrySession session = letOff();
    ASSERT_TRUE(session.enter("3.1"));
    const auto again = logbook::Logbook::open(shop.path(), logbook::Access::ReadOnly);
    ASSERT_EQ(again.readings(shop.pass.id).size(), 1u);
    EXPECT_EQ(again.readings(shop.pass.id).front().typed, "3.1");
    EXPECT_EQ(again.readings(shop.pass.id).front().person, "Ada");
}

TEST_F(Entering, WhoReadsANoteAgainInAnothersPassIsItsReader)
{
    ASSERT_TRUE(letOff().enter("3.1"));
    EntrySession lead(shop.book, shop.grand, shop.pass, support::plainSet(), [this] {
        return logbook::Stamp{shop.stamp().at, "Lena"};
    });
    lead.follow({.quantities = {Quantity::LetOff}});
    lead.goTo(Quantity::LetOff, Note(1));
    ASSERT_TRUE(lead.enter("3.2"));
    EXPECT_EQ(shop.book.readings(shop.pass.id).front().person, "Lena");
}

TEST_F(Entering, ResumesAfterTheNoteReadLast)
{
    EntrySession session = letOff();
    session.goTo(Quantity::LetOff, Note(20));
    ASSERT_TRUE(session.enter("3.1"));
    EntrySession tomorrow = letOff();
    EXPECT_EQ(tomorrow.asked()->note, Note(21));
}

TEST_F(Entering, ResumesAtTheFirstGapWhereEverythingBehindIsRead)
{
    EntrySession session = letOff();
    session.skip();
    for (int note = 2; note <= 88; ++note)
        ASSERT_TRUE(session.enter("3.1"));
    EXPECT_EQ(letOff().asked()->note, Note(1));
}

TEST_F(Entering, AFilledGapLeadsToTheNextGapAndNotIntoItsNeighbours)
{
    EntrySession session = letOff();
    for (int note = 1; note <= 88; ++note) {
        if (note == 20 || note == 50)
            session.skip();
        else
            ASSERT_TRUE(session.enter("3.1"));
    }
    EntrySession tomorrow = letOff();
    EXPECT_EQ(tomorrow.asked()->note, Note(20));
    ASSERT_TRUE(tomorrow.enter("3.2"));
    EXPECT_EQ(tomorrow.asked()->note, Note(50));
    ASSERT_TRUE(tomorrow.enter("3.2"));
    EXPECT_FALSE(tomorrow.asked());
}

TEST_F(Entering, CorrectionsGoOnNoteByNote)
{
    EntrySession session = letOff();
    for (int i = 0; i < 5; ++i)
        ASSERT_TRUE(session.enter("3.1"));
    session.goTo(Quantity::LetOff, Note(2));
    ASSERT_TRUE(session.enter("3.2"));
    EXPECT_EQ(session.asked()->note, Note(3));
}

TEST_F(Entering, ARouteIsDoneWhereNothingIsMissing)
{
    EntrySession session = letOff();
    for (int note = 1; note <= 88; ++note)
        ASSERT_TRUE(session.enter("3.1"));
    EXPECT_FALSE(session.asked());
    EXPECT_FALSE(session.enter("3.1"));
    EXPECT_FALSE(letOff().asked());
    EXPECT_EQ(session.progress().read, 88);
}

TEST_F(Entering, SkippingAndGoingBackStopAtTheEnds)
{
    EntrySession session = letOff();
    EXPECT_FALSE(session.back());
    for (int i = 0; i < 100; ++i)
        session.skip();
    EXPECT_FALSE(session.asked());
    EXPECT_TRUE(session.back());
    EXPECT_EQ(session.asked()->note, Note(88));
}

TEST_F(Entering, ADropReadFromTheStringIsTurnedIntoOneBelowLetOff)
{
    EntrySession session = sessionOf(shop.begin(readings::Purpose::AsLeft, readings::DropDatum::FromString));
    session.follow({.sweep = route::Sweep::NoteByNote, .quantities = {Quantity::LetOff, Quantity::Drop}});
    ASSERT_TRUE(session.enter("3.2"));
    const auto drop = session.enter("5.0");
    ASSERT_TRUE(drop);
    EXPECT_DOUBLE_EQ(drop.value().reading.value.inDisplay(), 1.8);
    EXPECT_EQ(drop.value().reading.typed, "5.0");
}

TEST_F(Entering, ADropFromTheStringNeedsTheLetOffFirst)
{
    EntrySession session = sessionOf(shop.begin(readings::Purpose::AsLeft, readings::DropDatum::FromString));
    session.follow({.quantities = {Quantity::Drop}});
    const auto drop = session.enter("5.0");
    ASSERT_FALSE(drop);
    EXPECT_NE(drop.fault().problem.find("let-off"), std::string::npos);
}

TEST_F(Entering, ADropFromTheStringAboveTheLetOffPointIsRefused)
{
    EntrySession session = sessionOf(shop.begin(readings::Purpose::AsLeft, readings::DropDatum::FromString));
    session.follow({.sweep = route::Sweep::NoteByNote, .quantities = {Quantity::LetOff, Quantity::Drop}});
    ASSERT_TRUE(session.enter("3.2"));
    EXPECT_FALSE(session.enter("3.0"));
    EXPECT_EQ(session.asked()->quantity, Quantity::Drop);
}

TEST_F(Entering, KeyHeightMayBeNegative)
{
    EntrySession session = sessionOf(shop.pass);
    session.follow({.quantities = {Quantity::KeyHeight}});
    const auto entered = session.enter("-0.5");
    ASSERT_TRUE(entered);
    EXPECT_DOUBLE_EQ(entered.value().reading.value.inDisplay(), -0.5);
}

TEST_F(Entering, ABareNumberTakesTheUnitOfThePass)
{
    readings::Pass inInches = shop.pass;
    inInches.unit = units::Unit::Inch;
    EntrySession session = sessionOf(inInches);
    session.follow({.quantities = {Quantity::LetOff}});
    const auto entered = session.enter(".125");
    ASSERT_TRUE(entered);
    EXPECT_EQ(entered.value().reading.value, units::Amount(units::Length::nanometres(3175000)));
}

TEST_F(Entering, AFurtherTakeOfAnEarlierNoteGoesOnBehindIt)
{
    EntrySession session = letOff();
    for (int i = 0; i < 3; ++i)
        ASSERT_TRUE(session.enter("3.1"));
    session.goTo(Quantity::LetOff, Note(2));
    ASSERT_TRUE(session.again());
    EXPECT_EQ(session.asked(), (readings::Place{Quantity::LetOff, Note(2), 2}));
    ASSERT_TRUE(session.enter("3.3"));
    EXPECT_EQ(session.asked()->note, Note(3));
}

TEST_F(Entering, NoFurtherTakeWithoutAFirst)
{
    EntrySession session = letOff();
    EXPECT_FALSE(session.again());
}

TEST_F(Entering, BackOutOfAFurtherTakeReturnsToTheRoute)
{
    EntrySession session = letOff();
    ASSERT_TRUE(session.enter("3.1"));
    ASSERT_TRUE(session.again());
    EXPECT_TRUE(session.back());
    EXPECT_EQ(session.asked(), (readings::Place{Quantity::LetOff, Note(2), 1}));
}

TEST_F(Entering, WithdrawingTakesTheNewestTakeFirst)
{
    EntrySession session = letOff();
    ASSERT_TRUE(session.enter("3.1"));
    ASSERT_TRUE(session.again());
    ASSERT_TRUE(session.enter("3.5"));
    session.goTo(Quantity::LetOff, Note(1));
    ASSERT_TRUE(session.withdraw("slipped"));
    EXPECT_DOUBLE_EQ(session.valueOf(Quantity::LetOff, Note(1))->inDisplay(), 3.1);
    ASSERT_TRUE(session.withdraw("slipped"));
    EXPECT_FALSE(session.withdraw("slipped"));
}

TEST_F(Entering, WithoutASetThereIsNoVerdict)
{
    EntrySession session(shop.book, shop.grand, shop.pass, std::nullopt, [this] { return shop.stamp(); });
    session.follow({.quantities = {Quantity::LetOff}});
    const auto entered = session.enter("3.1");
    ASSERT_TRUE(entered);
    EXPECT_FALSE(entered.value().verdict);
}

TEST_F(Entering, UndoAcrossARestartTakesBackTheLastReading)
{
    {
        EntrySession session = letOff();
        ASSERT_TRUE(session.enter("3.1"));
        ASSERT_TRUE(session.enter("3.2"));
    }
    EntrySession session = letOff();
    const auto taken = session.undo();
    ASSERT_TRUE(taken);
    EXPECT_EQ(taken->changed->note, Note(2));
    EXPECT_EQ(session.asked()->note, Note(2));
    ASSERT_TRUE(session.redo());
    EXPECT_DOUBLE_EQ(session.valueOf(Quantity::LetOff, Note(2))->inDisplay(), 3.2);
}

} // namespace
} // namespace hammerline::bench
