#include "tolerance/found_uncertainty.h"

#include <algorithm>
#include <sstream>

namespace hammerline::tolerance {

namespace {

constexpr double studyCoverage = 2;

std::string prefixFor(catalogue::Quantity quantity)
{
    std::string words(catalogue::idOf(quantity));
    std::ranges::replace(words, '_', '-');
    return "Uncertainty of " + words + ": ";
}

std::string sentenceOf(const FoundUncertainty &found)
{
    return prefixFor(found.quantity) + units::exactDecimal(found.expanded) + " " +
           units::displaySymbol(found.expanded.dimension()) + " (k = 2), from the gauge study of \"" + found.gauge +
           "\", " + found.day + ".";
}

/// `source` with the sentence as its last line, an older one of the same quantity left out.
std::string sourceWith(const std::string &source, const FoundUncertainty &found)
{
    const std::string prefix = prefixFor(found.quantity);
    std::string kept;
    std::istringstream lines(source.empty() ? "Limits and targets: no source." : source);
    for (std::string line; std::getline(lines, line);)
        if (!line.starts_with(prefix))
            kept += line + '\n';
    return kept + sentenceOf(found);
}

bool tooNarrow(const Points &points, units::Amount uncertainty)
{
    return std::ranges::any_of(points, [&](const Point &point) {
        return point.low && point.high && *point.high - *point.low < uncertainty + uncertainty;
    });
}

} // namespace

outcome::Outcome<ToleranceSet> countingWith(ToleranceSet set, const FoundUncertainty &found, Rule rule)
{
    const auto entry = set.entries.find(found.quantity);
    if (entry == set.entries.end())
        return outcome::Fault{.problem = "the set does not judge " + std::string(catalogue::idOf(found.quantity)) +
                                         ", which was studied"};
    if (found.expanded.baseCount() <= 0)
        return outcome::Fault{.problem = "the study found no spread at all, and no doubt to count with"};
    entry->second.expandedUncertainty = found.expanded;
    entry->second.coverageFactor = studyCoverage;
    entry->second.rule = rule;
    set.source = sourceWith(set.source, found);
    const std::string ending = " (" + found.gauge + ")";
    if (!set.name.ends_with(ending))
        set.name += ending;
    return set;
}

bool leavesNothingIn(const Entry &entry)
{
    if (entry.rule != Rule::Guarded)
        return false;
    return std::ranges::any_of(std::initializer_list<const Points *>{&entry.both, &entry.naturals, &entry.sharps},
                               [&](const Points *points) { return tooNarrow(*points, entry.expandedUncertainty); });
}

} // namespace hammerline::tolerance
