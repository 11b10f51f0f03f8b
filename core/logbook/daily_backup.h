#pragma once
// A backup by itself on each day of use: a whole copy of the logbook in a folder beside it, `<name>-backups`, named by
// the day. The newest few days are kept; a copy is made under another name and only then called a backup, so that the
// last good one is never at risk, and older ones go only once a newer one is there. The days are those of the
// computer's clock; where it was set back, backups dated after today are the first to go.

#include "logbook/logbook.h"
#include "readings/readings.h"

#include <optional>
#include <string>

namespace hammerline::logbook {

inline constexpr int backupsKept = 7;

/// The folder of a logbook's backups.
[[nodiscard]] std::string backupFolder(const std::string &logbook);

/// True where one was made; false where the day has one already, or the folder cannot be written (a logbook on a
/// read-only disk still opens). Throws BrokenWorld where the disk fails on the way; nothing of the copy is left then.
bool backUpDaily(const Logbook &book, readings::Instant now);

/// The same. What to tell the user where the disk failed: work goes on without.
[[nodiscard]] std::optional<std::string> dailyBackupTrouble(const Logbook &book, readings::Instant now);

/// Whether the day has its backup.
[[nodiscard]] bool hasDailyBackup(const std::string &logbook, readings::Instant now);

} // namespace hammerline::logbook
