#pragma once
// Which cautions an instrument calls for. The rules err on the side of saying too much: what is not known counts as
// old. None of them is a verdict on the instrument: whether there is ivory on a key is for somebody who looks, and what
// may be done with it is for the law of the place.

#include "instrument/instrument.h"
#include "units/units.h"

#include <vector>

namespace hammerline::sale_record {

/// Cautions that apply to this instrument; the page words them.
enum class Caution {
    StringTension,   ///< always
    TallUprightTips, ///< verticals of at least tallUpright, and those of unknown height
    LeadInKeys,      ///< built before leadUsualBefore, or of unknown year
    IvoryLaw,        ///< built before ivoryUsualBefore, or of unknown year
    Dust,            ///< built before dustExpectedBefore, or of unknown year
    ClimateMovesIt,  ///< always
};

/// An upright in the narrow sense rather than a console or studio (49 to 60 in in trade lists; they contradict each
/// other at the edges, so the line lies a little lower).
inline constexpr units::Length tallUpright = units::Length::nanometres(1'200'000'000);
/// Common practice, no source: key leads are found in actions of every age but are joined by other metals in newer
/// ones.
inline constexpr int leadUsualBefore = 2010;
/// The international trade in elephant ivory closed for new goods around 1990; older coverings may be ivory.
inline constexpr int ivoryUsualBefore = 1990;
/// Common practice, no source: decades of dust, moth proofing and old lacquer.
inline constexpr int dustExpectedBefore = 1990;

/// In the order of the enum.
[[nodiscard]] std::vector<Caution> cautionsFor(const instrument::Instrument &instrument);

} // namespace hammerline::sale_record
