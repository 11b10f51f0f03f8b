#pragma once
// A record's data held against itself: the readings in it are judged anew by the tolerance set in it, and what comes
// out is compared with the verdicts that stand in it. A seal proves that nobody changed the record since; this, that
// its verdicts follow from its readings.

#include "outcome/outcome.h"
#include "sale_record/sale_record.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace hammerline::exchange {

struct RecordCheck {
    std::string instrumentUid{};
    std::string instrumentName{};
    readings::Instant issued{};
    int revision = 1;
    sale_record::HistoryPin history{};
    int verdicts = 0; ///< how many were held against the readings
    /// Each one line of plain English without a full stop ("as left, let_off, C#4: the record says in, its readings
    /// give out"); at most `mostDisagreements`.
    std::vector<std::string> disagreements{};
};
inline constexpr std::size_t mostDisagreements = 1000;

/// The files of a record as they come out of it. Readings files that are absent are not compared.
struct RecordFiles {
    std::string_view recordJson{};
    std::optional<std::string_view> readingsCsv{};
    std::optional<std::string_view> asFoundCsv{};
    std::optional<std::string_view> recheckCsv{};
};

/// The faults where a file is no such document; keys that are not known are passed over.
[[nodiscard]] outcome::Outcome<RecordCheck> checkRecord(const RecordFiles &files);

} // namespace hammerline::exchange
