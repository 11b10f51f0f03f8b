#pragma once
// Words of the trade that people type: names of sections, strings, dampers, parts, felts, and the texts of the built-in
// tolerance sets. Where the record's language has a word for exactly what was typed, the pages say that; anything else
// stands as it was typed, for a name is nobody's to translate. The embedded data keep what was typed.

#include "sale_record/sale_record.h"

#include <QString>

#include <string>

namespace hammerline::record_pdf {

/// The whole text, or each of its sentences, where all are known; else as typed.
[[nodiscard]] QString tradeWords(const std::string &typed);
/// Figure by figure ("low: …; target: no source"): what the built-in sets say of a figure is known, titles stay as they
/// are; what somebody else typed stands as typed.
[[nodiscard]] QString sourceWords(const std::string &source);
/// The record for the pages.
[[nodiscard]] sale_record::SaleRecord inTradeWords(sale_record::SaleRecord record);

} // namespace hammerline::record_pdf
