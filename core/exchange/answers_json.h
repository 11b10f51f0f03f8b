#pragma once
// The JSON answers of the commands (resources/schemas), each a whole document with "format" and "version", two-space
// indented, a newline at the end. Keys end in _mm for lengths and _g for masses; fields that do not apply are absent.

#include "analysis/analysis.h"
#include "instrument/instrument.h"
#include "readings/readings.h"
#include "review/review.h"
#include "sale_record/sale_record.h"
#include "tolerance/judge.h"

#include <string>
#include <vector>

namespace hammerline::exchange {

[[nodiscard]] std::string checkJson(const tolerance::Judgement &judgement, const analysis::Summaries &summaries);
[[nodiscard]] std::string compareJson(const analysis::Comparisons &comparisons);
[[nodiscard]] std::string instrumentsJson(const std::vector<instrument::Instrument> &instruments);

struct PassCount {
    readings::Pass pass{};
    int readings = 0; ///< takes counted
};
[[nodiscard]] std::string passesJson(const std::vector<PassCount> &passes);
[[nodiscard]] std::string importJson(readings::PassId pass, int readings);
/// `inDoubt`: what is in, but within the doubt of its reading; under "in_doubt", without a kind and with "uneven",
/// which says whether the pair is one of the uneven as well.
[[nodiscard]] std::string reviewJson(const std::vector<review::Item> &items,
                                     const std::vector<review::Item> &inDoubt = {});
/// The record's own data ("hammerline-record", version 1), as embedded in the PDF.
[[nodiscard]] std::string recordJson(const sale_record::SaleRecord &record);

} // namespace hammerline::exchange
