#pragma once
// What happened to a pass after it was read, as values: what a lead did about it, what was read again for that, how the
// instrument moved on. Played into a logbook in this order.

#include "decisions/decisions.h"
#include "instrument/instrument.h"
#include "readings/readings.h"

#include <string>
#include <variant>
#include <vector>

namespace hammerline::demo_workshop {

struct SendBack {
    std::vector<decisions::SentBack> items{};
};
/// Corrections of what was sent back, or readings that nobody had taken before.
struct ReadAgain {
    std::vector<readings::Reading> readings{};
    std::string reason{};
};
struct Accept {
    std::vector<decisions::Concession> items{};
};
struct Sign {
    std::string remark{};
};
struct Reopen {
    std::string reason{};
};
/// A second person reads a drawn sample.
struct ReadSample {
    readings::Pass pass{};        ///< id 0, uid given
    decisions::SpotCheck check{}; ///< `checked` is 0 here: the pass that the deed belongs to
    std::vector<readings::Reading> readings{};
};
struct MoveOn {
    instrument::State state{};
    std::string reason{};
};

struct LeadDeed {
    std::string person{};
    readings::Instant at{};
    std::variant<SendBack, ReadAgain, Accept, Sign, Reopen, ReadSample, MoveOn> what{};
};

} // namespace hammerline::demo_workshop
