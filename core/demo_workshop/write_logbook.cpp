#include "demo_workshop/write_logbook.h"

#include "logbook/logbook.h"

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

logbook::Stamp stampOf(const readings::Pass &pass)
{
    return {.at = pass.began, .person = pass.person};
}

outcome::Outcome<bool> fill(logbook::Logbook &book, const MadeInstrument &made)
{
    const logbook::Stamp taken = made.passes.empty() ? logbook::Stamp{} : stampOf(made.passes.front().pass);
    const auto added = book.addInstrument(made.instrument, taken);
    if (!added)
        return added.faults();
    for (const MadePass &one : made.passes) {
        readings::Pass pass = one.pass;
        pass.instrument = added.value().id;
        static_cast<void>(book.importPass(pass, one.readings, stampOf(pass)));
    }
    return true;
}

/// Closed when it returns, so that everything stands in the one file.
outcome::Outcome<bool> writeTo(const std::string &path, const Workshop &workshop)
{
    const readings::Instant opened = workshop.instruments.empty() || workshop.instruments.front().passes.empty()
                                         ? readings::Instant{}
                                         : workshop.instruments.front().passes.front().pass.began;
    auto book = logbook::Logbook::create(path, {.at = opened, .person = {}});
    if (!book)
        return book.faults();
    for (const MadeInstrument &made : workshop.instruments)
        if (const auto filled = fill(book.value(), made); !filled)
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
    const auto made = writeTo(target.scratchPath, workshop);
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
