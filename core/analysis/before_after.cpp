#include "analysis/before_after.h"

#include "analysis/outliers.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <tuple>

namespace hammerline::analysis {

namespace {

using readings::Purpose;

/// The values of the notes read both times, note by note.
struct Paired {
    std::vector<keyboard::Note> notes{};
    std::vector<double> before{}, after{}, changes{};
};

Paired pairedOf(const readings::ValueTable::Column &before, const readings::ValueTable::Column &after)
{
    Paired paired;
    for (const auto &[note, value] : before) {
        const auto later = after.find(note);
        if (later == after.end())
            continue;
        paired.notes.push_back(note);
        paired.before.push_back(value.value.inDisplay());
        paired.after.push_back(later->second.value.inDisplay());
        paired.changes.push_back((later->second.value - value.value).inDisplay());
    }
    return paired;
}

void nameVerdicts(const MeasuredPass &before, const MeasuredPass &after, const Paired &paired,
                  const tolerance::ToleranceSet &set, QuantityChange &change)
{
    const auto isOut = [&](const MeasuredPass &pass, keyboard::Note note, const tolerance::Limits &limits) {
        return tolerance::judgeValue(*pass.values.value(change.quantity, note), limits) == tolerance::Status::Out;
    };
    for (const keyboard::Note note : paired.notes) {
        const auto limits = tolerance::limitsAt(set, change.quantity, note);
        if (!limits)
            continue;
        const bool was = isOut(before, note, *limits);
        const bool is = isOut(after, note, *limits);
        if (was && !is)
            change.mended.push_back(note);
        if (is && !was)
            change.spoiled.push_back(note);
    }
}

std::vector<Outlier> outliersOf(const Paired &paired)
{
    const auto scores = modifiedZScores(paired.changes);
    std::vector<Outlier> outliers;
    for (std::size_t i = 0; i < scores.size(); ++i)
        if (std::abs(scores[i]) > outlyingScore)
            outliers.push_back({paired.notes[i], paired.changes[i], scores[i]});
    return outliers;
}

std::optional<double> toldApartOf(catalogue::Quantity quantity, const MeasuredPass &before, const MeasuredPass &after,
                                  const tolerance::ToleranceSet *set)
{
    const auto first = uncertaintyOf(quantity, before.pass.gauge, set);
    const auto second = uncertaintyOf(quantity, after.pass.gauge, set);
    return first && second ? std::optional(std::hypot(*first, *second)) : std::nullopt;
}

MedianMad robust(const std::vector<double> &values)
{
    return {medianOf(values), madOf(values)};
}

} // namespace

std::string_view idOf(Claim claim)
{
    static constexpr std::array<std::string_view, 4> ids{"too-few", "no-change", "smaller", "larger"};
    return ids[static_cast<std::size_t>(claim)];
}

Claim claimOf(const Comparison &comparison)
{
    if (!comparison.ci95Low || !comparison.ci95High)
        return Claim::TooFew;
    if (*comparison.ci95High < 0)
        return Claim::Smaller;
    return *comparison.ci95Low > 0 ? Claim::Larger : Claim::NoChange;
}

bool QuantityChange::withinGauge() const
{
    constexpr double hair = 1e-9; // what lies on the limit of doubles counts as on it
    const bool claimed = claim == Claim::Smaller || claim == Claim::Larger;
    return claimed && toldApart && std::abs(change.meanChange) <= *toldApart + hair;
}

std::vector<QuantityChange> beforeAndAfter(const MeasuredPass &before, const MeasuredPass &after,
                                           const tolerance::ToleranceSet *set)
{
    std::vector<QuantityChange> changes;
    for (const auto &[quantity, comparison] : compare(before.values, after.values, set)) {
        const Paired paired = pairedOf(before.values.column(quantity), after.values.column(quantity));
        QuantityChange change{.quantity = quantity, .change = comparison};
        change.before = robust(paired.before);
        change.after = robust(paired.after);
        change.changes = robust(paired.changes);
        change.outliers = outliersOf(paired);
        change.claim = claimOf(comparison);
        change.toldApart = toldApartOf(quantity, before, after, set);
        if (set != nullptr)
            nameVerdicts(before, after, paired, *set, change);
        changes.push_back(std::move(change));
    }
    return changes;
}

PassPair usualPair(std::span<const readings::Pass> passes)
{
    if (passes.size() < 2)
        return {};
    const auto earlier = [](const readings::Pass &a, const readings::Pass &b) {
        return std::tuple(a.began, a.id) < std::tuple(b.began, b.id);
    };
    const auto [first, newest] = std::ranges::minmax_element(passes, earlier);
    PassPair pair{&*first, &*newest};
    const readings::Pass *found = nullptr, *left = nullptr;
    for (const readings::Pass &pass : passes)
        if (pass.purpose == Purpose::AsFound && (found == nullptr || earlier(pass, *found)))
            found = &pass;
    if (found != nullptr)
        pair.before = found;
    for (const readings::Pass &pass : passes)
        if (pass.purpose == Purpose::AsLeft && earlier(*pair.before, pass) && (left == nullptr || earlier(*left, pass)))
            left = &pass;
    if (left != nullptr)
        pair.after = left;
    return pair.before == pair.after ? PassPair{&*first, &*newest} : pair;
}

} // namespace hammerline::analysis
