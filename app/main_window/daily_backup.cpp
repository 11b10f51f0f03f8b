#include "main_window/daily_backup.h"

#include <algorithm>
#include <filesystem>
#include <vector>

namespace hammerline::main_window {

namespace {

namespace fs = std::filesystem;

constexpr const char *ending = ".hammerline";

/// Backups by day, oldest first; a copy that was not finished is none.
std::vector<fs::path> backupsIn(const fs::path &folder)
{
    std::vector<fs::path> found;
    std::error_code none;
    for (const auto &entry : fs::directory_iterator(folder, none))
        if (entry.path().extension() == ending && entry.is_regular_file(none))
            found.push_back(entry.path());
    std::ranges::sort(found);
    return found;
}

void forgetOldest(const fs::path &folder)
{
    const auto found = backupsIn(folder);
    std::error_code none;
    for (std::size_t index = 0; index + backupsKept < found.size(); ++index)
        fs::remove(found[index], none);
}

} // namespace

std::string backupFolder(const std::string &logbook)
{
    return logbook + "-backups";
}

bool backUpDaily(const logbook::Logbook &book, readings::Instant now)
{
    const fs::path folder = backupFolder(book.path());
    const fs::path target = folder / (readings::isoDate(now) + ending);
    std::error_code failed;
    if (fs::exists(target, failed))
        return false;
    fs::create_directories(folder, failed);
    if (failed)
        return false;
    const fs::path unfinished = folder / (readings::isoDate(now) + ".unfinished");
    fs::remove(unfinished, failed); // left by a program that was killed on the way
    if (!book.copyTo(unfinished.string()))
        return false;
    fs::rename(unfinished, target, failed);
    if (failed)
        return false;
    forgetOldest(folder);
    return true;
}

} // namespace hammerline::main_window
