#include "demo_workshop/write_logbook.h"

#include "demo_workshop/inside/fill_logbook.h"

#include <filesystem>

namespace hammerline::demo_workshop {
namespace {

namespace fs = std::filesystem;

/// Removes the scratch logbook and what SQLite keeps beside it, unless it was moved away.
class Scratch {
public:
    explicit Scratch(std::string path) : m_path(std::move(path)) {}
    Scratch(const Scratch &) = delete;
    Scratch &operator=(const Scratch &) = delete;
    ~Scratch()
    {
        std::error_code ignored;
        for (const char *ending : {"", "-wal", "-shm", "-journal"})
            fs::remove(m_path + ending, ignored);
    }

private:
    std::string m_path;
};

/// Closed when it returns, so that everything stands in the one file.
outcome::Outcome<bool> writeTo(const Workshop &workshop, const LogbookTarget &target)
{
    const readings::Instant opened = workshop.instruments.empty() || workshop.instruments.front().passes.empty()
                                         ? readings::Instant{}
                                         : workshop.instruments.front().passes.front().pass.began;
    auto book = logbook::Logbook::create(target.scratchPath, {.at = opened, .person = {}});
    if (!book)
        return book.faults();
    for (const MadeInstrument &made : workshop.instruments)
        if (const auto filled = fill(book.value(), made, target.drawer); !filled)
            return filled.faults();
    return true;
}

/// A log left beside the old file would be read into the new one.
void removeLogsOf(const std::string &path)
{
    for (const char *ending : {"-wal", "-shm", "-journal"})
        fs::remove(path + ending);
}

} // namespace

outcome::Outcome<bool> writeLogbook(const Workshop &workshop, const LogbookTarget &target)
{
    std::error_code unseen;
    if (fs::is_directory(target.path, unseen))
        return outcome::Fault{.file = target.path, .problem = "this is a folder; name a file"};
    if (!target.overwrite && fs::exists(fs::symlink_status(target.path, unseen)))
        return outcome::Fault{.file = target.path,
                              .problem = "the file is there already; name another or give --force"};
    const Scratch scratch(target.scratchPath);
    const auto made = writeTo(workshop, target);
    if (!made)
        return made.faults();
    try {
        removeLogsOf(target.path);
        fs::rename(target.scratchPath, target.path);
    } catch (const fs::filesystem_error &error) {
        throw outcome::BrokenWorld(target.path + ": the logbook cannot be put here: " + error.code().message());
    }
    return true;
}

} // namespace hammerline::demo_workshop
