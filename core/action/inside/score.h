#pragma once
// How good a plan, or a note's share of it, is. Scores add up over notes, and so does their order.

#include "action/plan.h"

namespace hammerline::action {

struct Score {
    int pairs = 0;
    double minutes = 0;
    double closeness = 0;

    Score &operator+=(const Score &other)
    {
        pairs += other.pairs;
        minutes += other.minutes;
        closeness += other.closeness;
        return *this;
    }
    Score &operator-=(const Score &other)
    {
        pairs -= other.pairs;
        minutes -= other.minutes;
        closeness -= other.closeness;
        return *this;
    }
};
inline Score operator+(Score one, const Score &other)
{
    return one += other;
}

/// Minutes and closeness of whole plans that differ by less count as equal; a note's share is compared
/// finer, so that 88 of them together stay within it.
inline constexpr double sameForPlans = 1e-9;
inline constexpr double sameForNotes = 1e-11;

/// True where `one` is strictly better than `other`.
[[nodiscard]] inline bool better(const Score &one, const Score &other, Aim aim, double same)
{
    if (one.pairs != other.pairs)
        return one.pairs > other.pairs;
    const double minutes = one.minutes - other.minutes, closeness = one.closeness - other.closeness;
    const double first = aim == Aim::In ? minutes : closeness, second = aim == Aim::In ? closeness : minutes;
    return first <= -same || (first < same && second <= -same);
}

} // namespace hammerline::action
