#pragma once
// Whether the files that a connection has open are still the ones under their names.
//
// SQLite's hold on a logbook is a lock of the whole process, and a process loses it as soon as any part of it opens and
// closes the file by itself (POSIX, fcntl: "all locks associated with a file for a given process shall be removed when
// a file descriptor for that file is closed"; sqlite.org/howtocorrupt.html, 2.2). Another program then takes nobody to
// have the logbook open, and removes the write-ahead log when it closes it. What is written from then on would go into
// a file without a name. Nothing of ours opens a logbook so; a file dialog or a library might.

#include <sys/types.h>

#include <optional>
#include <string>

namespace hammerline::logbook::inside {

class HeldFiles {
public:
    /// Of a logbook that has just been read: its log lies beside it. A file that cannot be seen is not watched.
    explicit HeldFiles(const std::string &path);

    [[nodiscard]] bool stillThere() const;

private:
    struct Identity {
        dev_t device;
        ino_t number;
        bool operator==(const Identity &) const = default;
    };
    [[nodiscard]] static std::optional<Identity> identityOf(const std::string &path);
    [[nodiscard]] static bool holds(const std::optional<Identity> &noted, const std::string &path);

    std::string m_path;
    std::optional<Identity> m_main;
    std::optional<Identity> m_log;
};

} // namespace hammerline::logbook::inside
