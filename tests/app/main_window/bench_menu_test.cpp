// The menu of the bench: keys that stay after the program has ended, and the sheet of paper with its way back.
#include "app/main_window/window_desk.h"

#include "keyboard_strip/keyboard_strip.h"
#include "main_window/bench_menu.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QProcess>
#include <QPushButton>

namespace hammerline::main_window {
namespace {

using BenchMenuDesk = WindowDesk;

TEST_F(BenchMenuDesk, ChangedKeysActAndAreThereInTheNextWindow)
{
    {
        const auto window = openWindow();
        trigger(*window, "benchKeys");
        QTest::keyClick(part<QLineEdit>(*window, "skip1"), 'n');
        QTest::keyClick(
            part<QWidget>(*window, "keysDialog")->findChild<QDialogButtonBox *>()->button(QDialogButtonBox::Ok),
            Qt::Key_Space);
        QTest::keyClick(part<QLineEdit>(*window, "entryField"), 'n');
        EXPECT_EQ(askedNote(*window), "A♯0");
    }
    const auto window = openWindow();
    QTest::keyClick(part<QLineEdit>(*window, "entryField"), 'n');
    EXPECT_EQ(askedNote(*window), "A♯0");
}

TEST_F(BenchMenuDesk, TheSheetHasABoxForEveryStopAndThePassKeepsItsOrder)
{
    const QString file = folder.filePath("sheet.pdf");
    {
        const auto window = openWindow();
        auto *chooser = part<QComboBox>(*window, "quantityChooser");
        chooser->setCurrentIndex(chooser->findText("Note by note"));
        emit chooser->activated(chooser->currentIndex());
        prompts.willPick(file);
        trigger(*window, "benchSheet");
        ASSERT_EQ(prompts.notices().size(), 1u);
        EXPECT_TRUE(prompts.notices().front().detail.contains("order"))
            << prompts.notices().front().detail.toStdString();
        const bench::EntrySession &session = *window->views().bench()->session();
        const auto sheet = benchSheetOf(window->workshop(), session, window->views().bench()->choice());
        ASSERT_EQ(sheet.stops.size(), session.route().size());
        EXPECT_EQ(sheet.stops.front().quantity, session.asked()->quantity);
        EXPECT_EQ(sheet.stops[1].note, keyboard::Note(1)) << "all quantities of a note before the next";
    }
    QProcess process;
    process.start("pdftotext", {"-layout", file, "-"});
    ASSERT_TRUE(process.waitForFinished()) << "pdftotext must be installed for this test";
    const QString words = QString::fromUtf8(process.readAllStandardOutput());
    EXPECT_TRUE(words.contains("Grey grand") && words.contains("C8")) << words.toStdString();
    const auto window = openWindow();
    EXPECT_EQ(part<QComboBox>(*window, "quantityChooser")->currentText(), "Note by note") << "in another week too";
}

TEST_F(BenchMenuDesk, TypingASheetInFollowsItsBoxes)
{
    const auto window = openWindow();
    bench::BenchView *bench = window->views().bench();
    bench->ask(catalogue::Quantity::LetOff, keyboard::Note(1));
    prompts.willPick(folder.filePath("sheet.pdf"));
    trigger(*window, "benchSheet");
    const auto sheet = benchSheetOf(window->workshop(), *bench->session(), bench->choice());
    for (const route::Stop &stop : sheet.stops) {
        ASSERT_EQ(bench->session()->asked()->note, stop.note);
        ASSERT_EQ(bench->session()->asked()->quantity, stop.quantity);
        type(*window, "3.1");
    }
    EXPECT_EQ(stored(), sheet.stops.size());
}

TEST_F(BenchMenuDesk, AFeltFaultStandsOnItsKeyOfTheStripAtOnce)
{
    const auto window = openWindow();
    auto *strip = part<keyboard_strip::KeyboardStrip>(*window, "strip");
    auto *field = part<QLineEdit>(*window, "entryField");
    QTest::keyClick(field, 'b');
    EXPECT_TRUE(strip->model().find(keyboard::Note(1))->flags.fault);
    QTest::keyClick(field, Qt::Key_B, Qt::ShiftModifier);
    EXPECT_FALSE(strip->model().find(keyboard::Note(1))->flags.fault);
}

TEST_F(BenchMenuDesk, AFolderThatIsNotThereIsTold)
{
    const auto window = openWindow();
    prompts.willPick(folder.filePath("nowhere/sheet.pdf"));
    trigger(*window, "benchSheet");
    ASSERT_EQ(prompts.notices().size(), 1u);
    EXPECT_FALSE(prompts.notices().front().detail.isEmpty());
}

} // namespace
} // namespace hammerline::main_window
