// What a signature covers is not undone: the pass, and the instrument as it stood when it was signed. A pass as found
// moves no state of the instrument when it is signed; it covers it all the same.
#include "core/logbook/logbook_fixture.h"

#include "tolerance/tolerance.h"

namespace hammerline::logbook {
namespace {

class SignedAsFound : public LogbookTest {
protected:
    SignedAsFound() : book(withPass())
    {
        auto piano = book.instrument(1).value();
        piano.compass = {keyboard::Note(40), keyboard::Note(41)};
        EXPECT_TRUE(book.changeInstrument(piano, ada, "counted"));
        narrowed = book.undoableOfInstrument(1).value();
        EXPECT_TRUE(book.addWork(1, {.what = "key bushings"}, ada));
        book.enter(1, reading(letOff(40), 3'000'000), ada);
        book.enter(1, reading(letOff(41), 3'000'000), ada);
        entered = book.undoable(1).value();
        tolerance::ToleranceSet set{.name = "shop"};
        const auto mm = [](double value) { return units::Amount(units::Length::millimetres(value)); };
        set.entries[catalogue::Quantity::LetOff].both = {
            {.note = keyboard::Note(40), .low = mm(2), .target = mm(3), .high = mm(4)}};
        EXPECT_TRUE(book.signPass(1, set, {"shop", "{}"}, ben, "as it came"));
        EXPECT_EQ(book.instrument(1)->state, instrument::State::TakenIn) << "as found says not how it leaves";
    }
    void rename(const std::string &name)
    {
        auto piano = book.instrument(1).value();
        piano.name = name;
        ASSERT_TRUE(book.changeInstrument(piano, ada, {}));
    }

    Logbook book;
    Deed narrowed; ///< the instrument was made shorter, before the signature
    Deed entered;
};

TEST_F(SignedAsFound, NothingOfThePassOrOfTheInstrumentBeforeItIsUndone)
{
    EXPECT_FALSE(book.undoable(1));
    EXPECT_FALSE(book.undoableOfInstrument(1));
    const DeedId newest = book.newestDeed();
    EXPECT_THROW(static_cast<void>(book.undo(narrowed, ada)), outcome::BrokenWorld);
    EXPECT_THROW(static_cast<void>(book.undo(entered, ada)), outcome::BrokenWorld);
    EXPECT_EQ(book.newestDeed(), newest) << "nothing was written";
    EXPECT_EQ(book.instrument(1)->compass.first, keyboard::Note(40));
}

TEST_F(SignedAsFound, WhatIsDoneToTheInstrumentAfterwardsIsUndoneDownToTheSignatureAndNoFurther)
{
    rename("Blue upright");
    rename("Green upright");
    EXPECT_TRUE(book.addWork(1, {.what = "hammers"}, ada));
    for (int turn = 0; turn < 3; ++turn)
        static_cast<void>(book.undo(book.undoableOfInstrument(1).value(), ada));
    EXPECT_FALSE(book.undoableOfInstrument(1));
    EXPECT_EQ(book.instrument(1)->name, upright().name);
    EXPECT_EQ(book.dossier(1).work.size(), 1u) << "written down before the signature";
    EXPECT_TRUE(book.refusal(1)) << "the signature stands";
    ASSERT_TRUE(book.redoableOfInstrument(1));
    static_cast<void>(book.redo(*book.redoableOfInstrument(1), ada));
    EXPECT_EQ(book.instrument(1)->name, "Blue upright");
}

TEST_F(SignedAsFound, OfAnotherInstrumentEverythingIsStillUndone)
{
    static_cast<void>(book.addInstrument(upright("Another"), ada));
    auto other = book.instrument(2).value();
    other.year = 1900;
    ASSERT_TRUE(book.changeInstrument(other, ada, {}));
    EXPECT_EQ(book.undoableOfInstrument(2)->name, "instrument-changed");
    static_cast<void>(book.undo(*book.undoableOfInstrument(2), ada));
    EXPECT_FALSE(book.instrument(2)->year);
}

TEST_F(SignedAsFound, OpenedAgainItIsStillNotUndone)
{
    ASSERT_TRUE(book.reopenPass(1, ben, "a note was forgotten"));
    EXPECT_FALSE(book.undoableOfInstrument(1));
    rename("Blue upright");
    EXPECT_EQ(book.undoableOfInstrument(1)->name, "instrument-changed");
}

} // namespace
} // namespace hammerline::logbook
