// How fast readings are judged, beside the least that judging can be: comparing two numbers with two limits.
#include "tolerance/judge.h"

#include <benchmark/benchmark.h>

#include <array>
#include <cmath>
#include <random>
#include <vector>

namespace {

using namespace hammerline;
using catalogue::Quantity;
using keyboard::Note;

constexpr std::array quantities{Quantity::Blow, Quantity::LetOff,     Quantity::Drop,
                                Quantity::Dip,  Quantity::Aftertouch, Quantity::Checking};

tolerance::ToleranceSet taperedSet(tolerance::Rule rule)
{
    const auto mm = [](double value) { return units::Amount(units::Length::millimetres(value)); };
    tolerance::ToleranceSet set{.name = "bench", .action = catalogue::ActionKind::Grand};
    for (const Quantity quantity : quantities) {
        tolerance::Entry &entry = set.entries[quantity];
        entry.both = {{.note = Note(1), .low = mm(2.4), .target = mm(3.2), .high = mm(4.0)},
                      {.note = Note(88), .low = mm(1.2), .target = mm(1.6), .high = mm(2.0)}};
        entry.step = mm(0.6);
        entry.expandedUncertainty = mm(rule == tolerance::Rule::Guarded ? 0.2 : 0);
        entry.rule = rule;
    }
    return set;
}

readings::ValueTable wholePass()
{
    std::mt19937 dice(1);
    std::normal_distribution<double> spread(2.4, 0.6);
    readings::ValueTable values;
    for (const Quantity quantity : quantities)
        for (int number = 1; number <= 88; ++number)
            values.set(quantity, Note(number), {units::Length::millimetres(std::abs(spread(dice))), 1});
    return values;
}

void judgePass(benchmark::State &state, tolerance::Rule rule)
{
    const tolerance::ToleranceSet set = taperedSet(rule);
    const readings::ValueTable values = wholePass();
    for (auto _ : state)
        benchmark::DoNotOptimize(tolerance::judge(values, set, {}, {}));
    state.SetItemsProcessed(state.iterations() * 88 * static_cast<std::int64_t>(quantities.size()));
}

/// The yardstick: the same number of values, each compared with two limits that are known already.
void compareBare(benchmark::State &state)
{
    std::vector<double> values;
    const readings::ValueTable table = wholePass();
    for (const Quantity quantity : quantities)
        for (const auto &[note, value] : table.column(quantity))
            values.push_back(value.value.inDisplay());
    for (auto _ : state) {
        int out = 0;
        for (const double value : values)
            out += value < 1.8 || value > 3.0;
        benchmark::DoNotOptimize(out);
    }
    state.SetItemsProcessed(state.iterations() * static_cast<std::int64_t>(values.size()));
}

BENCHMARK_CAPTURE(judgePass, simple, tolerance::Rule::Simple);
BENCHMARK_CAPTURE(judgePass, guarded, tolerance::Rule::Guarded);
BENCHMARK(compareBare);

} // namespace
