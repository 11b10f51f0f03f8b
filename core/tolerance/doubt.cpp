#include "tolerance/doubt.h"

#include "units/parse_amount.h"

#include <boost/container/flat_map.hpp>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <string_view>

namespace hammerline::tolerance {

namespace {

using PairRead = std::pair<catalogue::Quantity, keyboard::Note>;

constexpr double gaugeCoverage = 2; ///< of a pass's gauge: see readings::Gauge

/// A rectangular distribution's standard uncertainty (JCGM 100:2008, 4.3.7).
double standardOf(units::Amount halfWidth)
{
    return halfWidth.inDisplay() / std::numbers::sqrt3;
}

/// "31" for 3.1 mm: the value of one digit is value / 31, whatever the scale was. Absent for anything but bare digits.
std::optional<units::Amount> halfOfOneDigit(const readings::Reading &reading)
{
    constexpr std::size_t longest = 9;
    const std::string &typed = reading.typed;
    const bool digits = std::ranges::all_of(typed, [](char one) { return one >= '0' && one <= '9'; });
    if (typed.empty() || typed.size() > longest || !digits)
        return std::nullopt;
    const std::int64_t count = std::stoll(typed);
    if (count == 0)
        return std::nullopt;
    return units::Amount(reading.value.dimension(), reading.value.baseCount() / count / 2);
}

std::optional<units::Amount> halfResolutionIn(units::Unit unit, const readings::Reading &reading)
{
    const units::TypedForm form{.dimension = reading.value.dimension(), .bareUnit = unit, .allowNegative = true};
    const auto parsed = units::parseAmount(reading.typed, form);
    if (!parsed || parsed.value().value != reading.value)
        return std::nullopt;
    return parsed.value().halfResolution;
}

bool speaksOf(const readings::Gauge &gauge, units::Dimension dimension)
{
    return dimension == units::Dimension::Length && gauge.expandedUncertainty != units::Length();
}

double stepOf(const readings::Gauge &gauge)
{
    return standardOf(units::Amount(gauge.resolution)) / 2;
}

/// Without the rounding to the gauge's own step, which comes in with the reading's.
double gaugePart(const std::optional<Limits> &limits, const readings::Gauge &gauge, units::Dimension dimension)
{
    const bool isOfTheRule = limits && limits->rule == Rule::Guarded && limits->expandedUncertainty.inDisplay() > 0;
    if (speaksOf(gauge, dimension) && !isOfTheRule) {
        const double stated = gauge.expandedUncertainty.inMillimetres() / gaugeCoverage, step = stepOf(gauge);
        return std::sqrt(std::max(0.0, (stated - step) * (stated + step)));
    }
    return limits ? limits->expandedUncertainty.inDisplay() / limits->coverageFactor : 0;
}

double resolutionPart(const readings::Gauge &gauge, const std::optional<units::Amount> &halfResolution,
                      units::Dimension dimension)
{
    const double typed = halfResolution ? standardOf(*halfResolution) : 0;
    return dimension == units::Dimension::Length ? std::max(typed, stepOf(gauge)) : typed;
}

using Resolutions = boost::container::flat_map<PairRead, units::Amount>; ///< a pass comes in order: no sorting

/// A whole number of inches or a fraction: 6/64 is written 3/32, 64/64 is written 1.
bool isReduced(const readings::Reading &reading, units::Amount half)
{
    constexpr units::Length halfInch = units::Length::nanometres(12'700'000);
    return reading.typed.find('/') != std::string::npos || half == units::Amount(halfInch);
}

/// The step of the rule behind the fractions of one pass.
class RuleRead {
public:
    explicit RuleRead(const readings::Gauge &gauge)
        : m_half(units::Length::nanometres(gauge.resolution.inNanometres() / 2))
    {
    }

    void hear(const readings::Reading &reading, units::Amount half)
    {
        const auto [at, fresh] = m_finest.try_emplace(reading.place.quantity, half);
        if (!fresh)
            at->second = std::min(at->second, half);
    }

