#include "action/lever_model.h"

#include "analysis/analysis.h"

#include <vector>

namespace hammerline::action {

using catalogue::ActionKind;
using catalogue::Quantity;

namespace {

constexpr int lowestRatio = 3, highestRatio = 8;

} // namespace

std::optional<double> ownRatio(const readings::ValueTable &values, keyboard::Note note)
{
    const auto blow = values.value(Quantity::Blow, note), letOff = values.value(Quantity::LetOff, note);
    const auto dip = values.value(Quantity::Dip, note), aftertouch = values.value(Quantity::Aftertouch, note);
    if (!blow || !letOff || !dip || !aftertouch)
        return std::nullopt;
    const units::Amount lostMotion = values.value(Quantity::LostMotion, note).value_or(units::Amount{});
    const std::int64_t hammer = (*blow - *letOff).baseCount();
    const std::int64_t key = (*dip - *aftertouch - lostMotion).baseCount();
    if (key <= 0 || hammer < lowestRatio * key || hammer > highestRatio * key)
        return std::nullopt;
    return static_cast<double>(hammer) / static_cast<double>(key);
}

OwnRatios ownRatios(const readings::ValueTable &values, const keyboard::Compass &compass)
{
    OwnRatios ratios;
    for (const auto &[note, aftertouch] : values.column(Quantity::Aftertouch))
        if (const auto ratio = compass.contains(note) ? ownRatio(values, note) : std::nullopt)
            ratios.emplace(note, *ratio);
    return ratios;
}

std::optional<LeverRatio> medianRatio(const OwnRatios &ratios, keyboard::Note note, const keyboard::Sections &sections)
{
    std::vector<double> like, all;
    for (const auto &[other, ratio] : ratios) {
        all.push_back(ratio);
        if (other.colour() == note.colour() && keyboard::sameSection(sections, other, note))
            like.push_back(ratio);
    }
    if (!like.empty())
        return LeverRatio{analysis::medianOf(like), RatioSource::SameColourAndSection};
    if (!all.empty())
        return LeverRatio{analysis::medianOf(all), RatioSource::Instrument};
    return std::nullopt;
}

LeverRatio ratioOf(const OwnRatios &ratios, keyboard::Note note, const keyboard::Sections &sections, double setupRatio)
{
    if (const auto own = ratios.find(note); own != ratios.end())
        return {own->second, RatioSource::Own};
    return medianRatio(ratios, note, sections).value_or(LeverRatio{setupRatio, RatioSource::Setup});
}

std::optional<double> predictedAftertouch(const readings::ValueTable &values, keyboard::Note note, double ratio)
{
    const auto blow = values.value(Quantity::Blow, note), letOff = values.value(Quantity::LetOff, note);
    const auto dip = values.value(Quantity::Dip, note);
    if (!blow || !letOff || !dip)
        return std::nullopt;
    const units::Amount lostMotion = values.value(Quantity::LostMotion, note).value_or(units::Amount{});
    return (*dip - lostMotion).inDisplay() - (*blow - *letOff).inDisplay() / ratio;
}

double carriedBy(Quantity changed, Quantity other, ActionKind action, double ratio)
{
    if (changed == other)
        return 1;
    const bool grand = action == ActionKind::Grand, aftertouch = other == Quantity::Aftertouch;
    switch (changed) {
    case Quantity::LetOff:
        return aftertouch ? 1 / ratio : other == Quantity::Drop && grand ? -1 : 0;
    case Quantity::Blow:
        return other == (grand ? Quantity::Aftertouch : Quantity::LostMotion) ? -1 / ratio : 0;
    case Quantity::LostMotion:
        return aftertouch ? -1 : 0;
    case Quantity::Dip:
        return aftertouch ? 1 : 0;
    case Quantity::KeyHeight:
        return aftertouch || other == Quantity::Dip ? 1 : 0;
    default:
        return 0;
    }
}

double changeOf(Quantity quantity, const Changes &changes, ActionKind action, double ratio)
{
    double sum = 0;
    for (const catalogue::QuantityInfo &info : catalogue::all())
        if (const double change = changes[static_cast<std::size_t>(info.quantity)]; change != 0)
            sum += change * carriedBy(info.quantity, quantity, action, ratio);
    return sum;
}

} // namespace hammerline::action
