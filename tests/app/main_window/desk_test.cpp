// The lead's way through the window: look at what waits, accept it or send it back, sign, open again.
#include "app/main_window/window_desk.h"

#include <QComboBox>
#include <QListWidget>
#include <QPushButton>
#include <QTableView>

namespace hammerline::main_window {
namespace {

/// An instrument of two notes judged by let-off, 3.2 ± 0.5 mm: one note out, one inside.
class LeadsDesk : public WindowDesk {
protected:
    LeadsDesk()
    {
        auto small = shop.grand;
        small.compass = {keyboard::Note(40), keyboard::Note(41)};
        tolerance::ToleranceSet set = support::plainSet();
        set.entries.erase(catalogue::Quantity::Drop);
        set.entries.erase(catalogue::Quantity::Blow);
        small.toleranceText = exchange::writeToleranceSet(set);
        small.sections.clear();
        EXPECT_TRUE(shop.book.changeInstrument(small, shop.stamp(), {}));
        put(40, 5);
        put(41, 3.2);
        window = openWindow();
        prompts.willType("Lea");
        trigger(*window, "person");
        trigger(*window, "viewReview");
    }
    void put(int note, double mm)
    {
        readings::Reading reading;
        reading.place = {catalogue::Quantity::LetOff, keyboard::Note(note), 1};
        reading.value = units::Length::millimetres(mm);
        reading.typed = std::to_string(mm);
        reading.person = "Ada";
        shop.book.enter(shop.pass.id, reading, shop.stamp());
    }
    [[nodiscard]] QTableView &table() const { return *part<QTableView>(*window, "reviewTable"); }
    [[nodiscard]] QString decided(int row) const
    {
        return table().model()->index(row, review_desk::ItemModel::Decided).data().toString();
    }
    void clickWithAllChosen(const char *button)
    {
        table().selectAll();
        // There is one of each in both lists; the one that is seen counts.
        for (auto *found : window->findChildren<QPushButton *>(button))
            if (found->isVisible())
                return found->click();
        FAIL() << button << " is not to be seen";
    }
    [[nodiscard]] decisions::PassDecisions decisions() const { return shop.book.decisions(shop.pass.id); }

    std::unique_ptr<MainWindow> window;
};

TEST_F(LeadsDesk, AcceptsWhatIsChosenWithAReason)
{
    ASSERT_EQ(table().model()->rowCount(), 1);
    prompts.willType("  the owner wants it so ");
    clickWithAllChosen("acceptChosen");
    ASSERT_EQ(decisions().concessions.size(), 1u);
    EXPECT_EQ(decisions().concessions[0].words, "the owner wants it so");
    EXPECT_EQ(table().model()->rowCount(), 0);
    EXPECT_TRUE(part<QAction>(*window, "undo")->isEnabled());
    trigger(*window, "undo");
    EXPECT_EQ(table().model()->rowCount(), 1) << "it waits again";
}

TEST_F(LeadsDesk, NothingIsDecidedWithoutAWord)
{
    prompts.willType("");
    clickWithAllChosen("acceptChosen");
    EXPECT_TRUE(decisions().concessions.empty());
    ASSERT_EQ(prompts.notices().size(), 1u);
    prompts.willType(std::nullopt);
    clickWithAllChosen("sendBackChosen");
    EXPECT_TRUE(decisions().sentBack.empty());
}

TEST_F(LeadsDesk, WhatIsSentBackStaysUntilItIsReadAgainAndIsListedAsMended)
{
    prompts.willType("turn the button");
    clickWithAllChosen("sendBackChosen");
    ASSERT_EQ(table().model()->rowCount(), 1);
    EXPECT_TRUE(decided(0).contains("turn the button")) << decided(0).toStdString();
    put(40, 3.3);
    QTest::qWait(2 * MainWindow::pollMilliseconds);
    EXPECT_EQ(table().model()->rowCount(), 0);
    part<QComboBox>(*part<QWidget>(*window, "reviewTable")->parentWidget(), "deskList")->setCurrentIndex(2);
    ASSERT_EQ(table().model()->rowCount(), 1);
    EXPECT_TRUE(decided(0).contains("mended"));
}

TEST_F(LeadsDesk, ASignatureIsRefusedWhileANoteIsOpenAndSaysWhich)
{
    prompts.willType("");
    trigger(*window, "signPass");
    auto *list = part<QListWidget>(*window, "openItemList");
    ASSERT_EQ(list->count(), 1);
    EXPECT_TRUE(list->item(0)->text().startsWith("C4")) << list->item(0)->text().toStdString();
    QTest::keyClick(list, Qt::Key_Return);
    EXPECT_EQ(window->views().current(), View::Bench);
    EXPECT_EQ(askedNote(*window), "C4") << "Enter stands on the note";
    EXPECT_FALSE(decisions::isSigned(decisions().standing));
}

TEST_F(LeadsDesk, AnInstrumentGoesFromStateToStateButIsNotDeliveredUnsigned)
{
    prompts.willChoose("In review");
    trigger(*window, "changeState");
    EXPECT_EQ(shop.book.instrument(shop.grand.id)->state, instrument::State::InReview);
    prompts.willChoose("Delivered");
    trigger(*window, "changeState");
    EXPECT_EQ(shop.book.instrument(shop.grand.id)->state, instrument::State::InReview);
    ASSERT_EQ(prompts.notices().size(), 1u);
    EXPECT_TRUE(prompts.notices()[0].detail.contains("Sign the pass first"));
}

TEST_F(LeadsDesk, ASignedPassIsClosedUntilItIsOpenedAgainWithAReason)
{
    prompts.willType("the owner wants it so");
    clickWithAllChosen("acceptChosen");
    prompts.willType("fit to go");
    trigger(*window, "signPass");
    ASSERT_TRUE(decisions::isSigned(decisions().standing));
    EXPECT_FALSE(shop.book.undoable(shop.pass.id)) << "a signature stands";
    trigger(*window, "viewBench");
    type(*window, "3.1");
    EXPECT_EQ(stored(), 2u);
    EXPECT_EQ(shop.book.readings(shop.pass.id)[0].value, units::Amount(units::Length::millimetres(5)));
    prompts.willType("a hammer came loose");
    trigger(*window, "reopenPass");
    EXPECT_FALSE(decisions::isSigned(decisions().standing));
    EXPECT_EQ(decisions::revisionOf(decisions().standing), 2);
}

} // namespace
} // namespace hammerline::main_window
