#pragma once
// What leaves the logbook for a file and what comes in from one, without a window: a pass as CSV, the record as PDF.

#include "exchange/readings_csv.h"
#include "main_window/record_wishes.h"
#include "main_window/workshop.h"
#include "record_pdf/replaced_record.h"
#include "sale_record/sale_record.h"

#include <string>
#include <vector>

namespace hammerline::main_window {

/// The readings of a CSV file for an instrument; every fault with its line.
[[nodiscard]] outcome::Outcome<std::vector<readings::Reading>>
readingsFromFile(const std::string &path, const instrument::Instrument &instrument, units::Unit bareUnit);

/// The current readings of a pass, written over what is there.
[[nodiscard]] outcome::Outcome<bool> exportPass(const logbook::Logbook &book, readings::PassId pass,
                                                const std::string &path);

/// Everything the record says, from what the logbook holds of the instrument; owner, buyer and price only where asked
/// for.
[[nodiscard]] outcome::Outcome<sale_record::SaleRecord> recordOf(const logbook::Logbook &book,
                                                                 const instrument::Instrument &instrument,
                                                                 const logbook::Stamp &stamp, bool tellSale = false);
/// The record as PDF at `path` as wished, written over what is there and sealed with the workshop's key, which is made
/// at `keyFile` where it is missing. A fault too where the record to be replaced is none; else the record that it takes
/// the place of, where one was wished.
[[nodiscard]] outcome::Outcome<std::optional<record_pdf::ReplacedRecord>> writeRecord(sale_record::SaleRecord record,
                                                                                      const RecordWishes &wishes,
                                                                                      const std::string &path,
                                                                                      const std::string &keyFile);

/// "blue-upright-as-left-2026-03-02": a file name to propose.
[[nodiscard]] QString proposedName(const instrument::Instrument &instrument, const QString &what);

} // namespace hammerline::main_window
