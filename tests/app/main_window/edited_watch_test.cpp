// What the window tells of a logbook that the sqlite3 shell has edited, and that it tells nothing of others.
#include "app/main_window/window_desk.h"
#include "demo_workshop/demo_workshop.h"
#include "demo_workshop/write_logbook.h"
#include "main_window/edited_watch.h"
#include "main_window/guarded_application.h"

#include <QFile>

#include <cstdlib>

namespace hammerline::main_window {
namespace {

using namespace std::chrono_literals;

constexpr EditedWatch::Pace quick{20ms, 1ms, 20ms, 60min};

class EditedWatchTest : public WindowDesk {
protected:
    EditedWatchTest()
    {
        for (int note = 40; note < 44; ++note) {
            readings::Reading reading;
            reading.place = {catalogue::Quantity::LetOff, keyboard::Note(note), 1};
            reading.value = units::Length::millimetres(3.2);
            reading.typed = "3.2";
            shop.book.enter(shop.pass.id, reading, shop.stamp());
        }
        instrument::Instrument upright;
        upright.name = "Blue upright";
        EXPECT_TRUE(shop.book.addInstrument(upright, shop.stamp()));
    }
    [[nodiscard]] std::unique_ptr<MainWindow> watching(const EditedWatch::Pace &pace = quick)
    {
        auto window = openWindow();
        window->views().watch().setPace(pace);
        return window;
    }
    void edit(const char *sql) { ASSERT_EQ(std::system(("sqlite3 '" + shop.path() + "' \"" + sql + "\"").c_str()), 0); }
    static bool told(const MainWindow &window) { return part(window, "editedBar")->isVisible(); }
    static std::string words(const MainWindow &window, const char *label)
    {
        return part<QLabel>(window, label)->text().toStdString();
    }
    static void awaitRounds(MainWindow &window, int rounds)
    {
        QTRY_VERIFY_WITH_TIMEOUT(window.views().watch().rounds() >= rounds, 10'000);
    }

    static constexpr const char *alterAReading = "UPDATE reading SET value = value + 100000 WHERE note = 41";
    static constexpr const char *putItBack = "UPDATE reading SET value = value - 100000 WHERE note = 41";
};

TEST_F(EditedWatchTest, ReadingsEditedBeforeTheOpeningAreToldSoonAfterItWithWhatIsBarredAndWhatHelps)
{
    edit(alterAReading);
    const auto window = watching();
    EXPECT_FALSE(told(*window));
    QTRY_VERIFY(told(*window));
    EXPECT_EQ(words(*window, "editedText"),
              "“Grey grand” was changed in the logbook by another program, in one place.");
    const std::string help = words(*window, "editedHelp");
    for (const char *part : {"neither sealed nor handed over", "hammerline verify", "-backups"})
        EXPECT_NE(help.find(part), std::string::npos) << part << " in " << help;
}

TEST_F(EditedWatchTest, ReadingsEditedWhileTheWindowIsOpenAreToldWithoutWaitingForTheNextRoundThatIsDueAnyhow)
{
    const auto window = watching();
    awaitRounds(*window, 1);
    EXPECT_FALSE(told(*window));
    edit(alterAReading);
    QTRY_VERIFY(told(*window));
}

TEST_F(EditedWatchTest, EditedPapersOfAnInstrumentThatIsNotChosenAreToldToo)
{
    const auto window = watching();
    edit("UPDATE instrument SET name = 'Red upright' WHERE instrument = 2");
    QTRY_VERIFY(told(*window));
    EXPECT_TRUE(window->views().watch().found().contains(2));
    EXPECT_FALSE(window->views().watch().found().contains(1));
}

TEST_F(EditedWatchTest, SeveralAreCountedInOneSentence)
{
    edit("UPDATE instrument SET serial = 'forged'");
    const auto window = watching();
    QTRY_COMPARE(window->views().watch().found().size(), 2u);
    EXPECT_EQ(words(*window, "editedText"),
              "“Grey grand”, “Blue upright” were changed in the logbook by another program.");
}

TEST_F(EditedWatchTest, PutAwayTheBarStaysAwayUntilAnotherInstrumentIsFound)
{
    edit(alterAReading);
    const auto window = watching();
    QTRY_VERIFY(told(*window));
    part(*window, "editedAway")->setFocus();
    QTest::keyClick(part(*window, "editedAway"), Qt::Key_Space);
    EXPECT_FALSE(told(*window));
    edit("PRAGMA user_version = 3"); // another round, and nothing else
    const int rounds = window->views().watch().rounds();
    awaitRounds(*window, rounds);
    EXPECT_FALSE(told(*window));
    edit("UPDATE instrument SET serial = 'forged' WHERE instrument = 2");
    QTRY_VERIFY(told(*window));
}

TEST_F(EditedWatchTest, PutAwayTheBarDoesNotComeBackAfterOwnDeeds)
{
    edit(alterAReading);
    const auto window = watching({1ms, 1ms, 1ms, 0min});
    QTRY_VERIFY(told(*window));
    QTest::mouseClick(part(*window, "editedAway"), Qt::LeftButton);
    for (int deed = 0; deed < 3; ++deed) {
        type(*window, "46.2");
        const int rounds = window->views().watch().rounds();
        awaitRounds(*window, rounds + 1);
        EXPECT_FALSE(told(*window));
    }
    edit("UPDATE instrument SET serial = 'forged' WHERE instrument = 1");
    QTRY_VERIFY(told(*window));
}

TEST_F(EditedWatchTest, OnASmallScreenWithLargeTextTheBarTakesTwoLinesAndTheRestIsBehindItsButton)
{
    wording::setTextScale(2);
    wording::applyTheme(*qApp, wording::Theme::Dark);
    {
        edit("UPDATE instrument SET serial = 'forged'");
        const auto window = watching();
        window->resize(1366, 768);
        QTRY_COMPARE(window->views().watch().found().size(), 2u);
        QTest::qWait(50);
        const auto *what = part<QLabel>(*window, "editedText");
        EXPECT_LE(what->heightForWidth(what->width()), 2 * what->fontMetrics().lineSpacing() + 4);
        EXPECT_LE(what->heightForWidth(what->width()), what->height());
        EXPECT_FALSE(part(*window, "editedHelp")->isVisible());
        EXPECT_LE(part(*window, "editedBar")->height(), 3 * what->fontMetrics().lineSpacing());
        QTest::mouseClick(part(*window, "editedMore"), Qt::LeftButton);
        EXPECT_TRUE(part(*window, "editedHelp")->isVisible());
    }
    wording::setTextScale(1);
    wording::applyTheme(*qApp, wording::Theme::Light);
}

TEST_F(EditedWatchTest, WhatWasPutBackIsNoLongerTold)
{
    edit(alterAReading);
    const auto window = watching();
    QTRY_VERIFY(told(*window));
    edit(putItBack);
    QTRY_VERIFY(!told(*window));
}

TEST_F(EditedWatchTest, ATroubleOfTheDiskAndAnEditAreToldOneBelowTheOther)
{
    edit(alterAReading);
    const auto window = watching();
    QTRY_VERIFY(told(*window));
    window->tellTrouble("the disk is full");
    QCoreApplication::processEvents();
    const auto *trouble = part(*window, "troubleBar");
    const auto *edited = part(*window, "editedBar");
    EXPECT_TRUE(trouble->isVisible() && edited->isVisible());
    EXPECT_FALSE(trouble->geometry().intersects(edited->geometry()));
    QTest::mouseClick(part(*window, "troubleAgain"), Qt::LeftButton);
    EXPECT_TRUE(edited->isVisible());
}

TEST_F(EditedWatchTest, AnotherLogbookOpenedInTheWindowStartsWithoutWhatWasToldOfTheFirst)
{
    edit(alterAReading);
    const auto window = watching();
    QTRY_VERIFY(told(*window));
    EXPECT_TRUE(window->createLogbook(folder.filePath("fresh.hammerline")));
    EXPECT_FALSE(told(*window));
}

TEST_F(EditedWatchTest, AFileThatCannotBeLookedAtIsToldAsATroubleAndTheWatchGoesOnOnceThatIsMended)
{
    edit(alterAReading);
    auto pace = quick;
    pace.first = 60min;
    const auto window = watching(pace);
    const QString path = QString::fromStdString(shop.path());
    ASSERT_TRUE(QFile::rename(path, path + ".away"));
    auto &watch = window->views().watch();
    EXPECT_FALSE(guarded(&watch, [&watch] {
        for (int steps = 0; steps < 3; ++steps)
            QMetaObject::invokeMethod(&watch, "step", Qt::DirectConnection);
    }));
    EXPECT_TRUE(part(*window, "troubleBar")->isVisible());
    EXPECT_FALSE(told(*window)) << "nobody has edited anything";
    ASSERT_TRUE(QFile::rename(path + ".away", path));
    QTest::mouseClick(part(*window, "troubleAgain"), Qt::LeftButton);
    QTRY_VERIFY(told(*window));
}

TEST_F(EditedWatchTest, TwoWindowsThatWriteAtOnceNeverTakeEachOtherForAnotherProgram)
{
    const auto mine = watching({1ms, 1ms, 1ms, 0min});
    const auto theirs = watching({1ms, 1ms, 1ms, 0min});
    for (int round = 0; round < 12; ++round)
        for (const auto &window : {mine.get(), theirs.get()}) {
            type(*window, "46.2");
            QTest::qWait(5);
        }
    awaitRounds(*mine, 3);
    awaitRounds(*theirs, 3);
    EXPECT_FALSE(told(*mine));
    EXPECT_FALSE(told(*theirs));
}

TEST_F(EditedWatchTest, NothingIsToldOfTheDemonstrationLogbook)
{
    const QString path = folder.filePath("demo.hammerline");
    ASSERT_TRUE(demo_workshop::writeLogbook(
        demo_workshop::makeWorkshop(),
        {.path = path.toStdString(), .scratchPath = folder.filePath("scratch").toStdString()}));
    MainWindow window(surroundings());
    ASSERT_TRUE(window.openLogbook(path));
    window.show();
    window.views().watch().setPace(quick);
    awaitRounds(window, 1);
    EXPECT_TRUE(window.views().watch().found().empty());
    EXPECT_FALSE(told(window));
}

} // namespace
} // namespace hammerline::main_window
