#pragma once
// Runs a command in-process, with a clock that stands still and names that count up.

#include "command_line/command_line.h"

#include <filesystem>
#include <fstream>
#include <iterator>
#include <sstream>
#include <string>
#include <vector>

namespace hammerline::test_support {

struct CommandRun {
    int status = -1;
    std::string out{};
    std::string err{};
};

/// `keyFile`: where `record` finds or makes the key.
inline CommandRun runCommand(const std::vector<std::string> &arguments, const std::string &keyFile)
{
    std::ostringstream out;
    std::ostringstream err;
    static int count = 0;
    const auto uid = [] {
        std::string digits = std::to_string(++count);
        return std::string(32 - digits.size(), '0') + digits;
    };
    const auto now = [] { return readings::parseRfc3339("2026-11-02T09:10:00Z").value(); };
    const int status = command_line::run(arguments, {.out = out,
                                                     .err = err,
                                                     .now = now,
                                                     .newUid = uid,
                                                     .person = "Ada Sample",
                                                     .programVersion = "9.8.7",
                                                     .keyFile = keyFile});
    return {.status = status, .out = out.str(), .err = err.str()};
}

inline std::string sampleData(const std::string &name)
{
    return std::string(HAMMERLINE_SOURCE_DIR) + "/sample-data/" + name;
}

inline std::string fileText(const std::string &path)
{
    std::ifstream stream(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(stream), {}};
}

inline std::vector<std::string> linesOf(const std::string &text)
{
    std::vector<std::string> lines;
    std::istringstream stream(text);
    for (std::string line; std::getline(stream, line);)
        lines.push_back(line);
    return lines;
}

/// A folder of its own that is gone afterwards.
class ScratchFolder {
public:
    ScratchFolder()
    {
        std::string name = (std::filesystem::temp_directory_path() / "hammerline-XXXXXX").string();
        m_path = mkdtemp(name.data());
    }
    ScratchFolder(const ScratchFolder &) = delete;
    ScratchFolder &operator=(const ScratchFolder &) = delete;
    ~ScratchFolder()
    {
        std::error_code ignored;
        std::filesystem::remove_all(m_path, ignored);
    }
    [[nodiscard]] std::string file(const std::string &name) const { return m_path + "/" + name; }
    [[nodiscard]] std::string write(const std::string &name, const std::string &text) const
    {
        std::ofstream(file(name), std::ios::binary) << text;
        return file(name);
    }
    [[nodiscard]] std::vector<std::string> names() const
    {
        std::vector<std::string> found;
        for (const auto &entry : std::filesystem::directory_iterator(m_path))
            found.push_back(entry.path().filename().string());
        return found;
    }

private:
    std::string m_path;
};

/// With a key that lasts as long as the process.
inline CommandRun runCommand(const std::vector<std::string> &arguments)
{
    static const ScratchFolder folder;
    return runCommand(arguments, folder.file("keys/key.p12"));
}

} // namespace hammerline::test_support
