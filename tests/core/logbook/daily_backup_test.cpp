#include "logbook/daily_backup.h"

#include "core/logbook/logbook_fixture.h"
#include "logbook/verify_history.h"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>

namespace hammerline::logbook {
namespace {

namespace fs = std::filesystem;

readings::Instant day(int number)
{
    return readings::Instant(std::chrono::hours(24 * number));
}

class DailyBackup : public LogbookTest {
protected:
    DailyBackup() { shop.enter(1, reading(letOff(40), 3'000'000), ada); }

    [[nodiscard]] fs::path backups() const { return backupFolder(shop.path()); }
    [[nodiscard]] std::vector<std::string> names() const
    {
        std::vector<std::string> found;
        for (const auto &entry : fs::directory_iterator(backups()))
            found.push_back(entry.path().filename().string());
        std::ranges::sort(found);
        return found;
    }

    Logbook shop = withPass();
};

TEST_F(DailyBackup, IsMadeOnceADay)
{
    EXPECT_TRUE(backUpDaily(shop, day(0)));
    EXPECT_FALSE(backUpDaily(shop, day(0)));
    EXPECT_TRUE(backUpDaily(shop, day(1)));
    EXPECT_EQ(names(), (std::vector<std::string>{"1970-01-01.hammerline", "1970-01-02.hammerline"}));
}

TEST_F(DailyBackup, IsAWholeLogbookThatRestoresWhatWasThere)
{
    const auto readings = shop.readings(1);
    ASSERT_TRUE(backUpDaily(shop, day(0)));
    const std::string backup = (backups() / "1970-01-01.hammerline").string();
    EXPECT_TRUE(logbook::verifyHistory(backup).whole());
    const auto restored = Logbook::open(backup);
    EXPECT_EQ(restored.readings(1), readings);
    EXPECT_EQ(restored.digest(restored.newestDeed()), shop.digest(shop.newestDeed()));
}

TEST_F(DailyBackup, KeepsTheNewestFewDays)
{
    for (int number = 0; number < backupsKept + 3; ++number)
        EXPECT_TRUE(backUpDaily(shop, day(number)));
    ASSERT_EQ(names().size(), std::size_t{backupsKept});
    EXPECT_EQ(names().front(), "1970-01-04.hammerline");
}

TEST_F(DailyBackup, AfterTheClockWasSetBackTodaysStaysAndThoseOfDaysToComeGoFirst)
{
    for (int number = 100; number < 100 + backupsKept; ++number)
        EXPECT_TRUE(backUpDaily(shop, day(number)));
    for (int number = 0; number < backupsKept; ++number) {
        EXPECT_TRUE(backUpDaily(shop, day(number)));
        EXPECT_FALSE(backUpDaily(shop, day(number))) << "it is there";
        EXPECT_EQ(names().size(), std::size_t{backupsKept});
    }
    EXPECT_EQ(names().back(), "1970-01-07.hammerline");
}

TEST_F(DailyBackup, ACopyThatWasNeverFinishedIsNoBackupAndIsMadeAnew)
{
    fs::create_directories(backups());
    std::ofstream(backups() / "1970-01-01.unfinished") << "half";
    EXPECT_TRUE(backUpDaily(shop, day(0)));
    EXPECT_EQ(names(), std::vector<std::string>{"1970-01-01.hammerline"});
}

TEST_F(DailyBackup, IsToldWhetherTheDayHasOne)
{
    EXPECT_FALSE(hasDailyBackup(shop.path(), day(0)));
    EXPECT_EQ(dailyBackupTrouble(shop, day(0)), std::nullopt);
    EXPECT_TRUE(hasDailyBackup(shop.path(), day(0)));
    EXPECT_FALSE(hasDailyBackup(shop.path(), day(1)));
}

TEST_F(DailyBackup, WhereNoFolderCanBeMadeNothingIsLost)
{
    std::ofstream(backupFolder(shop.path())) << "a file of that name";
    EXPECT_FALSE(backUpDaily(shop, day(0)));
    EXPECT_TRUE(fs::is_regular_file(backups()));
}

} // namespace
} // namespace hammerline::logbook
