#pragma once
// Trials of a gauge study: CSV after RFC 4180 in UTF-8, `note,person,take,value` in any order, one row a trial. All
// values are of one quantity: lengths (bare decimals take the unit of `value (in)`, else `unit`; negative ones may be)
// or masses (`52g`, or a column `value (g)`). The file has these four columns and no other.

#include "analysis/gauge_study.h"
#include "outcome/outcome.h"
#include "units/units.h"

#include <string>
#include <string_view>
#include <vector>

namespace hammerline::exchange {

struct TrialsCsvOptions {
    std::string file{}; ///< as given by the user, for the faults
    units::Unit unit = units::Unit::Millimetre;
};

/// In the order of the file. A file with any fault is refused whole, every fault with the first line of its row: an
/// unknown or missing column, a cell that is empty or cannot be read, a note, person and take twice. Whether the trials
/// make a study is for analysis::gaugeStudy to say. A person's name is read as csvText (csv_text.h) writes it. Columns
/// `low`, `target` and `high` are refused by a reason of their own: whoever saved the figures of a study's chart has
/// them, and is told what to leave out.
[[nodiscard]] outcome::Outcome<std::vector<analysis::Trial>> readTrialsCsv(std::string_view text,
                                                                           const TrialsCsvOptions &options);

/// The file that readTrialsCsv reads, exact to the last digit: `note,person,take,value (mm)`, or (g), one row a trial
/// in their order, LF. The trials are of one dimension.
[[nodiscard]] std::string writeTrialsCsv(const std::vector<analysis::Trial> &trials);
/// One row of it, without the line's end.
[[nodiscard]] std::string trialRow(const analysis::Trial &trial);

} // namespace hammerline::exchange
