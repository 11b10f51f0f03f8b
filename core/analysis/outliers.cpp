#include "analysis/outliers.h"

#include "analysis/analysis.h"

#include <cmath>

namespace hammerline::analysis {

namespace {

constexpr double madOfNormal = 0.6745;         ///< of an sd of 1
constexpr double sdOverMeanDeviation = 1.2533; ///< √(π/2)

double meanDeviation(std::span<const double> values, double median)
{
    double sum = 0;
    for (const double value : values)
        sum += std::abs(value - median);
    return sum / static_cast<double>(values.size());
}

} // namespace

std::vector<double> modifiedZScores(std::span<const double> values)
{
    const std::vector<double> list(values.begin(), values.end());
    const double median = medianOf(list);
    const double mad = madOf(list);
    const double scale = mad > 0 ? mad / madOfNormal : sdOverMeanDeviation * meanDeviation(values, median);
    std::vector<double> scores;
    for (const double value : values)
        scores.push_back(scale > 0 ? (value - median) / scale : 0);
    return scores;
}

} // namespace hammerline::analysis
