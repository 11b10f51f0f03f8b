#include "action/fit.h"

#include "action/inside/nearest_targets.h"

#include <cmath>
#include <map>
#include <optional>

namespace hammerline::action {

using catalogue::Quantity;

namespace {

constexpr std::array<Quantity, 4> fitted{Quantity::Blow, Quantity::LetOff, Quantity::Dip, Quantity::Aftertouch};
using FourLimits = std::array<tolerance::Limits, 4>;

/// Absent where the set lacks one of the four on this note.
std::optional<FourLimits> limitsOn(const tolerance::ToleranceSet &set, keyboard::Note note)
{
    FourLimits four;
    for (std::size_t i = 0; i < fitted.size(); ++i) {
        const auto limits = tolerance::limitsAt(set, fitted[i], note);
        if (!limits)
            return std::nullopt;
        four[i] = *limits;
    }
    return four;
}

std::optional<outcome::Fault> oneSided(const FourLimits &four, keyboard::Note note)
{
    for (std::size_t i = 0; i < fitted.size(); ++i)
        if (!four[i].low || !four[i].high)
            return outcome::Fault{.problem = std::string(catalogue::idOf(fitted[i])) + " of note " +
                                             std::to_string(note.number()) +
                                             " has no two limits; a fit needs low_mm and high_mm for blow, let_off, "
                                             "dip and aftertouch"};
    return std::nullopt;
}

double nm(units::Amount amount)
{
    return static_cast<double>(amount.baseCount());
}

Wish wishOf(const tolerance::Limits &limits, double factor)
{
    const double margin = limits.rule == tolerance::Rule::Guarded ? nm(limits.expandedUncertainty) : 0;
    Wish wish{.target = nm(limits.target),
              .low = nm(*limits.low) + margin,
              .high = nm(*limits.high) - margin,
              .halfWidth = nm(*limits.high - *limits.low) / 2,
              .factor = factor};
    if (wish.low > wish.high)
        wish.low = wish.high = (nm(*limits.low) + nm(*limits.high)) / 2;
    return wish;
}

units::Length rounded(double nanometres)
{
    return units::Length::nanometres(std::llround(nanometres));
}

/// blow - let_off - r dip + r aftertouch = -r m
FittedNote fitNote(keyboard::Note note, double r, const FourLimits &four, double lostMotion)
{
    const std::array<Wish, 4> wishes{wishOf(four[0], 1), wishOf(four[1], -1), wishOf(four[2], -r), wishOf(four[3], r)};
    const NearestTargets nearest = nearestTargets(wishes, -r * lostMotion);
    const double oldAftertouch = wishes[2].target - lostMotion - (wishes[0].target - wishes[1].target) / r;
    return {.note = note,
            .ratio = r,
            .feasible = nearest.feasible,
            .blow = rounded(nearest.values[0]),
            .letOff = rounded(nearest.values[1]),
            .dip = rounded(nearest.values[2]),
            .aftertouch = rounded(nearest.values[3]),
            .aftertouchOfOldTargets = rounded(oldAftertouch)};
}

units::Length newTarget(const FittedNote &note, Quantity quantity)
{
    return quantity == Quantity::Blow     ? note.blow
           : quantity == Quantity::LetOff ? note.letOff
           : quantity == Quantity::Dip    ? note.dip
                                          : note.aftertouch;
}

using Fitted = std::map<keyboard::Note, FittedNote>;

tolerance::Point pointOf(const FitTask &task, Quantity quantity, keyboard::Note note, const tolerance::Points &old,
                         const Fitted &known)
{
    const auto limits = tolerance::limitsAt(task.set, quantity, note);
    tolerance::Point point{.note = note, .low = limits->low, .target = limits->target, .high = limits->high};
    if (const auto found = known.find(note); found != known.end())
        point.target = newTarget(found->second, quantity);
    for (const tolerance::Point &before : old)
        if (before.note == note) {
            point.source = before.source;
            point.remark = before.remark;
        }
    return point;
}

/// A point for every note of the instrument that `points` judges; left as it is where there is no such note.
void spread(const FitTask &task, Quantity quantity, std::optional<keyboard::Colour> colour, const Fitted &known,
            tolerance::Points &points)
{
    if (points.empty())
        return;
    tolerance::Points spreadOut;
    for (int number = task.compass.first.number(); number <= task.compass.last.number(); ++number)
        if (const keyboard::Note note(number); !colour || note.colour() == *colour)
            spreadOut.push_back(pointOf(task, quantity, note, points, known));
    if (!spreadOut.empty())
        points = spreadOut;
}

tolerance::ToleranceSet withNewTargets(const FitTask &task, const std::vector<FittedNote> &notes)
{
    Fitted known;
    for (const FittedNote &note : notes)
        known.emplace(note.note, note);
    tolerance::ToleranceSet set = task.set;
    for (const Quantity quantity : fitted) {
        tolerance::Entry &entry = set.entries.at(quantity);
        spread(task, quantity, std::nullopt, known, entry.both);
        spread(task, quantity, keyboard::Colour::Natural, known, entry.naturals);
        spread(task, quantity, keyboard::Colour::Sharp, known, entry.sharps);
    }
    return set;
}

} // namespace

outcome::Outcome<Fit> fitTargets(const FitTask &task)
{
    const OwnRatios ratios = ownRatios(task.values, task.compass);
    std::vector<outcome::Fault> faults;
    Fit fit;
    for (int number = task.compass.first.number(); number <= task.compass.last.number(); ++number) {
        const keyboard::Note note(number);
        const auto four = limitsOn(task.set, note);
        if (!four)
            continue;
        if (const auto fault = oneSided(*four, note)) {
            faults.push_back(*fault);
            continue;
        }
        const auto ratio = medianRatio(ratios, note, task.sections);
        if (!ratio)
            return outcome::Fault{.problem = "no note tells its lever ratio; blow, let_off, dip and aftertouch must be "
                                             "read together on at least one note, with a ratio from 3 to 8"};
        const auto lostMotion = tolerance::limitsAt(task.set, Quantity::LostMotion, note);
        fit.notes.push_back(fitNote(note, ratio->ratio, *four, lostMotion ? nm(lostMotion->target) : 0));
    }
    if (!faults.empty())
        return faults;
    if (fit.notes.empty())
        return outcome::Fault{.problem = "the set has no note with blow, let_off, dip and aftertouch together; a fit "
                                         "needs all four"};
    fit.set = withNewTargets(task, fit.notes);
    return fit;
}

} // namespace hammerline::action
