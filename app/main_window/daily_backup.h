#pragma once
// A backup by itself on each day of use: a whole copy of the logbook in a folder beside it, `<name>-backups`, named by
// the day. The newest few days are kept; a copy is made under another name and only then called a backup, so that the
// last good one is never at risk, and older ones go only once a newer one is there. The days are those of the
// computer's clock; where it was set back, backups dated after today are the first to go.

#include "logbook/logbook.h"
#include "readings/readings.h"

#include <optional>
#include <string>

namespace hammerline::main_window {

inline constexpr int backupsKept = 7;

/// The folder of a logbook's backups.
[[nodiscard]] std::string backupFolder(const std::string &logbook);

/// True where one was made; false where the day has one already, or the folder cannot be written (a logbook on a
/// read-only disk still opens). Throws BrokenWorld where the disk fails on the way; nothing of the copy is left then.
bool backUpDaily(const logbook::Logbook &book, readings::Instant now);

/// Looks after the backups of a window. Where one fails, work goes on without: it is told, and tried again after a
/// while.
class BackupKeeper {
public:
    static constexpr std::chrono::minutes pause{10};

    /// Makes the backup of the day where it is missing. What to tell the user where that failed.
    [[nodiscard]] std::optional<std::string> look(const logbook::Logbook &book, readings::Instant now);
    /// The user has mended the cause: do not wait.
    void tryAgain() { m_failed.reset(); }

private:
    std::optional<readings::Instant> m_failed; ///< when it was last tried in vain
};

} // namespace hammerline::main_window
