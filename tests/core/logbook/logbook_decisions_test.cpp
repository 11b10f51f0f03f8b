// What the lead decides, signs and draws.
#include "core/logbook/logbook_fixture.h"
#include "logbook/to_review.h"

#include <gmock/gmock.h>

#include <algorithm>
#include <iterator>

namespace hammerline::logbook {
namespace {

using catalogue::Quantity;
using keyboard::Note;
using testing::HasSubstr;

/// Let-off between 2 and 4 mm.
tolerance::ToleranceSet shopSet()
{
    tolerance::ToleranceSet set{.name = "shop"};
    set.entries[Quantity::LetOff].both = {{.note = Note(40),
                                           .low = units::Length::millimetres(2),
                                           .target = units::Length::millimetres(3),
                                           .high = units::Length::millimetres(4)}};
    return set;
}

decisions::Decision about(int note, double millimetres, std::string words)
{
    decisions::Decision decision;
    decision.quantity = Quantity::LetOff;
    decision.note = Note(note);
    decision.value = units::Length::millimetres(millimetres);
    decision.words = std::move(words);
    return decision;
}

/// Note 40 is out at 5 mm, note 41 inside.
class DecisionsTest : public LogbookTest {
protected:
    DecisionsTest() : book(withPass())
    {
        auto piano = book.instrument(1).value();
        piano.compass = {Note(40), Note(41)};
        EXPECT_TRUE(book.changeInstrument(piano, ada, {}));
        auto pass = book.pass(1).value();
        pass.purpose = readings::Purpose::AsLeft;
        book.changePass(pass, ada, {});
        book.enter(1, reading(letOff(40), 5'000'000), ada);
        book.enter(1, reading(letOff(41), 3'000'000), ada);
    }
    auto sign() { return book.signPass(1, shopSet(), {"shop", "{}"}, ben, "done"); }
    void acceptAndSign()
    {
        ASSERT_TRUE(book.accept(1, {about(40, 5, "the owner wants it so")}, ben));
        ASSERT_TRUE(sign());
    }
    [[nodiscard]] std::vector<review::Item> queue() const
    {
        return review::queueOf(passesToReview(book, book.instrument(1).value(), tolerance::Judge(shopSet())));
    }
    [[nodiscard]] std::vector<review::Item> itemsAt(int note) const
    {
        auto items = queue();
        std::erase_if(items, [note](const review::Item &item) { return item.verdict.note != Note(note); });
        return items;
    }

