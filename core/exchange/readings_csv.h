#pragma once
// Readings files: CSV after RFC 4180 in UTF-8, wide (`note,let_off (mm),dip (in)`: one row a note) or long
// (`note,quantity,value[,unit][,take][,remark]`: one row a take); the header shows which.

#include "catalogue/catalogue.h"
#include "exchange/exchange.h"
#include "keyboard/keyboard.h"
#include "outcome/outcome.h"
#include "readings/reading_source.h"

#include <memory>
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

/// The same, of a file however long, in batches. Its memory does not grow with the file, as long as no quotation mark
/// is left open and takes are numbered without wide gaps (place_bits.h).
class CsvReadings {
public:
    CsvReadings(std::unique_ptr<TextSource> text, CsvReadingOptions options);
    ~CsvReadings();
    CsvReadings(const CsvReadings &) = delete;
    CsvReadings &operator=(const CsvReadings &) = delete;

    /// As a readings::ReadingSource. It stops at the first fault.
    [[nodiscard]] outcome::Outcome<bool> next(std::vector<readings::Reading> &batch);
    /// After `next` told a fault: every fault of the file, which is read once more from its beginning and wants memory
    /// for each of its places. Where the text could not be read to its end, that alone.
    [[nodiscard]] std::vector<outcome::Fault> faults();
    /// Readings given so far.
    [[nodiscard]] std::size_t count() const;

private:
    friend outcome::Outcome<std::vector<readings::Reading>> readReadingsCsv(std::string_view,
                                                                            const CsvReadingOptions &);
    class File;
    std::unique_ptr<TextSource> m_text;
    CsvReadingOptions m_options;
    std::unique_ptr<File> m_file;
    outcome::Fault m_first{};
};

/// Long form with exact values in mm and g: `note,quantity,value,unit,take,remark`, in the order of places, CRLF.
/// A remark that a spreadsheet would take for a formula (first character = + - @ tab or CR) is written with a leading
/// apostrophe.
[[nodiscard]] std::string writeReadingsCsv(const std::vector<readings::Reading> &readings);

} // namespace hammerline::exchange
