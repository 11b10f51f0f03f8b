#pragma once
// What a reading is to be expected to be, and how far an honest one strays from that.

#include "keyboard/keyboard.h"
#include "readings/readings.h"
#include "tolerance/tolerance.h"

#include <optional>

namespace hammerline::slips {

/// What is known around a reading. Pointers may be null; they must outlive the call.
struct Surroundings {
    const readings::ValueTable *pass = nullptr;    ///< read so far; the candidate's own place is left out of account
    const readings::ValueTable *earlier = nullptr; ///< an earlier pass of the same instrument
    const tolerance::ToleranceSet *set = nullptr;
    keyboard::Sections sections{};
    units::Amount gaugeUncertainty{}; ///< expanded; 0 where not stated
};

/// In mm or g.
struct Expectation {
    double value = 0;
    double spread = 0; ///< like a standard deviation; > 0
    bool fromNeighbours = false;
};

/// Neighbours (nearest first, at most eight within an octave, of the section and, where evenness asks for it, of the
/// colour) where three or more were read; else the earlier pass; else the set's target. Absent where nothing is known.
[[nodiscard]] std::optional<Expectation> expectationOf(catalogue::Quantity quantity, keyboard::Note note,
                                                       const Surroundings &surroundings);

} // namespace hammerline::slips
