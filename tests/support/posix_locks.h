#pragma once
// The locks by which SQLite keeps a logbook for this process.

#include <fcntl.h>
#include <gtest/gtest.h>
#include <sys/wait.h>
#include <unistd.h>

#include <string>

namespace hammerline::support {

/// Whether another program would find the logbook in use: SQLite's shared lock on its database file ("SHARED_FIRST" and
/// the 509 bytes after it, sqlite.org/fileformat2.html, 1.5, the lock-byte page).
inline bool isHeld(const std::string &logbook)
{
    const pid_t child = fork();
    if (child == 0) { // a process is not told of its own locks
        struct flock lock {};
        lock.l_type = F_WRLCK;
        lock.l_whence = SEEK_SET;
        lock.l_start = 0x40000002;
        lock.l_len = 510;
        const int file = ::open(logbook.c_str(), O_RDWR);
        if (file < 0 || ::fcntl(file, F_GETLK, &lock) != 0)
            _exit(2);
        _exit(lock.l_type == F_UNLCK ? 1 : 0);
    }
    int status = 0;
    waitpid(child, &status, 0);
    EXPECT_TRUE(WIFEXITED(status) && WEXITSTATUS(status) < 2);
    return WIFEXITED(status) && WEXITSTATUS(status) == 0;
}

} // namespace hammerline::support
