// What the window does on a full disk; with HAMMERLINE_SMALL_DISK=<folder on a small file system> by a
// disk that is full in truth.
#include "app/main_window/full_disk.h"
#include "app/main_window/window_desk.h"
#include "logbook/daily_backup.h"
#include "logbook/verify_history.h"
#include "main_window/guarded_application.h"

#include <QFile>

#include <filesystem>

namespace hammerline::main_window {
namespace {

namespace fs = std::filesystem;

class FullDiskDesk : public WindowDesk {
protected:
    /// Types let-off until the bar of trouble shows; how many were stored.
    std::size_t typeUntilTrouble(MainWindow &window)
    {
        window.views().bench()->ask(catalogue::Quantity::LetOff, keyboard::Note(1));
        for (int i = 0; i < 4'000 && !part(window, "troubleBar")->isVisible(); ++i)
            guarded(&window, [&window] { type(window, "3.1"); });
        return window.workshop().book().readings(window.workshop().pass()->pass.id).size();
    }
};

TEST_F(FullDiskDesk, TheWindowSaysSoAtOnceKeepsWhatIsTypedAndGoesOnWhenThereIsRoom)
{
    const auto window = openWindow();
    auto *field = part<QLineEdit>(*window, "entryField");
    FullDisk full(largestOf(shop.path()) + 8 * 1024);
    const std::size_t before = typeUntilTrouble(*window);
    ASSERT_TRUE(part(*window, "troubleBar")->isVisible());
    EXPECT_LT(before, 88u);
    EXPECT_TRUE(part<QLabel>(*window, "troubleText")->text().contains("disk"))
        << part<QLabel>(*window, "troubleText")->text().toStdString();
    EXPECT_EQ(field->text(), "3.1");
    const QString asked = askedNote(*window);
    EXPECT_EQ(asked.toStdString(), QString::fromStdString(keyboard::Note(static_cast<int>(before) + 1).name())
                                       .replace('#', QString::fromUtf8("♯"))
                                       .toStdString());
    guarded(field, [field] { QTest::keyClick(field, Qt::Key_Return); });
    EXPECT_EQ(field->text(), "3.1") << "still full: still kept";
    full.lift();
    QTest::mouseClick(part(*window, "troubleAgain"), Qt::LeftButton);
    EXPECT_FALSE(part(*window, "troubleBar")->isVisible());
    QTest::keyClick(field, Qt::Key_Return);
    EXPECT_EQ(stored(), before + 1);
    EXPECT_NE(askedNote(*window), asked);
    EXPECT_TRUE(logbook::verifyHistory(shop.path()).whole());
}

TEST_F(FullDiskDesk, ABackupOfTheDayThatFindsNoRoomIsToldWhileTheLogbookAndThePollingGoOn)
{
    const std::string path = folder.filePath("small.hammerline").toStdString();
    ASSERT_TRUE(shop.book.copyTo(path));
    const auto folderOfBackups = logbook::backupFolder(path);
    MainWindow window(surroundings());
    ASSERT_TRUE(window.openLogbook(QString::fromStdString(path)));
    window.show();
    // The log that the window writes to is new and short; a whole copy is not.
    FullDisk full(fs::file_size(path) - 1);
    auto *bar = part(window, "troubleBar");
    QTRY_VERIFY_WITH_TIMEOUT(bar->isVisible(), 4 * MainWindow::pollMilliseconds);
    EXPECT_TRUE(part<QLabel>(window, "troubleText")->text().startsWith("The backup of the day was not made"))
        << part<QLabel>(window, "troubleText")->text().toStdString();
    EXPECT_TRUE(fs::is_empty(folderOfBackups)) << "no half of a copy takes the room that is missing";
    type(window, "46.2");
    const auto readings = [&] { return window.workshop().pass()->readings.size(); };
    EXPECT_EQ(readings(), 1u);
    auto others = logbook::Logbook::open(path);
    others.markFault(shop.pass.id, {keyboard::Note(3), "blocking"}, shop.stamp());
    others.enter(shop.pass.id,
                 {.place = {catalogue::Quantity::LetOff, keyboard::Note(7), 1},
                  .value = units::Length::millimetres(3),
                  .typed = "3"},
                 shop.stamp());
    QTRY_COMPARE_WITH_TIMEOUT(readings(), 2u, 4 * MainWindow::pollMilliseconds);
    full.lift();
    QTest::mouseClick(part(window, "troubleAgain"), Qt::LeftButton);
    EXPECT_FALSE(bar->isVisible());
    ASSERT_FALSE(fs::is_empty(folderOfBackups));
    EXPECT_TRUE(logbook::verifyHistory(fs::directory_iterator(folderOfBackups)->path().string()).whole());
    EXPECT_TRUE(logbook::verifyHistory(path).whole());
}

TEST_F(FullDiskDesk, ASmallFileSystemThatIsFullLosesNothingShown)
{
    const QString disk = qEnvironmentVariable("HAMMERLINE_SMALL_DISK", folder.path());
    const std::string path = (disk + "/small.hammerline").toStdString();
    ASSERT_TRUE(shop.book.copyTo(path));
    MainWindow window(surroundings());
    ASSERT_TRUE(window.openLogbook(QString::fromStdString(path)));
    window.show();
    std::optional<FullDisk> limited;
    if (disk == folder.path())
        limited.emplace(largestOf(path) + 32 * 1024);
    const std::size_t before = typeUntilTrouble(window);
    ASSERT_TRUE(part(window, "troubleBar")->isVisible());
    EXPECT_EQ(part<QLineEdit>(window, "entryField")->text(), "3.1");
    std::cout << before << " readings, then: " << part<QLabel>(window, "troubleText")->text().toStdString() << '\n';
    limited.reset();
    EXPECT_EQ(logbook::Logbook::open(path, logbook::Access::ReadOnly).readings(shop.pass.id).size(), before);
}

} // namespace
} // namespace hammerline::main_window
