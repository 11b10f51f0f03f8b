// What may be wrong with the content of a set.
#include "tolerance/tolerance.h"

#include <algorithm>
#include <cmath>

namespace hammerline::tolerance {

namespace {

using OptionalLimit = std::optional<units::Amount> Point::*;

/// Collects faults under the name of the place where they stand: "dip, naturals, note 12: …".
class FaultList {
public:
    void add(const std::string &place, const std::string &problem)
    {
        m_faults.push_back({.problem = place.empty() ? problem : place + ": " + problem});
    }
    [[nodiscard]] std::vector<outcome::Fault> take() { return std::move(m_faults); }

private:
    std::vector<outcome::Fault> m_faults;
};

std::string notePlace(const std::string &place, const Point &point)
{
    return place + ", note " + std::to_string(point.note.number());
}

bool hasDimension(const Point &point, units::Dimension dimension)
{
    return point.target.dimension() == dimension && (!point.low || point.low->dimension() == dimension) &&
           (!point.high || point.high->dimension() == dimension);
}

void checkPoint(const Point &point, units::Dimension dimension, const std::string &place, FaultList &faults)
{
    if (!hasDimension(point, dimension)) {
        faults.add(place, std::string("the limits are given in the wrong unit; give them in ") +
                              units::displaySymbol(dimension));
        return;
    }
    if (point.low && *point.low > point.target)
        faults.add(place, "the low limit lies above the target; keep low <= target <= high");
    if (point.high && *point.high < point.target)
        faults.add(place, "the high limit lies below the target; keep low <= target <= high");
    if (point.low && point.high && *point.low > *point.high)
        faults.add(place, "the low limit lies above the high limit; keep low <= target <= high");
}

void checkOrder(const Points &points, const std::string &place, FaultList &faults)
{
    for (std::size_t i = 1; i < points.size(); ++i) {
        if (points[i].note == points[i - 1].note)
            faults.add(notePlace(place, points[i]), "the note has two points; give it one");
        if (points[i].note < points[i - 1].note)
            faults.add(notePlace(place, points[i]), "the points are not in rising order of notes");
    }
}

void checkAllOrNone(const Points &points, OptionalLimit limit, const char *name, const std::string &place,
                    FaultList &faults)
{
    const auto given =
        std::count_if(points.begin(), points.end(), [limit](const Point &p) { return (p.*limit).has_value(); });
    if (given != 0 && given != static_cast<std::ptrdiff_t>(points.size()))
        faults.add(place, std::string(name) + " stands at some points only; give it at every point or at none");
}

void checkPoints(const Points &points, units::Dimension dimension, const std::string &place, FaultList &faults)
{
    for (const auto &point : points)
        checkPoint(point, dimension, notePlace(place, point), faults);
    checkOrder(points, place, faults);
    checkAllOrNone(points, &Point::low, "the low limit", place, faults);
    checkAllOrNone(points, &Point::high, "the high limit", place, faults);
}

bool hasDimensionOrIsZero(units::Amount amount, units::Dimension dimension)
{
    return amount.dimension() == dimension || amount.baseCount() == 0;
}

void checkFigures(const Entry &entry, units::Dimension dimension, const std::string &place, FaultList &faults)
{
    const std::string unit = units::displaySymbol(dimension);
    if (entry.step && entry.step->baseCount() < 0)
        faults.add(place, "the step is negative; give 0 or more");
    if (entry.step && !hasDimensionOrIsZero(*entry.step, dimension))
        faults.add(place, "the step has the wrong unit; give it in " + unit);
    if (entry.expandedUncertainty.baseCount() < 0)
        faults.add(place, "the expanded uncertainty is negative; give 0 or more");
    if (!hasDimensionOrIsZero(entry.expandedUncertainty, dimension))
        faults.add(place, "the expanded uncertainty has the wrong unit; give it in " + unit);
    if (!(entry.coverageFactor > 0) || !std::isfinite(entry.coverageFactor))
        faults.add(place, "the coverage factor must be a number above 0, such as 2");
}

void checkForm(const Entry &entry, const std::string &place, FaultList &faults)
{
    const bool byColour = !entry.naturals.empty() || !entry.sharps.empty();
    if (entry.both.empty() && !byColour)
        faults.add(place, "there are no points; give at least one");
    if (!entry.both.empty() && byColour)
        faults.add(place, "points stand both for all keys and for one colour; give either");
}

void checkEntry(catalogue::ActionKind action, catalogue::Quantity quantity, const Entry &entry, FaultList &faults)
{
    const std::string place(catalogue::idOf(quantity));
    const auto dimension = catalogue::infoOf(quantity).dimension;
    if (!catalogue::has(action, quantity))
        faults.add(place, "a " + std::string(catalogue::idOf(action)) + " action has no such quantity; leave it out");
    checkForm(entry, place, faults);
    checkFigures(entry, dimension, place, faults);
    checkPoints(entry.both, dimension, place, faults);
    checkPoints(entry.naturals, dimension, place + ", naturals", faults);
    checkPoints(entry.sharps, dimension, place + ", sharps", faults);
}

} // namespace

std::vector<outcome::Fault> faultsOf(const ToleranceSet &set)
{
    FaultList faults;
    for (const auto &[quantity, entry] : set.entries)
        checkEntry(set.action, quantity, entry, faults);
    return faults.take();
}

} // namespace hammerline::tolerance
