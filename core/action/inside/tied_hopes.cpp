// What the search of tied screws may hope for: bounds that let it stop early.

#include "action/inside/tied_search.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <numeric>

namespace hammerline::action {

namespace {

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

/// Pairs that these screws can bring in, each looked at alone, less one for each conflict that is plain to see: key
/// height against dip, let-off against drop, and what is left of them against aftertouch.
int TiedSearch::mostPairs(unsigned screws) const
{
    std::array<double, catalogue::quantityCount> range{};
    for (std::size_t i = 0; i < tiedScrews.size(); ++i)
        if ((screws >> i & 1U) != 0)
            range[at(tiedScrews[i])] = rangeOf(at(tiedScrews[i]));
    const auto grainOfOne = [&](Index quantity) { return range[quantity] > 0 ? m_problem.screws[quantity].step : 0; };
    int pairs = 0;
    const Span key = spanOf(keyHeight, range[keyHeight], grainOfOne(keyHeight), pairs),
               blowSpan = spanOf(blow, range[blow], grainOfOne(blow), pairs),
               motion = spanOf(lostMotion, range[lostMotion], grainOfOne(lostMotion), pairs);
    Span stroke = spanOf(dip, range[keyHeight] + range[dip], range[keyHeight] > 0 ? 0 : grainOfOne(dip), pairs);
    stroke = common(stroke, {key.low - range[dip], key.high + range[dip]});
    // Drop falls by what let-off gains, and its own screw makes up for some.
    Span escape = spanOf(letOff, range[letOff], grainOfOne(letOff), pairs);
    const Span fall = spanOf(drop, range[drop] + range[letOff], range[letOff] > 0 ? 0 : grainOfOne(drop), pairs);
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

/// The changes within the range, in whole grains (0: endlessly fine), that bring a value in, and one more pair; where
/// none does, all changes.
TiedSearch::Span TiedSearch::spanOf(Index quantity, double range, double grain, int &pairs) const
{
    const Term &term = m_problem.terms[quantity];
    const double x = m_standing.value[quantity], slack = m_standing.slack[quantity];
    double lowest = term.low - slack - x, highest = term.high + slack - x;
    if (term.judged && grain > 0) {
        lowest = std::ceil(std::max(-range, lowest) / grain) * grain;
        highest = std::floor(std::min(range, highest) / grain) * grain;
    }
    if (!term.judged || lowest > range || highest < -range || lowest > highest)
        return {-range, range};
    ++pairs;
    return {std::max(-range, lowest), std::min(range, highest)};
}

/// From `first` on, as the values stand.
void TiedSearch::setHopes(std::size_t first, Hopes &hopes) const
{
    hopes[m_count] = {};
    const bool keyIsFree = turns(keyHeight) && first <= m_keyDepth;
    for (std::size_t depth = m_count; depth-- > first;) {
        Hope hope = hopes[depth + 1];
        const Index quantity = m_order[depth];
        if (quantity == dip && keyIsFree)
            hopeForValue(dip, {rangeOf(dip) + rangeOf(keyHeight), grainOf(dip, keyHeight)}, hope);
        else
            hopeForValue(quantity, {rangeOf(quantity), m_problem.screws[quantity].step}, hope);
        if (quantity == keyHeight && !turns(dip))
            hopeForValue(dip, {rangeOf(keyHeight), m_problem.screws[keyHeight].step}, hope);
        if (quantity == letOff)
            hopeForValue(drop, {rangeOf(letOff) + (turns(drop) ? rangeOf(drop) : 0), grainOf(letOff, drop)}, hope);
        hopes[depth] = hope;
    }
}

/// Own: the value at its best within what moves it. Aftertouch: what moving it there, or elsewhere, does; key height
/// does that through dip, and drop doesn't.
void TiedSearch::hopeForValue(Index quantity, const Freedom &freedom, Hope &hope) const
{
    const Term &term = m_problem.terms[quantity];
    const double x = m_standing.value[quantity], slack = m_standing.slack[quantity], goal = term.target - x;
    const double range = freedom.range, most = std::floor(range / freedom.grain + 1e-9);
    const Span span = spanOf(quantity, range, freedom.grain, hope.own.pairs);
    const double home = std::clamp(goal, -range, range);
    const double missed = distance(goal, home);
    const double missedBySteps =
        distance(goal, std::clamp(std::round(goal / freedom.grain), -most, most) * freedom.grain);
    if (term.judged) {
        hope.closeness += std::max(0.0, missed - slack) * term.slope;
        hope.own.closeness += std::max(0.0, missedBySteps - slack) * term.slope;
    }
    const double touch = quantity == keyHeight ? 0 : m_touch[quantity], size = std::abs(touch);
    if (size == 0)
        return;
    hope.easyLow += touch > 0 ? span.low * touch : span.high * touch;
    hope.easyHigh += touch > 0 ? span.high * touch : span.low * touch;
    hope.centre += term.slope > 0 ? home * touch : 0;
    hope.dead += slack * size;
    hope.deadBySteps += std::max(slack, missedBySteps - missed) * size;
    hope.slope = std::min(hope.slope, term.slope / size);
}

/// The coarsest step that both screws are whole numbers of; that of `one` where the other doesn't turn.
double TiedSearch::grainOf(Index one, Index other) const
{
    const double step = m_problem.screws[one].step;
    if (!turns(other))
        return step;
    return static_cast<double>(
        std::gcd(static_cast<std::int64_t>(step), static_cast<std::int64_t>(m_problem.screws[other].step)));
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

/// True where turning the screw further to this side can only be worse: its own value has its target and the near end
/// of its interval behind it, and is already too bad with everything else at its best.
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
    const double beyond = upwards ? std::max(term.low, term.target) + slack : std::min(term.high, term.target) - slack;
    if (upwards ? x <= beyond : x >= beyond)
        return false;
    hoped.minutes += m_problem.screws[quantity].minutes;
    hoped.pairs += m_problem.terms[aftertouch].judged ? 1 : 0;
    hoped.pairs += quantity == letOff && m_problem.terms[drop].judged ? 1 : 0;
    hoped.pairs += quantity == keyHeight && !turns(dip) && m_problem.terms[dip].judged ? 1 : 0;
    return !better(hoped, m_best.score, m_aim, sameForNotes);
}

double TiedSearch::closenessAt(Index quantity) const
{
    const Term &term = m_problem.terms[quantity];
    const double away = distance(m_standing.value[quantity], term.target) - m_standing.slack[quantity];
    return term.judged && away > 0 ? away * term.slope : 0;
}

} // namespace hammerline::action
