#include "main_window/backup_keeper.h"

#include "logbook/daily_backup.h"

namespace hammerline::main_window {

std::optional<std::string> BackupKeeper::look(const logbook::Logbook &book, readings::Instant now)
{
    if (m_failed && now >= *m_failed && now < *m_failed + pause) // not where the clock was set back
        return std::nullopt;
    m_failed.reset();
    auto trouble = logbook::dailyBackupTrouble(book, now);
    if (trouble)
        m_failed = now;
    return trouble;
}

} // namespace hammerline::main_window
