#pragma once
// Looks after the backups of a window (logbook/daily_backup.h). Where one fails, work goes on without: it is told, and
// tried again after a while.

#include "logbook/logbook.h"

#include <chrono>
#include <optional>
#include <string>

namespace hammerline::main_window {

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
