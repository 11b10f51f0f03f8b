// Every letter that is underlined leads to one place: in each menu, among all that is seen with a view and its menus,
// and in each dialog. Qt does nothing at all with a letter that stands for two.
#include "app/main_window/window_desk.h"

#include <QAbstractButton>
#include <QApplication>
#include <QDialog>
#include <QLabel>
#include <QMenu>
#include <QMenuBar>
#include <QPushButton>
#include <QShortcut>
#include <QTabBar>

#include <map>

namespace hammerline::main_window {
namespace {

/// By the letter, in capitals: what stands under it.
using Letters = std::map<QString, QStringList>;

void add(Letters &letters, const QString &text)
{
    const QString keys = QKeySequence::mnemonic(text).toString();
    if (!keys.isEmpty())
        letters[keys] << text;
}

std::string clashesIn(const Letters &letters)
{
    QStringList clashes;
    for (const auto &[letter, texts] : letters)
        if (texts.size() > 1)
            clashes << letter + ": " + texts.join(" / ");
    return clashes.join('\n').toStdString();
}

/// The underlined letters of what is seen in `shown`, and the shortcuts of such letters that hold anywhere in it.
Letters lettersSeen(const QWidget &shown)
{
    Letters letters;
    for (const auto *bar : shown.findChildren<QMenuBar *>())
        for (const QAction *action : bar->actions())
            add(letters, action->text());
    for (const auto *button : shown.findChildren<QAbstractButton *>())
        if (button->isVisible())
            add(letters, button->text());
    for (const auto *label : shown.findChildren<QLabel *>())
        if (label->isVisible() && label->buddy() != nullptr)
            add(letters, label->text());
    for (const auto *tabs : shown.findChildren<QTabBar *>())
        for (int tab = 0; tabs->isVisible() && tab < tabs->count(); ++tab)
            add(letters, tabs->tabText(tab));
    for (const auto *action : shown.findChildren<QAction *>())
        if (const QString keys = action->shortcut().toString(); keys.startsWith("Alt+") && keys.size() == 5)
            letters[keys] << action->text();
    return letters;
}

class Mnemonics : public WindowDesk {
protected:
    void SetUp() override
    {
        for (int note = 1; note <= 88; ++note)
            shop.book.enter(shop.pass.id,
                            {.place = {catalogue::Quantity::LetOff, keyboard::Note(note), 1},
                             .value = units::Length::millimetres(3 + note % 5 * 0.3),
                             .typed = "x"},
                            shop.stamp());
        window = openWindow();
        window->resize(1366, 768);
    }
    /// What `open` opened, and its letters; closed again.
    template <typename Open>
    void expectClearDialog(const char *which, Open open)
    {
        open();
        QCoreApplication::processEvents();
        QDialog *dialog = nullptr;
        for (auto *each : window->findChildren<QDialog *>())
            if (each->isVisible())
                dialog = each;
        ASSERT_NE(dialog, nullptr) << which;
        EXPECT_EQ(clashesIn(lettersSeen(*dialog)), "") << which;
        dialog->close();
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    }

    std::unique_ptr<MainWindow> window;
};

TEST_F(Mnemonics, OfEachMenuDiffer)
{
    const auto menus = window->findChildren<QMenu *>();
    ASSERT_GT(menus.size(), 8);
    for (const QMenu *menu : menus) {
        Letters letters;
        for (const QAction *action : menu->actions())
            add(letters, action->text());
        EXPECT_EQ(clashesIn(letters), "") << menu->title().toStdString();
    }
}

TEST_F(Mnemonics, OfEachViewAndTheMenusAboveItDiffer)
{
    for (const char *view : {"viewBench", "viewCharts", "viewReadings", "viewWorst", "viewPlan", "viewReview",
                             "viewFile", "viewStudies", "viewShop"}) {
        trigger(*window, view);
        QTest::qWait(30);
        EXPECT_EQ(clashesIn(lettersSeen(*window)), "") << view;
    }
}

TEST_F(Mnemonics, OfEachDialogDiffer)
{
    for (const char *action :
         {"takeIn", "changeInstrument", "chooseSet", "beginPass", "changePass", "benchKeys", "trustedKeys"})
        expectClearDialog(action, [&] { trigger(*window, action); });
    trigger(*window, "viewPlan");
    expectClearDialog("planEditSetup", [&] { part<QPushButton>(*window, "planEditSetup")->click(); });
    trigger(*window, "viewFile");
    expectClearDialog("workAdd", [&] { part<QPushButton>(*window, "workAdd")->click(); });
}

} // namespace
} // namespace hammerline::main_window
