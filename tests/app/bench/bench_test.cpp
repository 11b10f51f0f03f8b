#include "app/bench/bench_desk.h"

#include <QComboBox>
#include <QSignalSpy>

namespace hammerline::bench {
namespace {

TEST_F(BenchDesk, AWholePassIsTypedWithDigitsAndEnterAlone)
{
    for (int note = 1; note <= 88; ++note) {
        EXPECT_EQ(askedNote(), keyboard::Note(note).name());
        type("3.1");
    }
    EXPECT_EQ(stored(), 88u);
    EXPECT_EQ(said("progressText"), "88 of 88 read");
    EXPECT_EQ(big("askedNote"), "");
}

TEST_F(BenchDesk, AnEmptyEnterAtTheEndGoesOnToTheNextQuantity)
{
    for (int note = 1; note <= 88; ++note)
        type("3.1");
    press(Qt::Key_Enter, Qt::KeypadModifier);
    EXPECT_EQ(view.session()->asked()->quantity, catalogue::Quantity::Drop);
    EXPECT_EQ(askedNote(), "A0");
}

TEST_F(BenchDesk, TheVerdictStandsWhileTheNextNoteIsAsked)
{
    type("4.2");
    EXPECT_EQ(askedNote(), "A#0");
    EXPECT_EQ(big("lastNote"), "A0");
    EXPECT_TRUE(big("lastVerdict").contains("too far")) << big("lastVerdict").toStdString();
    EXPECT_TRUE(big("lastDeviation").startsWith("+1")) << big("lastDeviation").toStdString();
}

TEST_F(BenchDesk, WrongInputStaysInTheFieldWithItsReason)
{
    for (const char *wrong : {"3,.1", "1/0", "abc", "3.1kg", "52g", "-1"}) {
        type(wrong);
        EXPECT_EQ(field()->text(), wrong);
        EXPECT_FALSE(said("reason").isEmpty()) << wrong;
        EXPECT_EQ(askedNote(), "A0");
        press(Qt::Key_Escape);
        EXPECT_EQ(said("reason"), "");
    }
    EXPECT_EQ(stored(), 0u);
}

TEST_F(BenchDesk, AnUnexpectedValueThatIsTypedOverIsToldWithWhatIsStoredInstead)
{
    for (int note = 1; note <= 8; ++note)
        type("3.2");
    type("32");
    ASSERT_EQ(stored(), 8U) << "a value that is asked about is not stored";
    type("3.1");
    EXPECT_EQ(stored(), 9U);
    EXPECT_TRUE(big("lastVerdict").startsWith("stored instead of 32: ")) << big("lastVerdict").toStdString();
    type("3.2");
    EXPECT_FALSE(big("lastVerdict").contains("instead")) << "only once";
    type("32");
    press(Qt::Key_Return);
    EXPECT_EQ(stored(), 11U);
    EXPECT_FALSE(big("lastVerdict").contains("instead")) << "what was confirmed took nothing's place";
}

TEST_F(BenchDesk, AnEmptyEnterOnAnUnreadNoteIsNoReading)
{
    press(Qt::Key_Return);
    EXPECT_EQ(askedNote(), "A0");
    EXPECT_FALSE(said("reason").isEmpty());
}

TEST_F(BenchDesk, AllTypedFormsMeanTheSameLength)
{
    for (const char *form : {"3.175", "3,175", "3.175mm", "3.175 mm", ".125in", "1/8", "125mil"})
        type(form);
    for (int note = 1; note <= 7; ++note)
        EXPECT_DOUBLE_EQ(storedMm(note), 3.175);
}

TEST_F(BenchDesk, StarGoesBackAndAValueTypedThereCorrects)
{
    type("3.1");
    press('*');
    EXPECT_EQ(askedNote(), "A0");
    type("3.3");
    EXPECT_DOUBLE_EQ(storedMm(1), 3.3);
    EXPECT_EQ(askedNote(), "A#0");
    EXPECT_EQ(shop.book.versions(shop.pass.id, {catalogue::Quantity::LetOff, keyboard::Note(1), 1}).size(), 2u);
}

TEST_F(BenchDesk, GoingBackAndEnterKeepsWhatStands)
{
    type("3.1");
    press(Qt::Key_Up);
    press(Qt::Key_Return);
    EXPECT_EQ(askedNote(), "A#0");
    EXPECT_EQ(shop.book.versions(shop.pass.id, {catalogue::Quantity::LetOff, keyboard::Note(1), 1}).size(), 1u);
}

TEST_F(BenchDesk, DownSkipsAndTheNoteStaysUnread)
{
    press(Qt::Key_Down);
    EXPECT_EQ(askedNote(), "A#0");
    type("3.1");
    EXPECT_EQ(storedMm(1), -1);
    EXPECT_DOUBLE_EQ(storedMm(2), 3.1);
}

TEST_F(BenchDesk, SlashAsksForAFurtherTakeAndTheMeanIsJudged)
{
    type("3.0");
    press('/');
    EXPECT_EQ(askedNote(), "A0");
    type("3.2");
    EXPECT_DOUBLE_EQ(storedMm(1, 2), 3.2);
    EXPECT_EQ(big("lastValue"), "3.10");
    EXPECT_EQ(askedNote(), "A#0");
}

TEST_F(BenchDesk, ASlashInsideAValueIsAFraction)
{
    type("1/8");
    EXPECT_DOUBLE_EQ(storedMm(1), 3.175);
}

TEST_F(BenchDesk, DeleteWithdrawsAndUndoBringsBack)
{
    type("3.1");
    press('*');
    press(Qt::Key_Delete);
    EXPECT_EQ(stored(), 0u);
    view.undo();
    EXPECT_DOUBLE_EQ(storedMm(1), 3.1);
}

TEST_F(BenchDesk, UndoOfAnyDepthWalksBackAndRedoForward)
{
    for (const char *value : {"3.1", "3.2", "3.3"})
        type(value);
    for (int i = 0; i < 3; ++i)
        view.undo();
    EXPECT_EQ(stored(), 0u);
    EXPECT_EQ(askedNote(), "A0");
    for (int i = 0; i < 3; ++i)
        view.redo();
    EXPECT_EQ(stored(), 3u);
    EXPECT_DOUBLE_EQ(storedMm(3), 3.3);
}

TEST_F(BenchDesk, UndoOfAnotherQuantityGoesThere)
{
    type("3.1");
    view.ask(catalogue::Quantity::Blow, keyboard::Note(40));
    type("46");
    view.undo();
    view.undo();
    EXPECT_EQ(view.session()->asked()->quantity, catalogue::Quantity::LetOff);
    EXPECT_EQ(askedNote(), "A0");
}

TEST_F(BenchDesk, WhatWasTypedAndNotEnteredIsNotTakenForAnotherNote)
{
    QTest::keyClicks(field(), "44.4");
    view.ask(catalogue::Quantity::LetOff, keyboard::Note(4));
    EXPECT_EQ(field()->text(), "");
    EXPECT_EQ(big("lastVerdict"), "44.4 was not stored for A0");
    type("3.1");
    EXPECT_EQ(stored(), 1u);
    EXPECT_DOUBLE_EQ(storedMm(4), 3.1);
    QTest::keyClicks(field(), "3.2");
    view.ask(catalogue::Quantity::LetOff, keyboard::Note(5)); // the one that is asked for
    EXPECT_EQ(field()->text(), "3.2");
}

TEST_F(BenchDesk, StoredIsToldOnlyWhenSomethingWasStored)
{
    const QSignalSpy told(&view, &BenchView::stored);
    type("x");
    EXPECT_EQ(told.count(), 0);
    press(Qt::Key_Escape);
    type("3.1");
    EXPECT_EQ(told.count(), 1);
}

TEST_F(BenchDesk, NoteByNoteAsksEveryQuantityOfANoteBeforeTheNext)
{
    auto *chooser = view.findChild<QComboBox *>("quantityChooser");
    chooser->setCurrentIndex(chooser->count() - 1);
    emit chooser->activated(chooser->currentIndex());
    EXPECT_EQ(view.session()->asked()->quantity, catalogue::Quantity::KeyHeight);
    type("63");
    EXPECT_EQ(view.session()->asked()->quantity, catalogue::Quantity::Blow);
    EXPECT_EQ(askedNote(), "A0");
}

TEST_F(BenchDesk, WithoutASessionTheViewSaysWhatToDoFirst)
{
    view.work(nullptr, {});
    view.sayFirst("No pass yet.", "Begin one.", "Begin a pass");
    const QSignalSpy wanted(&view, &BenchView::firstStepWanted);
    QTest::mouseClick(view.findChild<QWidget *>("firstStep"), Qt::LeftButton);
    EXPECT_EQ(wanted.count(), 1);
}

TEST_F(BenchDesk, EveryControlHasANameForAScreenReader)
{
    EXPECT_EQ(field()->accessibleName(), "Reading");
    EXPECT_TRUE(field()->accessibleDescription().contains("A0"));
    EXPECT_FALSE(view.findChild<QComboBox *>("quantityChooser")->accessibleName().isEmpty());
}

} // namespace
} // namespace hammerline::bench
