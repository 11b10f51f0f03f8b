#include "analysis/analysis.h"

#include <algorithm>
#include <vector>

namespace hammerline::analysis {

namespace {

using tolerance::Status;
using tolerance::Verdict;
using Verdicts = std::span<const Verdict>;

std::vector<double> valuesIn(Verdicts verdicts)
{
    std::vector<double> values;
    for (const auto &verdict : verdicts)
        if (verdict.value)
            values.push_back(verdict.value->inDisplay());
    return values;
}

int countOf(Verdicts verdicts, Status status)
{
    return static_cast<int>(std::count_if(verdicts.begin(), verdicts.end(),
                                          [status](const Verdict &verdict) { return verdict.status == status; }));
}

void countVerdicts(Verdicts verdicts, QuantitySummary &summary)
{
    summary.missing = countOf(verdicts, Status::Missing);
    summary.in = countOf(verdicts, Status::In);
    summary.marginal = countOf(verdicts, Status::Marginal);
    summary.out = countOf(verdicts, Status::Out);
    summary.uneven = static_cast<int>(
        std::count_if(verdicts.begin(), verdicts.end(), [](const Verdict &verdict) { return verdict.uneven; }));
}

void describe(const std::vector<double> &values, QuantitySummary &summary)
{
    summary.count = static_cast<int>(values.size());
    if (values.empty())
        return;
    const MeanSd spread = meanSd(values);
    summary.mean = spread.mean;
    summary.sd = spread.sd;
    summary.median = medianOf(values);
    summary.mad = madOf(values);
    summary.min = *std::min_element(values.begin(), values.end());
    summary.max = *std::max_element(values.begin(), values.end());
}

std::optional<double> largestStepIn(Verdicts verdicts)
{
    std::optional<double> largest;
    for (const auto &verdict : verdicts)
        if (verdict.stepFromBelow)
            largest = std::max(largest.value_or(0), verdict.stepFromBelow->magnitude().inDisplay());
    return largest;
}

bool isJudged(Verdicts verdicts, const tolerance::ToleranceSet *set)
{
    if (set)
        return set->entries.contains(verdicts.front().quantity);
    return std::any_of(verdicts.begin(), verdicts.end(), [](const Verdict &verdict) { return verdict.limits; });
}

QuantitySummary summaryOf(Verdicts verdicts, const tolerance::ToleranceSet *set)
{
    QuantitySummary summary;
    describe(valuesIn(verdicts), summary);
    summary.largestStep = largestStepIn(verdicts);
    summary.judged = isJudged(verdicts, set);
    if (summary.judged)
        countVerdicts(verdicts, summary);
    return summary;
}

} // namespace

Summaries summarise(const tolerance::Judgement &judgement, const tolerance::ToleranceSet *set)
{
    Summaries summaries;
    Verdicts rest(judgement.verdicts);
    while (!rest.empty()) {
        const auto quantity = rest.front().quantity;
        const auto end = std::find_if(rest.begin(), rest.end(),
                                      [quantity](const Verdict &verdict) { return verdict.quantity != quantity; });
        const auto own = rest.first(static_cast<std::size_t>(end - rest.begin()));
        summaries.emplace(quantity, summaryOf(own, set));
        rest = rest.subspan(own.size());
    }
    return summaries;
}

} // namespace hammerline::analysis
