#include "demo_workshop/write_logbook.h"

#include "demo_workshop/inside/fill_logbook.h"
#include "demo_workshop/sample_files.h"
#include "logbook/gauge_studies.h"
#include "logbook/logbook.h"

#include <algorithm>
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

logbook::PlannedStudy planOf(const std::vector<analysis::Trial> &made)
{
    constexpr std::uint32_t seed = 1709; // of the order alone
    logbook::PlannedStudy study{
        .gauge = {.name = "let-off gauge, 0.01 mm", .resolution = units::Length::nanometres(10'000)},
        .plan = {.seed = seed}};
    for (const analysis::Trial &trial : made) {
        if (study.plan.notes.empty() || study.plan.notes.back() != trial.note)
            study.plan.notes.push_back(trial.note);
        if (std::ranges::find(study.plan.people, trial.person) == study.plan.people.end())
            study.plan.people.push_back(trial.person);
        study.plan.takes = std::max(study.plan.takes, trial.take);
    }
    return study;
}

/// A study of the let-off gauge, taken in the afternoon after the last pass; one trial every twenty seconds.
void addStudy(logbook::Logbook &book, readings::Instant begins)
{
    const auto made = trials();
    logbook::GaugeStudies studies(book);
    const auto planned = studies.plan(planOf(made), {.at = begins, .person = made.front().person});
    if (!planned)
        return;
    for (const analysis::StudyStop &stop : orderOf(planned.value().plan)) {
        const auto trial = std::ranges::find_if(made, [&](const analysis::Trial &each) {
            return each.note == stop.note && each.person == stop.person && each.take == stop.take;
        });
        begins += std::chrono::seconds(20);
        static_cast<void>(studies.enter(planned.value().id, stop, trial->value,
                                        units::fixedDecimal(trial->value, units::Unit::Millimetre, 2),
                                        {.at = begins, .person = stop.person}));
    }
}

readings::Instant afterTheLastPass(const Workshop &workshop)
{
    readings::Instant last{};
    for (const MadeInstrument &made : workshop.instruments)
        for (const MadePass &pass : made.passes)
            last = std::max(last, pass.pass.began);
    return last + std::chrono::hours(5);
}

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
    addStudy(book.value(), afterTheLastPass(workshop));
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
