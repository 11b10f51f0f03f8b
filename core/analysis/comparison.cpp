#include "analysis/analysis.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <vector>

#include <boost/math/distributions/students_t.hpp>

namespace hammerline::analysis {

namespace {

using tolerance::Status;

/// A note read both times.
struct Pair {
    keyboard::Note note{};
    units::Amount before{};
    units::Amount after{};
};

std::vector<Pair> pairsOf(const readings::ValueTable::Column &before, const readings::ValueTable::Column &after)
{
    std::vector<Pair> pairs;
    for (const auto &[note, value] : before)
        if (const auto later = after.find(note); later != after.end())
            pairs.push_back({note, value.value, later->second.value});
    return pairs;
}

std::vector<double> changesOf(const std::vector<Pair> &pairs)
{
    std::vector<double> changes;
    for (const auto &pair : pairs)
        changes.push_back((pair.after - pair.before).inDisplay());
    return changes;
}

void countOuts(catalogue::Quantity quantity, const std::vector<Pair> &pairs, const tolerance::ToleranceSet &set,
               Comparison &comparison)
{
    int outBefore = 0, outAfter = 0, mended = 0, spoiled = 0;
    for (const auto &pair : pairs) {
        const auto limits = tolerance::limitsAt(set, quantity, pair.note);
        if (!limits)
            continue;
        const bool was = tolerance::judgeValue(pair.before, *limits) == Status::Out;
        const bool is = tolerance::judgeValue(pair.after, *limits) == Status::Out;
        outBefore += was ? 1 : 0;
        outAfter += is ? 1 : 0;
        mended += was && !is ? 1 : 0;
        spoiled += is && !was ? 1 : 0;
    }
    comparison.outBefore = outBefore;
    comparison.outAfter = outAfter;
    comparison.mended = mended;
    comparison.spoiled = spoiled;
}

Comparison comparisonOf(catalogue::Quantity quantity, const std::vector<Pair> &pairs,
                        const tolerance::ToleranceSet *set)
{
    Comparison comparison = pairedComparison(changesOf(pairs));
    if (set && set->entries.contains(quantity))
        countOuts(quantity, pairs, *set, comparison);
    return comparison;
}

bool allSame(std::span<const double> values)
{
    return std::all_of(values.begin(), values.end(), [&](double value) { return value == values.front(); });
}

void addLimits(double standardError, Comparison &comparison)
{
    const boost::math::students_t student(*comparison.degreesOfFreedom);
    const double reach = quantile(student, 0.975) * standardError;
    comparison.ci95Low = comparison.meanChange - reach;
    comparison.ci95High = comparison.meanChange + reach;
    comparison.agreementLow = comparison.meanChange - 1.96 * *comparison.sdChange;
    comparison.agreementHigh = comparison.meanChange + 1.96 * *comparison.sdChange;
}

void addTest(double standardError, Comparison &comparison)
{
    const boost::math::students_t student(*comparison.degreesOfFreedom);
    comparison.t = comparison.meanChange / standardError;
    comparison.p = 2 * cdf(complement(student, std::abs(*comparison.t)));
}

} // namespace

Comparisons compare(const readings::ValueTable &before, const readings::ValueTable &after,
                    const tolerance::ToleranceSet *set)
{
    Comparisons comparisons;
    for (const auto quantity : before.quantities()) {
        const auto pairs = pairsOf(before.column(quantity), after.column(quantity));
        if (!pairs.empty())
            comparisons.emplace(quantity, comparisonOf(quantity, pairs, set));
    }
    return comparisons;
}

Comparison pairedComparison(std::span<const double> changes)
{
    assert(!changes.empty());
    Comparison comparison;
    comparison.pairs = static_cast<int>(changes.size());
    const MeanSd spread = meanSd(changes);
    comparison.meanChange = spread.mean;
    if (changes.size() < 2)
        return comparison;
    const bool same = allSame(changes);
    comparison.sdChange = same ? 0 : *spread.sd;
    comparison.degreesOfFreedom = comparison.pairs - 1;
    const double standardError = *comparison.sdChange / std::sqrt(static_cast<double>(comparison.pairs));
    addLimits(standardError, comparison);
    if (!same)
        addTest(standardError, comparison);
    return comparison;
}

} // namespace hammerline::analysis
