#pragma once
// The shop's view over many instruments: how much was read, how much of it was out as found and as left, how many hours
// were planned and taken; by person, by quantity or by month.
//
// What one pass has to say is a PassTally, small and worked out once (shop_reader.h); every view is summed from these.
// Judged by the set that the instrument is judged by now; what is not judged counts as read alone. A reading counts for
// who took it, a note that is out for who took its last take; readings for the month in which their pass began. Planned
// minutes are those of the plan kept with a pass, for who measured it and the month it began. Taken minutes are for who
// did the work and the month in which it was ticked off; work that nobody timed is counted beside them. Other work is
// that of the log of work in the instrument's file, by its day.

#include "catalogue/catalogue.h"
#include "instrument/instrument.h"
#include "readings/readings.h"

#include <chrono>
#include <cstdint>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

namespace hammerline::shop {

using YearMonth = std::chrono::year_month;
/// In UTC.
[[nodiscard]] YearMonth monthOf(readings::Instant at);
[[nodiscard]] std::string textOf(YearMonth month); ///< "2026-03"

/// What one person read of one quantity in a pass.
struct ReadPiece {
    std::string person{};
    catalogue::Quantity quantity{};
    int readings = 0; ///< takes
    int judged = 0;   ///< notes
    int out = 0;      ///< of these
};

/// Minutes of work; of planned or ticked-off work on a screw with its quantity, of a rail or other work without.
struct WorkPiece {
    enum class Kind { Planned, Taken, Other };
    Kind kind = Kind::Planned;
    std::string person{};
    std::optional<YearMonth> month{}; ///< absent: of an unknown day
    std::optional<catalogue::Quantity> quantity{};
    double minutes = 0;
    int untimed = 0; ///< pieces ticked off that nobody timed; kept plans whose minutes are not known
};

struct PassTally {
    readings::PassId pass = 0;
    readings::Purpose purpose = readings::Purpose::AsFound;
    YearMonth month{};
    std::vector<ReadPiece> read{};
    std::vector<WorkPiece> work{};
};

struct InstrumentTally {
    instrument::State state{};
    std::vector<PassTally> passes{}; ///< oldest first, without spot checks
    std::vector<WorkPiece> other{};
};
using Tallies = std::map<instrument::InstrumentId, InstrumentTally>;

/// Notes judged, and how many of them were out.
struct Share {
    std::int64_t judged = 0;
    std::int64_t out = 0;
    /// 0 to 1; absent where nothing was judged.
    [[nodiscard]] std::optional<double> part() const;
    bool operator==(const Share &) const = default;
};

struct Figures {
    int instruments = 0; ///< with anything at all to count
    int passes = 0;      ///< with readings
    std::int64_t readings = 0;
    Share found{}; ///< of passes as found
    Share left{};  ///< of passes as left
    double plannedMinutes = 0;
    double takenMinutes = 0;
    double otherMinutes = 0;
    int untimed = 0;
    int unreckoned = 0; ///< kept plans that cannot be read any more, or take too long to work out anew
    bool operator==(const Figures &) const = default;
};

enum class By { Person, Quantity, Month };
/// "person", "quantity", "month".
[[nodiscard]] std::string_view idOf(By by);

/// One row of a view. `key` is the person's name, the id of the quantity or the month ("2026-03"); empty: nobody named,
/// no single quantity, no day known.
struct Row {
    std::string key{};
    Figures figures{};
};

/// Absent ends and an empty set leave everything in. Where a month is asked for, work of an unknown day is left out.
struct Filter {
    std::optional<YearMonth> from{};
    std::optional<YearMonth> to{};
    std::set<instrument::State> states{};
};

/// Persons by name, quantities in the order of the catalogue, months rising; the empty key first.
[[nodiscard]] std::vector<Row> rowsOf(const Tallies &tallies, By by, const Filter &filter);
[[nodiscard]] Figures totalOf(const Tallies &tallies, const Filter &filter);
/// Months in which anything was read or done, rising.
[[nodiscard]] std::vector<YearMonth> monthsOf(const Tallies &tallies);

/// `person,instruments,passes,readings,found_judged,found_out,left_judged,left_out,hours_planned,hours_taken,untimed,
/// hours_other` (or `quantity`, `month`), a row a line, '.' as the mark, CRLF. A name that a spreadsheet would take for
/// a formula has an apostrophe before it.
[[nodiscard]] std::string shopCsv(By by, const std::vector<Row> &rows);

} // namespace hammerline::shop
