#pragma once
// The options that several commands share for reading a readings file: --action, --unit, --first and --last.

#include "command_line/options.h"
#include "exchange/readings_csv.h"

#include <optional>
#include <string>
#include <vector>

namespace hammerline::command_line {

class ReadingInput {
public:
    void declare(Options &options);

    /// What the options say, for `action` as the set, the setup or the logbook has it (absent: nobody says; then
    /// --action does, and where it is not given either, all quantities are taken). Refused: an option that means
    /// nothing, a first note above the last, an --action that differs.
    [[nodiscard]] outcome::Outcome<exchange::CsvReadingOptions>
    csvOptions(std::optional<catalogue::ActionKind> action) const;

    /// True where --first or --last was given.
    [[nodiscard]] bool compassGiven() const { return m_first.has_value() || m_last.has_value(); }

private:
    std::optional<std::string> m_action;
    std::optional<std::string> m_unit;
    std::optional<std::string> m_first;
    std::optional<std::string> m_last;
};

/// --unit: mm where it is not given.
[[nodiscard]] outcome::Outcome<units::Unit> parseLengthUnit(const std::optional<std::string> &given);

/// Opens and reads `file` with `options` (whose own file name is replaced).
[[nodiscard]] outcome::Outcome<std::vector<readings::Reading>> readReadingsFile(const std::string &file,
                                                                                exchange::CsvReadingOptions options);
/// The same for one who takes the readings in batches.
[[nodiscard]] outcome::Outcome<std::unique_ptr<exchange::CsvReadings>>
openReadingsFile(const std::string &file, exchange::CsvReadingOptions options);

} // namespace hammerline::command_line
