#include "tolerance/judge.h"

#include <algorithm>
#include <cassert>

namespace hammerline::tolerance {

namespace {

/// Evenness looks no further down than this many notes.
constexpr int reach = 4;

using Column = readings::ValueTable::Column;
using Place = Column::const_iterator;

/// The readings of a quantity that lie on the instrument.
struct Run {
    Place first;
    Place last;
};

Run runOf(const Column &column, const keyboard::NoteRange &notes)
{
    return {column.lower_bound(notes.first), column.upper_bound(notes.last)};
}

/// Goes down from `from` (not itself looked at) to the reading that evenness compares `note` with.
std::optional<Place> neighbourBelow(Place first, Place from, catalogue::Quantity quantity, keyboard::Note note,
                                    const keyboard::Sections &sections)
{
    const bool withinColour = catalogue::infoOf(quantity).comparesWithinColour;
    while (from != first) {
        --from;
        const keyboard::Note below = from->first;
        if (below.number() < note.number() - reach)
            break;
        if (!withinColour || below.colour() == note.colour())
            return keyboard::sameSection(sections, below, note) ? std::optional(from) : std::nullopt;
    }
    return std::nullopt;
}

bool isUneven(const std::optional<units::Amount> &limit, const Verdict &verdict)
{
    return limit && verdict.stepFromBelow && verdict.stepFromBelow->magnitude().baseCount() > limit->baseCount();
}

void judgeRead(Verdict &verdict, const readings::NoteValue &read, const std::optional<units::Amount> &step)
{
    verdict.value = read.value;
    verdict.takes = read.takes;
    if (!verdict.limits)
        return;
    verdict.status = judgeValue(read.value, *verdict.limits);
    verdict.deviation = read.value - verdict.limits->target;
    verdict.conformanceProbability = conformanceProbability(read.value, *verdict.limits);
    verdict.uneven = isUneven(step, verdict);
}

/// One tour over the notes of a quantity.
class Tour {
public:
    Tour(catalogue::Quantity quantity, const Column &column, const keyboard::Compass &compass,
         const keyboard::Sections &sections)
        : m_quantity(quantity), m_run(runOf(column, compass)), m_compass(compass), m_sections(sections)
    {
    }

    /// `lowest`: the note of the line's first limits. Without a line nothing is judged, only shown.
    void judge(const Judge::Line *line, keyboard::Note lowest, std::vector<Verdict> &verdicts) const
    {
        Place read = m_run.first;
        for (int number = m_compass.first.number(); number <= m_compass.last.number(); ++number) {
            const auto at = static_cast<std::size_t>(number - lowest.number());
            const bool isRead = read != m_run.last && read->first.number() == number;
            const bool isJudged = line != nullptr && (*line->limits)[at].has_value();
            if (!isRead && !isJudged)
                continue;
            Verdict &verdict = verdicts.emplace_back();
            verdict.quantity = m_quantity;
            verdict.note = keyboard::Note(number);
            if (isJudged) {
                verdict.status = Status::Missing;
                verdict.limits = SharedLimits(std::shared_ptr<const Limits>(line->limits, &*(*line->limits)[at]));
            }
            if (isRead)
                take(verdict, read++, line);
        }
    }

    /// As `judge`, counted.
    void count(const Judge::Line *line, keyboard::Note lowest, Tally &tally) const
    {
        Place read = m_run.first;
        for (int number = m_compass.first.number(); number <= m_compass.last.number(); ++number) {
            const auto at = static_cast<std::size_t>(number - lowest.number());
            const bool isRead = read != m_run.last && read->first.number() == number;
            const bool isJudged = line != nullptr && (*line->limits)[at].has_value();
            if (isJudged)
                ++tally.by[static_cast<std::size_t>(isRead ? judgeValue(read->second.value, *(*line->limits)[at])
                                                           : Status::Missing)];
            else if (isRead)
                ++tally.by[static_cast<std::size_t>(Status::Unjudged)];
            if (isJudged && isRead && line->step && stepsTooFar(read, *line->step))
                ++tally.uneven;
            if (isRead)
                ++read;
        }
    }

private:
    [[nodiscard]] bool stepsTooFar(Place read, units::Amount step) const
    {
        const auto below = neighbourBelow(m_run.first, read, m_quantity, read->first, m_sections);
        return below && (read->second.value - (*below)->second.value).magnitude() > step;
    }

