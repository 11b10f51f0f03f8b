#include "action/inside/rail_box.h"

#include "action/inside/note_search.h"

#include <algorithm>
#include <utility>

namespace hammerline::action {

using catalogue::Quantity;

namespace {

/// Change of the rail's quantity on one note, base units, not rounded.
double railChange(const Rail &rail, const keyboard::NoteRange &range, keyboard::Note note, const RailPosition &position)
{
    const double step = static_cast<double>(rail.step.baseCount());
    const double bass = step * position.bass;
    if (rail.shape == RailShape::Uniform)
        return bass;
    return bass + step * (position.treble - position.bass) * (note.number() - range.first.number()) /
                      (range.last.number() - range.first.number());
}

bool isPosition(const std::vector<RailSpan> &spans)
{
    return std::all_of(spans.begin(), spans.end(), [](const RailSpan &span) { return span.low == span.high; });
}

bool mayRest(const RailSpan &span)
{
    return span.low.bass <= 0 && span.low.treble <= 0 && span.high.bass >= 0 && span.high.treble >= 0;
}

bool same(const Shift &one, const Shift &other)
{
    return one.blow == other.blow && one.blowSlack == other.blowSlack && one.letOff == other.letOff &&
           one.letOffSlack == other.letOffSlack && one.checking == other.checking &&
           one.checkingSlack == other.checkingSlack;
}

} // namespace

void addRail(const Rail &rail, const keyboard::NoteRange &range, keyboard::Note note, const RailSpan &span,
             Shift &shift)
{
    const double low = railChange(rail, range, note, span.low), high = railChange(rail, range, note, span.high);
    const double slack = (high - low) / 2, middle = span.low == span.high ? low : low + slack;
    switch (rail.quantity) {
    case Quantity::Blow:
        shift.blow += middle;
        shift.blowSlack += slack;
        break;
    case Quantity::LetOff:
        shift.letOff += middle;
        shift.letOffSlack += slack;
        break;
    default:
        shift.checking += middle;
        shift.checkingSlack += slack;
    }
}

RailBoxSearch::RailBoxSearch(const PlanTask &task, std::vector<std::size_t> rails,
                             std::vector<const NoteProblem *> notes)
    : m_task(task),
      m_rails(std::move(rails)),
      m_notes(std::move(notes)),
      m_tied(task.setup.rails[m_rails.front()].quantity != Quantity::Checking)
{
    double letOffRange = 0;
    for (const std::size_t number : m_rails) {
        const Rail &rail = task.setup.rails[number];
        m_ranges.push_back(rangeOf(rail, task.compass));
        letOffRange += rail.quantity == Quantity::LetOff ? static_cast<double>(rail.most.baseCount()) : 0;
    }
    if (task.aim == Aim::Target && letOffRange > 0)
        m_residues.emplace(m_notes, letOffRange);
}

void RailBoxSearch::run(std::vector<RailPosition> &positions)
{
    Box rest{.spans = std::vector<RailSpan>(m_rails.size())}, whole = rest;
    for (std::size_t i = 0; i < m_rails.size(); ++i) {
        const Rail &rail = m_task.setup.rails[m_rails[i]];
        const int most = wholeSteps(rail.most, rail.step);
        whole.spans[i] = {{-most, -most}, {most, most}};
    }
    // Rails at rest are always a plan: nothing read is below 0.
    if (solve(rest, nullptr))
        keep(rest);
    if (solve(whole, nullptr))
        search(whole);
    if (m_best.empty())
        return; // given up before the first was looked at
    for (std::size_t i = 0; i < m_rails.size(); ++i)
        positions[m_rails[i]] = m_best[i].low;
}

void RailBoxSearch::search(const Box &box)
{
    if (!hopeful(box.bound) || !m_notes.front()->mayTry())
        return;
    if (isPosition(box.spans)) {
        keep(box);
        return;
    }
    Box middle = middleOf(box);
    if (solve(middle, &box))
        keep(middle);
    std::vector<Box> halves;
    for (Box &half : halvesOf(box))
        if (solve(half, &box))
            halves.push_back(std::move(half));
    if (halves.size() == 2 && better(halves[1].bound, halves[0].bound, m_task.aim, 0))
        std::swap(halves[0], halves[1]);
    for (const Box &half : halves)
        search(half);
}

/// False where the box holds no plan or none better than the best so far. A position is bounded like any box before its
/// notes are solved one after the other, so that a hopeless one is given up early.
bool RailBoxSearch::solve(Box &box, const Box *parent)
{
    box.shifts.clear();
    for (std::size_t note = 0; note < m_notes.size(); ++note)
        box.shifts.push_back(shiftIn(box, note));
    box.shares.assign(m_notes.size(), Score{});
    if (parent)
        box.shares = parent->shares;
    box.bound = parent ? parent->bound : Score{};
    box.bound.minutes += minutesOf(box) - (parent ? minutesOf(*parent) : 0);
    if (!bound(box, parent))
        return false;
    return !isPosition(box.spans) || solveNotes(box);
}

/// Notes that see no difference from the box around it keep their share.
bool RailBoxSearch::bound(Box &box, const Box *parent)
{
    for (std::size_t note = 0; note < m_notes.size(); ++note) {
        if (parent && same(box.shifts[note], parent->shifts[note]))
            continue;
        const NoteAnswer share = m_tied ? NoteAnswer{.feasible = true, .score = boundOf(note, box.shifts[note])}
                                        : answerOf(note, box.shifts[note]);
        if (!share.feasible)
            return false;
        setShare(box, note, share.score);
        if (parent && !hopeful(box.bound))
            return false;
    }
    return true;
}

bool RailBoxSearch::solveNotes(Box &position) const
{
    for (std::size_t note = 0; note < m_notes.size(); ++note) {
        const NoteAnswer answer = answerOf(note, position.shifts[note]);
        if (!answer.feasible)
            return false;
        setShare(position, note, answer.score);
        if (!hopeful(position.bound))
            return false;
    }
    return true;
}

void RailBoxSearch::setShare(Box &box, std::size_t note, const Score &share) const
{
    box.bound += share;
    box.bound -= box.shares[note];
    box.shares[note] = share;
}

Score RailBoxSearch::boundOf(std::size_t note, const Shift &shift)
{
    if (m_residues)
        if (const auto sharp = m_residues->find(note, shift))
            return *sharp;
    return boundTied(*m_notes[note], shift, m_task.aim);
}

NoteAnswer RailBoxSearch::answerOf(std::size_t note, const Shift &shift) const
{
    return m_tied ? bestTied(*m_notes[note], shift, m_task.aim)
                  : bestAlone(*m_notes[note], Quantity::Checking, shift, m_task.aim);
}

Shift RailBoxSearch::shiftIn(const Box &box, std::size_t note) const
{
    Shift shift;
    for (std::size_t i = 0; i < m_rails.size(); ++i)
        if (m_ranges[i].contains(m_notes[note]->note))
            addRail(m_task.setup.rails[m_rails[i]], m_ranges[i], m_notes[note]->note, box.spans[i], shift);
    return shift;
}

double RailBoxSearch::minutesOf(const Box &box) const
{
    double minutes = 0;
    for (std::size_t i = 0; i < m_rails.size(); ++i)
        minutes += mayRest(box.spans[i]) ? 0 : m_task.setup.rails[m_rails[i]].minutes;
    return minutes;
}

RailBoxSearch::Box RailBoxSearch::middleOf(const Box &box) const
{
    Box middle{.spans = box.spans};
    for (RailSpan &span : middle.spans) {
        span.low = {span.low.bass + (span.high.bass - span.low.bass) / 2,
                    span.low.treble + (span.high.treble - span.low.treble) / 2};
        span.high = span.low;
    }
    return middle;
}

/// Halved where it is widest; the two ends of a uniform rail move together.
std::vector<RailBoxSearch::Box> RailBoxSearch::halvesOf(const Box &box) const
{
    std::size_t widest = 0;
    bool treble = false;
    int width = -1;
    for (std::size_t i = 0; i < box.spans.size(); ++i) {
        const RailSpan &span = box.spans[i];
        if (const int wide = span.high.bass - span.low.bass; wide > width)
            width = wide, widest = i, treble = false;
        if (const int wide = span.high.treble - span.low.treble; wide > width)
            width = wide, widest = i, treble = true;
    }
    std::vector<Box> halves(2, Box{.spans = box.spans});
    RailSpan &lower = halves[0].spans[widest], &upper = halves[1].spans[widest];
    const bool uniform = m_task.setup.rails[m_rails[widest]].shape == RailShape::Uniform;
    const int low = treble ? lower.low.treble : lower.low.bass;
    const int cut = low + width / 2;
    if (treble || uniform)
        lower.high.treble = cut, upper.low.treble = cut + 1;
    if (!treble)
        lower.high.bass = cut, upper.low.bass = cut + 1;
    return halves;
}

bool RailBoxSearch::hopeful(const Score &score) const
{
    return m_best.empty() || better(score, m_bestScore, m_task.aim, sameForPlans);
}

void RailBoxSearch::keep(const Box &position)
{
    if (!hopeful(position.bound))
        return;
    m_best = position.spans;
    m_bestScore = position.bound;
}

} // namespace hammerline::action
