#include "core/logbook/logbook_fixture.h"
#include "logbook/verify_history.h"

#include <gmock/gmock.h>

#include <random>

namespace hammerline::logbook {
namespace {

using testing::HasSubstr;

TEST_F(LogbookTest, UndoBringsBackWhatStoodBeforeWithItsPersonAndMoment)
{
    Logbook logbook = withPass();
    logbook.enter(1, reading(letOff(40), 1, "one"), ada);
    const auto first = logbook.readings(1);
    logbook.enter(1, reading(letOff(40), 2, "two"), ben);
    const auto second = logbook.readings(1);
    const Deed undone = logbook.undo(logbook.undoable(1).value(), ben);
    EXPECT_EQ(undone.name, "undone");
    EXPECT_EQ(undone.undoes, 5);
    EXPECT_EQ(undone.subject, "let_off C4");
    EXPECT_EQ(logbook.readings(1), first);
    const Deed redone = logbook.redo(logbook.redoable(1).value(), ada);
    EXPECT_EQ(redone.name, "redone");
    EXPECT_EQ(redone.undoes, undone.id);
    EXPECT_EQ(logbook.readings(1), second);
    EXPECT_EQ(logbook.versions(1, letOff(40)).size(), 4u);
}

TEST_F(LogbookTest, UndoableAndRedoableNameTheDeedAsFirstDone)
{
    Logbook logbook = withPass();
    const DeedId entered = logbook.enter(1, reading(letOff(40), 1), ada);
    EXPECT_FALSE(logbook.redoable(1).has_value());
    for (int round = 0; round < 3; ++round) {
        EXPECT_EQ(logbook.undoable(1)->id, entered);
        logbook.undo(*logbook.undoable(1), ada);
        EXPECT_EQ(logbook.undoable(1)->name, "pass-begun");
        EXPECT_EQ(logbook.redoable(1)->id, entered);
        logbook.redo(*logbook.redoable(1), ada);
        EXPECT_FALSE(logbook.redoable(1).has_value());
    }
}

TEST_F(LogbookTest, AFreshDeedEndsRedo)
{
    Logbook logbook = withPass();
    logbook.enter(1, reading(letOff(40), 1), ada);
    logbook.undo(*logbook.undoable(1), ada);
    logbook.enter(1, reading(letOff(41), 1), ada);
    EXPECT_FALSE(logbook.redoable(1).has_value());
    EXPECT_EQ(logbook.undoable(1)->subject, "let_off C#4");
}

TEST_F(LogbookTest, AHundredDeedsGoBackAndForthAcrossReopening)
{
    std::mt19937 random(7);
    std::vector<std::vector<readings::Reading>> states;
    {
        Logbook logbook = withPass();
        states.push_back(logbook.readings(1));
        for (int deed = 0; deed < 100; ++deed) {
            const auto place = letOff(static_cast<int>(random() % 12) + 1);
            if (random() % 4 != 0 || !logbook.withdraw(1, place, ben, ""))
                logbook.enter(1, reading(place, deed + 1), {moment(deed), "Ada"});
            states.push_back(logbook.readings(1));
        }
    }
    for (std::size_t depth = 100; depth-- > 0;) {
        Logbook logbook = Logbook::open(file());
        logbook.undo(*logbook.undoable(1), ben);
        ASSERT_EQ(logbook.readings(1), states[depth]) << depth;
    }
    for (std::size_t depth = 1; depth <= 100; ++depth) {
        Logbook logbook = Logbook::open(file());
        logbook.redo(*logbook.redoable(1), ben);
        ASSERT_EQ(logbook.readings(1), states[depth]) << depth;
    }
    EXPECT_TRUE(verifyHistory(file()).whole());
}

TEST_F(LogbookTest, PassesUndoEachTheirOwn)
{
    Logbook logbook = withPass();
    const auto other = logbook.beginPass({.instrument = 1}, ada);
    logbook.enter(1, reading(letOff(40), 1), ada);
    logbook.enter(other.id, reading(letOff(40), 2), ada);
    logbook.undo(*logbook.undoable(1), ada);
    EXPECT_TRUE(logbook.readings(1).empty());
    EXPECT_EQ(logbook.readings(other.id).size(), 1u);
    EXPECT_FALSE(logbook.redoable(other.id).has_value());
}

TEST_F(LogbookTest, ChangesOfAPassAndItsBeginningCanBeUndone)
{
    Logbook logbook = withPass();
    const auto before = logbook.pass(1).value();
    auto pass = before;
    pass.person = "Eve";
    logbook.changePass(pass, ada, "");
    logbook.undo(*logbook.undoable(1), ada);
    EXPECT_EQ(logbook.pass(1), before);
    logbook.undo(*logbook.undoable(1), ada);
    EXPECT_FALSE(logbook.pass(1).has_value());
    EXPECT_TRUE(logbook.passes(1).empty());
    EXPECT_FALSE(logbook.undoable(1).has_value());
    logbook.redo(*logbook.redoable(1), ada);
    EXPECT_EQ(logbook.passes(1), std::vector{before});
}

TEST_F(LogbookTest, AnImportIsUndoneWholeAndComesBackWhole)
{
    Logbook logbook = withPass();
    std::vector<readings::Reading> many;
    for (int note = 1; note <= 88; ++note)
        many.push_back(reading(letOff(note), note));
    const auto pass = logbook.importPass({.instrument = 1, .began = moment(-5), .person = "Dot"}, many, ben);
    const auto before = logbook.readings(pass.id);
    logbook.undo(*logbook.undoable(pass.id), ben);
    EXPECT_EQ(logbook.readingCount(pass.id), 0);
    EXPECT_FALSE(logbook.pass(pass.id).has_value());
    logbook.redo(*logbook.redoable(pass.id), ben);
    EXPECT_EQ(logbook.readings(pass.id), before);
    EXPECT_EQ(logbook.pass(pass.id), pass);
}

TEST_F(LogbookTest, ChangesOfAnInstrumentCanBeUndone)
{
    Logbook logbook = withPass();
    const auto before = logbook.instrument(1).value();
    auto piano = before;
    piano.name = "Renamed";
    static_cast<void>(logbook.changeInstrument(piano, ada, ""));
    EXPECT_EQ(logbook.undoableOfInstrument(1)->name, "instrument-changed");
    logbook.undo(*logbook.undoableOfInstrument(1), ben);
    EXPECT_EQ(logbook.instrument(1), before);
    logbook.redo(*logbook.redoableOfInstrument(1), ben);
    EXPECT_EQ(logbook.instrument(1), piano);
}

TEST_F(LogbookTest, AnOlderDeedCanBeTakenBackWhereNothingCameOverIt)
{
    Logbook logbook = withPass();
    const DeedId first = logbook.enter(1, reading(letOff(40), 1), ada);
    logbook.enter(1, reading(letOff(41), 2), ada);
    logbook.undo(*logbook.deed(first), ada);
    ASSERT_EQ(logbook.readings(1).size(), 1u);
    EXPECT_EQ(logbook.readings(1)[0].place, letOff(41));
}

TEST_F(LogbookTest, NothingIsEverOverwrittenByAnUndo)
{
    Logbook logbook = withPass();
    const DeedId first = logbook.enter(1, reading(letOff(40), 1), ada);
    logbook.enter(1, reading(letOff(40), 2), ben);
    EXPECT_THAT(messageOf([&] { logbook.undo(*logbook.deed(first), ada); }), HasSubstr("changed again later"));
    EXPECT_EQ(logbook.readings(1).at(0).value, units::Length::nanometres(2));
    EXPECT_EQ(logbook.newestDeed(), 5);
}

TEST_F(LogbookTest, UndoingTwiceOrRedoingWhatStandsIsRefused)
{
    Logbook logbook = withPass();
    const Deed entered = *logbook.deed(logbook.enter(1, reading(letOff(40), 1), ada));
    EXPECT_THAT(messageOf([&] { logbook.redo(entered, ada); }), HasSubstr("cannot be redone"));
    logbook.undo(entered, ada);
    EXPECT_THAT(messageOf([&] { logbook.undo(entered, ada); }), HasSubstr("cannot be undone"));
    EXPECT_EQ(logbook.newestDeed(), 5);
}

TEST_F(LogbookTest, TheMakingOfTheLogbookCannotBeUndone)
{
    Logbook logbook = created();
    EXPECT_THROW(logbook.undo(*logbook.deed(1), ada), outcome::BrokenWorld);
    EXPECT_FALSE(logbook.undoable(1).has_value());
    EXPECT_FALSE(logbook.undoableOfInstrument(1).has_value());
}

} // namespace
} // namespace hammerline::logbook
