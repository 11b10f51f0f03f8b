#pragma once
// How far a gauge and its users can be trusted: several people read the same notes several times.
//
// Two-way crossed analysis of variance with random effects, as in AIAG Measurement Systems Analysis (4th ed., 2010).
// The sums of squares are computed exactly from whole base units, so that a sum that is 0 is 0. Lengths count in mm,
// masses in g, variances in their squares.

#include "keyboard/keyboard.h"
#include "outcome/outcome.h"
#include "units/units.h"

#include <optional>
#include <string>
#include <vector>

namespace hammerline::analysis {

struct Trial {
    keyboard::Note note{};
    std::string person{};
    int take = 1;
    units::Amount value{}; ///< at most 1 m or 1 kg in size; one dimension throughout
    bool operator==(const Trial &) const = default;
};

/// A row of the analysis of variance. `f` and `p` are absent where the divisor is 0, and where a row is not tested;
/// `meanSquare` is absent for the total.
struct AnovaRow {
    std::string source{}; ///< "note", "person", "interaction", "repeatability", "total"
    int degreesOfFreedom = 0;
    double sumOfSquares = 0;
    std::optional<double> meanSquare{}, f{}, p{};
};

/// Variances, or their square roots, or those in percent of the total's.
struct Components {
    double repeatability = 0;   ///< the same person again
    double reproducibility = 0; ///< another person, with a kept interaction
    double gauge = 0;           ///< both together
    double note = 0;            ///< what the notes really differ by
    double total = 0;
};

struct GaugeStudy {
    int notes = 0, people = 0, takes = 0;
    /// Interaction p > 0.25: interaction and repeatability were pooled; their rows stay as before pooling.
    bool interactionPooled = false;
    std::vector<AnovaRow> anova{};
    Components variance{}; ///< negative components are 0
    Components sd{};
    std::optional<Components> percentOfTotalSd{}; ///< absent where nothing varies
    /// How many kinds of note the gauge can tell apart, at least 1: 1.41 sd of notes / sd of gauge, rounded down.
    /// Absent where the gauge shows no spread at all.
    std::optional<int> distinctCategories{};
    double expandedUncertainty = 0; ///< 2 sd of the gauge
};

/// Refused, with what is wrong: fewer than two notes, people or takes; a person who has not read every note as often
/// as the others; a note, person and take twice; lengths among masses.
[[nodiscard]] outcome::Outcome<GaugeStudy> gaugeStudy(const std::vector<Trial> &trials);

} // namespace hammerline::analysis
