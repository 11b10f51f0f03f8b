#pragma once
// A record that was issued before, read so that the next one can name it.

#include "instrument/instrument.h"
#include "outcome/outcome.h"
#include "sale_record/sale_record.h"

#include <string>

namespace hammerline::record_pdf {

/// A fault where the file is no sealed and unaltered record, or is one of another instrument.
[[nodiscard]] outcome::Outcome<sale_record::Replaced> replacedRecord(const std::string &path,
                                                                     const instrument::Instrument &instrument);

} // namespace hammerline::record_pdf
