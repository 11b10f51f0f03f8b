#include "record_pdf/replaced_record.h"

#include "exchange/exchange.h"
#include "exchange/record_check.h"
#include "seal/seal.h"

#include <algorithm>

namespace hammerline::record_pdf {

outcome::Outcome<ReplacedRecord> replacedRecord(const std::string &path, const instrument::Instrument &instrument)
{
    const auto bytes = exchange::readFile(path);
    if (!bytes)
        return bytes.faults();
    const auto report = seal::verifyRecord(bytes.value());
    const auto data = std::ranges::find(report.files, "record.json", &seal::EmbeddedFile::name);
    if (report.verdict != seal::SealVerdict::Unaltered || data == report.files.end())
        return outcome::Fault{.file = path, .problem = report.reason + "; only a sealed record can be replaced"};
    const auto check = exchange::checkRecord({.recordJson = data->content});
    if (!check)
        return outcome::Fault{.file = path, .problem = check.fault().text()};
    if (check.value().instrumentUid != instrument.uid)
        return outcome::Fault{.file = path,
                              .problem = "is a record of another instrument (" + check.value().instrumentName + ")"};
    return ReplacedRecord{{check.value().revision, check.value().issued, seal::digestOf(bytes.value())},
                          check.value().history};
}

bool holdsHistoryOf(const logbook::Logbook &book, const ReplacedRecord &replaced)
{
    const auto &pin = replaced.history;
    return pin.deed == 0 || book.digest(pin.deed) == pin.digest;
}

} // namespace hammerline::record_pdf
