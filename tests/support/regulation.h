#pragma once
// Two ways to regulate an invented action until it measures right: by plans, and as the textbook says.

#include "support/action_simulator.h"

namespace hammerline::support {

struct RegulationOutcome {
    double minutes = 0; ///< of adjusting; measuring is not counted for either
    int adjustments = 0;
    int rounds = 0; ///< of measuring everything and working
    int readings = 0;
    int pairs = 0;
    int trulyOut = 0; ///< at the end
    RegulationOutcome &operator+=(const RegulationOutcome &other);
};

struct PlanStyle {
    bool guarded = false;  ///< plan for limits drawn in by what the gauge may be wrong by
    bool learns = false;   ///< ask for what the action has been seen to answer
    int marginalTakes = 1; ///< takes in all of a pair that lies nearer to a limit than W, or out
    bool fits = true;      ///< targets fitted to the action first
};

inline constexpr int mostRounds = 10;

/// Measure all, plan, do the plan, until every pair measures inside or nothing is left to do.
[[nodiscard]] RegulationOutcome regulateByPlans(SimulatedAction action, const PlanStyle &style);

/// Quantity by quantity in the order of the trade: measure it, turn each note that is out to its target, go on;
/// aftertouch by the dip. Again from the top until every pair measures in, or `rounds` are over.
[[nodiscard]] RegulationOutcome regulateByTextbook(SimulatedAction action, int rounds = mostRounds);

} // namespace hammerline::support
