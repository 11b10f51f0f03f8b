#pragma once
// Everything that the record says, gathered from what the logbook holds of an instrument. One place for the command
// and the desktop.

#include "logbook/logbook.h"
#include "outcome/outcome.h"
#include "sale_record/sale_record.h"

#include <string>

namespace hammerline::record_pdf {

/// When, by whom and with which program the record is made.
struct Issue {
    readings::Instant at{};
    std::string by{};
    std::string programVersion{};
    std::string workshop{}; ///< its name and place; empty: not stated
};

/// A fault where no tolerance set is chosen for the instrument, and where what the logbook says of it is not as the
/// program wrote it (verify_instrument.h): what another program wrote is not sealed. The history's newest entry is read
/// before all else, so that nothing in the record is older than it.
[[nodiscard]] outcome::Outcome<sale_record::RecordInput>
recordInputOf(const logbook::Logbook &book, const instrument::Instrument &instrument, const Issue &issue);

} // namespace hammerline::record_pdf
