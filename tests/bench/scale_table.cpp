// usage: scale_table FOLDER [INSTRUMENTS]. A shop of that many instruments (10 000), four passes each, eight
// quantities, beside one of 10: what it takes to make, to open, to review with the doubt of each reading weighed, to
// open a pass, to judge everything anew, and the bytes of a reading beside the least that it needs. Ten instruments
// stand in the shop, the rest were delivered; in a third shop 300 stand in it and every instrument was written three
// times. The logbooks stay in the folder and are used again. All invented.
//
// Times are the least of several rounds that go through the shops in turn, so that all meet the same load; "cpu" is the
// time of the processor, which a busy machine stretches less.
#include "exchange/tolerance_json.h"
#include "logbook/logbook.h"
#include "logbook/to_review.h"
#include "review/review.h"
#include "shop/judge_shop.h"
#include "tolerance/judge.h"

#include <sqlite3.h>

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <map>
#include <random>
#include <string>

namespace {

using namespace hammerline;
using catalogue::Quantity;
using keyboard::Note;

constexpr std::array quantities{Quantity::Blow, Quantity::LostMotion, Quantity::LetOff,   Quantity::Drop,
                                Quantity::Dip,  Quantity::Aftertouch, Quantity::Checking, Quantity::DamperStart};
constexpr int standing = 10;
constexpr int busy = 300;

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

/// The third shop: 300 stand in it, every instrument was written three times.
void makeBusy(const std::string &from, const std::string &path)
{
    std::filesystem::copy_file(from, path);
    const logbook::Stamp stamp{readings::Instant(std::chrono::milliseconds(1'770'000'000'000)), "Ada"};
    auto book = logbook::Logbook::open(path);
    for (auto &each : book.instruments()) {
        if (each.id > standing && each.id <= busy)
            each.state = instrument::State::InWork;
        for (const char *remark : {"seen", "seen again"}) {
            each.remark = remark;
            static_cast<void>(book.changeInstrument(each, stamp, {}));
        }
    }
}

double processorSeconds()
{
    timespec spent{};
    clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &spent);
    return static_cast<double>(spent.tv_sec) + static_cast<double>(spent.tv_nsec) / 1e9;
}

/// The least of what several rounds took.
struct Least {
    double wall = 1e9;
    double processor = 1e9;

    template <typename Act>
    void time(const Act &act)
    {
        const auto began = std::chrono::steady_clock::now();
        const double before = processorSeconds();
        act();
        processor = std::min(processor, processorSeconds() - before);
        wall = std::min(wall, std::chrono::duration<double>(std::chrono::steady_clock::now() - began).count());
    }
};

/// The most memory that the process has held so far.
long mostKilobytes()
{
    std::ifstream status("/proc/self/status");
    for (std::string line; std::getline(status, line);)
        if (line.starts_with("VmHWM:"))
            return std::strtol(line.c_str() + 6, nullptr, 10);
    return 0;
}

/// What the window asks before the shop lead sees the queue: the list of all, and what stands in the shop judged.
std::size_t openAndReview(const std::string &path)
{
    const auto book = logbook::Logbook::open(path);
    std::map<std::string, tolerance::Judge> judges;
    std::vector<review::Item> items, inDoubt;
    for (const logbook::InstrumentLine &each : book.instrumentLines()) {
        if (each.state == instrument::State::Delivered)
            continue;
        const auto of = book.instrument(each.id).value();
        if (!judges.contains(of.toleranceText))
            judges.emplace(of.toleranceText, exchange::readToleranceSet(of.toleranceText, of.toleranceId).value());
        for (const auto &pass : logbook::passesToReview(book, of, judges.at(of.toleranceText))) {
            std::ranges::move(review::itemsOf(pass), std::back_inserter(items));
            std::ranges::move(review::inDoubtOf(pass), std::back_inserter(inDoubt));
        }
    }
    review::putWorstFirst(items);
    review::putLeastSureFirst(inDoubt);
    return items.size() + inDoubt.size();
}

/// With a verdict for every note: limits, deviation, step, probability.
std::int64_t judgeInFull(const std::string &path)
{
    const auto book = logbook::Logbook::open(path, logbook::Access::ReadOnly);
    const tolerance::Judge judge(set());
    std::map<instrument::InstrumentId, logbook::Keyboard> keyboards;
    for (auto &each : book.keyboards())
        keyboards.emplace(each.instrument, std::move(each));
    std::int64_t verdicts = 0;
    for (const logbook::PassOf &pass : book.passesOfAll()) {
        const auto &on = keyboards.at(pass.instrument);
        verdicts += std::ssize(judge.judge(book.values(pass.pass), on.compass, on.sections).verdicts);
    }
    return verdicts;
}

