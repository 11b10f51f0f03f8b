#include "main_window/daily_backup.h"

#include "app/main_window/full_disk.h"
#include "logbook/verify_history.h"
#include "support/workshop_on_disk.h"

#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>

namespace hammerline::main_window {
namespace {

namespace fs = std::filesystem;

readings::Instant day(int number)
{
    return readings::Instant(std::chrono::hours(24 * number));
}

class DailyBackup : public ::testing::Test {
protected:
    [[nodiscard]] fs::path folder() const { return backupFolder(shop.path()); }
    [[nodiscard]] std::vector<std::string> names() const
    {
        std::vector<std::string> found;
        for (const auto &entry : fs::directory_iterator(folder()))
            found.push_back(entry.path().filename().string());
        std::ranges::sort(found);
        return found;
    }

    support::WorkshopOnDisk shop;
};

TEST_F(DailyBackup, IsMadeOnceADay)
{
    EXPECT_TRUE(backUpDaily(shop.book, day(0)));
    EXPECT_FALSE(backUpDaily(shop.book, day(0)));
    EXPECT_TRUE(backUpDaily(shop.book, day(1)));
    EXPECT_EQ(names(), (std::vector<std::string>{"1970-01-01.hammerline", "1970-01-02.hammerline"}));
}

TEST_F(DailyBackup, IsAWholeLogbookThatRestoresWhatWasThere)
{
    const auto readings = shop.book.readings(shop.pass.id);
    ASSERT_TRUE(backUpDaily(shop.book, day(0)));
    const std::string backup = (folder() / "1970-01-01.hammerline").string();
    EXPECT_TRUE(logbook::verifyHistory(backup).whole());
    const auto restored = logbook::Logbook::open(backup);
    EXPECT_EQ(restored.readings(shop.pass.id), readings);
    EXPECT_EQ(restored.digest(restored.newestDeed()), shop.book.digest(shop.book.newestDeed()));
}

TEST_F(DailyBackup, KeepsTheNewestFewDays)
{
    for (int number = 0; number < backupsKept + 3; ++number)
        EXPECT_TRUE(backUpDaily(shop.book, day(number)));
    ASSERT_EQ(names().size(), std::size_t{backupsKept});
    EXPECT_EQ(names().front(), "1970-01-04.hammerline");
}

TEST_F(DailyBackup, AfterTheClockWasSetBackTodaysStaysAndThoseOfDaysToComeGoFirst)
{
    for (int number = 100; number < 100 + backupsKept; ++number)
        EXPECT_TRUE(backUpDaily(shop.book, day(number)));
    for (int number = 0; number < backupsKept; ++number) {
        EXPECT_TRUE(backUpDaily(shop.book, day(number)));
        EXPECT_FALSE(backUpDaily(shop.book, day(number))) << "it is there";
        EXPECT_EQ(names().size(), std::size_t{backupsKept});
    }
    EXPECT_EQ(names().back(), "1970-01-07.hammerline");
}

TEST_F(DailyBackup, OneThatFailedIsTriedAgainThoughTheClockWasSetBack)
{
    BackupKeeper keeper;
    {
        const FullDisk full(4096);
        EXPECT_TRUE(keeper.look(shop.book, day(100)));
    }
    EXPECT_FALSE(keeper.look(shop.book, day(100) + std::chrono::minutes(1))) << "not so soon";
    EXPECT_FALSE(fs::exists(folder() / "1970-04-11.hammerline"));
    EXPECT_FALSE(keeper.look(shop.book, day(1)));
    EXPECT_TRUE(fs::exists(folder() / "1970-01-02.hammerline"));
}

TEST_F(DailyBackup, ACopyThatWasNeverFinishedIsNoBackupAndIsMadeAnew)
{
    fs::create_directories(folder());
    std::ofstream(folder() / "1970-01-01.unfinished") << "half";
    EXPECT_TRUE(backUpDaily(shop.book, day(0)));
    EXPECT_EQ(names(), std::vector<std::string>{"1970-01-01.hammerline"});
}

TEST_F(DailyBackup, WhereNoFolderCanBeMadeNothingIsLost)
{
    std::ofstream(backupFolder(shop.path())) << "a file of that name";
    EXPECT_FALSE(backUpDaily(shop.book, day(0)));
    EXPECT_TRUE(fs::is_regular_file(folder()));
}

} // namespace
} // namespace hammerline::main_window
