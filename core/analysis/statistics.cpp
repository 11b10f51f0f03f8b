#include "analysis/analysis.h"

#include <boost/math/statistics/univariate_statistics.hpp>

#include <cassert>
#include <cmath>

namespace hammerline::analysis {

namespace {

long double sumOf(std::span<const double> values)
{
    long double sum = 0;
    for (const double value : values)
        sum += value;
    return sum;
}

/// Sum of squared deviations; the second sum takes back what the rounding of the mean put in (corrected two-pass).
long double squaresAbout(long double mean, std::span<const double> values)
{
    long double squares = 0, rest = 0;
    for (const double value : values) {
        const long double deviation = value - mean;
        squares += deviation * deviation;
        rest += deviation;
    }
    return squares - rest * rest / static_cast<long double>(values.size());
}

} // namespace

MeanSd meanSd(std::span<const double> values)
{
    assert(!values.empty());
    const auto count = static_cast<long double>(values.size());
    const long double mean = sumOf(values) / count;
    MeanSd result{.mean = static_cast<double>(mean)};
    if (values.size() > 1)
        result.sd = static_cast<double>(std::sqrt(squaresAbout(mean, values) / (count - 1)));
    return result;
}

double medianOf(std::vector<double> values)
{
    assert(!values.empty());
    return boost::math::statistics::median(values);
}

// Not Boost's median_absolute_deviation: in 1.74 it gives the middle value itself instead of its distance from the
// centre.
double madOf(std::vector<double> values)
{
    const double median = medianOf(values);
    for (double &value : values)
        value = std::abs(value - median);
    return medianOf(std::move(values));
}

} // namespace hammerline::analysis
