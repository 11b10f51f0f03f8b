#include "tolerance/judge.h"

#include <algorithm>
#include <set>

namespace hammerline::tolerance {

namespace {

/// Evenness looks no further down than this many notes.
constexpr int reach = 4;

std::set<catalogue::Quantity> quantitiesOf(const readings::ValueTable &values, const ToleranceSet &set)
{
    std::set<catalogue::Quantity> quantities;
    for (const auto quantity : values.quantities())
        quantities.insert(quantity);
    for (const auto &[quantity, entry] : set.entries)
        quantities.insert(quantity);
    return quantities;
}

std::optional<units::Amount> stepOf(const readings::ValueTable::Column &column, catalogue::Quantity quantity,
                                    keyboard::Note note, const keyboard::Sections &sections)
{
    const auto below = neighbourBelow(column, quantity, note, sections);
    if (!below)
        return std::nullopt;
    return column.at(note).value - column.at(*below).value;
}

bool isUneven(const ToleranceSet &set, const Verdict &verdict)
{
    const auto &limit = set.entries.at(verdict.quantity).step;
    return limit && verdict.stepFromBelow && verdict.stepFromBelow->magnitude().baseCount() > limit->baseCount();
}

void judgeRead(Verdict &verdict, const readings::NoteValue &read, const ToleranceSet &set)
{
    verdict.value = read.value;
    verdict.takes = read.takes;
    if (!verdict.limits)
        return;
    verdict.status = judgeValue(read.value, *verdict.limits);
    verdict.deviation = read.value - verdict.limits->target;
    verdict.conformanceProbability = conformanceProbability(read.value, *verdict.limits);
    verdict.uneven = isUneven(set, verdict);
}

/// One tour over the notes of a quantity.
void judgeQuantity(catalogue::Quantity quantity, const readings::ValueTable::Column &column, const ToleranceSet &set,
                   const keyboard::Compass &compass, const keyboard::Sections &sections, Judgement &judgement)
{
    for (int number = compass.first.number(); number <= compass.last.number(); ++number) {
        Verdict verdict;
        verdict.quantity = quantity;
        verdict.note = keyboard::Note(number);
        verdict.limits = limitsAt(set, quantity, verdict.note);
        const auto read = column.find(verdict.note);
        if (read == column.end() && !verdict.limits)
            continue;
        verdict.status = verdict.limits ? Status::Missing : Status::Unjudged;
        if (read != column.end()) {
            verdict.stepFromBelow = stepOf(column, quantity, verdict.note, sections);
            judgeRead(verdict, read->second, set);
        }
        judgement.verdicts.push_back(verdict);
    }
}

readings::ValueTable::Column insideOf(const keyboard::Compass &compass, const readings::ValueTable::Column &column)
{
    return {column.lower_bound(compass.first), column.upper_bound(compass.last)};
}

std::pair<catalogue::Quantity, keyboard::Note> placeOf(const Verdict &verdict)
{
    return {verdict.quantity, verdict.note};
}

} // namespace

std::optional<double> Verdict::halfWidths() const
{
    const auto halfWidth = limits ? limits->halfWidth() : std::nullopt;
    if (!deviation || !halfWidth)
        return std::nullopt;
    return deviation->magnitude().inDisplay() / *halfWidth;
}

const Verdict *Judgement::find(catalogue::Quantity quantity, keyboard::Note note) const
{
    const std::pair place(quantity, note);
    const auto found = std::lower_bound(verdicts.begin(), verdicts.end(), place,
                                        [](const Verdict &verdict, auto wanted) { return placeOf(verdict) < wanted; });
    return found != verdicts.end() && placeOf(*found) == place ? &*found : nullptr;
}

std::vector<Verdict> Judgement::of(catalogue::Quantity quantity) const
{
    std::vector<Verdict> own;
    std::copy_if(verdicts.begin(), verdicts.end(), std::back_inserter(own),
                 [quantity](const Verdict &verdict) { return verdict.quantity == quantity; });
    return own;
}

bool Judgement::anyOutOrMissing() const
{
    return std::any_of(verdicts.begin(), verdicts.end(), [](const Verdict &verdict) {
        return verdict.status == Status::Out || verdict.status == Status::Missing;
    });
}

Judgement judge(const readings::ValueTable &values, const ToleranceSet &set, const keyboard::Compass &compass,
                const keyboard::Sections &sections)
{
    Judgement judgement;
    for (const auto quantity : quantitiesOf(values, set))
        judgeQuantity(quantity, insideOf(compass, values.column(quantity)), set, compass, sections, judgement);
    return judgement;
}

std::optional<keyboard::Note> neighbourBelow(const readings::ValueTable::Column &column, catalogue::Quantity quantity,
                                             keyboard::Note note, const keyboard::Sections &sections)
{
    const bool withinColour = catalogue::infoOf(quantity).comparesWithinColour;
    for (int number = note.number() - 1; number >= std::max(note.number() - reach, keyboard::Note::lowest); --number) {
        const keyboard::Note below(number);
        if (withinColour && below.colour() != note.colour())
            continue;
        if (column.contains(below))
            return keyboard::sameSection(sections, below, note) ? std::optional(below) : std::nullopt;
    }
    return std::nullopt;
}

} // namespace hammerline::tolerance
