// The store beside bare SQLite in the same process and folder: the same row into a table of the same columns,
// write-ahead log, a flush at every commit. Ours writes the entry of the history, its digest and the row; bare SQLite
// the row alone.
//
// Single commits are taken in turns, one of ours and one of theirs, so that both meet the same disk; counters are in
// microseconds. Set TMPDIR to the disk that is to be measured.

#include "logbook/logbook.h"
#include "logbook/verify_history.h"
#include "logbook/verify_instrument.h"

#include <benchmark/benchmark.h>
#include <sqlite3.h>

#include <algorithm>
#include <chrono>
#include <cstdlib>
#include <filesystem>
#include <stdexcept>
#include <string>
#include <vector>

namespace {

using namespace std::chrono_literals;
namespace catalogue = hammerline::catalogue;
namespace keyboard = hammerline::keyboard;
namespace logbook = hammerline::logbook;
namespace readings = hammerline::readings;
namespace units = hammerline::units;

const logbook::Stamp stamp{readings::Instant(1'770'000'000'000ms), "Ada"};

class Folder {
public:
    Folder()
    {
        std::string pattern = (std::filesystem::temp_directory_path() / "logbook-bench-XXXXXX").string();
        m_path = mkdtemp(pattern.data());
    }
    Folder(const Folder &) = delete;
    Folder &operator=(const Folder &) = delete;
    ~Folder() { std::filesystem::remove_all(m_path); }
    [[nodiscard]] std::string file(const char *name) const { return (m_path / name).string(); }

private:
    std::filesystem::path m_path;
};

/// Bare SQLite, as fast as one row can be written safely.
class RawTable {
public:
    explicit RawTable(const std::string &path)
    {
        require(sqlite3_open(path.c_str(), &m_database));
        run("PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL;"
            "CREATE TABLE reading(pass INTEGER NOT NULL, quantity INTEGER NOT NULL, note INTEGER NOT NULL,"
            " take INTEGER NOT NULL, version INTEGER NOT NULL, value INTEGER, typed TEXT, remark TEXT, person TEXT,"
            " at INTEGER, origin INTEGER, deed INTEGER NOT NULL,"
            " PRIMARY KEY(pass, quantity, note, take, version)) STRICT, WITHOUT ROWID");
        require(sqlite3_prepare_v2(m_database,
                                   "INSERT INTO reading VALUES (1, ?1, ?2, ?3, 1, ?4, ?5, NULL, NULL, NULL, NULL, ?6)",
                                   -1, &m_insert, nullptr));
    }
    RawTable(const RawTable &) = delete;
    RawTable &operator=(const RawTable &) = delete;
    ~RawTable()
    {
        sqlite3_finalize(m_insert);
        sqlite3_close(m_database);
    }
    void run(const char *sql) { require(sqlite3_exec(m_database, sql, nullptr, nullptr, nullptr)); }
    void insert(const readings::Reading &reading, std::int64_t deed)
    {
        sqlite3_bind_int(m_insert, 1, static_cast<int>(reading.place.quantity));
        sqlite3_bind_int(m_insert, 2, reading.place.note.number());
        sqlite3_bind_int(m_insert, 3, reading.place.take);
        sqlite3_bind_int64(m_insert, 4, reading.value.baseCount());
        sqlite3_bind_text(m_insert, 5, reading.typed.c_str(), -1, SQLITE_STATIC);
        sqlite3_bind_int64(m_insert, 6, deed);
        if (sqlite3_step(m_insert) != SQLITE_DONE)
            throw std::runtime_error(sqlite3_errmsg(m_database));
        sqlite3_reset(m_insert);
    }

private:
    void require(int result)
    {
        if (result != SQLITE_OK)
            throw std::runtime_error(sqlite3_errmsg(m_database));
    }
    sqlite3 *m_database = nullptr;
    sqlite3_stmt *m_insert = nullptr;
};

logbook::Logbook workshop(const std::string &path)
{
    auto made = logbook::Logbook::create(path, stamp).value();
    static_cast<void>(made.addInstrument({.name = "Upright"}, stamp));
    static_cast<void>(made.beginPass({.instrument = 1, .began = stamp.at, .person = "Ada"}, stamp));
    return made;
}

/// Distances note by note, quantity by quantity, then the next take: typed with a comma, so that the text is kept.
readings::Reading readingNumber(int number)
{
    constexpr catalogue::Quantity quantities[] = {catalogue::Quantity::Blow,        catalogue::Quantity::LostMotion,
                                                  catalogue::Quantity::LetOff,      catalogue::Quantity::Dip,
                                                  catalogue::Quantity::Aftertouch,  catalogue::Quantity::Checking,
                                                  catalogue::Quantity::DamperStart, catalogue::Quantity::KeyHeight};
    const int note = number % 88 + 1;
    const int tenths = 20 + number % 17;
    return {.place = {quantities[number / 88 % 8], keyboard::Note(note), number / (88 * 8) + 1},
            .value = units::Length::nanometres(tenths * std::int64_t{100'000}),
            .typed = std::to_string(tenths / 10) + ',' + std::to_string(tenths % 10)};
}

std::vector<readings::Reading> manyReadings(int count)
{
    std::vector<readings::Reading> many;
    for (int number = 0; number < count; ++number)
        many.push_back(readingNumber(number));
    std::ranges::sort(many, {}, &readings::Reading::place);
    return many;
}

template <typename Act>
double microseconds(const Act &act)
{
    const auto began = std::chrono::steady_clock::now();
    act();
    return std::chrono::duration<double, std::micro>(std::chrono::steady_clock::now() - began).count();
}

double quantile(std::vector<double> &sorted, double share)
{
    std::ranges::sort(sorted);
    return sorted[static_cast<std::size_t>(share * static_cast<double>(sorted.size() - 1))];
}

void enterBesideRawCommit(benchmark::State &state)
{
    const Folder folder;
    auto ours = workshop(folder.file("ours"));
    RawTable raw(folder.file("raw"));
    std::vector<double> oursTimes;
    std::vector<double> rawTimes;
    int number = 0;
    for (auto _ : state) {
        const auto reading = readingNumber(number++);
        const auto enter = [&] { oursTimes.push_back(microseconds([&] { ours.enter(1, reading, stamp); })); };
        const auto insert = [&] { rawTimes.push_back(microseconds([&] { raw.insert(reading, number); })); };
        if (number % 2 == 0) {
            enter();
            insert();
        } else {
            insert();
            enter();
        }
    }
    state.counters["ours_median"] = quantile(oursTimes, 0.5);
    state.counters["raw_median"] = quantile(rawTimes, 0.5);
    state.counters["ours_p99"] = quantile(oursTimes, 0.99);
    state.counters["raw_p99"] = quantile(rawTimes, 0.99);
    state.counters["median_ratio"] = quantile(oursTimes, 0.5) / quantile(rawTimes, 0.5);
    state.counters["p99_ratio"] = quantile(oursTimes, 0.99) / quantile(rawTimes, 0.99);
}
BENCHMARK(enterBesideRawCommit)->Iterations(5'000)->Unit(benchmark::kMicrosecond);

void importPass(benchmark::State &state)
{
    const auto many = manyReadings(static_cast<int>(state.range(0)));
    for (auto _ : state) {
        state.PauseTiming();
        const Folder folder;
        auto ours = workshop(folder.file("ours"));
        state.ResumeTiming();
        static_cast<void>(ours.importPass({.instrument = 1, .began = stamp.at, .person = "Ada"}, many, stamp));
        state.PauseTiming();
        static_cast<void>(ours.copyTo(folder.file("copy")));
        state.counters["bytes_a_reading"] =
            static_cast<double>(std::filesystem::file_size(folder.file("copy"))) / static_cast<double>(many.size());
        state.ResumeTiming();
    }
    state.SetItemsProcessed(state.iterations() * state.range(0));
}
BENCHMARK(importPass)->Arg(704)->Arg(200'000)->Unit(benchmark::kMillisecond)->UseRealTime();

void importRaw(benchmark::State &state)
{
    const auto many = manyReadings(static_cast<int>(state.range(0)));
    for (auto _ : state) {
        state.PauseTiming();
        const Folder folder;
        RawTable raw(folder.file("raw"));
        state.ResumeTiming();
        raw.run("BEGIN");
        for (const auto &reading : many)
            raw.insert(reading, 1);
        raw.run("COMMIT");
    }
    state.SetItemsProcessed(state.iterations() * state.range(0));
}
BENCHMARK(importRaw)->Arg(704)->Arg(200'000)->Unit(benchmark::kMillisecond)->UseRealTime();

/// Reading a pass of eight quantities, and what the bench asks after every reading.
void openPass(benchmark::State &state)
{
    const Folder folder;
    auto ours = workshop(folder.file("ours"));
    const auto pass = ours.importPass({.instrument = 1}, manyReadings(704), stamp);
    for (auto _ : state)
        benchmark::DoNotOptimize(ours.readings(pass.id));
    state.SetItemsProcessed(state.iterations() * 704);
}
BENCHMARK(openPass)->Unit(benchmark::kMicrosecond);

void valuesOfPass(benchmark::State &state)
{
    const Folder folder;
    auto ours = workshop(folder.file("ours"));
    const auto pass = ours.importPass({.instrument = 1}, manyReadings(704), stamp);
    for (auto _ : state)
        benchmark::DoNotOptimize(ours.values(pass.id));
    state.SetItemsProcessed(state.iterations() * 704);
}
BENCHMARK(valuesOfPass)->Unit(benchmark::kMicrosecond);

void undoableAmongDeeds(benchmark::State &state)
{
    const Folder folder;
    auto ours = workshop(folder.file("ours"));
    for (int number = 0; number < 704; ++number)
        ours.enter(1, readingNumber(number), stamp);
    state.counters["bytes_a_reading_entered"] = [&] {
        static_cast<void>(ours.copyTo(folder.file("copy")));
        return static_cast<double>(std::filesystem::file_size(folder.file("copy"))) / 704;
    }();
    for (auto _ : state)
        benchmark::DoNotOptimize(ours.undoable(1));
}
BENCHMARK(undoableAmongDeeds)->Unit(benchmark::kMicrosecond);

void verifyHistory(benchmark::State &state)
{
    const Folder folder;
    {
        auto ours = workshop(folder.file("ours"));
        static_cast<void>(ours.importPass({.instrument = 1}, manyReadings(100'000), stamp));
    }
    for (auto _ : state)
        benchmark::DoNotOptimize(logbook::verifyHistory(folder.file("ours")));
    state.SetItemsProcessed(state.iterations() * 100'000);
}
BENCHMARK(verifyHistory)->Unit(benchmark::kMillisecond);

/// One of a hundred, each with a thousand readings: what stands before a record or a handing over.
void verifyInstrument(benchmark::State &state)
{
    const Folder folder;
    {
        auto ours = workshop(folder.file("ours"));
        for (int more = 2; more <= 100; ++more)
            static_cast<void>(ours.addInstrument({.name = "Upright"}, stamp));
        for (int instrument = 1; instrument <= 100; ++instrument)
            static_cast<void>(ours.importPass({.instrument = instrument}, manyReadings(1'000), stamp));
    }
    for (auto _ : state)
        benchmark::DoNotOptimize(logbook::verifyInstrument(folder.file("ours"), 50));
}
BENCHMARK(verifyInstrument)->Unit(benchmark::kMillisecond);

} // namespace