    Logbook book;
};

TEST_F(DecisionsTest, AcceptedIsKeptWithPersonAndReasonAndLeavesTheQueue)
{
    ASSERT_EQ(queue().size(), 1u);
    ASSERT_TRUE(book.accept(1, {about(40, 5, "the owner wants it so")}, ben));
    const auto kept = book.decisions(1).concessions;
    ASSERT_EQ(kept.size(), 1u);
    EXPECT_EQ(kept[0].person, "Ben");
    EXPECT_EQ(kept[0].words, "the owner wants it so");
    EXPECT_TRUE(queue().empty());
    book.enter(1, reading(letOff(40), 5'100'000), ada);
    EXPECT_EQ(queue().size(), 1u) << "another value opens it again";
}

TEST_F(DecisionsTest, SentBackIsUndoneAndTakenBack)
{
    ASSERT_TRUE(book.sendBack(1, {about(40, 5, "turn the button")}, ben));
    EXPECT_EQ(queue().at(0).course, review::Course::SentBack);
    book.undo(*book.undoable(1), ben);
    EXPECT_EQ(queue().at(0).course, review::Course::Open);
    ASSERT_TRUE(book.sendBack(1, {about(40, 5, "turn the button")}, ben));
    EXPECT_TRUE(book.takeBackDecision(1, Quantity::LetOff, Note(40), ben));
    EXPECT_FALSE(book.takeBackDecision(1, Quantity::LetOff, Note(40), ben));
}

TEST_F(DecisionsTest, WithoutAWordOrOnAValueReadAgainNothingIsDecided)
{
    EXPECT_FALSE(book.accept(1, {about(40, 5, "")}, ben));
    EXPECT_FALSE(book.accept(1, {about(40, 4.9, "fine")}, ben));
    EXPECT_TRUE(book.decisions(1).concessions.empty());
}

TEST_F(DecisionsTest, ASignatureIsRefusedWhileItemsAreOpenAndSaysWhich)
{
    const auto refused = sign();
    ASSERT_FALSE(refused);
    EXPECT_THAT(refused.fault().problem, HasSubstr("let_off C4"));
    EXPECT_FALSE(book.refusal(1));
}

TEST_F(DecisionsTest, ASignatureNeedsANameAndReadings)
{
    EXPECT_FALSE(book.signPass(1, shopSet(), {}, {moment(9), ""}, {}));
    const auto empty = book.beginPass({.instrument = 1, .began = moment(9)}, ada);
    EXPECT_FALSE(book.signPass(empty.id, shopSet(), {}, ben, {}));
}

TEST_F(DecisionsTest, ASignedPassTakesNothingUntilItIsReopenedWithAReason)
{
    acceptAndSign();
    ASSERT_TRUE(book.refusal(1));
    EXPECT_THAT(book.refusal(1)->problem, HasSubstr("Ben signed this pass"));
    EXPECT_EQ(book.instrument(1)->state, instrument::State::SignedOff);
    EXPECT_THROW(book.enter(1, reading(letOff(42), 1), ada), outcome::BrokenWorld);
    EXPECT_THROW(book.withdraw(1, letOff(40), ada, {}), outcome::BrokenWorld);
    EXPECT_THROW(book.markFault(1, {Note(40), "blocking"}, ada), outcome::BrokenWorld);
    EXPECT_FALSE(sign()) << "once is enough";
    EXPECT_FALSE(book.reopenPass(1, ben, ""));
    ASSERT_TRUE(book.reopenPass(1, ben, "a hammer came loose"));
    EXPECT_EQ(book.instrument(1)->state, instrument::State::InReview);
    EXPECT_EQ(decisions::revisionOf(book.decisions(1).standing), 2);
    book.enter(1, reading(letOff(40), 3'000'000), ada);
    ASSERT_TRUE(sign());
    EXPECT_EQ(book.decisions(1).standing.size(), 3u);
}

TEST_F(DecisionsTest, NeitherASignatureNorWhatWasBeforeItIsUndone)
{
    acceptAndSign();
    EXPECT_FALSE(book.undoable(1));
    EXPECT_FALSE(book.undoableOfInstrument(1));
    ASSERT_TRUE(book.reopenPass(1, ben, "once more"));
    EXPECT_FALSE(book.undoable(1));
    book.enter(1, reading(letOff(40), 3'000'000), ada);
    EXPECT_EQ(book.undoable(1)->name, "reading-corrected");
}

TEST_F(DecisionsTest, AnInstrumentLeavesOnlySigned)
{
    auto piano = book.instrument(1).value();
    piano.state = instrument::State::Delivered;
    EXPECT_FALSE(book.changeInstrument(piano, ada, {}));
    acceptAndSign();
    EXPECT_TRUE(book.changeInstrument(piano, ada, {}));
}

TEST_F(DecisionsTest, ASpotCheckKeepsItsSampleAndIsNoPassOfTheRound)
{
    const decisions::SpotCheck check{
        .checked = 1, .seed = 77, .notes = {Note(40), Note(41)}, .quantities = {Quantity::LetOff}};
    const auto begun = book.beginSpotCheck({.instrument = 1, .began = moment(9), .person = "Ben"}, check, ben);
    EXPECT_EQ(book.spotCheck(begun.id), check);
    EXPECT_FALSE(book.spotCheck(1));
    EXPECT_EQ(book.passes(1).size(), 1u);
    ASSERT_EQ(book.spotChecks(1).size(), 1u);
    EXPECT_THAT(book.deed(book.newestDeed())->subject, HasSubstr("seed 77"));
    EXPECT_FALSE(book.signPass(begun.id, shopSet(), {}, ben, {}));
}

TEST_F(DecisionsTest, WhatWasSentBackWaitsInThePassAndInEveryLaterOneUntilItIsRead)
{
    ASSERT_TRUE(book.sendBack(1, {about(40, 5, "turn the button")}, ben));
    const auto next = book.beginPass({.instrument = 1, .began = moment(30)}, ada);
    for (const auto &pass : {*book.pass(1), next}) {
        ASSERT_EQ(sentBackTo(book, pass).size(), 1u) << pass.id;
        EXPECT_EQ(sentBackTo(book, pass)[0].words, "turn the button");
    }
    book.enter(next.id, reading(letOff(40), 5'000'000), ada);
    EXPECT_TRUE(sentBackTo(book, next).empty()) << "read again, though no better";
    auto again = reading(letOff(40), 5'000'000);
    again.at = ben.at + std::chrono::hours(1);
    book.enter(1, again, ada);
    EXPECT_TRUE(sentBackTo(book, *book.pass(1)).empty()) << "the same value, read later";
}

TEST_F(DecisionsTest, WhatWasSentBackStaysWhenANewerPassPassesItBy)
{
    ASSERT_TRUE(book.sendBack(1, {about(40, 5, "turn the button")}, ben));
    const auto next = book.beginPass({.instrument = 1, .began = moment(30)}, ada);
    book.enter(next.id, reading({Quantity::Blow, Note(1)}, 45'000'000), ada);
    ASSERT_EQ(itemsAt(40).size(), 1u) << "though it is missing in the newer pass";
    EXPECT_EQ(itemsAt(40)[0].pass, 1);
    EXPECT_EQ(itemsAt(41).at(0).pass, next.id) << "nobody sent it back: it is merely missing";
    book.enter(next.id, reading(letOff(40), 3'000'000), ada);
    EXPECT_TRUE(itemsAt(40).empty());
}

TEST_F(DecisionsTest, WhatWasSentBackAndMendedInANewerPassIsListedAsMendedUntilASignature)
{
    ASSERT_TRUE(book.sendBack(1, {about(40, 5, "turn the button")}, ben));
    const auto next = book.beginPass({.instrument = 1, .began = moment(30)}, ada);
    book.enter(next.id, reading(letOff(40), 3'000'000), ada);
    book.enter(next.id, reading(letOff(41), 3'000'000), ada);
    const auto mended = [this] {
        std::vector<review::Settled> all;
        for (const auto &pass : passesToReview(book, book.instrument(1).value(), tolerance::Judge(shopSet())))
            std::ranges::move(review::mendedOf(pass), std::back_inserter(all));
        return all;
    };
    EXPECT_TRUE(queue().empty());
    ASSERT_EQ(mended().size(), 1u);
    EXPECT_EQ(mended()[0].decision.words, "turn the button");
    ASSERT_TRUE(book.signPass(next.id, shopSet(), {"shop", "{}"}, ben, "done"));
    const auto revisit = book.beginPass({.instrument = 1, .began = moment(60)}, ada);
    book.enter(revisit.id, reading(letOff(40), 3'000'000), ada);
    EXPECT_TRUE(mended().empty()) << "what a signed pass closed is no news at the next visit";
}

} // namespace
} // namespace hammerline::logbook
