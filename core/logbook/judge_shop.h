#pragma once
// What a set would say of everything a workshop has ever read: every pass judged and counted, millions of readings.
//
// The passes are shared out among connections of their own, one a thread; each walks its part of the file once and
// holds no more than one pass at a time. Others may write meanwhile: what they write is seen by some parts and not by
// others.

#include "logbook/logbook.h"
#include "tolerance/judge.h"

#include <string>
#include <vector>

namespace hammerline::logbook {

struct PassTally {
    readings::PassId pass = 0;
    instrument::InstrumentId instrument = 0;
    tolerance::Tally tally{};
    bool operator==(const PassTally &) const = default;
};

/// Every pass with readings, spot checks aside, of every instrument that has the set's action; by pass. Throws
/// BrokenWorld as opening and reading a logbook do. `atOnce`: how many threads, at least 1.
[[nodiscard]] std::vector<PassTally> judgeShop(const std::string &path, const tolerance::ToleranceSet &set,
                                               unsigned atOnce);

} // namespace hammerline::logbook
