#pragma once
// A spot check on the record: a second person read a drawn sample of the notes again.

#include "decisions/decisions.h"
#include "decisions/spot_findings.h"
#include "readings/readings.h"
#include "tolerance/tolerance.h"

#include <vector>

namespace hammerline::sale_record {

/// A pass that is a spot check, as the logbook holds it.
struct SpotCheckPass {
    readings::Pass pass{};
    std::vector<readings::Reading> readings{};
    decisions::SpotCheck check{};
};

struct SecondReading {
    readings::Pass pass{};
    decisions::SpotCheck check{};
    std::vector<decisions::SpotFinding>
        findings{}; ///< of quantities read both times, with 95 % confidence; may be empty
};

[[nodiscard]] SecondReading secondReadingOf(const SpotCheckPass &made, const readings::ValueTable &first,
                                            const tolerance::ToleranceSet &set);

} // namespace hammerline::sale_record
