#pragma once
// A full disk, made by a limit on the size of files.

#include <algorithm>
#include <csignal>
#include <cstdint>
#include <filesystem>
#include <string>
#include <sys/resource.h>

namespace hammerline::main_window {

/// The size of a logbook or of the log beside it, whichever is larger.
inline std::uintmax_t largestOf(const std::string &file)
{
    const std::string log = file + "-wal";
    const std::uintmax_t size = std::filesystem::file_size(file);
    return std::filesystem::exists(log) ? std::max(size, std::filesystem::file_size(log)) : size;
}

/// No file of this process grows beyond `largest` bytes until it is lifted.
class FullDisk {
public:
    explicit FullDisk(std::uintmax_t largest)
    {
        m_signal = std::signal(SIGXFSZ, SIG_IGN);
        getrlimit(RLIMIT_FSIZE, &m_before);
        const rlimit limit{largest, m_before.rlim_max};
        setrlimit(RLIMIT_FSIZE, &limit);
    }
    FullDisk(const FullDisk &) = delete;
    FullDisk &operator=(const FullDisk &) = delete;
    ~FullDisk() { lift(); }
    void lift()
    {
        setrlimit(RLIMIT_FSIZE, &m_before);
        std::signal(SIGXFSZ, m_signal);
    }

private:
    rlimit m_before{};
    void (*m_signal)(int) = nullptr;
};

} // namespace hammerline::main_window
