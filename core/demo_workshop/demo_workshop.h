#pragma once
// An invented workshop for demonstrations, samples and tests: pianos, makers and people that do not exist, with
// readings that look like real ones. Wear is strongest where pianos are played most, sections step at their breaks,
// rails tilt, felt settles, gauges have noise and a resolution, some notes cannot be read. Aftertouch follows from
// blow, let-off, dip and lost motion through each note's lever ratio (dip - lost motion - (blow - let-off) / ratio), so
// that a plan finds an action.
//
// One upright goes the whole way: taken in, measured, set, spot-checked by a second person, sent back in part, mended,
// accepted in part, signed, opened again for a reason, signed again, delivered, and measured a year later. Others wait
// on the lead's desk, or are in work.
//
// The shapes and sizes of wear are invented; what the targets are comes from the built-in tolerance sets. The same seed
// gives the same workshop on every machine: Boost.Random, whose sequences do not depend on the standard library, and
// every typed reading is rounded to its gauge.

#include "demo_workshop/lead_deeds.h"
#include "dossier/dossier.h"
#include "instrument/instrument.h"
#include "readings/readings.h"

#include <cstdint>
#include <string>
#include <vector>

namespace hammerline::demo_workshop {

struct MadePass {
    readings::Pass pass{};                     ///< id 0, uid given
    std::vector<readings::Reading> readings{}; ///< by place, as they were first read
    std::vector<LeadDeed> deeds{};             ///< what came after, oldest first
};

/// The readings as they stand after the pass's deeds, by place.
[[nodiscard]] std::vector<readings::Reading> readingsNow(const MadePass &made);

struct MadeInstrument {
    instrument::Instrument instrument{}; ///< id 0, uid and tolerance set given
    std::vector<MadePass> passes{};      ///< oldest first
    /// Uids given; photographs without digest and size, for nobody has drawn them yet.
    dossier::Dossier dossier{};
};

struct Workshop {
    std::vector<MadeInstrument> instruments{};
};

inline constexpr std::uint64_t usualSeed = 1709;

[[nodiscard]] Workshop makeWorkshop(std::uint64_t seed = usualSeed);

} // namespace hammerline::demo_workshop
