#include "action/contradictions.h"

#include "analysis/analysis.h"

#include <algorithm>
#include <cmath>
#include <initializer_list>
#include <optional>

namespace hammerline::action {

using catalogue::ActionKind;
using catalogue::Quantity;

namespace {

constexpr double lowestRatio = 3, highestRatio = 8;
constexpr double robustSd = 1.4826, far = 3.5;
constexpr std::size_t mostOnASide = 4, fewestNeighbours = 3;

double uncertaintyOf(const GaugeUncertainty &uncertainty, Quantity quantity)
{
    const auto found = uncertainty.find(quantity);
    return found == uncertainty.end() ? 0 : found->second.inDisplay();
}

/// A sum that no action brings below 0: factor times reading.
struct Part {
    Quantity quantity;
    double factor;
};
struct Bound {
    Impossibility what;
    std::initializer_list<Part> parts;
};

class NoteReadings {
public:
    NoteReadings(const readings::ValueTable &values, keyboard::Note note, const GaugeUncertainty &uncertainty)
        : m_values(values), m_note(note), m_uncertainty(uncertainty)
    {
    }

    std::optional<double> value(Quantity quantity) const
    {
        const auto read = m_values.value(quantity, m_note);
        return read ? std::optional(read->inDisplay()) : std::nullopt;
    }
    double uncertainty(Quantity quantity) const { return uncertaintyOf(m_uncertainty, quantity); }

    /// Absent where a reading is missing or the sum is not below 0 beyond doubt.
    std::optional<Contradiction> below0(const Bound &bound) const
    {
        double sum = 0, variance = 0;
        Contradiction found{.note = m_note, .what = bound.what};
        for (const Part &part : bound.parts) {
            const auto read = value(part.quantity);
            if (!read && part.quantity == Quantity::LostMotion)
                continue; // a missing lost motion counts as 0
            if (!read)
                return std::nullopt;
            sum += part.factor * *read;
            variance += std::pow(part.factor * uncertainty(part.quantity), 2);
            found.readings.push_back(part.quantity);
        }
        found.beyond = -sum - std::sqrt(variance);
        std::sort(found.readings.begin(), found.readings.end());
        constexpr double nothing = 1e-9; // a double's rounding is no contradiction
        return found.beyond > nothing ? std::optional(found) : std::nullopt;
    }

