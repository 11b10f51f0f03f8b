#include "main_window/backup_keeper.h"

#include "app/main_window/full_disk.h"
#include "logbook/daily_backup.h"
#include "support/workshop_on_disk.h"

#include <gtest/gtest.h>

#include <filesystem>

namespace hammerline::main_window {
namespace {

readings::Instant day(int number)
{
    return readings::Instant(std::chrono::hours(24 * number));
}

TEST(BackupKeeper, OneThatFailedIsTriedAgainThoughTheClockWasSetBack)
{
    const support::WorkshopOnDisk shop;
    const std::filesystem::path folder = logbook::backupFolder(shop.path());
    BackupKeeper keeper;
    {
        const FullDisk full(4096);
        EXPECT_TRUE(keeper.look(shop.book, day(100)));
    }
    EXPECT_FALSE(keeper.look(shop.book, day(100) + std::chrono::minutes(1))) << "not so soon";
    EXPECT_FALSE(std::filesystem::exists(folder / "1970-04-11.hammerline"));
    EXPECT_FALSE(keeper.look(shop.book, day(1)));
    EXPECT_TRUE(std::filesystem::exists(folder / "1970-01-02.hammerline"));
}

} // namespace
} // namespace hammerline::main_window
