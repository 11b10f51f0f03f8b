// The shift and the line inside the most intervals.

#include "action/patterns.h"

#include <algorithm>
#include <cmath>

namespace hammerline::action {

namespace {

using Count = std::int64_t;

/// A slope in halves of a base unit per note, exact.
struct Slope {
    Count rise = 0;
    Count run = 1; ///< > 0
};
bool less(const Slope &one, const Slope &other)
{
    return units::Wide{one.rise} * other.run < units::Wide{other.rise} * one.run;
}
Slope slopeOf(Count rise, Count run)
{
    return run > 0 ? Slope{rise, run} : Slope{-rise, -run};
}

/// A line through a point of the grid.
struct Line {
    int note = 0;
    Count value = 0;
    Slope slope{};

    /// -1, 0 or 1: the line at `wanted`'s note is below, inside or above its interval.
    [[nodiscard]] int side(const Wanted &wanted) const
    {
        const units::Wide y = units::Wide{value} * slope.run + units::Wide{slope.rise} * (wanted.note.number() - note);
        if (wanted.low && y < units::Wide{*wanted.low} * slope.run)
            return -1;
        return wanted.high && y > units::Wide{*wanted.high} * slope.run ? 1 : 0;
    }
    [[nodiscard]] double at(int other) const
    {
        return static_cast<double>(value) +
               static_cast<double>(slope.rise) * (other - note) / static_cast<double>(slope.run);
    }
};

/// Where turning a line about its pivot enters (+1) or leaves (-1) an interval.
struct Event {
    Slope slope{};
    int change = 0;
};
/// Entering comes first where both happen at one slope: intervals are closed.
bool before(const Event &one, const Event &other)
{
    if (less(one.slope, other.slope) || less(other.slope, one.slope))
        return less(one.slope, other.slope);
    return one.change > other.change;
}

/// The ends of the slopes at which a line about the pivot is inside `wanted`; counts it at once where it has no first
/// end.
void addEvents(const Wanted &wanted, int note, Count value, std::vector<Event> &events, int &inside)
{
    const int run = wanted.note.number() - note;
    const auto &first = run > 0 ? wanted.low : wanted.high, &last = run > 0 ? wanted.high : wanted.low;
    if (first)
        events.push_back({slopeOf(*first - value, run), 1});
    else
        ++inside;
    if (last)
        events.push_back({slopeOf(*last - value, run), -1});
}

class LineSearch {
public:
    explicit LineSearch(const std::vector<Wanted> &wanted) : m_wanted(wanted) {}

    /// All lines through the end of an interval that are inside the most intervals, at the ends of their slopes.
    std::vector<Line> run()
    {
        for (const Wanted &wanted : m_wanted)
            for (const auto &end : {wanted.low, wanted.high})
                if (end)
                    turnAbout(wanted.note.number(), *end);
        return m_best;
    }
    [[nodiscard]] int most() const { return m_most; }

private:
    void turnAbout(int note, Count value)
    {
        std::vector<Event> events;
        int inside = 1; // its own interval
        for (const Wanted &wanted : m_wanted)
            if (wanted.note.number() != note)
                addEvents(wanted, note, value, events, inside);
        std::sort(events.begin(), events.end(), before);
        offer({note, value, events.empty() ? Slope{} : events.front().slope}, inside - (events.empty() ? 0 : 1));
        for (const Event &event : events) {
            if (event.change < 0)
                offer({note, value, event.slope}, inside);
            inside += event.change;
            if (event.change > 0)
                offer({note, value, event.slope}, inside);
        }
    }

    void offer(const Line &line, int inside)
    {
        if (inside < m_most)
            return;
        if (inside > m_most)
            m_best.clear();
        m_most = inside;
        m_best.push_back(line);
    }

    const std::vector<Wanted> &m_wanted;
    std::vector<Line> m_best{};
    int m_most = 0;
};

bool pleasesTheSame(const Line &one, const Line &other, const std::vector<Wanted> &wanted)
{
    return std::all_of(wanted.begin(), wanted.end(),
                       [&](const Wanted &each) { return one.side(each) != 0 || other.side(each) == 0; });
}

double largestChange(const Line &line, const keyboard::NoteRange &range)
{
    return std::max(std::abs(line.at(range.first.number())), std::abs(line.at(range.last.number())));
}

keyboard::NoteRange rangeOf(const std::vector<Wanted> &wanted)
{
    return {wanted.front().note, wanted.back().note};
}

/// Amid all lines that please the notes which the gentlest of them pleases: intervals are convex, so their mean does
/// too.
Straight amid(const std::vector<Line> &lines, const std::vector<Wanted> &wanted, int inside)
{
    const keyboard::NoteRange range = rangeOf(wanted);
    const Line &gentlest = *std::min_element(lines.begin(), lines.end(), [&](const Line &one, const Line &other) {
        return largestChange(one, range) < largestChange(other, range);
    });
    double bass = 0, treble = 0, count = 0;
    for (const Line &line : lines) {
        if (!pleasesTheSame(gentlest, line, wanted))
            continue;
        bass += line.at(range.first.number());
        treble += line.at(range.last.number());
        ++count;
    }
    return {.notes = range, .bass = bass / count / 2, .treble = treble / count / 2, .inside = inside};
}

int insideOf(Count change, const std::vector<Wanted> &wanted)
{
    return static_cast<int>(std::count_if(wanted.begin(), wanted.end(), [change](const Wanted &each) {
        return (!each.low || *each.low <= change) && (!each.high || change <= *each.high);
    }));
}

} // namespace

double Straight::at(keyboard::Note note) const
{
    const int steps = notes.count() - 1;
    return steps == 0 ? bass : bass + (treble - bass) * (note.number() - notes.first.number()) / steps;
}

Straight bestShift(const std::vector<Wanted> &wanted)
{
    std::vector<Count> ends{0};
    for (const Wanted &each : wanted)
        for (const auto &end : {each.low, each.high})
            if (end)
                ends.push_back(*end);
    std::sort(ends.begin(), ends.end());
    ends.erase(std::unique(ends.begin(), ends.end()), ends.end());
    Straight best{.notes = rangeOf(wanted), .inside = -1};
    for (std::size_t i = 0; i < ends.size(); ++i) {
        const int inside = insideOf(ends[i], wanted);
        // What lies between two neighbouring ends is inside whatever both of them are inside of.
        std::size_t j = i;
        while (j + 1 < ends.size() && insideOf(ends[j + 1], wanted) == inside &&
               insideOf((ends[j] + ends[j + 1]) / 2, wanted) >= inside)
            ++j;
        const double middle = static_cast<double>(ends[i] + ends[j]) / 4;
        if (inside > best.inside || (inside == best.inside && std::abs(middle) < std::abs(best.bass)))
            best.bass = best.treble = middle, best.inside = inside;
        i = j;
    }
    return best;
}

Straight bestLine(const std::vector<Wanted> &wanted)
{
    LineSearch search(wanted);
    const std::vector<Line> lines = search.run();
    if (lines.empty()) // no interval has an end: nothing need be moved
        return {.notes = rangeOf(wanted), .inside = static_cast<int>(wanted.size())};
    return amid(lines, wanted, search.most());
}

} // namespace hammerline::action
