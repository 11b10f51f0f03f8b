#pragma once
// Which keys may be given to an act of the bench and which letters to a fault: those that neither begin a value nor end
// it, nor lead away from the field, nor mean something else already. The answers are sentences for the user; empty: it
// may be.

#include "bench/bench_keys.h"
#include "bench/fault_words.h"

namespace hammerline::bench {

[[nodiscard]] QString whyNot(BenchAct act, const QKeySequence &key, const BenchKeys &keys,
                             const std::vector<FaultWord> &faults);
/// The whole list of faults, beside those keys: the first that cannot be.
[[nodiscard]] QString whyNot(const std::vector<FaultWord> &faults, const BenchKeys &keys);

} // namespace hammerline::bench
