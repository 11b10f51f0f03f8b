#include "main_window/backup_keeper.h"

#include "app/main_window/full_disk.h"
#include "logbook/daily_backup.h"
#include "support/workshop_on_disk.h"

#include <filesystem>
#include <gtest/gtest.h>

namespace hammerline::main_window {
namespace {

namespace fs = std::filesystem;

readings::Instant day(int number)
{
    return readings::Instant(std::chrono::hours(24 * number));
}

TEST(BackupKeeperTest, OneThatFailedIsTriedAgainThoughTheClockWasSetBack)
{
    const support::WorkshopOnDisk shop;
    const fs::path folder = logbook::backupFolder(shop.path());
    BackupKeeper keeper;
    {
        const FullDisk full(4096);
        EXPECT_TRUE(keeper.look(shop.book, day(100)));
    }
    EXPECT_FALSE(keeper.look(shop.book, day(100) + BackupKeeper::pause / 2)) << "told once";
    EXPECT_FALSE(keeper.look(shop.book, day(1)));
    EXPECT_TRUE(fs::exists(folder / "1970-01-02.hammerline"));
}

} // namespace
} // namespace hammerline::main_window
