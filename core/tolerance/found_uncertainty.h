#pragma once
// What a gauge study found, put into a tolerance set: the W of one quantity, and the set's source text says where it
// comes from. Limits and targets stay as they are.
//
// The sentence stands on a line of its own and begins with the quantity, so that a newer study's takes its place:
//   Uncertainty of let-off: 0.124 mm (k = 2), from the gauge study of "rule 3", 2026-03-02.

#include "outcome/outcome.h"
#include "tolerance/tolerance.h"

#include <string>

namespace hammerline::tolerance {

struct FoundUncertainty {
    catalogue::Quantity quantity{};
    units::Amount expanded{}; ///< k = 2, above 0
    std::string gauge{};
    std::string day{}; ///< of the study, RFC 3339
};

/// The set with W = what was found, k = 2 and `rule` for that quantity; its name ends on the gauge's in brackets. A set
/// that names no source says so, lest its limits seem to come from the study. A fault where the set does not judge the
/// quantity, and where nothing was found (0).
[[nodiscard]] outcome::Outcome<ToleranceSet> countingWith(ToleranceSet set, const FoundUncertainty &found, Rule rule);

/// A guarded entry with limits that somewhere lie closer together than 2 W: no reading can be in there, at best
/// marginal.
[[nodiscard]] bool leavesNothingIn(const Entry &entry);

} // namespace hammerline::tolerance
