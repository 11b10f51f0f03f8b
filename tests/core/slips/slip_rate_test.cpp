// How often honest readings are doubted and seeded slips are seen, on the sample passes, note by note as a technician
// enters them.
#include "slips/slips.h"

#include "exchange/exchange.h"
#include "exchange/readings_csv.h"

#include <algorithm>
#include <cstdio>
#include <filesystem>
#include <gtest/gtest.h>

namespace hammerline::slips {
namespace {

struct Count {
    int readings = 0, doubted = 0, seeded = 0, seen = 0;
};

/// Walks one pass; every fifth reading is tried ten times too large, ten times too small and in the wrong unit first.
void walk(std::vector<readings::Reading> readings, Count &count)
{
    std::ranges::stable_sort(readings, {},
                             [](const auto &one) { return std::pair(one.place.quantity, one.place.note); });
    readings::ValueTable entered;
    for (const readings::Reading &reading : readings) {
        const Surroundings around{.pass = &entered};
        Candidate candidate{reading.place.quantity, reading.place.note, reading.value};
        if (reading.value.dimension() == units::Dimension::Mass)
            candidate.typedUnit = units::Unit::Gram;
        ++count.readings;
        count.doubted += suspect(candidate, around).has_value() ? 1 : 0;
        const bool neighboursKnown = entered.column(reading.place.quantity).size() >= 8;
        if (count.readings % 5 == 0 && neighboursKnown && reading.value.inDisplay() > 1)
            for (const double factor : {10.0, 0.1, 1 / 25.4}) {
                candidate.value =
                    units::Amount::fromDisplay(reading.value.dimension(), reading.value.inDisplay() * factor);
                ++count.seeded;
                count.seen += suspect(candidate, around).has_value() ? 1 : 0;
            }
        entered.set(reading.place.quantity, reading.place.note, {reading.value, 1});
    }
}

TEST(SlipRate, HonestReadingsAreSeldomDoubtedAndSeededSlipsAreSeen)
{
    Count count;
    for (const auto &entry : std::filesystem::directory_iterator(HAMMERLINE_SOURCE_DIR "/sample-data/readings")) {
        const std::string path = entry.path().string();
        const exchange::CsvReadingOptions options{.file = path, .compass = {keyboard::Note(-8), keyboard::Note(88)}};
        const auto readings = exchange::readReadingsCsv(exchange::readFile(path).value(), options);
        if (readings)
            walk(readings.value(), count);
    }
    std::printf("%d honest readings, %d doubted (%.2f %%); %d seeded slips, %d seen (%.1f %%)\n", count.readings,
                count.doubted, 100.0 * count.doubted / count.readings, count.seeded, count.seen,
                100.0 * count.seen / count.seeded);
    ASSERT_GT(count.readings, 4000);
    EXPECT_LT(count.doubted, count.readings / 100);
    EXPECT_GT(count.seen * 100, count.seeded * 95);
}

} // namespace
} // namespace hammerline::slips
