#include "logbook/daily_backup.h"

#include <algorithm>
#include <filesystem>
#include <utility>
#include <vector>

namespace hammerline::logbook {

namespace {

namespace fs = std::filesystem;

constexpr const char *ending = ".hammerline";

fs::path backupOf(const std::string &logbook, readings::Instant day)
{
    return fs::path(backupFolder(logbook)) / (readings::isoDate(day) + ending);
}

/// Backups by day, oldest first; a copy that was not finished is none. Days after `today` are of a clock that was set
/// back since: they count as the oldest, or else they would outlive every backup to come.
std::vector<fs::path> backupsIn(const fs::path &folder, const fs::path &today)
{
    std::vector<fs::path> found;
    std::error_code none;
    for (const auto &entry : fs::directory_iterator(folder, none))
        if (entry.path().extension() == ending && entry.is_regular_file(none))
            found.push_back(entry.path());
    std::ranges::sort(found, {}, [&](const fs::path &backup) { return std::pair(backup <= today, backup); });
    return found;
}

void forgetOldest(const fs::path &folder, const fs::path &today)
{
    const auto found = backupsIn(folder, today);
    std::error_code none;
    for (std::size_t index = 0; index + backupsKept < found.size(); ++index)
        fs::remove(found[index], none);
}

/// A copy on its way: gone, unless it became a backup. One that a killed program left goes first.
class Unfinished {
public:
    explicit Unfinished(fs::path path) : m_path(std::move(path)) { remove(); }
    Unfinished(const Unfinished &) = delete;
    Unfinished &operator=(const Unfinished &) = delete;
    ~Unfinished() { remove(); }
    [[nodiscard]] const fs::path &path() const { return m_path; }

private:
    void remove() const
    {
        std::error_code none;
        fs::remove(m_path, none);
        fs::remove(m_path.string() + "-journal", none);
    }
    fs::path m_path;
};

} // namespace

std::string backupFolder(const std::string &logbook)
{
    return logbook + "-backups";
}

bool hasDailyBackup(const std::string &logbook, readings::Instant now)
{
    std::error_code unseen;
    return fs::exists(backupOf(logbook, now), unseen);
}

bool backUpDaily(const Logbook &book, readings::Instant now)
{
    if (hasDailyBackup(book.path(), now))
        return false;
    const fs::path folder = backupFolder(book.path());
    std::error_code failed;
    fs::create_directories(folder, failed);
    if (failed)
        return false;
    const Unfinished unfinished(folder / (readings::isoDate(now) + ".unfinished"));
    if (!book.copyTo(unfinished.path().string()))
        return false;
    const fs::path target = backupOf(book.path(), now);
    fs::rename(unfinished.path(), target, failed);
    if (failed)
        return false;
    forgetOldest(folder, target);
    return true;
}

std::optional<std::string> dailyBackupTrouble(const Logbook &book, readings::Instant now)
{
    try {
        backUpDaily(book, now);
        return std::nullopt;
    } catch (const outcome::BrokenWorld &broken) {
        return std::string("The backup of the day was not made: ") + broken.what() +
               " The logbook itself is as it should be, and work goes on.";
    }
}

} // namespace hammerline::logbook