/// By two sets each, on so many threads.
void judgeTwice(const std::string &path, unsigned threads)
{
    shop::Course course;
    static_cast<void>(shop::judgeShop(path, {.set = set()}, threads, course));
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

/// One row of numbers of a query.
std::vector<double> numbersOf(const std::string &path, const char *sql)
{
    sqlite3 *database = nullptr;
    sqlite3_stmt *row = nullptr;
    sqlite3_open_v2(path.c_str(), &database, SQLITE_OPEN_READONLY, nullptr);
    sqlite3_prepare_v2(database, sql, -1, &row, nullptr);
    std::vector<double> numbers;
    if (sqlite3_step(row) == SQLITE_ROW)
        for (int column = 0; column < sqlite3_column_count(row); ++column)
            numbers.push_back(sqlite3_column_double(row, column));
    sqlite3_finalize(row);
    sqlite3_close(database);
    return numbers;
}

/// The least that a reading needs: what its value says (Shannon), since in a pass read throughout each place follows
/// from the one before. Who, when and by which deed are the pass's.
double leastBytes(const std::string &path)
{
    const auto bits = numbersOf(path, "SELECT sum(-n * log2(n / t)) / t FROM (SELECT 1.0 * count(*) AS n, "
                                      "(SELECT 1.0 * count(*) FROM reading) AS t FROM reading GROUP BY value)");
    return bits.empty() ? 0 : bits[0] / 8;
}

void tellBytes(const std::string &path, double count)
{
    const auto rows = numbersOf(path, "SELECT sum(payload), sum(unused), sum(pgsize) FROM dbstat('main', 1) WHERE name "
                                      "= 'reading'");
    const auto history = numbersOf(path, "SELECT sum(pgsize) FROM dbstat('main', 1) WHERE name = 'history'");
    const auto file = static_cast<double>(std::filesystem::file_size(path));
    std::printf("\nbytes a reading: %.1f in the file\n", file / count);
    if (rows.size() == 3 && history.size() == 1)
        std::printf(
            "  its row %.1f, SQLite's cells and pages around it %.1f, room left in pages %.1f, history %.1f (of "
            "these its mark in the history 4), all else %.1f\n",
            rows[0] / count, (rows[2] - rows[0] - rows[1]) / count, rows[1] / count, history[0] / count,
            (file - rows[2] - history[0]) / count);
}

struct Shop {
    std::string path;
    int instruments;
    Least opening{};
    Least onePass{};
    std::size_t items = 0;
    long opened = 0;
};

void tellOpening(std::vector<Shop> &shops)
{
    for (int round = 0; round < 9; ++round)
        for (Shop &shop : shops) {
            shop.opening.time([&] { shop.items = openAndReview(shop.path); });
            if (round == 0)
                shop.opened = mostKilobytes();
            const auto book = logbook::Logbook::open(shop.path);
            const auto last = book.passes(shop.instruments).back().id;
            shop.onePass.time([&] { static_cast<void>(book.readings(last)); });
        }
    std::printf("%-28s %10s %10s %8s %12s %10s\n", "open and review", "wall ms", "cpu ms", "items", "one pass ms",
                "most MB");
    for (const Shop &shop : shops)
        std::printf("%-28s %10.1f %10.1f %8zu %12.2f %10.1f\n", std::filesystem::path(shop.path).filename().c_str(),
                    shop.opening.wall * 1e3, shop.opening.processor * 1e3, shop.items, shop.onePass.wall * 1e3,
                    static_cast<double>(shop.opened) / 1024);
    std::printf("%-28s %10.2f %10.2f times\n", "second beside first", shops[1].opening.wall / shops[0].opening.wall,
                shops[1].opening.processor / shops[0].opening.processor);
}

void tellJudging(const Shop &shop)
{
    const double count = 4.0 * 88 * std::size(quantities) * shop.instruments;
    Least bare;
    Least alone;
    Least together;
    Least full;
    for (int round = 0; round < 3; ++round) {
        bare.time([&] { readBare(shop.path); });
        alone.time([&] { judgeTwice(shop.path, 1); });
        together.time([&] { judgeTwice(shop.path, 2); });
        full.time([&] { judgeInFull(shop.path); });
    }
    std::printf("\n%-44s %9s %9s %9s\n", "judge everything by another set", "M/s", "M/cpu-s", "of bare");
    const auto line = [&](const char *what, const Least &least) {
        std::printf("%-44s %9.1f %9.1f %9.2f\n", what, count / least.wall / 1e6, count / least.processor / 1e6,
                    bare.wall / least.wall);
    };
    line("bare SQLite reads the rows, one thread", bare);
    line("judged by both sets and counted, one thread", alone);
    line("judged by both sets and counted, two threads", together);
    line("a verdict in full for each note, one thread", full);
    std::printf("most memory %.1f MB\n", static_cast<double>(mostKilobytes()) / 1024);
}

} // namespace

int main(int argc, char **argv)
{
    if (argc < 2)
        return 2;
    const std::string folder = argv[1];
    const int many = argc > 2 ? std::atoi(argv[2]) : 10'000;
    std::vector<Shop> shops{{folder + "/shop-10", standing},
                            {folder + "/shop-" + std::to_string(many), many},
                            {folder + "/shop-" + std::to_string(many) + "-300", many}};
    for (const Shop &shop : {shops[0], shops[1]})
        if (!std::filesystem::exists(shop.path))
            make(shop.path, shop.instruments);
    if (!std::filesystem::exists(shops[2].path))
        makeBusy(shops[1].path, shops[2].path);
    std::printf("a shop of %d instruments, four passes each: %.2f million readings\n\n", many,
                4.0 * 88 * 8 * many / 1e6);
    tellOpening(shops);
    tellJudging(shops[1]);
    tellBytes(shops[1].path, 4.0 * 88 * std::size(quantities) * many);
    std::printf("  least: %.2f for the value (hundredths drawn evenly), nothing for its place, and 4 for its mark\n",
                leastBytes(shops[0].path));
}
