// The lead's desk without a mouse: filters, decisions with their words, and from a refused signature to the note.
#include "app/main_window/window_desk.h"

#include <QApplication>
#include <QComboBox>
#include <QTableView>

namespace hammerline::main_window {
namespace {

using catalogue::Quantity;
using review_desk::ItemModel;

class LeadByKeys : public WindowDesk {
protected:
    void SetUp() override
    {
        put(Quantity::LetOff, 40, 5, "Ada");
        put(Quantity::LetOff, 41, 4.5, "Ben");
        put(Quantity::Blow, 40, 48, "Ada");
        window = openWindow();
        prompts.willType("Lea");
        trigger(*window, "person");
        window->activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(window.get()));
        press(Qt::Key_6, Qt::ControlModifier);
        ASSERT_EQ(rows(), 3);
    }
    void put(Quantity quantity, int note, double mm, const std::string &person)
    {
        shop.book.enter(shop.pass.id,
                        {.place = {quantity, keyboard::Note(note), 1},
                         .value = units::Length::millimetres(mm),
                         .typed = std::to_string(mm),
                         .person = person},
                        {shop.stamp().at, person});
    }
    static void press(int key, Qt::KeyboardModifiers with = Qt::NoModifier)
    {
        QTest::keyClick(QApplication::focusWidget(), Qt::Key(key), with);
    }
    static void tabTo(const char *name)
    {
        constexpr int mostStops = 60;
        for (int stop = 0; stop < mostStops && QApplication::focusWidget()->objectName() != name; ++stop)
            press(Qt::Key_Tab);
        EXPECT_EQ(QApplication::focusWidget()->objectName(), name);
    }
    [[nodiscard]] QTableView &table() const { return *part<QTableView>(*window, "reviewTable"); }
    [[nodiscard]] int rows() const { return table().model()->rowCount(); }
    [[nodiscard]] QString shown(int row, ItemModel::Column column) const
    {
        return table().model()->index(row, column).data().toString();
    }
    [[nodiscard]] decisions::PassDecisions decisions() const { return shop.book.decisions(shop.pass.id); }

    std::unique_ptr<MainWindow> window;
};

TEST_F(LeadByKeys, TheQueueOpensUnderTheFingersOnItsWorst)
{
    EXPECT_EQ(QApplication::focusWidget(), &table());
    EXPECT_EQ(table().currentIndex().row(), 0);
}

TEST_F(LeadByKeys, EachFilterIsReachedByTabAndTurnedByTheArrows)
{
    tabTo("filterQuantity");
    press(Qt::Key_Down);
    EXPECT_EQ(rows(), 1) << "blow alone";
    press(Qt::Key_Home);
    tabTo("filterPerson");
    press(Qt::Key_End);
    ASSERT_EQ(rows(), 1);
    EXPECT_TRUE(shown(0, ItemModel::ReadBy).startsWith("Ben"));
    press(Qt::Key_Home);
    tabTo("filterAge");
    press(Qt::Key_End);
    EXPECT_EQ(rows(), 0) << "nothing is a month old";
    press(Qt::Key_Home);
    tabTo("filterInstrument");
    press(Qt::Key_End);
    EXPECT_EQ(rows(), 3);
    tabTo("showOut");
    press(Qt::Key_Space);
    EXPECT_EQ(rows(), 0);
}

TEST_F(LeadByKeys, TheRowUnderTheFingersIsAcceptedWithAReason)
{
    press(Qt::Key_Space);
    prompts.willType("the owner wants it so");
    press(Qt::Key_A, Qt::AltModifier);
    ASSERT_EQ(decisions().concessions.size(), 1u);
    EXPECT_EQ(decisions().concessions[0].note, keyboard::Note(40));
    EXPECT_EQ(rows(), 2);
    EXPECT_EQ(QApplication::focusWidget(), &table()) << "ready for the next one";
    EXPECT_EQ(table().currentIndex().row(), 0);
}

TEST_F(LeadByKeys, SeveralRowsAreSentBackTogether)
{
    press(Qt::Key_A, Qt::ControlModifier);
    prompts.willType("turn the buttons");
    press(Qt::Key_K, Qt::AltModifier);
    EXPECT_EQ(decisions().sentBack.size(), 3u);
    EXPECT_EQ(rows(), 3) << "until they are read again";
}

TEST_F(LeadByKeys, TheButtonsAreReachedByTabToo)
{
    press(Qt::Key_Space);
    prompts.willType("turn the button");
    tabTo("sendBackChosen");
    press(Qt::Key_Space);
    EXPECT_EQ(decisions().sentBack.size(), 1u);
}

TEST_F(LeadByKeys, WhatWasDecidedIsLookedUp)
{
    press(Qt::Key_Space);
    prompts.willType("the owner wants it so");
    press(Qt::Key_A, Qt::AltModifier);
    tabTo("deskList");
    press(Qt::Key_Down);
    ASSERT_EQ(rows(), 1);
    EXPECT_TRUE(shown(0, ItemModel::Decided).contains("the owner wants it so"));
}

TEST_F(LeadByKeys, EnterGoesToTheNoteAndTheShortcutComesBackToIt)
{
    press(Qt::Key_Down);
    press(Qt::Key_Return);
    EXPECT_EQ(window->views().current(), View::Bench);
    EXPECT_EQ(askedNote(*window), "C♯4");
    press(Qt::Key_6, Qt::ControlModifier);
    EXPECT_EQ(table().currentIndex().row(), 1);
}

TEST_F(LeadByKeys, ARefusedSignatureLeadsToEachNote)
{
    prompts.willType("");
    trigger(*window, "signPass");
    auto *list = part<QWidget>(*window, "openItems");
    ASSERT_TRUE(QTest::qWaitForWindowActive(list));
    QTRY_COMPARE(QApplication::focusWidget()->objectName(), QString("openItemList"));
    press(Qt::Key_Down);
    press(Qt::Key_Return);
    EXPECT_EQ(window->views().current(), View::Bench);
    ASSERT_TRUE(QTest::qWaitForWindowActive(window.get()));
    QTRY_COMPARE(QApplication::focusWidget()->objectName(), QString("entryField")); // to be read again at once
}

} // namespace
} // namespace hammerline::main_window