    [[nodiscard]] units::Amount of(const readings::Reading &reading, units::Amount half) const
    {
        if (m_half != units::Amount(units::Length()))
            return std::min(half, m_half);
        const auto finest = m_finest.find(reading.place.quantity);
        return finest == m_finest.end() ? half : std::min(half, finest->second);
    }

private:
    units::Amount m_half; ///< as the gauge states it
    boost::container::flat_map<catalogue::Quantity, units::Amount> m_finest;
};

Resolutions resolutionsOf(const std::vector<readings::Reading> &readings, const readings::Gauge &gauge)
{
    std::vector<std::optional<units::Amount>> halves;
    halves.reserve(readings.size());
    RuleRead rule(gauge);
    for (const readings::Reading &reading : readings) {
        halves.push_back(halfResolutionOf(reading));
        if (halves.back() && isReduced(reading, *halves.back()))
            rule.hear(reading, *halves.back());
    }
    Resolutions coarsest;
    coarsest.reserve(readings.size());
    for (std::size_t i = 0; i < readings.size(); ++i) {
        if (!halves[i])
            continue;
        const auto half = isReduced(readings[i], *halves[i]) ? rule.of(readings[i], *halves[i]) : *halves[i];
        const auto [at, fresh] = coarsest.try_emplace({readings[i].place.quantity, readings[i].place.note}, half);
        if (!fresh)
            at->second = std::max(at->second, half);
    }
    return coarsest;
}

void weigh(Verdict &verdict, const Resolutions &resolutions, const readings::Gauge &gauge)
{
    if (!verdict.value)
        return;
    const auto at = resolutions.find({verdict.quantity, verdict.note});
    const auto half = at != resolutions.end() ? std::optional(at->second) : std::nullopt;
    verdict.doubt = doubtOf(verdict.limits, gauge, half, verdict.value->dimension());
    if (verdict.doubt && verdict.limits)
        verdict.conformanceProbability =
            conformanceProbability(*verdict.value, *verdict.limits, verdict.doubt->combined());
}

} // namespace

std::optional<units::Amount> halfResolutionOf(const readings::Reading &reading)
{
    if (reading.typed.empty())
        return std::nullopt;
    const auto fits = [&](units::Unit unit) { return halfResolutionIn(unit, reading); };
    for (const units::Unit unit : {units::Unit::Millimetre, units::Unit::Inch, units::Unit::Mil})
        if (const auto half = fits(unit))
            return half;
    return halfOfOneDigit(reading);
}

std::optional<Doubt> doubtOf(const std::optional<Limits> &limits, const readings::Gauge &gauge,
                             const std::optional<units::Amount> &halfResolution, units::Dimension dimension)
{
    const Doubt doubt{gaugePart(limits, gauge, dimension), resolutionPart(gauge, halfResolution, dimension)};
    return doubt.combined() > 0 ? std::optional(doubt) : std::nullopt;
}

void weighDoubt(Judgement &judgement, const std::vector<readings::Reading> &readings, const readings::Gauge &gauge)
{
    const Resolutions resolutions = resolutionsOf(readings, gauge);
    for (Verdict &verdict : judgement.verdicts)
        weigh(verdict, resolutions, gauge);
}

double Doubt::combined() const
{
    return std::hypot(gauge, resolution);
}

double Doubt::shareOfResolution() const
{
    const double variance = gauge * gauge + resolution * resolution;
    return variance > 0 ? resolution * resolution / variance : 0;
}

bool Verdict::withinDoubt() const
{
    if (!doubt || !limits || !value)
        return false;
    const auto near = [&](const std::optional<units::Amount> &limit) {
        return limit && (*value - *limit).magnitude().inDisplay() < doubt->expanded();
    };
    return near(limits->low) || near(limits->high);
}

} // namespace hammerline::tolerance
