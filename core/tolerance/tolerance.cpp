#include "tolerance/tolerance.h"

#include <algorithm>
#include <array>
#include <limits>

#include <boost/math/distributions/normal.hpp>

namespace hammerline::tolerance {

namespace {

using OptionalAmount = std::optional<units::Amount>;

constexpr std::array<std::string_view, 5> statusIds{"in", "marginal", "out", "missing", "unjudged"};

/// What counts as on a limit, in mm or g: a tenth of the base unit of length.
constexpr double onTheLimit = 1e-7;

units::Amount between(units::Amount lower, units::Amount upper, int stepsUp, int steps)
{
    const units::Wide weighted =
        units::Wide{lower.baseCount()} * (steps - stepsUp) + units::Wide{upper.baseCount()} * stepsUp;
    return {lower.dimension(), units::roundedQuotient(weighted, steps)};
}

OptionalAmount between(OptionalAmount lower, OptionalAmount upper, int stepsUp, int steps)
{
    return lower && upper ? OptionalAmount(between(*lower, *upper, stepsUp, steps)) : std::nullopt;
}

Point interpolated(const Points &points, keyboard::Note note)
{
    const auto above = std::find_if(points.begin(), points.end(), [note](const Point &p) { return note < p.note; });
    if (above == points.begin())
        return points.front();
    if (above == points.end())
        return points.back();
    const Point &lower = *std::prev(above), &upper = *above;
    const int stepsUp = note.number() - lower.note.number(), steps = upper.note.number() - lower.note.number();
    Point point;
    point.note = note;
    point.low = between(lower.low, upper.low, stepsUp, steps);
    point.target = between(lower.target, upper.target, stepsUp, steps);
    point.high = between(lower.high, upper.high, stepsUp, steps);
    return point;
}

double nearestLimitDistance(double value, const Limits &limits)
{
    double nearest = std::numeric_limits<double>::infinity();
    if (limits.low)
        nearest = std::min(nearest, value - limits.low->inDisplay());
    if (limits.high)
        nearest = std::min(nearest, limits.high->inDisplay() - value);
    return nearest;
}

/// P(a < Z < b), from the side where the digits are.
double normalBetween(double a, double b)
{
    // Boost's own choice, long double, takes four times as long for digits that nobody sees.
    using Plainly = boost::math::policies::policy<boost::math::policies::promote_double<false>>;
    const boost::math::normal_distribution<double, Plainly> standard;
    if (a > 0)
        return cdf(complement(standard, a)) - cdf(complement(standard, b));
    return cdf(standard, b) - cdf(standard, a);
}

} // namespace

const Points *Entry::pointsFor(keyboard::Colour colour) const
{
    if (!both.empty())
        return &both;
    const Points &own = colour == keyboard::Colour::Natural ? naturals : sharps;
    return own.empty() ? nullptr : &own;
}

std::optional<double> Limits::halfWidth() const
{
    if (!low || !high || *low == *high)
        return std::nullopt;
    return (*high - *low).inDisplay() / 2;
}

std::optional<Limits> limitsAt(const ToleranceSet &set, catalogue::Quantity quantity, keyboard::Note note)
{
    const auto entry = set.entries.find(quantity);
    const Points *points = entry == set.entries.end() ? nullptr : entry->second.pointsFor(note.colour());
    if (!points)
        return std::nullopt;
    const Point point = interpolated(*points, note);
    return Limits{.low = point.low,
                  .target = point.target,
                  .high = point.high,
                  .expandedUncertainty = entry->second.expandedUncertainty,
                  .coverageFactor = entry->second.coverageFactor,
                  .rule = entry->second.rule};
}

std::string_view idOf(Status status)
{
    return statusIds[static_cast<std::size_t>(status)];
}

Status judgeValue(double value, const Limits &limits)
{
    const double inside = nearestLimitDistance(value, limits);
    if (inside < -onTheLimit)
        return Status::Out;
    const bool doubtful = limits.rule == Rule::Guarded && inside < limits.expandedUncertainty.inDisplay() - onTheLimit;
    return doubtful ? Status::Marginal : Status::In;
}

Status judgeValue(units::Amount value, const Limits &limits)
{
    // The same in whole base units, where "on the limit" needs no allowance.
    const std::int64_t uncertainty = limits.rule == Rule::Guarded ? limits.expandedUncertainty.baseCount() : 0;
    const std::int64_t below = limits.low ? (value - *limits.low).baseCount() : uncertainty;
    const std::int64_t above = limits.high ? (*limits.high - value).baseCount() : uncertainty;
    const std::int64_t inside = std::min(below, above);
    if (inside < 0)
        return Status::Out;
    return inside < uncertainty ? Status::Marginal : Status::In;
}

double conformanceProbability(units::Amount value, const Limits &limits)
{
    return conformanceProbability(value, limits, limits.expandedUncertainty.inDisplay() / limits.coverageFactor);
}

double conformanceProbability(units::Amount value, const Limits &limits, double standardUncertainty)
{
    if (standardUncertainty <= 0)
        return nearestLimitDistance(value.inDisplay(), limits) < -onTheLimit ? 0 : 1;
    constexpr double far = std::numeric_limits<double>::infinity();
    return normalBetween(limits.low ? (*limits.low - value).inDisplay() / standardUncertainty : -far,
                         limits.high ? (*limits.high - value).inDisplay() / standardUncertainty : far);
}

} // namespace hammerline::tolerance
