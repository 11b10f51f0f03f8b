#pragma once
// A disk that fails on command, under SQLite: while it lives it is the default VFS of the process.
//
// Files lie on the real disk and are what the running program sees. Beside each stands what a power cut would leave:
// the content at the last flush, and the writes since, of which a cut keeps some, drops some and tears some at a
// sector. Every call that touches a file is counted, so that a test can let the first fail, then the second, and so on
// to the last.

#include <sqlite3.h>

#include <cstdint>
#include <map>
#include <random>
#include <string>
#include <vector>

namespace hammerline::test_support {

enum class DiskFault {
    None,
    IoError,    ///< the call reports an error and does nothing
    Full,       ///< writing reports a full disk; reading goes on
    ShortWrite, ///< half is written, then an error is reported; calls that do not write fail as by IoError
    PowerCut,   ///< from this call on nothing reaches the disk any more
};

class FaultyDisk {
public:
    FaultyDisk();
    FaultyDisk(const FaultyDisk &) = delete;
    FaultyDisk &operator=(const FaultyDisk &) = delete;
    ~FaultyDisk();

    /// Forgets all files and counts calls from 1 again; nobody may have a file open. `lasting`: every call from this
    /// one on fails, until `heal`.
    void arm(DiskFault fault, std::int64_t atCall, bool lasting = false);
    void heal();
    /// From now on a flush is answered and not done: for testing the tests.
    void forgetFlushes() { m_flushes = false; }
    [[nodiscard]] std::int64_t calls() const { return m_calls; }
    [[nodiscard]] bool struck() const { return m_struck; }
    /// Puts onto the disk what the power cut left, and heals. Nobody may have a file open.
    void comeBack(std::mt19937 &dice);

    enum class Call { Open, Delete, Access, Read, Write, Truncate, Sync, Size, Lock, Map };
    /// For the VFS: counts the call; what it must report, SQLITE_OK to go on.
    int answerTo(Call call);

    struct Change {
        bool truncates = false;
        std::int64_t at = 0; ///< or the new size
        std::string bytes{};
    };
    struct Content {
        std::string durable{};
        std::vector<Change> pending{};
    };

    // For the VFS: what becomes of a file.
    void opened(const std::string &name);
    void changed(const std::string &name, Change change) { m_files[name].pending.push_back(std::move(change)); }
    void synced(const std::string &name);
    void deleted(const std::string &name, bool forGood);
    [[nodiscard]] bool writesShort() const { return m_fault == DiskFault::ShortWrite; }
    [[nodiscard]] sqlite3_vfs *real() const { return m_real; }

private:
    sqlite3_vfs *m_real;
    sqlite3_vfs m_vfs;
    DiskFault m_fault = DiskFault::None;
    std::int64_t m_at = 0;
    bool m_lasting = false;
    std::int64_t m_calls = 0;
    bool m_struck = false;
    bool m_flushes = true;
    std::map<std::string, Content> m_files;
    std::map<std::string, Content> m_ghosts; ///< deleted, but the folder was not flushed since
};

} // namespace hammerline::test_support
