#pragma once
// The shop lead looks at a pass: draws a sample, sends back, accepts, signs, opens again.

#include "demo_workshop/demo_workshop.h"
#include "demo_workshop/inside/action_state.h"

namespace hammerline::demo_workshop {

/// What LeadPlan asks for, added to `made.deeds`. Where notes are mended, `state` changes with them. `judgedBy`: what a
/// signature is held against.
void lookAt(MadePass &made, const PianoPlan &plan, const PassPlan &pass, const tolerance::ToleranceSet &judgedBy,
            ActionState &state, Dice &dice);

} // namespace hammerline::demo_workshop
