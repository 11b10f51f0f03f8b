#include "action/patterns.h"

#include "analysis/analysis.h"

#include <algorithm>
#include <array>

namespace hammerline::action {

namespace {

/// Halves of a base unit.
std::int64_t halves(units::Amount amount)
{
    return amount.baseCount() * 2;
}

Wanted wantedFor(keyboard::Note note, units::Amount value, const tolerance::Limits &limits)
{
    const std::int64_t margin = limits.rule == tolerance::Rule::Guarded ? halves(limits.expandedUncertainty) : 0;
    Wanted wanted{.note = note};
    if (limits.low)
        wanted.low = halves(*limits.low - value) + margin;
    if (limits.high)
        wanted.high = halves(*limits.high - value) - margin;
    if (wanted.low && wanted.high && *wanted.low > *wanted.high)
        wanted.low = wanted.high = (*limits.low - value).baseCount() + (*limits.high - value).baseCount();
    return wanted;
}

/// One list a section; the notes of no section are left out.
std::vector<std::vector<Wanted>> bySection(const std::vector<Wanted> &wanted, const keyboard::Sections &sections)
{
    std::vector<std::vector<Wanted>> lists;
    for (const keyboard::Section &section : sections) {
        std::vector<Wanted> list;
        for (const Wanted &each : wanted)
            if (section.notes.contains(each.note))
                list.push_back(each);
        if (!list.empty())
            lists.push_back(std::move(list));
    }
    return lists;
}

bool isInside(const Wanted &wanted)
{
    return (!wanted.low || *wanted.low <= 0) && (!wanted.high || *wanted.high >= 0);
}

RemedyOutcome outcomeOf(Remedy remedy, const std::vector<std::vector<Wanted>> &lists,
                        Straight (*best)(const std::vector<Wanted> &))
{
    RemedyOutcome outcome{.remedy = remedy};
    for (const std::vector<Wanted> &list : lists) {
        outcome.changes.push_back(best(list));
        outcome.inside += outcome.changes.back().inside;
    }
    return outcome;
}

Remedy likelyOf(const Pattern &pattern)
{
    constexpr int littleMore = 2;
    int most = 0;
    for (const RemedyOutcome &outcome : pattern.remedies)
        most = std::max(most, outcome.inside);
    const int outside = pattern.read - pattern.inside;
    for (const RemedyOutcome &outcome : pattern.remedies)
        if (outcome.remedy != Remedy::SingleNotes && outside > 0 && 2 * (outcome.inside - pattern.inside) > outside &&
            outcome.inside + littleMore >= most)
            return outcome.remedy;
    return Remedy::SingleNotes;
}

double bowOf(const readings::ValueTable::Column &column, catalogue::Quantity quantity,
             const tolerance::ToleranceSet &set, const Straight &line)
{
    std::array<std::vector<double>, 3> thirds;
    for (const auto &[note, read] : column) {
        const auto limits = tolerance::limitsAt(set, quantity, note);
        if (!limits || !line.notes.contains(note))
            continue;
        const double unit = read.value.dimension() == units::Dimension::Length ? 1e6 : 1e3;
        const int third = std::min(2, 3 * (note.number() - line.notes.first.number()) / line.notes.count());
        thirds[static_cast<std::size_t>(third)].push_back((read.value - limits->target).inDisplay() +
                                                          line.at(note) / unit);
    }
    if (thirds[0].empty() || thirds[1].empty() || thirds[2].empty())
        return 0;
    return analysis::medianOf(thirds[1]) - (analysis::medianOf(thirds[0]) + analysis::medianOf(thirds[2])) / 2;
}

} // namespace

std::optional<Pattern> patternOf(const readings::ValueTable &values, catalogue::Quantity quantity,
                                 const tolerance::ToleranceSet &set, const keyboard::Compass &compass,
                                 const keyboard::Sections &sections)
{
    std::vector<Wanted> wanted;
    for (const auto &[note, read] : values.column(quantity))
        if (const auto limits = tolerance::limitsAt(set, quantity, note); limits && compass.contains(note))
            wanted.push_back(wantedFor(note, read.value, *limits));
    if (wanted.empty())
        return std::nullopt;
    Pattern pattern{.read = static_cast<int>(wanted.size()),
                    .inside = static_cast<int>(std::count_if(wanted.begin(), wanted.end(), isInside))};
    pattern.remedies.push_back({.remedy = Remedy::SingleNotes, .inside = pattern.inside});
    pattern.remedies.push_back(outcomeOf(Remedy::Shift, {wanted}, bestShift));
    pattern.remedies.push_back(outcomeOf(Remedy::Line, {wanted}, bestLine));
    const Straight line = pattern.remedies.back().changes.front();
    if (const auto lists = bySection(wanted, sections); !lists.empty()) {
        pattern.remedies.push_back(outcomeOf(Remedy::ShiftBySection, lists, bestShift));
        pattern.remedies.push_back(outcomeOf(Remedy::LineBySection, lists, bestLine));
    }
    pattern.likely = likelyOf(pattern);
    pattern.bow = bowOf(values.column(quantity), quantity, set, line);
    return pattern;
}

} // namespace hammerline::action
