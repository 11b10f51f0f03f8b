#include "app/main_window/window_desk.h"
#include "keyboard_strip/keyboard_strip.h"

#include <QComboBox>
#include <QDialog>
#include <QFile>
#include <QPushButton>
#include <QStackedWidget>
#include <QTabBar>
#include <QTableView>
#include <QTreeWidget>

namespace hammerline::main_window {
namespace {

TEST_F(WindowDesk, AnEmptyStartSaysWhatToDoFirst)
{
    MainWindow window(surroundings());
    window.show();
    EXPECT_TRUE(part(window, "startPage")->isVisible());
    EXPECT_TRUE(part(window, "startNew")->isVisible());
    EXPECT_FALSE(part<QAction>(window, "beginPass")->isEnabled());
}

TEST_F(WindowDesk, FromNothingToTheFirstReadingByTheOfferedSteps)
{
    MainWindow window(surroundings());
    window.show();
    const QString path = folder.filePath("fresh.hammerline");
    prompts.willPick(path);
    QTest::mouseClick(part(window, "startNew"), Qt::LeftButton);
    EXPECT_TRUE(QFile::exists(path));
    QTest::mouseClick(part(window, "firstStep"), Qt::LeftButton);
    QTest::keyClicks(part<QLineEdit>(window, "instrumentName"), "Blue upright");
    QTest::mouseClick(part(*part<QDialog>(window, "instrumentForm"), "formAccept"), Qt::LeftButton);
    QTest::mouseClick(part(*part<QDialog>(window, "toleranceChooser"), "formAccept"), Qt::LeftButton);
    ASSERT_NE(window.workshop().instrument(), nullptr);
    EXPECT_FALSE(window.workshop().instrument()->toleranceText.empty());
    QTest::mouseClick(part(window, "firstStep"), Qt::LeftButton);
    QTest::keyClicks(part<QLineEdit>(window, "passPerson"), "Ada");
    QTest::mouseClick(part(*part<QDialog>(window, "passForm"), "formAccept"), Qt::LeftButton);
    const QString first = askedNote(window);
    type(window, "46");
    EXPECT_NE(askedNote(window), first);
    EXPECT_EQ(window.workshop().pass()->readings.size(), 1u);
    EXPECT_TRUE(prompts.allUsed());
}

TEST_F(WindowDesk, AWholePassIsTypedAndEveryViewHasIt)
{
    const auto window = openWindow();
    window->views().bench()->ask(catalogue::Quantity::LetOff, keyboard::Note(1));
    for (int note = 1; note <= 88; ++note)
        if (type(*window, note == 40 ? "4.4" : "3.2"); note == 40) {
            EXPECT_EQ(stored(), 39u) << "a jump is asked about once";
            QTest::keyClick(part<QLineEdit>(*window, "entryField"), Qt::Key_Return);
        }
    EXPECT_EQ(stored(), 88u);
    trigger(*window, "viewWorst");
    auto *worst = part<QTableView>(*window, "worstTable");
    ASSERT_GE(worst->model()->rowCount(), 1);
    EXPECT_EQ(worst->model()->index(0, 1).data().toString(), "C4");
    trigger(*window, "viewReview");
    EXPECT_EQ(part<QTableView>(*window, "reviewTable")->model()->index(0, 0).data().toString(), "Grey grand");
    trigger(*window, "viewReadings");
    EXPECT_EQ(part<QTableView>(*window, "readingsTable")->model()->rowCount(), 88);
    EXPECT_EQ(part<QTableView>(*window, "summaryTable")->model()->rowCount(), 1);
}

TEST_F(WindowDesk, ReopeningResumesAtTheSameNote)
{
    {
        const auto window = openWindow();
        window->views().bench()->ask(catalogue::Quantity::LetOff, keyboard::Note(1));
        for (int i = 0; i < 7; ++i)
            type(*window, "3.2");
    }
    const auto again = openWindow();
    EXPECT_EQ(again->workshop().selection(), (Selection{catalogue::Quantity::LetOff, keyboard::Note(8)}));
    EXPECT_EQ(askedNote(*again), "E1");
}

TEST_F(WindowDesk, UndoAndRedoNameTheDeed)
{
    const auto window = openWindow();
    window->views().bench()->ask(catalogue::Quantity::LetOff, keyboard::Note(5));
    type(*window, "3.2");
    auto *undo = part<QAction>(*window, "undo");
    EXPECT_TRUE(undo->text().contains("let-off, C♯1")) << undo->text().toStdString();
    undo->trigger();
    EXPECT_EQ(stored(), 0u);
    auto *redo = part<QAction>(*window, "redo");
    EXPECT_TRUE(redo->text().contains("let-off, C♯1")) << redo->text().toStdString();
    redo->trigger();
    EXPECT_EQ(stored(), 1u);
}

TEST_F(WindowDesk, UndoPressedInTheFieldTakesBackTheReadingAndPutsNoneInTheField)
{
    const auto window = openWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(window.get()));
    auto *field = part<QLineEdit>(*window, "entryField");
    type(*window, "46.2");
    ASSERT_EQ(stored(), 1u);
    QTest::keyClicks(field, "47");
    QTest::keyClick(field, Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(field->text(), "") << "what was being typed goes first";
    EXPECT_EQ(stored(), 1u);
    QTest::keyClick(field, Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(stored(), 0u);
    EXPECT_EQ(field->text(), "");
    QTest::keyClick(field, Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(field->text(), "") << "also where nothing is left to take back";
}

TEST_F(WindowDesk, EnterPressesTheButtonThatHasTheFocus)
{
    MainWindow window(surroundings());
    window.show();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&window));
    auto *open = part<QPushButton>(window, "startOpen");
    open->setFocus();
    prompts.willPick(QString::fromStdString(shop.path()));
    QTest::keyClick(open, Qt::Key_Return);
    EXPECT_TRUE(window.workshop().isOpen());
}

TEST_F(WindowDesk, UndoGoesBackToBeforeThePassAndBeyondWithoutLosingTheWindow)
{
    const auto window = openWindow();
    type(*window, "46.2");
    auto *undo = part<QAction>(*window, "undo");
    for (int i = 0; i < 20 && undo->isEnabled(); ++i)
        undo->trigger();
    EXPECT_EQ(stored(), 0u);
    auto *redo = part<QAction>(*window, "redo");
    for (int i = 0; i < 20 && redo->isEnabled(); ++i)
        redo->trigger();
    EXPECT_EQ(stored(), 1u);
}

TEST_F(WindowDesk, TheStripGoesToANoteAndTheBenchAsksForIt)
{
    const auto window = openWindow();
    auto *strip = part<keyboard_strip::KeyboardStrip>(*window, "strip");
    QTest::mouseClick(strip, Qt::LeftButton, {}, strip->keyRect(keyboard::Note(49)).center());
    EXPECT_EQ(askedNote(*window), "A4");
    EXPECT_EQ(window->workshop().selection().note, keyboard::Note(49));
}

TEST_F(WindowDesk, ANumberTypedOnTheStripGoesToTheBench)
{
    const auto window = openWindow();
    window->views().bench()->ask(catalogue::Quantity::LetOff, keyboard::Note(10));
    auto *strip = part<keyboard_strip::KeyboardStrip>(*window, "strip");
    QTest::keyClick(strip, '3');
    EXPECT_EQ(window->views().bench()->typedText(), "3");
    EXPECT_EQ(askedNote(*window), "F♯1");
}

TEST_F(WindowDesk, AnItemOfTheListLeadsToItsNoteAtTheBench)
{
    const auto window = openWindow();
    window->views().bench()->ask(catalogue::Quantity::LetOff, keyboard::Note(30));
    type(*window, "9.9");
    QTest::keyClick(part<QLineEdit>(*window, "entryField"), Qt::Key_Return); // asked about, and kept
    trigger(*window, "viewWorst");
    auto *worst = part<QTableView>(*window, "worstTable");
    emit worst->activated(worst->model()->index(0, 0));
    EXPECT_EQ(window->views().current(), View::Bench);
    EXPECT_EQ(askedNote(*window), "D3");
}

TEST_F(WindowDesk, AnotherPassIsAnotherSessionAtTheBench)
{
    const auto window = openWindow();
    type(*window, "3.2");
    auto *tree = part<QTreeWidget>(*window, "workshopTree");
    shop.begin(readings::Purpose::AsLeft);
    QTRY_COMPARE(tree->topLevelItem(0)->childCount(), 2);
    tree->setCurrentItem(tree->topLevelItem(0)->child(1));
    EXPECT_TRUE(window->workshop().pass()->readings.empty());
    ASSERT_NE(window->workshop().before(), nullptr);
    EXPECT_EQ(window->workshop().before()->pass.id, shop.pass.id);
}

TEST_F(WindowDesk, TheUnitShownCanBeInches)
{
    const auto window = openWindow();
    window->views().bench()->ask(catalogue::Quantity::LetOff, keyboard::Note(1));
    trigger(*window, "unitInch");
    type(*window, "1/8");
    EXPECT_EQ(part<bench::BigText>(*window, "lastValue")->text(), "0.125");
    EXPECT_EQ(part<QLabel>(*window, "askedUnit")->text(), "mm") << "a bare number still means what the pass says";
}

TEST_F(WindowDesk, TheThemeIsSwitchedAndKept)
{
    const auto window = openWindow();
    trigger(*window, "themeDark");
    EXPECT_EQ(wording::themeOf(window->palette()), wording::Theme::Dark);
    EXPECT_EQ(Settings(settings).theme(), ThemeChoice::Dark);
    trigger(*window, "themeLight");
    EXPECT_EQ(wording::themeOf(window->palette()), wording::Theme::Light);
}

TEST_F(WindowDesk, EveryControlHasANameAndAPlaceInTheTabOrder)
{
    const auto window = openWindow();
    for (const QWidget *widget : window->findChildren<QWidget *>()) {
        if (!widget->isVisible() || widget->focusPolicy() == Qt::NoFocus || !widget->focusProxy())
            continue;
        const QString text = widget->property("text").toString();
        EXPECT_FALSE(widget->accessibleName().isEmpty() && text.isEmpty())
            << widget->metaObject()->className() << ' ' << widget->objectName().toStdString();
    }
}

} // namespace
} // namespace hammerline::main_window
