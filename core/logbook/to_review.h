#pragma once
// What the review needs of a logbook: passes judged, with what was decided about them.

#include "logbook/logbook.h"
#include "review/review.h"
#include "tolerance/judge.h"

#include <optional>
#include <vector>

namespace hammerline::logbook {

/// The newest pass with at least one reading that is no spot check.
[[nodiscard]] std::optional<readings::Pass> newestReadPass(const Logbook &book, instrument::InstrumentId instrument);

/// By the set, and its doubt weighed with the gauge of the pass and the digits that were written down.
[[nodiscard]] review::JudgedPass judgedPass(const Logbook &book, const instrument::Instrument &instrument,
                                            const readings::Pass &pass, const tolerance::Judge &judge);

/// What the lead looks at of an instrument: its newest pass with readings; then, newer first, of each older one what
/// was sent back and has not been read since. The newest carries along what was sent back before and is read there, as
/// far back as the last signature. Empty: it has no readings.
[[nodiscard]] std::vector<review::JudgedPass>
passesToReview(const Logbook &book, const instrument::Instrument &instrument, const tolerance::Judge &judge);

/// What waits to be read again in this pass: sent back in it and unchanged since, or sent back in an older pass of the
/// instrument and read neither there nor here. One a pair, the newest word; by quantity, then note. Nothing in a spot
/// check: whoever reads again is not told what was thought of the note.
[[nodiscard]] std::vector<decisions::SentBack> sentBackTo(const Logbook &book, const readings::Pass &pass);

} // namespace hammerline::logbook