    std::optional<Contradiction> ratioOutOfReach() const;

private:
    const readings::ValueTable &m_values;
    keyboard::Note m_note;
    const GaugeUncertainty &m_uncertainty;
};

/// Out of reach where even a hammer and a key travel at the ends of their uncertainty give no ratio from 3 to 8.
std::optional<Contradiction> NoteReadings::ratioOutOfReach() const
{
    const auto blow = value(Quantity::Blow), letOff = value(Quantity::LetOff), dip = value(Quantity::Dip),
               aftertouch = value(Quantity::Aftertouch);
    if (!blow || !letOff || !dip || !aftertouch)
        return std::nullopt;
    const auto lostMotion = value(Quantity::LostMotion);
    const double hammer = *blow - *letOff, key = *dip - *aftertouch - lostMotion.value_or(0);
    const double doubtOfHammer = std::hypot(uncertainty(Quantity::Blow), uncertainty(Quantity::LetOff));
    const double doubtOfKey = std::hypot(uncertainty(Quantity::Dip), uncertainty(Quantity::Aftertouch),
                                         lostMotion ? uncertainty(Quantity::LostMotion) : 0);
    if (hammer <= doubtOfHammer || key <= doubtOfKey)
        return std::nullopt; // no travel to speak of: other bounds say so
    const bool tooLow = (hammer + doubtOfHammer) / (key - doubtOfKey) < lowestRatio;
    const bool tooHigh = (hammer - doubtOfHammer) / (key + doubtOfKey) > highestRatio;
    if (!tooLow && !tooHigh)
        return std::nullopt;
    Contradiction found{.note = m_note, .what = Impossibility::RatioOutOfReach, .beyond = hammer / key};
    found.readings = {Quantity::Blow, Quantity::LetOff, Quantity::Dip, Quantity::Aftertouch};
    if (lostMotion)
        found.readings.insert(found.readings.begin() + 1, Quantity::LostMotion);
    return found;
}

void addIf(std::optional<Contradiction> found, std::vector<Contradiction> &list)
{
    if (found)
        list.push_back(*std::move(found));
}

void addContradictions(const NoteReadings &note, ActionKind action, std::vector<Contradiction> &list)
{
    addIf(note.below0({Impossibility::LetOffBeyondBlow, {{Quantity::Blow, 1}, {Quantity::LetOff, -1}}}), list);
    if (action == ActionKind::Grand)
        addIf(note.below0(
                  {Impossibility::DropBelowRest, {{Quantity::Blow, 1}, {Quantity::LetOff, -1}, {Quantity::Drop, -1}}}),
              list);
    addIf(note.below0({Impossibility::CheckBeyondBlow, {{Quantity::Blow, 1}, {Quantity::Checking, -1}}}), list);
    addIf(note.below0({Impossibility::CheckBeforeLetOff, {{Quantity::Checking, 1}, {Quantity::LetOff, -1}}}), list);
    addIf(note.below0({Impossibility::DamperAfterString, {{Quantity::Blow, 1}, {Quantity::DamperStart, -1}}}), list);
    addIf(note.below0({Impossibility::AftertouchBeyondDip,
                       {{Quantity::Dip, 1}, {Quantity::Aftertouch, -1}, {Quantity::LostMotion, -1}}}),
          list);
    addIf(note.ratioOutOfReach(), list);
    addIf(note.below0({Impossibility::UpWeightAboveDownWeight, {{Quantity::DownWeight, 1}, {Quantity::UpWeight, -1}}}),
          list);
}

/// Expanded uncertainty of a note's own ratio to first order.
double ratioUncertainty(const readings::ValueTable &values, keyboard::Note note, double ratio,
                        const GaugeUncertainty &uncertainty)
{
    const double key =
        (values.value(Quantity::Blow, note)->inDisplay() - values.value(Quantity::LetOff, note)->inDisplay()) / ratio;
    const bool moves = values.value(Quantity::LostMotion, note).has_value();
    const double hammer =
        std::hypot(uncertaintyOf(uncertainty, Quantity::Blow), uncertaintyOf(uncertainty, Quantity::LetOff));
    const double keys =
        std::hypot(uncertaintyOf(uncertainty, Quantity::Dip), uncertaintyOf(uncertainty, Quantity::Aftertouch),
                   moves ? uncertaintyOf(uncertainty, Quantity::LostMotion) : 0);
    return std::hypot(hammer, ratio * keys) / key;
}

std::optional<double> medianOfNeighbours(const OwnRatios &ratios, keyboard::Note note,
                                         const keyboard::Sections &sections)
{
    const auto like = [&](keyboard::Note other) {
        return other.colour() == note.colour() && keyboard::sameSection(sections, other, note);
    };
    std::vector<double> near;
    const auto self = ratios.find(note);
    std::size_t taken = 0;
    for (auto up = std::next(self); up != ratios.end() && taken < mostOnASide; ++up)
        if (like(up->first))
            near.push_back(up->second), ++taken;
    taken = 0;
    for (auto down = std::make_reverse_iterator(self); down != ratios.rend() && taken < mostOnASide; ++down)
        if (like(down->first))
            near.push_back(down->second), ++taken;
    return near.size() >= fewestNeighbours ? std::optional(analysis::medianOf(near)) : std::nullopt;
}

/// For hammer = ratio x key with the ratio of the neighbours.
std::vector<Suspect> suspectsOf(const readings::ValueTable &values, keyboard::Note note, double ratio, double wanted)
{
    const double hammer = (*values.value(Quantity::Blow, note) - *values.value(Quantity::LetOff, note)).inDisplay();
    const double key = hammer / ratio, missing = wanted * key - hammer, keyMissing = hammer / wanted - key;
    std::vector<Suspect> suspects{{Quantity::Blow, missing},
                                  {Quantity::LetOff, -missing},
                                  {Quantity::Dip, keyMissing},
                                  {Quantity::Aftertouch, -keyMissing}};
    if (values.value(Quantity::LostMotion, note))
        suspects.push_back({Quantity::LostMotion, -keyMissing});
    std::stable_sort(suspects.begin(), suspects.end(), [](const Suspect &one, const Suspect &other) {
        return std::abs(one.byMm) < std::abs(other.byMm);
    });
    return suspects;
}

} // namespace

std::vector<Contradiction> contradictionsIn(const readings::ValueTable &values, const keyboard::Compass &compass,
                                            ActionKind action, const GaugeUncertainty &uncertainty)
{
    std::vector<Contradiction> list;
    for (int number = compass.first.number(); number <= compass.last.number(); ++number)
        addContradictions(NoteReadings(values, keyboard::Note(number), uncertainty), action, list);
    return list;
}

std::vector<RatioApart> ratiosApart(const readings::ValueTable &values, const keyboard::Compass &compass,
                                    const keyboard::Sections &sections, const GaugeUncertainty &uncertainty)
{
    const OwnRatios ratios = ownRatios(values, compass);
    std::vector<RatioApart> all;
    std::vector<double> differences;
    for (const auto &[note, ratio] : ratios)
        if (const auto neighbours = medianOfNeighbours(ratios, note, sections)) {
            all.push_back({.note = note, .ratio = ratio, .neighbours = *neighbours});
            differences.push_back(ratio - *neighbours);
        }
    if (all.empty())
        return {};
    const double spread = robustSd * analysis::madOf(differences);
    std::vector<RatioApart> apart;
    for (RatioApart &each : all) {
        const double doubt = ratioUncertainty(values, each.note, each.ratio, uncertainty);
        const double away = std::abs(each.ratio - each.neighbours);
        if (away <= doubt || away <= far * spread || away <= 1e-9)
            continue;
        each.suspects = suspectsOf(values, each.note, each.ratio, each.neighbours);
        apart.push_back(each);
    }
    return apart;
}

} // namespace hammerline::action
