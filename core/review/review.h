#pragma once
// What waits for the shop lead: across all instruments in work, every note that is out, marginal, uneven or missing in
// the newest pass, worst first in units of its half-width (|deviation| / half-width); pairs without one come last.

#include "instrument/instrument.h"
#include "readings/readings.h"
#include "tolerance/judge.h"

#include <optional>
#include <string>
#include <vector>

namespace hammerline::review {

enum class Kind { Out, Marginal, Uneven, Missing };
[[nodiscard]] std::string_view idOf(Kind kind); ///< "out", "marginal", "uneven", "missing"

struct Item {
    instrument::InstrumentId instrument = 0;
    readings::PassId pass = 0;
    tolerance::Verdict verdict{};
    Kind kind = Kind::Out;
    std::optional<double> halfWidths{};
};

/// One instrument's newest judged pass.
struct JudgedPass {
    instrument::InstrumentId instrument = 0;
    readings::PassId pass = 0;
    tolerance::Judgement judgement{};
};

/// The items of one pass, in the order of its verdicts. A reading that is out or marginal and uneven besides is one item.
[[nodiscard]] std::vector<Item> itemsOf(const JudgedPass &pass);
/// Worst first; equals by instrument, quantity, note.
[[nodiscard]] std::vector<Item> queueOf(const std::vector<JudgedPass> &passes);

} // namespace hammerline::review
