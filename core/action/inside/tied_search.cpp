#include "action/inside/tied_search.h"

#include <algorithm>
#include <cmath>

namespace hammerline::action {

using catalogue::Quantity;

namespace {

constexpr std::size_t keyHeight = at(Quantity::KeyHeight), blow = at(Quantity::Blow),
                      lostMotion = at(Quantity::LostMotion), letOff = at(Quantity::LetOff), drop = at(Quantity::Drop),
                      dip = at(Quantity::Dip), aftertouch = at(Quantity::Aftertouch);

/// Empty (low > high) where they have nothing in common.
template <typename Span>
constexpr Span common(const Span &one, const Span &other)
{
    return {std::max(one.low, other.low), std::min(one.high, other.high)};
}

constexpr double distance(double one, double other)
{
    return one < other ? other - one : one - other;
}

} // namespace

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

/// For the least minutes: the cheapest choices that might have the most pairs, and the least closeness that one of
/// them might have.
Score TiedSearch::bound()
{
    const unsigned all = m_problem.rounds->back().screws;
    Score bound{.pairs = mostPairs(all)};
    if (m_aim == Aim::Target) {
        bound.closeness = leastCloseness(all);
        return bound;
    }
    bool found = false;
    for (const Round &round : *m_problem.rounds) {
        if (found && round.minutes >= bound.minutes + sameForNotes)
            break;
        if (mostPairs(round.screws) < bound.pairs)
            continue;
        const double closeness = leastCloseness(round.screws);
        bound.closeness = found ? std::min(bound.closeness, closeness) : closeness;
        bound.minutes = found ? bound.minutes : round.minutes;
        found = true;
    }
    return bound;
}

double TiedSearch::leastCloseness(unsigned screws)
{
    beginRound(screws);
    Score score;
    for (const Index quantity : {keyHeight, blow, lostMotion, letOff})
        if (!turns(quantity))
            score.closeness += closenessAt(quantity);
    if (!turns(keyHeight) && !turns(dip))
        score.closeness += closenessAt(dip);
    if (!turns(letOff) && !turns(drop))
        score.closeness += closenessAt(drop);
    return hopedFor(score, 0).closeness;
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

/// Pairs that these screws can bring in, each looked at alone, less one for each conflict that is plain to see: key
/// height against dip, let-off against drop, and what is left of them against aftertouch.
int TiedSearch::mostPairs(unsigned screws) const
{
    std::array<double, catalogue::quantityCount> range{};
    for (std::size_t i = 0; i < tiedScrews.size(); ++i)
        if ((screws >> i & 1U) != 0)
            range[at(tiedScrews[i])] = rangeOf(at(tiedScrews[i]));
    int pairs = 0;
    const Span key = spanOf(keyHeight, range[keyHeight], true, pairs),
               blowSpan = spanOf(blow, range[blow], true, pairs),
               motion = spanOf(lostMotion, range[lostMotion], true, pairs);
    Span stroke = spanOf(dip, range[keyHeight] + range[dip], range[keyHeight] <= 0, pairs);
    stroke = common(stroke, {key.low - range[dip], key.high + range[dip]});
    // Drop falls by what let-off gains, and its own screw makes up for some.
    Span escape = spanOf(letOff, range[letOff], true, pairs);
    const Span fall = spanOf(drop, range[drop] + range[letOff], range[letOff] <= 0, pairs);
    escape = common(escape, {-fall.high - range[drop], -fall.low + range[drop]});
    const int conflicts = (stroke.low > stroke.high ? 1 : 0) + (escape.low > escape.high ? 1 : 0);
    const Term &term = m_problem.terms[aftertouch];
    if (!term.judged || conflicts > 0)
        return pairs - conflicts + (term.judged ? 1 : 0);
    const double r = m_problem.ratio, slack = m_standing.slack[aftertouch], x = m_standing.value[aftertouch];
    const double low = stroke.low - motion.high + (escape.low - blowSpan.high) / r;
    const double high = stroke.high - motion.low + (escape.high - blowSpan.low) / r;
    return pairs + (x + low - slack <= term.high && x + high + slack >= term.low ? 1 : 0);
}

/// The changes within the range, in whole steps if one screw alone makes them, that bring a value in, and one more
/// pair; where none does, all changes.
TiedSearch::Span TiedSearch::spanOf(Index quantity, double range, bool ownSteps, int &pairs) const
{
    const Term &term = m_problem.terms[quantity];
    const double x = m_standing.value[quantity], slack = m_standing.slack[quantity];
    double lowest = term.low - slack - x, highest = term.high + slack - x;
    if (term.judged && ownSteps && range > 0) {
        const double step = m_problem.screws[quantity].step;
        lowest = std::ceil(std::max(-range, lowest) / step) * step;
        highest = std::floor(std::min(range, highest) / step) * step;
    }
    if (!term.judged || lowest > range || highest < -range || lowest > highest)
        return {-range, range};
    ++pairs;
    return {std::max(-range, lowest), std::min(range, highest)};
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

/// From `depth` on, as the values stand.
void TiedSearch::setHopes(std::size_t first, Hopes &hopes) const
{
    hopes[m_count] = {};
    const bool keyIsFree = turns(keyHeight) && first <= m_keyDepth;
    for (std::size_t depth = m_count; depth-- > first;) {
        Hope hope = hopes[depth + 1];
        const Index quantity = m_order[depth];
        if (quantity == dip) {
            hopeForValue(dip, rangeOf(dip) + (keyIsFree ? rangeOf(keyHeight) : 0), !keyIsFree, hope);
        } else if (quantity == keyHeight) {
            hopeForValue(keyHeight, rangeOf(keyHeight), true, hope);
            if (!turns(dip))
                hopeForValue(dip, rangeOf(keyHeight), false, hope);
        } else {
            hopeForValue(quantity, rangeOf(quantity), true, hope);
            hope.own.pairs += quantity == letOff && m_problem.terms[drop].judged ? 1 : 0;
        }
        hopes[depth] = hope;
    }
}

/// Own: the value at its best within the range, in whole steps if one screw alone makes it. Aftertouch: what moving it
/// there, or elsewhere, does; key height does that through dip.
void TiedSearch::hopeForValue(Index quantity, double range, bool ownSteps, Hope &hope) const
{
    const Term &term = m_problem.terms[quantity];
    const double x = m_standing.value[quantity], slack = m_standing.slack[quantity], goal = term.target - x;
    const Span span = spanOf(quantity, range, ownSteps, hope.own.pairs);
    const double home = std::clamp(goal, -range, range);
    const double missed = distance(goal, home), missedBySteps = ownSteps ? missedInSteps(quantity, goal) : missed;
    if (term.judged) {
        hope.closeness += std::max(0.0, missed - slack) * term.slope;
        hope.own.closeness += std::max(0.0, missedBySteps - slack) * term.slope;
    }
    if (quantity == keyHeight)
        return;
    const double touch = m_touch[quantity], size = std::abs(touch);
    hope.easyLow += touch > 0 ? span.low * touch : span.high * touch;
    hope.easyHigh += touch > 0 ? span.high * touch : span.low * touch;
    hope.centre += term.slope > 0 ? home * touch : 0;
    hope.dead += slack * size;
    hope.deadBySteps += std::max(slack, missedBySteps - missed) * size;
    hope.slope = std::min(hope.slope, term.slope / size);
}

/// How near whole steps of the screw come to a change.
double TiedSearch::missedInSteps(Index quantity, double change) const
{
    const Screw &screw = m_problem.screws[quantity];
    const double steps = std::clamp<double>(std::round(change / screw.step), -screw.most, screw.most);
    return distance(change, steps * screw.step);
}

bool TiedSearch::promising(const Score &score, std::size_t depth) const
{
    return !m_best.feasible || better(hopedFor(score, depth), m_best.score, m_aim, sameForNotes);
}

Score TiedSearch::hopedFor(const Score &score, std::size_t depth) const
{
    const Hope &hope = depth > m_keyDepth ? m_keyedHopes[depth] : m_hopes[depth];
    Score hoped = score + hope.own;
    const Term &term = m_problem.terms[aftertouch];
    if (term.judged) {
        const double x = m_standing.value[aftertouch], slack = m_standing.slack[aftertouch];
        // Where aftertouch comes in only at the cost of another pair, nothing is gained by it.
        const bool easy = x + hope.easyLow - slack <= term.high && x + hope.easyHigh + slack >= term.low;
        hoped.pairs += easy ? 1 : 0;
        // Two bounds: with each screw on its best step, and with each value on its target, as if steps were endlessly
        // fine.
        const double gap = distance(x + hope.centre, term.target) - slack, slope = std::min(term.slope, hope.slope);
        const double bySteps = std::max(0.0, gap - hope.deadBySteps) * slope;
        const double endlesslyFine = std::max(0.0, gap - hope.dead) * slope - hope.own.closeness + hope.closeness;
        hoped.closeness += std::max(bySteps, endlesslyFine);
    }
    return hoped;
}

/// True where turning the screw further to this side can only be worse: its own value has left its interval and its
/// target behind, and is already too bad with everything else at its best.
bool TiedSearch::sideIsDone(std::size_t depth, int steps, Side side, const Score &before) const
{
    const Index quantity = m_order[depth];
    const Term &term = m_problem.terms[quantity];
    const double x = m_standing.value[quantity] + steps * m_problem.screws[quantity].step;
    const double slack = m_standing.slack[quantity];
    const bool upwards = side == Side::Up;
    Score hoped = before + m_hopes[depth + 1].own;
    if (!addTerm(term, x, slack, hoped))
        return !upwards;
    if (!term.judged || !m_best.feasible)
        return false;
    const double beyond = upwards ? std::max(term.high, term.target) + slack : std::min(term.low, term.target) - slack;
    if (upwards ? x <= beyond : x >= beyond)
        return false;
    hoped.minutes += m_problem.screws[quantity].minutes;
    hoped.pairs += m_problem.terms[aftertouch].judged ? 1 : 0;
    hoped.pairs += quantity == letOff && m_problem.terms[drop].judged ? 1 : 0;
    hoped.pairs += quantity == keyHeight && !turns(dip) && m_problem.terms[dip].judged ? 1 : 0;
    return !better(hoped, m_best.score, m_aim, sameForNotes);
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
    for (int steps = first + 1; steps <= screw.most && !sideIsDone(depth, steps, Side::Up, score); ++steps)
        tryOne(steps);
    for (int steps = first - 1; steps >= -screw.most && !sideIsDone(depth, steps, Side::Down, score); --steps)
        tryOne(steps);
}

void TiedSearch::turnTo(std::size_t depth, int steps, const Score &score)
{
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

double TiedSearch::closenessAt(Index quantity) const
{
    const Term &term = m_problem.terms[quantity];
    const double away = distance(m_standing.value[quantity], term.target) - m_standing.slack[quantity];
    return term.judged && away > 0 ? away * term.slope : 0;
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
