// Who reads a sample again at the bench is not led by what was read before, nor by what was thought of it.
#include "bench/entry_session.h"
#include "support/workshop_on_disk.h"

#include <gtest/gtest.h>

namespace hammerline::bench {
namespace {

using catalogue::Quantity;
using keyboard::Note;

class Blind : public ::testing::Test {
protected:
    /// A pass whose reader forgot the mark everywhere, and one note of it sent back.
    Blind()
    {
        for (int note = 1; note <= 88; ++note) {
            readings::Reading reading;
            reading.place = {Quantity::LetOff, Note(note), 1};
            reading.value = units::Length::millimetres(32);
            reading.typed = "32";
            shop.book.enter(shop.pass.id, reading, shop.stamp());
        }
        decisions::SentBack word;
        word.quantity = Quantity::LetOff;
        word.note = Note(40);
        word.value = units::Amount(units::Length::millimetres(32));
        word.words = "turn the button";
        EXPECT_TRUE(shop.book.sendBack(shop.pass.id, {word}, shop.stamp()));
    }
    [[nodiscard]] EntrySession sessionOf(const readings::Pass &pass)
    {
        return {shop.book, shop.grand, pass, support::plainSet(), [this] { return shop.stamp(); }};
    }
    [[nodiscard]] readings::Pass spotCheck()
    {
        readings::Pass fresh = shop.pass;
        fresh.id = 0;
        fresh.uid.clear();
        fresh.purpose = readings::Purpose::Recheck;
        fresh.began = shop.stamp().at;
        return shop.book.beginSpotCheck(fresh, {shop.pass.id, 7, {Note(40), Note(60)}, {Quantity::LetOff}},
                                        shop.stamp());
    }
    /// At a note that was read as 32 mm.
    [[nodiscard]] static bool isDoubted(EntrySession &session, std::string_view typed)
    {
        session.follow({.order = route::Order::Own, .listed = {Note(40)}, .quantities = {Quantity::LetOff}});
        return session.enter(typed).value().doubted.has_value();
    }

    support::WorkshopOnDisk shop;
};

TEST_F(Blind, AnHonestSecondReadingIsNotDoubtedForDifferingFromTheFirst)
{
    EntrySession recheck = sessionOf(shop.begin(readings::Purpose::Recheck));
    ASSERT_TRUE(isDoubted(recheck, "3.2")) << "a pass that knows the one before asks";
    EntrySession check = sessionOf(spotCheck());
    EXPECT_FALSE(isDoubted(check, "3.2")) << "a question would tell what was read before";
}

TEST_F(Blind, TheLeadsWordAboutANoteIsNotShownInASpotCheck)
{
    const readings::Pass check = spotCheck();
    EXPECT_NE(sessionOf(shop.begin(readings::Purpose::Setting)).sentBackAt(Quantity::LetOff, Note(40)), nullptr);
    EXPECT_EQ(sessionOf(check).sentBackAt(Quantity::LetOff, Note(40)), nullptr);
}

TEST_F(Blind, NothingIsDecidedAboutASpotCheckItself)
{
    const readings::Pass check = spotCheck();
    decisions::SentBack word;
    word.quantity = Quantity::LetOff;
    word.note = Note(40);
    word.words = "turn the button";
    const auto refused = shop.book.sendBack(check.id, {word}, shop.stamp());
    ASSERT_FALSE(refused);
    EXPECT_NE(refused.fault().problem.find("spot check"), std::string::npos);
}

} // namespace
} // namespace hammerline::bench