    void take(Verdict &verdict, Place read, const Judge::Line *line) const
    {
        if (const auto below = neighbourBelow(m_run.first, read, m_quantity, verdict.note, m_sections))
            verdict.stepFromBelow = read->second.value - (*below)->second.value;
        judgeRead(verdict, read->second, line == nullptr ? std::nullopt : line->step);
    }

    catalogue::Quantity m_quantity;
    Run m_run;
    const keyboard::Compass &m_compass;
    const keyboard::Sections &m_sections;
};

Judge::Line lineOf(const ToleranceSet &set, catalogue::Quantity quantity, const keyboard::NoteRange &notes)
{
    Judge::Line line;
    line.step = set.entries.at(quantity).step;
    Judge::Line::OfNotes limits;
    limits.reserve(static_cast<std::size_t>(notes.count()));
    for (int number = notes.first.number(); number <= notes.last.number(); ++number)
        limits.push_back(limitsAt(set, quantity, keyboard::Note(number)));
    line.limits = std::make_shared<const Judge::Line::OfNotes>(std::move(limits));
    return line;
}

std::pair<catalogue::Quantity, keyboard::Note> placeOf(const Verdict &verdict)
{
    return {verdict.quantity, verdict.note};
}

} // namespace

Tally &Tally::operator+=(const Tally &other)
{
    for (std::size_t status = 0; status < by.size(); ++status)
        by[status] += other.by[status];
    uneven += other.uneven;
    return *this;
}

Tally sumOf(const QuantityTallies &tallies)
{
    Tally sum;
    for (const Tally &each : tallies)
        sum += each;
    return sum;
}

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

Judge::Judge(const ToleranceSet &set, const keyboard::NoteRange &notes) : m_notes(notes)
{
    for (const auto &[quantity, entry] : set.entries)
        m_lines.emplace(quantity, lineOf(set, quantity, notes));
}

Judgement Judge::judge(const readings::ValueTable &values, const keyboard::Compass &compass,
                       const keyboard::Sections &sections) const
{
    assert(m_notes.first <= compass.first && compass.last <= m_notes.last);
    Judgement judgement;
    judgement.verdicts.reserve(static_cast<std::size_t>(compass.count()) * catalogue::quantityCount);
    for (const auto &info : catalogue::all()) {
        const auto line = m_lines.find(info.quantity);
        const Tour tour(info.quantity, values.column(info.quantity), compass, sections);
        tour.judge(line == m_lines.end() ? nullptr : &line->second, m_notes.first, judgement.verdicts);
    }
    return judgement;
}

QuantityTallies Judge::tally(const readings::ValueTable &values, const keyboard::Compass &compass,
                             const keyboard::Sections &sections) const
{
    assert(m_notes.first <= compass.first && compass.last <= m_notes.last);
    QuantityTallies tallies{};
    for (const auto &info : catalogue::all()) {
        const auto line = m_lines.find(info.quantity);
        const Tour tour(info.quantity, values.column(info.quantity), compass, sections);
        tour.count(line == m_lines.end() ? nullptr : &line->second, m_notes.first,
                   tallies[static_cast<std::size_t>(info.quantity)]);
    }
    return tallies;
}

Judgement judge(const readings::ValueTable &values, const ToleranceSet &set, const keyboard::Compass &compass,
                const keyboard::Sections &sections)
{
    return Judge(set, compass).judge(values, compass, sections);
}

std::optional<keyboard::Note> neighbourBelow(const readings::ValueTable::Column &column, catalogue::Quantity quantity,
                                             keyboard::Note note, const keyboard::Sections &sections)
{
    const auto below = neighbourBelow(column.begin(), column.lower_bound(note), quantity, note, sections);
    return below ? std::optional((*below)->first) : std::nullopt;
}

} // namespace hammerline::tolerance
