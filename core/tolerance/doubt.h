#pragma once
// How far a verdict can be trusted: the doubt of one reading, from its gauge and from how finely it was read off.
//
// Two parts, each a standard uncertainty in mm or g, added in quadrature (JCGM 100:2008, 5.1.2):
// - the gauge, with the people who use it: half of the expanded uncertainty (k = 2) of the pass's gauge where it states
//   one, which speaks of lengths only; otherwise W / coverage factor of the set;
// - the resolution of what was typed, as a rectangular distribution: half of one step / sqrt(3) (JCGM 100:2008, 4.3.7).
//   1/64 in read off a rule gives 0.1146 mm. A gauge that states a coarser resolution than was typed counts instead.
// Takes do not shrink it: the gauge's part covers who reads and how, which repeats with every take.
//
// The status of a verdict does not follow from this (contract §5 judges by the set alone). It says what the status is
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
/// judgement was made from; the coarsest take of a note counts.
void weighDoubt(Judgement &judgement, const std::vector<readings::Reading> &readings, const readings::Gauge &gauge);

} // namespace hammerline::tolerance
