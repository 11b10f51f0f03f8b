// usage: import_table FOLDER [READINGS]. That many readings (1 000 000) from CSV files into a logbook, from files that
// no cache holds to committed and closed, as `hammerline import` does it: read, every line checked, sorted, digested
// into the history, stored. Beside it the sqlite3 shell's `.import` of the same rows, already as the table's own
// numbers and so with nothing to check, into the same table of a copy of the same logbook, flushed as often.
//
// An instrument's pass seldom has more than 704 readings (eight quantities of 88 notes), so a million are 1 421 files,
// each a pass and a transaction of its own: wide as a person types them, long as `export` writes them. One file of all,
// a pass of many takes, is what nobody has, but it is one transaction and shows the pace without the flushes.
//
// Each job is a process of its own, the jobs take turns, and each time told is the least of several rounds; "cpu" is
// what the processor spent, which a busy machine stretches less. All invented.
#include "exchange/exchange.h"
#include "exchange/readings_csv.h"
#include "logbook/logbook.h"

#include <sqlite3.h>

#include <sys/resource.h>
#include <sys/wait.h>

#include <fcntl.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <functional>
#include <random>
#include <string>

namespace {

using namespace hammerline;
using catalogue::Quantity;
using keyboard::Note;

constexpr std::array quantities{Quantity::Blow, Quantity::LostMotion, Quantity::LetOff,   Quantity::Drop,
                                Quantity::Dip,  Quantity::Aftertouch, Quantity::Checking, Quantity::DamperStart};
constexpr int notes = 88;
constexpr int ofPass = notes * static_cast<int>(std::size(quantities));
constexpr int rounds = 3;
const logbook::Stamp stamp{readings::Instant(std::chrono::milliseconds(1'770'000'000'000)), "Ada"};

std::string numbered(const std::string &folder, const std::string &name, int number)
{
    return folder + '/' + name + '-' + std::to_string(number) + ".csv";
}

void write(const std::string &path, const std::string &text)
{
    std::ofstream(path, std::ios::binary) << text;
    // On disk and out of the cache, so that whoever reads it next reads a disk.
    const int file = ::open(path.c_str(), O_RDONLY);
    ::fsync(file);
    ::posix_fadvise(file, 0, 0, POSIX_FADV_DONTNEED);
    ::close(file);
}

void forget(const std::string &path)
{
    const int file = ::open(path.c_str(), O_RDONLY);
    ::posix_fadvise(file, 0, 0, POSIX_FADV_DONTNEED);
    ::close(file);
}

/// In the order of places, as `export` writes it, which suits the shell best.
std::vector<readings::Reading> reading(std::mt19937 &dice, int takes)
{
    std::vector<readings::Reading> many;
    std::uniform_int_distribution<std::int64_t> hundredths(110, 410);
    for (const Quantity quantity : quantities)
        for (int note = 1; note <= notes; ++note)
            for (int take = 1; take <= takes; ++take)
                many.push_back({.place = {quantity, Note(note), take},
                                .value = units::Length::nanometres(hundredths(dice) * 10'000)});
    return many;
}

std::string wide(const std::vector<readings::Reading> &many)
{
    std::string text = "note";
    for (const Quantity quantity : quantities)
        text.append(",").append(catalogue::idOf(quantity)) += " (mm)";
    text += '\n';
    for (int note = 1; note <= notes; ++note) {
        text += std::to_string(note);
        for (std::size_t column = 0; column < std::size(quantities); ++column)
            text += ',' + units::exactDecimal(many[column * notes + static_cast<std::size_t>(note) - 1].value);
        text += '\n';
    }
    return text;
}

/// Columns of the table `reading`. Nothing is written as an empty text or 0, either of which takes no byte in a row
/// just as NULL does, since `.import` cannot say NULL.
std::string rows(const std::vector<readings::Reading> &many, int pass)
{
    std::string text;
    for (const auto &one : many)
        text += std::to_string(pass) + ',' + std::to_string(static_cast<int>(one.place.quantity) + 1) + ',' +
                std::to_string(one.place.note.number()) + ',' + std::to_string(one.place.take) + ",1," +
                std::to_string(one.value.baseCount()) + ",,,,0,0,1\n";
    return text;
}

struct Spent {
    double wall = 1e9;
    double processor = 1e9;
    long mostKilobytes = 0;
    int status = 0;
};

double seconds(const timeval &time)
{
    return static_cast<double>(time.tv_sec) + static_cast<double>(time.tv_usec) / 1e6;
}

/// In a process of its own, so that its memory and its processor time are its own.
Spent inProcess(const std::function<void()> &act)
{
    const auto began = std::chrono::steady_clock::now();
    const pid_t child = ::fork();
    if (child == 0) {
        try {
            act();
        } catch (const std::exception &broken) {
            std::fprintf(stderr, "%s\n", broken.what());
            ::_exit(1);
        }
        ::_exit(0);
    }
    Spent spent;
    rusage used{};
    ::wait4(child, &spent.status, 0, &used);
    spent.wall = std::chrono::duration<double>(std::chrono::steady_clock::now() - began).count();
    spent.processor = seconds(used.ru_utime) + seconds(used.ru_stime);
    spent.mostKilobytes = used.ru_maxrss;
    if (spent.status != 0)
        std::exit(1);
    return spent;
}

/// Files of one form, and the same as rows.
struct Load {
    const char *title;
    std::string form;
    int files;
    int takes;
    [[nodiscard]] double count() const { return static_cast<double>(ofPass) * files * takes; }
};

void make(const std::string &folder, const Load &load)
{
    std::mt19937 dice(1); // NOLINT(bugprone-random-generator-seed): the same files every time
    for (int number = 1; number <= load.files; ++number) {
        const auto many = reading(dice, load.takes);
        write(numbered(folder, load.form, number), load.form == "wide" ? wide(many) : exchange::writeReadingsCsv(many));
        write(numbered(folder, "rows-" + load.form, number), rows(many, number));
    }
}

/// What `hammerline import` does with a file once the logbook is open.
void importFile(logbook::Logbook &book, const std::string &file)
{
    exchange::CsvReadings readings(exchange::openText(file).value(),
                                   {.file = file, .action = catalogue::ActionKind::Grand});
    const auto source = [&](auto &batch) { return readings.next(batch); };
    static_cast<void>(
        book.importPassFrom({.instrument = 1, .began = stamp.at, .person = stamp.person}, source, stamp).value());
}

void importAll(const std::string &folder, const Load &load, const std::string &path, int files)
{
    auto book = logbook::Logbook::open(path);
    for (int number = 1; number <= files; ++number)
        importFile(book, numbered(folder, load.form, number));
}

/// The shell with the settings of a logbook: those that the file does not keep are said again. Foreign keys are not
/// looked up unless said, as the shell does by itself.
void runShell(const std::string &folder, const Load &load, const std::string &path, bool foreignKeys)
{
    const std::string script = folder + "/script";
    {
        std::ofstream commands(script);
        commands << "PRAGMA synchronous = EXTRA;\nPRAGMA foreign_keys = " << (foreignKeys ? "ON" : "OFF") << ";\n";
        for (int number = 1; number <= load.files; ++number)
            commands << ".import --csv \"" << numbered(folder, "rows-" + load.form, number) << "\" reading\n";
    }
    const int input = ::open(script.c_str(), O_RDONLY);
    ::dup2(input, STDIN_FILENO);
    ::execlp("sqlite3", "sqlite3", "-batch", "-bail", path.c_str(), nullptr);
    std::perror("sqlite3");
    ::_exit(1);
}

/// A logbook with one instrument, and nothing left of the one before.
std::string fresh(const std::string &folder, const std::string &name)
{
    std::string path = folder + '/' + name;
    for (const char *end : {"", "-wal", "-shm"})
        std::filesystem::remove(path + end);
    auto book = logbook::Logbook::create(path, stamp).value();
    static_cast<void>(book.addInstrument({.name = "Piano", .action = catalogue::ActionKind::Grand}, stamp));
    return path;
}

/// The shell goes on after a row that it refuses, so what is in the file is counted.
void requireRows(const std::string &path, double count)
{
    sqlite3 *database = nullptr;
    sqlite3_stmt *row = nullptr;
    sqlite3_open_v2(path.c_str(), &database, SQLITE_OPEN_READONLY, nullptr);
    sqlite3_prepare_v2(database, "SELECT count(*) FROM reading", -1, &row, nullptr);
    const double found = sqlite3_step(row) == SQLITE_ROW ? sqlite3_column_double(row, 0) : 0;
    sqlite3_finalize(row);
    sqlite3_close(database);
    if (found == count)
        return;
    std::fprintf(stderr, "%s holds %.0f readings, not %.0f\n", path.c_str(), found, count);
    std::exit(1);
}

void keepLeast(Spent &least, const Spent &spent)
{
    least.wall = std::min(least.wall, spent.wall);
    least.processor = std::min(least.processor, spent.processor);
    least.mostKilobytes = std::max(least.mostKilobytes, spent.mostKilobytes);
}

void forgetFiles(const std::string &folder, const Load &load)
{
    for (int number = 1; number <= load.files; ++number) {
        forget(numbered(folder, load.form, number));
        forget(numbered(folder, "rows-" + load.form, number));
    }
}

void tell(const char *what, double count, const Spent &spent, const Spent &yardstick)
{
    std::printf("  %-44s %8.0f %10.0f %8.2f %8.2f %8.1f\n", what, count / spent.wall / 1e3,
                count / spent.processor / 1e3, yardstick.wall / spent.wall, yardstick.processor / spent.processor,
                static_cast<double>(spent.mostKilobytes) / 1024);
}

void compare(const std::string &folder, const Load &load)
{
    inProcess([&] { make(folder, load); });
    Spent ours;
    Spent shell;
    Spent shellWithKeys;
    for (int round = 0; round < rounds; ++round) {
        const std::string path = fresh(folder, "ours");
        forgetFiles(folder, load);
        keepLeast(ours, inProcess([&] { importAll(folder, load, path, load.files); }));
        requireRows(path, load.count());
        for (auto *least : {&shell, &shellWithKeys}) {
            const std::string copy = fresh(folder, "shells");
            forgetFiles(folder, load);
            keepLeast(*least, inProcess([&] { runShell(folder, load, copy, least == &shellWithKeys); }));
            requireRows(copy, load.count());
        }
    }
    std::printf("%s\n", load.title);
    tell("sqlite3 .import", load.count(), shell, shell);
    tell("sqlite3 .import, foreign keys looked up", load.count(), shellWithKeys, shell);
    tell("hammerline: checked, with its history", load.count(), ours, shell);
    const auto bytes = [&](const char *name) {
        return static_cast<double>(std::filesystem::file_size(folder + '/' + name)) / load.count();
    };
    std::printf("  bytes a reading in the file: %.1f, with its history; the shell's %.1f\n", bytes("ours"),
                bytes("shells"));
}

void tellMemory(const std::string &folder, const Load &load)
{
    std::printf("most memory by number of readings, %s:", load.title);
    for (const int files : {load.files / 100, load.files / 10, load.files}) {
        const std::string path = fresh(folder, "ours");
        const auto spent = inProcess([&] { importAll(folder, load, path, files); });
        std::printf(" %d: %.1f MB;", files * ofPass, static_cast<double>(spent.mostKilobytes) / 1024);
    }
    std::printf("\n");
}

/// How much memory one file of so many takes wants.
void tellMemoryOfOneFile(const std::string &folder, int mostTakes)
{
    std::printf("most memory by number of readings, one long file:");
    for (const int takes : {mostTakes / 100, mostTakes / 10, mostTakes}) {
        const Load load{"", "takes", 1, takes};
        inProcess([&] { make(folder, load); });
        const std::string path = fresh(folder, "ours");
        const auto spent = inProcess([&] { importAll(folder, load, path, 1); });
        std::printf(" %d: %.1f MB;", takes * ofPass, static_cast<double>(spent.mostKilobytes) / 1024);
    }
    std::printf("\n");
}

} // namespace

int main(int argc, char **argv)
{
    if (argc < 2)
        return 2;
    std::setvbuf(stdout, nullptr, _IOLBF, 0); // a line is to be seen as soon as it is known
    const std::string folder = argv[1];
    const int wanted = argc > 2 ? std::atoi(argv[2]) : 1'000'000;
    const int files = std::max(100, (wanted + ofPass - 1) / ofPass);
    const Load wideFiles{"many wide files, each a pass", "wide", files, 1};
    const Load longFiles{"many long files, each a pass", "long", files, 1};
    const Load oneFile{"one long file, one pass of many takes", "takes", 1, files};
    std::printf("%d readings in %d files\n%-46s %8s %10s %8s %8s %8s\n", files * ofPass, files, "", "k/s", "k/cpu-s",
                "of shell", "cpu", "most MB");
    for (const Load &load : {wideFiles, longFiles, oneFile})
        compare(folder, load);
    tellMemory(folder, longFiles);
    tellMemoryOfOneFile(folder, files);
    return 0;
}
