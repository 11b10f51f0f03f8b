#include "slips/expectation.h"

#include "analysis/analysis.h"

#include <algorithm>
#include <cmath>

namespace hammerline::slips {

namespace {

using keyboard::Note;

constexpr int octave = 12;
constexpr std::size_t mostNeighbours = 8;
constexpr std::size_t leastNeighbours = 3;
// 1.4826 MAD estimates a normal standard deviation.
constexpr double madToSd = 1.4826;
// Neighbours that agree by chance must not make the next honest reading a slip: an action is set by hand in tenths.
constexpr double leastSpreadMillimetres = 0.12;
constexpr double leastSpreadGrams = 2.0;

double leastSpread(units::Dimension dimension, units::Amount gaugeUncertainty)
{
    const double floor = dimension == units::Dimension::Length ? leastSpreadMillimetres : leastSpreadGrams;
    return gaugeUncertainty.dimension() == dimension ? std::max(floor, gaugeUncertainty.inDisplay()) : floor;
}

bool isLike(catalogue::Quantity quantity, Note a, Note b, const keyboard::Sections &sections)
{
    return keyboard::sameSection(sections, a, b) &&
           (!catalogue::infoOf(quantity).comparesWithinColour || a.colour() == b.colour());
}

/// Values of the nearest like notes, nearest first.
std::vector<double> neighboursOf(catalogue::Quantity quantity, Note note, const Surroundings &surroundings)
{
    std::vector<double> values;
    const auto &column = surroundings.pass->column(quantity);
    for (int distance = 1; distance <= octave && values.size() < mostNeighbours; ++distance)
        for (const int side : {-distance, distance}) {
            const Note other(note.number() + side);
            const auto found = column.find(other);
            if (found != column.end() && isLike(quantity, note, other, surroundings.sections))
                values.push_back(found->second.value.inDisplay());
        }
    return values;
}

Expectation fromNeighbours(const std::vector<double> &neighbours, double floor)
{
    const double spread = madToSd * analysis::madOf(neighbours);
    return {.value = analysis::medianOf(neighbours), .spread = std::max(spread, floor), .fromNeighbours = true};
}

} // namespace

std::optional<Expectation> expectationOf(catalogue::Quantity quantity, Note note, const Surroundings &surroundings)
{
    const double floor = leastSpread(catalogue::infoOf(quantity).dimension, surroundings.gaugeUncertainty);
    if (surroundings.pass != nullptr)
        if (const auto neighbours = neighboursOf(quantity, note, surroundings); neighbours.size() >= leastNeighbours)
            return fromNeighbours(neighbours, floor);
    if (surroundings.earlier != nullptr)
        if (const auto earlier = surroundings.earlier->value(quantity, note))
            // Work between two passes moves a note by more than its neighbours differ.
            return Expectation{.value = earlier->inDisplay(),
                               .spread = std::max(4 * floor, 0.05 * earlier->inDisplay())};
    if (surroundings.set == nullptr)
        return std::nullopt;
    const auto limits = tolerance::limitsAt(*surroundings.set, quantity, note);
    if (!limits)
        return std::nullopt;
    const double target = limits->target.inDisplay();
    // A worn action stands several half-widths off before anybody has touched it.
    return Expectation{.value = target,
                       .spread = std::max({4 * floor, 1.5 * limits->halfWidth().value_or(0), 0.08 * target})};
}

} // namespace hammerline::slips
