#pragma once
// A spot check on the record: a second person read a drawn sample of the notes again. What that proves about the rest
// (analysis/spot_check.h) and how far the two people agree (Bland and Altman), per quantity.

#include "analysis/analysis.h"
#include "decisions/decisions.h"
#include "instrument/instrument.h"
#include "readings/readings.h"
#include "tolerance/tolerance.h"

#include <map>
#include <optional>
#include <vector>

namespace hammerline::sale_record {

/// A pass that is a spot check, as the logbook holds it.
struct SpotCheckPass {
    readings::Pass pass{};
    std::vector<readings::Reading> readings{};
    decisions::SpotCheck check{};
};

struct SecondFinding {
    int notes = 0;                    ///< that the pass checked has read
    int readAgain = 0;                ///< of the sample
    int out = 0;                      ///< of those, by the second reading
    std::optional<int> mostOut{};     ///< of `notes`, with 95 % confidence; absent where nothing can be said
    analysis::Comparison agreement{}; ///< from the first reading to the second
};

struct SecondReading {
    readings::Pass pass{};
    decisions::SpotCheck check{};
    std::map<catalogue::Quantity, SecondFinding> findings{}; ///< quantities read both times; may be empty
};

[[nodiscard]] SecondReading secondReadingOf(const SpotCheckPass &made, const readings::ValueTable &first,
                                            const tolerance::ToleranceSet &set,
                                            const instrument::Instrument &instrument);

} // namespace hammerline::sale_record
