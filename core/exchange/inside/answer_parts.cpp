#include "exchange/inside/answer_parts.h"

namespace hammerline::exchange {
namespace {

units::Dimension dimensionOf(catalogue::Quantity quantity)
{
    return catalogue::infoOf(quantity).dimension;
}

void putVerdictCounts(OrderedJson &json, const analysis::QuantitySummary &summary)
{
    json["missing"] = summary.missing;
    json["in"] = summary.in;
    json["marginal"] = summary.marginal;
    json["out"] = summary.out;
    json["uneven"] = summary.uneven;
}

OrderedJson summaryTree(const analysis::QuantitySummary &summary, units::Dimension dimension)
{
    OrderedJson json;
    json["count"] = summary.count;
    if (summary.judged)
        putVerdictCounts(json, summary);
    putMeasure(json, "mean", dimension, summary.mean);
    putMeasure(json, "sd", dimension, summary.sd);
    putMeasure(json, "median", dimension, summary.median);
    putMeasure(json, "mad", dimension, summary.mad);
    putMeasure(json, "min", dimension, summary.min);
    putMeasure(json, "max", dimension, summary.max);
    putMeasure(json, "largest_step", dimension, summary.largestStep);
    return json;
}

OrderedJson comparisonTree(const analysis::Comparison &comparison, units::Dimension dimension)
{
    OrderedJson json;
    json["pairs"] = comparison.pairs;
    putMeasure(json, "mean_change", dimension, comparison.meanChange);
    putMeasure(json, "sd_change", dimension, comparison.sdChange);
    putNumber(json, "t", comparison.t);
    putCount(json, "degrees_of_freedom", comparison.degreesOfFreedom);
    putNumber(json, "p", comparison.p);
    putMeasure(json, "ci95_low", dimension, comparison.ci95Low);
    putMeasure(json, "ci95_high", dimension, comparison.ci95High);
    putMeasure(json, "agreement_low", dimension, comparison.agreementLow);
    putMeasure(json, "agreement_high", dimension, comparison.agreementHigh);
    putCount(json, "out_before", comparison.outBefore);
    putCount(json, "out_after", comparison.outAfter);
    putCount(json, "mended", comparison.mended);
    putCount(json, "spoiled", comparison.spoiled);
    return json;
}

} // namespace

OrderedJson verdictTree(const tolerance::Verdict &verdict)
{
    OrderedJson json;
    json["note"] = verdict.note.number();
    json["name"] = verdict.note.name();
    json["quantity"] = catalogue::idOf(verdict.quantity);
    putAmount(json, "value", verdict.value);
    if (verdict.limits) {
        putAmount(json, "low", verdict.limits->low);
        putAmount(json, "target", verdict.limits->target);
        putAmount(json, "high", verdict.limits->high);
    }
    putAmount(json, "deviation", verdict.deviation);
    json["status"] = tolerance::idOf(verdict.status);
    if (verdict.value && verdict.status != tolerance::Status::Unjudged)
        json["uneven"] = verdict.uneven;
    putNumber(json, "conformance_probability", verdict.conformanceProbability);
    if (verdict.takes > 1)
        json["takes"] = verdict.takes;
    return json;
}

OrderedJson summariesTree(const analysis::Summaries &summaries)
{
    OrderedJson json = OrderedJson::object();
    for (const auto &[quantity, summary] : summaries)
        json[std::string(catalogue::idOf(quantity))] = summaryTree(summary, dimensionOf(quantity));
    return json;
}

OrderedJson comparisonsTree(const analysis::Comparisons &comparisons)
{
    OrderedJson json = OrderedJson::object();
    for (const auto &[quantity, comparison] : comparisons)
        json[std::string(catalogue::idOf(quantity))] = comparisonTree(comparison, dimensionOf(quantity));
    return json;
}

} // namespace hammerline::exchange
