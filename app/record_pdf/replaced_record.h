#pragma once
// A record that was issued before, read so that the next one can name it.

#include "instrument/instrument.h"
#include "logbook/logbook.h"
#include "outcome/outcome.h"
#include "sale_record/sale_record.h"

#include <string>

namespace hammerline::record_pdf {

struct ReplacedRecord {
    sale_record::Replaced named{};     ///< as the next record names it
    sale_record::HistoryPin history{}; ///< the entry of a logbook that it was made from
};

/// A fault where the file is no sealed and unaltered record, or is one of another instrument.
[[nodiscard]] outcome::Outcome<ReplacedRecord> replacedRecord(const std::string &path,
                                                              const instrument::Instrument &instrument);

/// Whether the logbook still holds the entry, with its digest, that the record was made from. It does not where the
/// instrument came out of another logbook, and where the history was written anew or cut off: which of the two, the
/// user has to know. A record that came from no logbook is held by every one.
[[nodiscard]] bool holdsHistoryOf(const logbook::Logbook &book, const ReplacedRecord &replaced);

} // namespace hammerline::record_pdf
