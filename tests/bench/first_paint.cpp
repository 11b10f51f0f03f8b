// usage: first_paint [RUNS]. From the start of a process to its first finished paint: the desktop with its start page
// and with the invented workshop's logbook, beside a bare window of Qt Widgets and Charts. Each run is a process of its
// own, the three in turn, with settings of their own; offscreen, and on X11 where there is a DISPLAY.
#include "demo_workshop/demo_workshop.h"
#include "demo_workshop/write_logbook.h"

#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <string>
#include <vector>

namespace {

using namespace hammerline;
namespace fs = std::filesystem;

long long monotonicNow()
{
    return std::chrono::duration_cast<std::chrono::nanoseconds>(std::chrono::steady_clock::now().time_since_epoch())
        .count();
}

/// One thing measured, in milliseconds from the start of its process.
struct Row {
    const char *what = "";
    std::vector<double> times{};
};

struct Case {
    std::vector<std::string> command{};
    std::vector<Row> rows{}; ///< a moment written by the process each, in their order
};

/// The child's moments, in milliseconds from the call that made the process.
std::vector<double> run(const std::vector<std::string> &command)
{
    std::vector<char *> arguments;
    for (const std::string &word : command)
        arguments.push_back(const_cast<char *>(word.c_str()));
    arguments.push_back(nullptr);
    int ends[2];
    if (pipe(ends) != 0)
        std::exit(1);
    const long long began = monotonicNow();
    const pid_t child = fork();
    if (child == 0) {
        dup2(ends[1], STDOUT_FILENO);
        close(ends[0]);
        close(ends[1]);
        execv(arguments.front(), arguments.data());
        _exit(127);
    }
    close(ends[1]);
    std::vector<double> moments;
    std::FILE *told = fdopen(ends[0], "r");
    for (long long moment = 0; std::fscanf(told, "%lld", &moment) == 1;)
        moments.push_back(static_cast<double>(moment - began) / 1e6);
    std::fclose(told);
    waitpid(child, nullptr, 0);
    return moments;
}

double quantile(std::vector<double> times, double share)
{
    std::ranges::sort(times);
    return times.empty() ? 0 : times[static_cast<std::size_t>(share * static_cast<double>(times.size() - 1))];
}

void measure(const char *platform, std::vector<Case> cases, int runs)
{
    setenv("QT_QPA_PLATFORM", platform, 1);
    for (int round = -1; round < runs; ++round) // one to fill the disk's cache
        for (Case &each : cases) {
            const auto moments = run(each.command);
            if (moments.size() != each.rows.size()) {
                std::fprintf(stderr, "%s painted %zu times\n", each.command.front().c_str(), moments.size());
                std::exit(1);
            }
            for (std::size_t i = 0; round >= 0 && i < moments.size(); ++i)
                each.rows[i].times.push_back(moments[i]);
        }
    const double bare = quantile(cases.front().rows.front().times, 0.5);
    std::printf("%-10s %-34s %8s %8s %8s %8s  %s\n", platform, "ms from exec", "least", "p25", "median", "p75",
                "ratio");
    for (const Case &each : cases)
        for (const Row &row : each.rows)
            std::printf("%-10s %-34s %8.1f %8.1f %8.1f %8.1f  %.2f\n", "", row.what, quantile(row.times, 0),
                        quantile(row.times, 0.25), quantile(row.times, 0.5), quantile(row.times, 0.75),
                        quantile(row.times, 0.5) / bare);
}

} // namespace

int main(int argc, char **argv)
{
    const int runs = argc > 1 ? std::max(1, std::atoi(argv[1])) : 20;
    std::string folder = fs::temp_directory_path() / "first-paint-XXXXXX";
    if (mkdtemp(folder.data()) == nullptr)
        return 1;
    setenv("HOME", folder.c_str(), 1);
    for (const char *place : {"XDG_CONFIG_HOME", "XDG_DATA_HOME", "XDG_CACHE_HOME"})
        unsetenv(place);
    const std::string logbook = folder + "/demo.hammerline";
    if (!demo_workshop::writeLogbook(demo_workshop::makeWorkshop(),
                                     {.path = logbook, .scratchPath = logbook + "-made"}))
        return 1;
    const fs::path here = fs::read_symlink("/proc/self/exe").parent_path();
    const std::vector<Case> cases{{{here / "first_paint_bare"}, {{"bare window"}}},
                                  {{here / "first_paint_window"}, {{"start page"}}},
                                  {{here / "first_paint_window", logbook},
                                   {{"logbook named, first paint"}, {"its bench"}, {"its review queue"}}}};
    measure("offscreen", cases, runs);
    if (std::getenv("DISPLAY") != nullptr)
        measure("xcb", cases, runs);
    fs::remove_all(folder);
}
