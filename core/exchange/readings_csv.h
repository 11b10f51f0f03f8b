#pragma once
// Readings files: CSV after RFC 4180 in UTF-8, wide (`note,let_off (mm),dip (in)`: one row a note) or long
// (`note,quantity,value[,unit][,take][,remark]`: one row a take); the header shows which (contract §3).

#include "catalogue/catalogue.h"
#include "keyboard/keyboard.h"
#include "outcome/outcome.h"
#include "readings/readings.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace hammerline::exchange {

struct CsvReadingOptions {
    std::string file{};                            ///< as given by the user, for the faults
    std::optional<catalogue::ActionKind> action{}; ///< absent: all quantities are taken
    keyboard::Compass compass{};
    units::Unit unit = units::Unit::Millimetre; ///< of bare decimal lengths where neither row nor column says
};

/// Every reading, in the order of the file; person and time are left empty. A file with any fault, or without a single
/// reading, is refused whole: every fault with its line (the row's first physical line), in rising order of lines.
[[nodiscard]] outcome::Outcome<std::vector<readings::Reading>> readReadingsCsv(std::string_view text,
                                                                               const CsvReadingOptions &options);

/// Long form with exact values in mm and g: `note,quantity,value,unit,take,remark`, in the order of places, CRLF.
/// A remark that a spreadsheet would take for a formula (first character = + - @ tab or CR) is written with a leading
/// apostrophe.
[[nodiscard]] std::string writeReadingsCsv(const std::vector<readings::Reading> &readings);

} // namespace hammerline::exchange
