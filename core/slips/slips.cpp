#include "slips/slips.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace hammerline::slips {

namespace {

using catalogue::Quantity;
using units::Unit;

// An honest reading strays by less than this many spreads; what explains a slip must come out nearer than that.
constexpr double farSpreads = 6;
constexpr double fittingSpreads = 3;
// Two takes of an honest note give ratios within this of each other's neighbours; see the measured rates in the tests.
constexpr double contradictionMillimetres = 0.5;

double spreadsOff(double value, const Expectation &expected)
{
    return std::abs(value - expected.value) / expected.spread;
}

Slip slipOf(Suspicion suspicion, const Candidate &candidate, const Expectation &expected)
{
    const auto dimension = candidate.value.dimension();
    return {.suspicion = suspicion,
            .value = candidate.value,
            .expected = units::Amount::fromDisplay(dimension, expected.value)};
}

/// The one factor that brings the value where it was expected, if there is one and the value itself does not fit.
std::optional<double> explainingFactor(double value, const Expectation &expected, std::initializer_list<double> factors)
{
    std::optional<double> best;
    for (const double factor : factors)
        if (spreadsOff(value * factor, expected) <= fittingSpreads &&
            (!best || spreadsOff(value * factor, expected) < spreadsOff(value * *best, expected)))
            best = factor;
    return best;
}

constexpr double millimetresPer(Unit unit)
{
    return unit == Unit::Inch ? 25.4 : unit == Unit::Mil ? 0.0254 : 1.0;
}

std::optional<Slip> otherUnit(const Candidate &candidate, const Expectation &expected)
{
    if (candidate.typedUnit == Unit::Gram)
        return std::nullopt;
    const double value = candidate.value.inDisplay();
    for (const Unit unit : {Unit::Millimetre, Unit::Inch, Unit::Mil}) {
        const double factor = millimetresPer(unit) / millimetresPer(candidate.typedUnit);
        if (unit == candidate.typedUnit || spreadsOff(value * factor, expected) > fittingSpreads)
            continue;
        Slip slip = slipOf(Suspicion::WrongUnit, candidate, expected);
        slip.meant = units::Amount::fromDisplay(units::Dimension::Length, value * factor);
        slip.meantUnit = unit;
        return slip;
    }
    return std::nullopt;
}

std::optional<Slip> tenTimes(const Candidate &candidate, const Expectation &expected)
{
    const double value = candidate.value.inDisplay();
    const auto factor = explainingFactor(value, expected, {10.0, 0.1, 100.0, 0.01});
    if (!factor)
        return std::nullopt;
    Slip slip = slipOf(Suspicion::TenTimesOff, candidate, expected);
    slip.meant = units::Amount::fromDisplay(candidate.value.dimension(), value * *factor);
    return slip;
}

/// Aftertouch as the note's other readings give it, with the ratio of the notes around it.
std::optional<Slip> contradiction(const Candidate &candidate, const Surroundings &surroundings)
{
    constexpr std::array tied{Quantity::Blow, Quantity::LetOff, Quantity::Dip, Quantity::Aftertouch};
    if (surroundings.pass == nullptr ||
        (std::ranges::find(tied, candidate.quantity) == tied.end() && candidate.quantity != Quantity::LostMotion))
        return std::nullopt;
    readings::ValueTable values = *surroundings.pass;
    action::OwnRatios others;
    for (const auto &[note, value] : values.column(Quantity::Aftertouch))
        if (note != candidate.note)
            if (const auto ratio = action::ownRatio(values, note))
                others.emplace(note, *ratio);
    const auto ratio = action::medianRatio(others, candidate.note, surroundings.sections);
    if (others.size() < 3 || !ratio)
        return std::nullopt;
    values.set(candidate.quantity, candidate.note, {candidate.value, 1});
    const auto predicted = action::predictedAftertouch(values, candidate.note, ratio->ratio);
    const auto read = values.value(Quantity::Aftertouch, candidate.note);
    if (!predicted || !read)
        return std::nullopt;
    const double doubt = std::max(contradictionMillimetres, 2 * surroundings.gaugeUncertainty.inDisplay());
    if (std::abs(read->inDisplay() - *predicted) <= doubt)
        return std::nullopt;
    return slipOf(Suspicion::ContradictsNote, candidate,
                  {.value = candidate.quantity == Quantity::Aftertouch ? *predicted : candidate.value.inDisplay()});
}

} // namespace

std::string_view idOf(Suspicion suspicion)
{
    switch (suspicion) {
    case Suspicion::TenTimesOff:
        return "ten-times-off";
    case Suspicion::WrongUnit:
        return "wrong-unit";
    case Suspicion::ContradictsNote:
        return "contradicts-note";
    case Suspicion::FarFromNeighbours:
        break;
    }
    return "far-from-neighbours";
}

std::optional<Slip> suspect(const Candidate &candidate, const Surroundings &surroundings)
{
    const auto expected = expectationOf(candidate.quantity, candidate.note, surroundings);
    if (expected && spreadsOff(candidate.value.inDisplay(), *expected) > farSpreads) {
        if (auto slip = tenTimes(candidate, *expected))
            return slip;
        if (auto slip = otherUnit(candidate, *expected))
            return slip;
        if (expected->fromNeighbours)
            return slipOf(Suspicion::FarFromNeighbours, candidate, *expected);
    }
    return contradiction(candidate, surroundings);
}

} // namespace hammerline::slips
