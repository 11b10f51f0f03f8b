#pragma once
// How far a verdict can be trusted: the doubt of one reading, from its gauge and from how finely it was read off.
//
// Two parts, each a standard uncertainty in mm or g, added in quadrature (JCGM 100:2008, 5.1.2):
// - the gauge, with the people who use it: half of the expanded uncertainty (k = 2) of the pass's gauge where it states
//   one, which speaks of lengths only; otherwise W / coverage factor of the set. Where the set is guarded its W comes
//   first: it decides what is in, and two doubts side by side would contradict each other on one page;
// - the resolution of what was typed, as a rectangular distribution: half of one step / sqrt(3) (JCGM 100:2008, 4.3.7
//   and F.2.2.1). 1/64 in read off a rule gives 0.1146 mm. A gauge that states a coarser resolution than was typed
//   counts instead.
// Takes do not shrink it: the gauge's part covers who reads and how, which repeats with every take.
//
// Neither is counted twice. What a gauge states was found by reading its scale, so that it holds the rounding to its
// step already; JCGM 100:2008, 4.3.10 lets a component stand by itself only as far as it did not show in what was
// observed. So the variance of the step that the gauge states is taken out of the gauge's part before that of the
// reading's own step comes in:
// - typed as finely as the gauge reads, the two together come to the larger of them, as in ISO 22514-7 and VDA 5
//   (resolution or repeatability, whichever is larger; from memory);
// - typed more coarsely, the reading's rounding comes in for the scale's;
// - without a step beside the uncertainty, and for the W of a set, nobody knows what it holds, and both count in full.
// Readings simulated through a study and a pass (the tests) lie within the expanded doubt in about 95 of 100 cases or
// more, be the step fine or coarse beside the spread of hands and people; the doubt is at most an eighth too small (a
// hand that spreads a seventh of a step) and a tenth too large. Counting both in full made it up to a quarter too
// large.
//
// The status of a verdict does not follow from this (judgeValue goes by the set alone). It says what the status is
// worth.

#include "readings/readings.h"
#include "tolerance/judge.h"

#include <optional>
#include <vector>

namespace hammerline::tolerance {

/// Half of one step of what was typed: 0.05 mm for "3.2", 1/128 in for "1/64". The unit typed, or the unit under which
/// the text gives the value; bare digits under a scale ("31" for 3.1 mm) count by the digit. Absent where the text does
/// not tell, as with "0" under a scale or a text that is not the value's.
[[nodiscard]] std::optional<units::Amount> halfResolutionOf(const readings::Reading &reading);

/// The doubt of one reading. Absent where neither part is known.
[[nodiscard]] std::optional<Doubt> doubtOf(const std::optional<Limits> &limits, const readings::Gauge &gauge,
                                           const std::optional<units::Amount> &halfResolution,
                                           units::Dimension dimension);

/// Gives every verdict of a value its doubt, and its conformance probability with it. `readings` are those that the
/// judgement was made from; the coarsest take of a note counts. A fraction tells its rule's step only when it cannot be
/// reduced (6/64 is written 3/32, 64/64 is written 1), so fractions and whole inches count by the step that the gauge
/// states, else by the finest fraction that was typed for the quantity; give all readings of a quantity.
void weighDoubt(Judgement &judgement, const std::vector<readings::Reading> &readings, const readings::Gauge &gauge);

} // namespace hammerline::tolerance
