// What the window tells whoever decides: in whose name, about what, and what is not listed; and that it invites nobody
// to begin a pass where the passes cannot be read.
#include "app/main_window/window_desk.h"

#include "keyboard_strip/keyboard_strip.h"

#include <QPushButton>
#include <QTableView>

#include <cstdlib>

namespace hammerline::main_window {
namespace {

using catalogue::Quantity;
using keyboard::Note;

/// Three notes judged by let-off, 3.2 ± 0.5 mm: one out, one close to its limit, one not read.
class LeadIsTold : public WindowDesk {
protected:
    LeadIsTold()
    {
        auto small = shop.grand;
        small.compass = {Note(40), Note(42)};
        small.sections.clear();
        tolerance::ToleranceSet set = support::plainSet();
        set.entries.erase(Quantity::Drop);
        set.entries.erase(Quantity::Blow);
        tolerance::Entry &letOff = set.entries[Quantity::LetOff];
        letOff.expandedUncertainty = units::Length::millimetres(0.05);
        letOff.rule = tolerance::Rule::Guarded;
        small.toleranceText = exchange::writeToleranceSet(set);
        EXPECT_TRUE(shop.book.changeInstrument(small, shop.stamp(), {}));
        put(40, 5);
        put(41, 3.68);
        window = openWindow();
        prompts.willType("Lena Lead");
        trigger(*window, "person");
        window->views().bench()->ask(Quantity::LetOff, Note(40));
    }
    void put(int note, double mm)
    {
        shop.book.enter(shop.pass.id,
                        {.place = {Quantity::LetOff, Note(note), 1},
                         .value = units::Length::millimetres(mm),
                         .typed = std::to_string(mm),
                         .person = "Ada"},
                        shop.stamp());
    }
    void accept(int note)
    {
        const auto *verdict = window->workshop().pass()->judgement.find(Quantity::LetOff, Note(note));
        ASSERT_NE(verdict, nullptr);
        const auto kind = decisions::kindOf(*verdict);
        ASSERT_TRUE(kind) << note;
        decisions::Decision made{.quantity = Quantity::LetOff, .note = Note(note), .kind = *kind, .words = "so be it"};
        made.value = verdict->value;
        ASSERT_TRUE(shop.book.accept(shop.pass.id, {made}, shop.stamp()));
    }
    [[nodiscard]] bool isMarked(int note) const
    {
        return part<keyboard_strip::KeyboardStrip>(*window, "strip")->model().find(Note(note))->flags.concession;
    }

    std::unique_ptr<MainWindow> window;
};

TEST_F(LeadIsTold, InWhoseNameTheWindowWritesIsAlwaysInSight)
{
    EXPECT_EQ(part<QLabel>(*window, "personLabel")->text(), "In the name of Lena Lead");
    prompts.willType("Ada");
    trigger(*window, "person");
    EXPECT_EQ(part<QLabel>(*window, "personLabel")->text(), "In the name of Ada");
}

TEST_F(LeadIsTold, EachDecisionIsAskedForWithTheNameThatItGoesDownUnder)
{
    trigger(*window, "viewReview");
    const auto asked = [this](const char *action) {
        prompts.willType(std::nullopt);
        trigger(*window, action);
        return prompts.textWishes().back().label;
    };
    EXPECT_TRUE(asked("signPass").contains("In the name of Lena Lead"));
    EXPECT_TRUE(asked("signPass").contains("“Grey grand”: As found, 2026-03-02"));
    part<QTableView>(*window, "reviewTable")->selectAll();
    EXPECT_TRUE(asked("acceptItem").contains("In the name of Lena Lead"));
    EXPECT_TRUE(asked("sendItemBack").contains("Who is measuring"));
}

TEST_F(LeadIsTold, WhateverIsAcceptedIsMarkedOnItsKey)
{
    for (const int note : {40, 41, 42}) {
        EXPECT_FALSE(isMarked(note)) << note;
        accept(note);
    }
    QTest::qWait(2 * MainWindow::pollMilliseconds);
    window->views().bench()->ask(Quantity::LetOff, Note(40));
    for (const int note : {40, 41, 42})
        EXPECT_TRUE(isMarked(note)) << note;
    put(40, 5.5);
    QTRY_VERIFY(!isMarked(40));
}

TEST_F(LeadIsTold, DeliveredInstrumentsAreSaidNotToBeListed)
{
    auto gone = shop.grand;
    gone.id = 0, gone.uid.clear(), gone.name = "Sold upright", gone.state = instrument::State::Delivered;
    ASSERT_TRUE(shop.book.addInstrument(gone, shop.stamp()));
    QTest::qWait(2 * MainWindow::pollMilliseconds);
    trigger(*window, "viewReview");
    const auto *said = part<QLabel>(*part(*window, "reviewTable")->parentWidget(), "reviewWithheld");
    EXPECT_TRUE(said->isVisible());
    EXPECT_EQ(said->text(), "One instrument is delivered and not listed.");
}

TEST_F(LeadIsTold, WhereThePassesCannotBeReadNobodyIsInvitedToBeginOne)
{
    window.reset();
    ASSERT_EQ(std::system(("sqlite3 '" + shop.path() + "' 'UPDATE pass SET purpose = 99'").c_str()), 0);
    window = std::make_unique<MainWindow>(surroundings());
    window->show();
    window->openLogbook(QString::fromStdString(shop.path()));
    ASSERT_TRUE(part(*window, "troubleBar")->isVisible());
    for (const auto *label : window->findChildren<QLabel *>())
        EXPECT_FALSE(label->isVisible() && label->text().contains("No pass yet")) << label->text().toStdString();
    for (const auto *button : window->views().bench()->findChildren<QPushButton *>())
        EXPECT_FALSE(button->isVisible() && button->text().contains("Begin")) << button->text().toStdString();
}

} // namespace
} // namespace hammerline::main_window
