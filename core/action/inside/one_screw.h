#pragma once
// The best turn of a single screw when everything else stands: exact, without trying every step.
//
// Each value that the screw moves runs along a straight line. Which pairs are inside changes only at limits, and
// between these closeness is convex with corners at targets, so the best step is 0, an end, or next to a limit, a
// target or 0 mm.

#include "action/inside/note_problem.h"

#include <span>

namespace hammerline::action {

/// How one value moves with the screw: `start` with the screw left alone. In a box of rail positions it is known to
/// within `slack` and taken at its best.
struct Line {
    const Term *term = nullptr;
    double start = 0;
    double perStep = 0;
    double slack = 0;
};

/// Adds what a term is worth at `x`; false where it comes out below 0.
[[nodiscard]] inline bool addTerm(const Term &term, double x, double slack, Score &score)
{
    if (term.guarded && x < -onTheLimit - slack)
        return false;
    if (!term.judged)
        return true;
    if (term.low - slack <= x && x <= term.high + slack)
        ++score.pairs;
    const double away = (x < term.target ? term.target - x : x - term.target) - slack;
    if (away > 0)
        score.closeness += away * term.slope;
    return true;
}

struct Turn {
    bool feasible = false;
    int steps = 0;
    Score score{}; ///< of the lines, and the minutes of the screw where it is turned
};
[[nodiscard]] Turn bestTurn(const Screw &screw, std::span<const Line> lines, Aim aim);

} // namespace hammerline::action
