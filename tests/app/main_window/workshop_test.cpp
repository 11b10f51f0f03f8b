#include "main_window/workshop.h"
#include "support/workshop_on_disk.h"

#include <QSignalSpy>
#include <gtest/gtest.h>

namespace hammerline::main_window {
namespace {

using catalogue::Quantity;

class OneWorkshop : public ::testing::Test {
protected:
    OneWorkshop() { workshop.use(logbook::Logbook::open(shop.path())); }
    void enter(const readings::Pass &pass, int note, double mm)
    {
        readings::Reading reading;
        reading.place = {Quantity::LetOff, keyboard::Note(note), 1};
        reading.value = units::Length::millimetres(mm);
        shop.book.enter(pass.id, reading, shop.stamp());
    }
    support::WorkshopOnDisk shop;
    Workshop workshop{[this] { return shop.stamp().at; }};
};

TEST_F(OneWorkshop, OpensOnTheNewestPassOfTheFirstInstrument)
{
    ASSERT_NE(workshop.pass(), nullptr);
    EXPECT_EQ(workshop.pass()->pass.id, shop.pass.id);
    EXPECT_TRUE(workshop.set());
    EXPECT_EQ(workshop.before(), nullptr);
}

TEST_F(OneWorkshop, PollsOnlyWhatIsNew)
{
    EXPECT_FALSE(workshop.poll());
    enter(shop.pass, 40, 3.2);
    const QSignalSpy changed(&workshop, &Workshop::readingsChanged);
    EXPECT_TRUE(workshop.poll());
    EXPECT_FALSE(workshop.poll());
    EXPECT_EQ(changed.count(), 1);
    EXPECT_EQ(workshop.pass()->readings.size(), 1u);
}

TEST_F(OneWorkshop, TheQueueTakesTheNewestPassWithReadings)
{
    enter(shop.pass, 40, 9);
    shop.begin(readings::Purpose::AsLeft);
    workshop.poll();
    const auto queue = workshop.queue();
    ASSERT_TRUE(queue.judged);
    EXPECT_EQ(queue.items.front().pass, shop.pass.id);
    EXPECT_EQ(queue.items.front().verdict.note, keyboard::Note(40));
}

TEST_F(OneWorkshop, TheQueueFollowsEveryDeedOfWhoeverDidIt)
{
    enter(shop.pass, 40, 9);
    workshop.poll();
    EXPECT_EQ(workshop.queue().items.front().verdict.note, keyboard::Note(40));
    enter(shop.pass, 40, 3.2);
    enter(shop.pass, 41, 9);
    EXPECT_EQ(workshop.queue().items.front().verdict.note, keyboard::Note(41)) << "before the window has heard of it";
    workshop.poll();
    EXPECT_EQ(workshop.queue().items.front().verdict.note, keyboard::Note(41));
}

TEST_F(OneWorkshop, WhatWasDeliveredWaitsForNobody)
{
    auto another = shop.grand;
    another.uid.clear();
    another.name = "Fetched by its owner";
    another.state = instrument::State::Delivered;
    const auto gone = shop.book.addInstrument(another, shop.stamp());
    ASSERT_TRUE(gone.ok());
    enter(shop.book.beginPass({.instrument = gone.value().id, .began = shop.stamp().at}, shop.stamp()), 40, 9);
    workshop.poll();
    EXPECT_EQ(workshop.instruments().size(), 2u);
    EXPECT_TRUE(workshop.queue().items.empty());
}

TEST_F(OneWorkshop, NothingIsJudgedBeforeAnythingIsRead)
{
    EXPECT_FALSE(workshop.queue().judged);
    EXPECT_FALSE(workshop.queueOfPass().judged);
}

TEST_F(OneWorkshop, TheAsFoundPassIsHeldAgainstLaterOnes)
{
    enter(shop.pass, 40, 9);
    const readings::Pass left = shop.begin(readings::Purpose::AsLeft);
    workshop.poll();
    workshop.choosePass(left.id);
    ASSERT_NE(workshop.before(), nullptr);
    EXPECT_EQ(workshop.before()->pass.id, shop.pass.id);
}

TEST_F(OneWorkshop, ClosingLetsGoOfEverything)
{
    workshop.close();
    EXPECT_FALSE(workshop.isOpen());
    EXPECT_EQ(workshop.instrument(), nullptr);
    EXPECT_EQ(workshop.pass(), nullptr);
    EXPECT_FALSE(workshop.queue().judged);
}

TEST_F(OneWorkshop, ASpotCheckShowsNeitherWhatWasReadBeforeNorNotesThatWereNotDrawn)
{
    enter(shop.pass, 40, 3.2);
    enter(shop.pass, 41, 9);
    readings::Pass fresh = shop.pass;
    fresh.id = 0;
    fresh.uid.clear();
    fresh.purpose = readings::Purpose::Recheck;
    const auto check =
        shop.book.beginSpotCheck(fresh, {shop.pass.id, 7, {keyboard::Note(41)}, {Quantity::LetOff}}, shop.stamp());
    workshop.poll();
    workshop.choosePass(check.id);
    EXPECT_EQ(workshop.before(), nullptr);
    ASSERT_EQ(workshop.pass()->judgement.verdicts.size(), 1u);
    EXPECT_EQ(workshop.pass()->judgement.verdicts[0].note, keyboard::Note(41));
    EXPECT_EQ(workshop.pass()->judgement.verdicts[0].status, tolerance::Status::Missing);
    workshop.choosePass(shop.begin(readings::Purpose::AsLeft).id);
    EXPECT_NE(workshop.before(), nullptr) << "any other pass is held against what was found";
}

} // namespace
} // namespace hammerline::main_window
