#include "analysis/drift.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <tuple>

namespace hammerline::analysis {

namespace {

using catalogue::Quantity;
using keyboard::Note;
using readings::Purpose;

struct Change {
    Note note{};
    double by = 0;
};

std::vector<Change> changesOf(Quantity quantity, const readings::ValueTable &before, const readings::ValueTable &after)
{
    std::vector<Change> changes;
    for (const auto &[note, value] : after.column(quantity))
        if (const auto earlier = before.value(quantity, note))
            changes.push_back({note, (value.value - *earlier).inDisplay()});
    return changes;
}

std::optional<double> differenceUncertainty(Quantity quantity, const MeasuredPass &before, const MeasuredPass &after,
                                            const tolerance::ToleranceSet *set)
{
    const auto first = uncertaintyOf(quantity, before.pass.gauge, set);
    const auto second = uncertaintyOf(quantity, after.pass.gauge, set);
    return first && second ? std::optional(std::hypot(*first, *second)) : std::nullopt;
}

/// Doubles: what lies within this of the limit counts as on it.
constexpr double hair = 1e-9;

Way wayOf(double meanChange, std::optional<double> toldApart)
{
    if (!toldApart)
        return Way::Unknown;
    if (std::abs(meanChange) <= *toldApart + hair)
        return Way::NotToldApart;
    return meanChange < 0 ? Way::Smaller : Way::Larger;
}

/// `changes` must not be empty.
Drift driftOf(std::span<const Change> changes, std::optional<double> toldApart)
{
    std::vector<double> amounts;
    for (const Change &change : changes)
        amounts.push_back(change.by);
    const auto most = std::ranges::max_element(changes, {}, [](const Change &change) { return std::abs(change.by); });
    Drift drift;
    drift.change = pairedComparison(amounts);
    drift.toldApart = toldApart;
    drift.way = wayOf(drift.change.meanChange, toldApart);
    if (toldApart)
        drift.moved = static_cast<int>(
            std::ranges::count_if(amounts, [&](double by) { return std::abs(by) > *toldApart + hair; }));
    drift.most = most->note;
    drift.mostChange = most->by;
    return drift;
}

} // namespace

std::string_view idOf(Way way)
{
    static constexpr std::array<std::string_view, 4> ids{"not-told-apart", "smaller", "larger", "unknown"};
    return ids[static_cast<std::size_t>(way)];
}

std::optional<double> uncertaintyOf(Quantity quantity, const readings::Gauge &gauge, const tolerance::ToleranceSet *set)
{
    if (catalogue::infoOf(quantity).dimension == units::Dimension::Length) {
        const double stepAlone = gauge.resolution.inMillimetres() / std::sqrt(3.0);
        if (const double known = std::max(gauge.expandedUncertainty.inMillimetres(), stepAlone); known > 0)
            return known;
    }
    if (set == nullptr || !set->entries.contains(quantity))
        return std::nullopt;
    const tolerance::Entry &entry = set->entries.at(quantity);
    const double stated = entry.expandedUncertainty.inDisplay();
    return stated > 0 ? std::optional(stated / entry.coverageFactor * 2) : std::nullopt;
}

std::vector<Drift> driftBetween(const MeasuredPass &before, const MeasuredPass &after,
                                const keyboard::Sections &sections, const tolerance::ToleranceSet *set)
{
    std::vector<Drift> drifts;
    const auto add = [&](Quantity quantity, const std::string &section, const std::vector<Change> &changes) {
        if (changes.empty())
            return;
        drifts.push_back(driftOf(changes, differenceUncertainty(quantity, before, after, set)));
        drifts.back().quantity = quantity;
        drifts.back().section = section;
    };
    for (const Quantity quantity : after.values.quantities()) {
        const auto changes = changesOf(quantity, before.values, after.values);
        add(quantity, {}, changes);
        for (std::size_t index = 0; sections.size() > 1 && index < sections.size(); ++index) {
            std::vector<Change> inside;
            std::ranges::copy_if(changes, std::back_inserter(inside),
                                 [&](const Change &change) { return sections[index].notes.contains(change.note); });
            add(quantity, sections[index].name, inside);
        }
    }
    return drifts;
}

const readings::Pass *leftBefore(std::span<const readings::Pass> passes, const readings::Pass &recheck)
{
    const auto rank = [](const readings::Pass &pass) {
        return std::tuple(pass.purpose == Purpose::AsLeft, pass.began, pass.id);
    };
    const readings::Pass *best = nullptr;
    for (const readings::Pass &pass : passes) {
        const bool speaks = pass.purpose == Purpose::AsLeft || pass.purpose == Purpose::Recheck;
        const bool earlier = std::tuple(pass.began, pass.id) < std::tuple(recheck.began, recheck.id);
        if (speaks && earlier && (best == nullptr || rank(*best) < rank(pass)))
            best = &pass;
    }
    return best;
}

} // namespace hammerline::analysis
