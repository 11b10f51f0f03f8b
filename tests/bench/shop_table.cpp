// usage: shop_table LOGBOOK. The view over a whole shop, read in steps as the window does it: the longest step, all of
// them, the sums, and what it takes again when one instrument was touched; beside bare SQLite walking the same rows.
#include "logbook/logbook.h"
#include "shop/shop_reader.h"

#include <sqlite3.h>

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <fstream>
#include <string>
#include <vector>

namespace {

using namespace hammerline;

template <typename Act>
double secondsOf(const Act &act)
{
    const auto began = std::chrono::steady_clock::now();
    act();
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - began).count();
}

long mostKilobytes()
{
    std::ifstream status("/proc/self/status");
    for (std::string line; std::getline(status, line);)
        if (line.starts_with("VmHWM:"))
            return std::strtol(line.c_str() + 6, nullptr, 10);
    return 0;
}

/// The yardstick: the same rows in their own order, four numbers each.
std::int64_t readBare(const std::string &path)
{
    sqlite3 *database = nullptr;
    sqlite3_stmt *rows = nullptr;
    sqlite3_open_v2(path.c_str(), &database, SQLITE_OPEN_READONLY | SQLITE_OPEN_NOMUTEX, nullptr);
    sqlite3_prepare_v2(database,
                       "SELECT quantity, note, take, value FROM reading ORDER BY pass, quantity, note, take, version",
                       -1, &rows, nullptr);
    std::int64_t count = 0;
    for (; sqlite3_step(rows) == SQLITE_ROW; ++count)
        for (int column = 0; column < 4; ++column)
            static_cast<void>(sqlite3_column_int64(rows, column));
    sqlite3_finalize(rows);
    sqlite3_close(database);
    return count;
}

void tellSteps(std::vector<double> steps)
{
    double sum = 0;
    for (const double step : steps)
        sum += step;
    std::ranges::sort(steps);
    std::printf("  %zu steps in %.2f s, median %.2f ms, 99 of 100 within %.2f ms, longest %.2f ms\n", steps.size(), sum,
                1e3 * steps[steps.size() / 2], 1e3 * steps[steps.size() * 99 / 100], 1e3 * steps.back());
}

} // namespace

int main(int argc, char **argv)
{
    if (argc < 2)
        return 2;
    const auto book = logbook::Logbook::open(argv[1], logbook::Access::ReadOnly);
    shop::ShopReader reader;
    std::printf("  begun in %.2f ms\n", 1e3 * secondsOf([&] { reader.begin(book); }));
    std::vector<double> steps;
    for (bool more = true; more;)
        steps.push_back(secondsOf([&] { more = reader.readNext(book); }));
    tellSteps(std::move(steps));
    std::printf("  begun again, nothing touched: %.2f ms\n", 1e3 * secondsOf([&] { reader.begin(book); }));
    for (const auto by : {shop::By::Person, shop::By::Quantity, shop::By::Month})
        std::printf("  summed by %s in %.2f ms\n", std::string(shop::idOf(by)).c_str(),
                    1e3 * secondsOf([&] { static_cast<void>(shop::rowsOf(reader.tallies(), by, {})); }));
    const auto total = shop::totalOf(reader.tallies(), {});
    std::printf("  %lld readings, most memory %ld MB\n", static_cast<long long>(total.readings),
                mostKilobytes() / 1024);
    std::int64_t rows = 0;
    const double bare = secondsOf([&] { rows = readBare(argv[1]); });
    std::printf("  bare SQLite: %lld rows in %.2f s\n", static_cast<long long>(rows), bare);
}
