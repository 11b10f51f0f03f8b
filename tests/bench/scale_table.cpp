// usage: scale_table FOLDER [INSTRUMENTS]. A shop of that many instruments (10 000), four passes each, eight
// quantities, beside one of 10: what it takes to make, to open, to review, to open a pass, to judge everything anew.
// Ten instruments stand in the shop, the rest were delivered. The logbooks stay in the folder and are used again. All
// invented.
#include "exchange/tolerance_json.h"
#include "logbook/logbook.h"
#include "review/review.h"
#include "tolerance/judge.h"

#include <sqlite3.h>

#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <random>
#include <string>

namespace {

using namespace hammerline;
using catalogue::Quantity;
using keyboard::Note;

constexpr std::array quantities{Quantity::Blow, Quantity::LostMotion, Quantity::LetOff,   Quantity::Drop,
                                Quantity::Dip,  Quantity::Aftertouch, Quantity::Checking, Quantity::DamperStart};
constexpr int standing = 10;

units::Amount mm(double value)
{
    return units::Length::millimetres(value);
}

tolerance::ToleranceSet set()
{
    tolerance::ToleranceSet made{.name = "scale", .action = catalogue::ActionKind::Grand};
    for (const Quantity quantity : quantities)
        made.entries[quantity].both = {{.note = Note(1), .low = mm(2.4), .target = mm(3.2), .high = mm(4.0)},
                                       {.note = Note(88), .low = mm(1.2), .target = mm(1.6), .high = mm(2.0)}};
    return made;
}

std::vector<readings::Reading> reading(std::mt19937 &dice)
{
    std::vector<readings::Reading> many;
    std::uniform_int_distribution<std::int64_t> hundredths(110, 410);
    for (const Quantity quantity : quantities)
        for (int note = 1; note <= 88; ++note) {
            const units::Amount value = units::Length::nanometres(hundredths(dice) * 10'000);
            many.push_back({.place = {quantity, Note(note), 1}, .value = value, .typed = units::exactDecimal(value)});
        }
    return many;
}

void make(const std::string &path, int instruments)
{
    std::mt19937 dice(1); // NOLINT(bugprone-random-generator-seed): the same shop every time
    const logbook::Stamp stamp{readings::Instant(std::chrono::milliseconds(1'770'000'000'000)), "Ada"};
    auto book = logbook::Logbook::create(path, stamp).value();
    const std::string text = exchange::writeToleranceSet(set());
    for (int number = 1; number <= instruments; ++number) {
        instrument::Instrument made{.name = "Piano " + std::to_string(number), .action = catalogue::ActionKind::Grand};
        made.state = number <= standing ? instrument::State::InWork : instrument::State::Delivered;
        made.toleranceId = "scale";
        made.toleranceText = text;
        const auto id = book.addInstrument(made, stamp).value().id;
        for (int pass = 0; pass < 4; ++pass)
            static_cast<void>(
                book.importPass({.instrument = id, .began = stamp.at, .person = "Ada"}, reading(dice), stamp));
    }
}

template <typename Act>
double secondsOf(const Act &act)
{
    const auto began = std::chrono::steady_clock::now();
    act();
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - began).count();
}

/// The most memory that the process has held so far.
long mostKilobytes()
{
    std::ifstream status("/proc/self/status");
    for (std::string line; std::getline(status, line);)
        if (line.starts_with("VmHWM:"))
            return std::strtol(line.c_str() + 6, nullptr, 10);
    return 0;
}

/// What the window asks before the shop lead sees the queue.
std::size_t openAndReview(const std::string &path)
{
    const auto book = logbook::Logbook::open(path);
    std::vector<review::JudgedPass> judged;
    for (const auto &each : book.instruments()) {
        if (each.state == instrument::State::Delivered)
            continue;
        const auto own = exchange::readToleranceSet(each.toleranceText, each.toleranceId).value();
        const auto pass = book.passes(each.id).back();
        judged.push_back({each.id, pass.id, tolerance::judge(book.values(pass.id), own, each.compass, {})});
    }
    return review::queueOf(judged).size();
}

std::int64_t judgeAll(const std::string &path)
{
    const auto book = logbook::Logbook::open(path, logbook::Access::ReadOnly);
    const tolerance::Judge judge(set());
    std::int64_t verdicts = 0;
    for (const auto &each : book.instruments())
        for (const auto &pass : book.passes(each.id))
            verdicts += std::ssize(judge.judge(book.values(pass.id), each.compass, each.sections).verdicts);
    return verdicts;
}

/// The yardstick: bare SQLite walks the same rows in their own order and hands over the same four numbers.
std::int64_t readBare(const std::string &path)
{
    sqlite3 *database = nullptr;
    sqlite3_stmt *rows = nullptr;
    sqlite3_open_v2(path.c_str(), &database, SQLITE_OPEN_READONLY | SQLITE_OPEN_NOMUTEX, nullptr);
    sqlite3_prepare_v2(database,
                       "SELECT quantity, note, take, value FROM reading ORDER BY pass, quantity, note, take, version",
                       -1, &rows, nullptr);
    std::int64_t count = 0;
    std::int64_t sum = 0;
    for (; sqlite3_step(rows) == SQLITE_ROW; ++count)
        for (int column = 0; column < 4; ++column)
            sum += sqlite3_column_int64(rows, column);
    sqlite3_finalize(rows);
    sqlite3_close(database);
    return sum == 0 ? 0 : count;
}

void tell(const std::string &path, int instruments)
{
    if (!std::filesystem::exists(path))
        std::printf("%d instruments made in %.1f s\n", instruments, secondsOf([&] { make(path, instruments); }));
    const double count = 4.0 * 88 * std::size(quantities) * instruments;
    std::printf("%d instruments, %.0f readings, %.1f bytes each\n", instruments, count,
                static_cast<double>(std::filesystem::file_size(path)) / count);
    std::size_t items = 0;
    double best = 1e9;
    for (int round = 0; round < 5; ++round)
        best = std::min(best, secondsOf([&] { items = openAndReview(path); }));
    std::printf("  open and review: %.1f ms, %zu items, most memory %ld MB\n", best * 1e3, items,
                mostKilobytes() / 1024);
    const auto book = logbook::Logbook::open(path);
    const auto last = book.passes(instruments).back().id;
    std::printf("  open a pass: %.2f ms\n", 1e3 * secondsOf([&] { static_cast<void>(book.readings(last)); }));
    std::printf("  read by bare SQLite: %.1f million a second\n", count / secondsOf([&] { readBare(path); }) / 1e6);
    std::printf("  judge everything: %.1f million a second, most memory %ld MB\n",
                count / secondsOf([&] { judgeAll(path); }) / 1e6, mostKilobytes() / 1024);
}

} // namespace

int main(int argc, char **argv)
{
    if (argc < 2)
        return 2;
    const std::string folder = argv[1];
    const int many = argc > 2 ? std::atoi(argv[2]) : 10'000;
    for (const int instruments : {standing, many})
        tell(folder + "/shop-" + std::to_string(instruments), instruments);
}
