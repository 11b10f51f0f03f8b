#pragma once
// Slips of hand and gauge, told from honest readings before they are kept: a value ten times off, one in another unit,
// one that contradicts the note's other readings, a jump far from its neighbours. The technician is asked once; a slip
// that is confirmed is kept and marked. Nothing is refused here.
//
// A reading is held against what was to be expected (expectation.h): its neighbours in the pass, else the note's value
// in an earlier pass, else the set. How far from that an honest reading strays is taken from the same neighbours, never
// from the tolerance alone: a worn action is far from its targets everywhere, and honestly so. Thresholds are our own,
// measured on the sample passes (common practice, no source).

#include "action/lever_model.h"
#include "readings/readings.h"
#include "slips/expectation.h"
#include "tolerance/tolerance.h"

#include <optional>
#include <string_view>

namespace hammerline::slips {

enum class Suspicion {
    TenTimesOff,      ///< a digit too many or a mark forgotten: a tenth or ten times of it would fit
    WrongUnit,        ///< the same digits in another unit would fit
    ContradictsNote,  ///< blow, let-off, dip and aftertouch can't all be true with this action's lever ratio
    FarFromNeighbours ///< nothing explains it
};
[[nodiscard]] std::string_view
idOf(Suspicion suspicion); ///< "ten-times-off", "wrong-unit", "contradicts-note", "far-from-neighbours"

struct Slip {
    Suspicion suspicion{};
    units::Amount value{};    ///< as it would be stored
    units::Amount expected{}; ///< what the surroundings say
    /// What was probably meant, where a single change explains the slip.
    std::optional<units::Amount> meant{};
    std::optional<units::Unit> meantUnit{}; ///< only with WrongUnit
};

/// The reading about to be kept, in the company it will have.
struct Candidate {
    catalogue::Quantity quantity{};
    keyboard::Note note{};
    units::Amount value{};
    units::Unit typedUnit = units::Unit::Millimetre;
};

/// Absent: an honest reading, as far as can be told.
[[nodiscard]] std::optional<Slip> suspect(const Candidate &candidate, const Surroundings &surroundings);

} // namespace hammerline::slips
