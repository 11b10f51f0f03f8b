#include "action/inside/tied_search.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>

namespace hammerline::action {

using catalogue::Quantity;

TiedSearch::TiedSearch(const NoteProblem &problem, const Shift &shift, Aim aim)
    : m_problem(problem), m_aim(aim), m_standing(standingOf(problem, shift))
{
    m_touch[keyHeight] = m_touch[dip] = 1;
    m_touch[lostMotion] = -1;
    m_touch[letOff] = 1 / problem.ratio;
    m_touch[blow] = -1 / problem.ratio;
}

NoteAnswer TiedSearch::run()
{
    if (m_aim == Aim::In)
        searchByMinutes();
    else
        search(m_problem.rounds->back().screws);
    return m_best;
}

/// Choices come cheapest first: once a choice has all pairs that can be had, only those of equal cost matter.
void TiedSearch::searchByMinutes()
{
    const int most = mostPairs(m_problem.rounds->back().screws);
    for (const Round &round : *m_problem.rounds) {
        if (m_best.feasible) {
            if (m_best.score.pairs >= most && round.minutes >= m_best.score.minutes + sameForNotes)
                return;
            const Score hoped{.pairs = mostPairs(round.screws), .minutes = round.minutes};
            if (!better(hoped, m_best.score, m_aim, sameForNotes))
                continue;
        }
        search(round.screws);
    }
}

void TiedSearch::search(unsigned screws)
{
    beginRound(screws);
    Score score;
    if (addUntouched(score) && promising(score, 0))
        visit(0, score);
}

void TiedSearch::beginRound(unsigned screws)
{
    m_turns = {};
    m_steps = {};
    m_count = 0;
    for (std::size_t i = 0; i < tiedScrews.size(); ++i) {
        if ((screws >> i & 1U) == 0)
            continue;
        m_turns[at(tiedScrews[i])] = true;
        if (tiedScrews[i] != Quantity::Drop)
            m_order[m_count++] = at(tiedScrews[i]);
    }
    sortOrder();
    setHopes(0, m_hopes);
}

/// A screw whose step costs much closeness has few steps worth trying; one that costs none has all, and is best left
/// for the end, where a single screw is not tried step by step.
void TiedSearch::sortOrder()
{
    const auto begin = m_order.begin(), end = begin + static_cast<std::ptrdiff_t>(m_count);
    const auto costOf = [this](Index quantity) {
        return m_problem.terms[quantity].slope * m_problem.screws[quantity].step;
    };
    std::stable_sort(begin, end, [&](Index one, Index other) { return costOf(one) > costOf(other); });
    // Key height moves the value of dip, so that dip waits for it.
    if (turns(keyHeight) && turns(dip)) {
        const auto key = std::find(begin, end, keyHeight), stroke = std::find(begin, end, dip);
        if (stroke < key)
            std::rotate(stroke, key, key + 1);
    }
    // With its drop screw, let-off is two screws in one.
    if (m_count > 1 && turns(drop) && *(end - 1) == letOff)
        std::iter_swap(end - 1, end - 2);
    m_keyDepth =
        turns(keyHeight) && turns(dip) ? static_cast<std::size_t>(std::find(begin, end, keyHeight) - begin) : m_count;
}

bool TiedSearch::addUntouched(Score &score)
{
    for (const Index quantity : {keyHeight, blow, lostMotion, letOff})
        if (!turns(quantity) && !addAt(quantity, score))
            return false;
    if (!turns(keyHeight) && !turns(dip) && !addAt(dip, score))
        return false;
    return turns(letOff) || addDrop(score);
}

void TiedSearch::visit(std::size_t depth, const Score &score)
{
    if (depth == m_count) {
        Score whole = score;
        if (addAt(aftertouch, whole))
            keep(whole);
        return;
    }
    const Index quantity = m_order[depth];
    const bool freesDrop = quantity == letOff && turns(drop);
    if (depth + 1 == m_count && !freesDrop)
        turnLast(quantity, score);
    else
        turnEach(depth, score);
}

void TiedSearch::turnLast(Index quantity, const Score &score)
{
    const Screw &screw = m_problem.screws[quantity];
    std::array<Line, 3> lines;
    std::size_t count = 0;
    lines[count++] = line(quantity, screw.step);
    if (quantity == letOff)
        lines[count++] = line(drop, -screw.step);
    if (quantity == keyHeight)
        lines[count++] = line(dip, screw.step);
    lines[count++] = line(aftertouch, m_touch[quantity] * screw.step);
    const Turn turn = bestTurn(screw, std::span(lines).first(count), m_aim);
    if (!turn.feasible)
        return;
    m_steps[quantity] = turn.steps;
    keep(score + turn.score);
    m_steps[quantity] = 0;
}

/// From the step nearest to the target outwards, each side until nothing further out can be better.
void TiedSearch::turnEach(std::size_t depth, const Score &score)
{
    const Index quantity = m_order[depth];
    const Screw &screw = m_problem.screws[quantity];
    const Term &term = m_problem.terms[quantity];
    const double exact = term.judged ? (term.target - m_standing.value[quantity]) / screw.step : 0;
    const int first = static_cast<int>(std::lround(std::clamp<double>(exact, -screw.most, screw.most)));
    if (m_aim == Aim::Target) // for the least minutes a cheaper choice of screws has seen to it
        turnTo(depth, 0, score);
    const auto tryOne = [&](int steps) {
        if (steps != 0)
            turnTo(depth, steps, score);
    };
    tryOne(first);
    const auto goesOn = [&](int steps, Side side) {
        return std::abs(steps) <= screw.most && !m_problem.givenUp() && !sideIsDone(depth, steps, side, score);
    };
    for (int steps = first + 1; goesOn(steps, Side::Up); ++steps)
        tryOne(steps);
    for (int steps = first - 1; goesOn(steps, Side::Down); --steps)
        tryOne(steps);
}

void TiedSearch::turnTo(std::size_t depth, int steps, const Score &score)
{
    if (!m_problem.mayTry())
        return;
    const Index quantity = m_order[depth];
    const Standing before = m_standing;
    const double change = steps * m_problem.screws[quantity].step;
    m_standing.value[quantity] += change;
    m_standing.value[aftertouch] += m_touch[quantity] * change;
    if (quantity == letOff)
        m_standing.value[drop] -= change;
    if (quantity == keyHeight)
        m_standing.value[dip] += change;
    m_steps[quantity] = steps;
    Score next = score;
    next.minutes += steps == 0 ? 0 : m_problem.screws[quantity].minutes;
    if (depth == m_keyDepth)
        setHopes(depth + 1, m_keyedHopes);
    if (addOwn(quantity, next) && promising(next, depth + 1))
        visit(depth + 1, next);
    m_steps[quantity] = 0;
    m_standing = before;
}

/// The values that nobody moves any more once `quantity` stands.
bool TiedSearch::addOwn(Index quantity, Score &score)
{
    if (!addAt(quantity, score))
        return false;
    if (quantity == letOff)
        return addDrop(score);
    return quantity != keyHeight || turns(dip) || addAt(dip, score);
}

bool TiedSearch::addDrop(Score &score)
{
    if (!turns(drop))
        return addAt(drop, score);
    const std::array<Line, 1> lines{line(drop, m_problem.screws[drop].step)};
    const Turn turn = bestTurn(m_problem.screws[drop], lines, m_aim);
    m_steps[drop] = turn.steps;
    score += turn.score;
    return turn.feasible;
}

bool TiedSearch::addAt(Index quantity, Score &score) const
{
    return addTerm(m_problem.terms[quantity], m_standing.value[quantity], m_standing.slack[quantity], score);
}

void TiedSearch::keep(const Score &score)
{
    if (m_best.feasible && !better(score, m_best.score, m_aim, sameForNotes))
        return;
    m_best = {.feasible = true, .score = score, .steps = m_steps};
}

double TiedSearch::rangeOf(Index quantity) const
{
    return m_problem.screws[quantity].most * m_problem.screws[quantity].step;
}

Line TiedSearch::line(Index quantity, double perStep) const
{
    return {.term = &m_problem.terms[quantity],
            .start = m_standing.value[quantity],
            .perStep = perStep,
            .slack = m_standing.slack[quantity]};
}

} // namespace hammerline::action
