#pragma once
// What the first row of a readings file says: which form the file has, and what stands in each column.

#include "catalogue/catalogue.h"
#include "exchange/inside/csv_rows.h"
#include "units/units.h"

#include <optional>
#include <string>
#include <vector>

namespace hammerline::exchange {

enum class ColumnKind { Note, Measured, QuantityId, Value, Unit, Take, Remark, Unknown }; ///< Unknown last

struct Column {
    ColumnKind kind = ColumnKind::Unknown;
    catalogue::Quantity quantity{}; ///< of a Measured column
    std::optional<units::Unit> unit{};
};

struct CsvHeader {
    bool isLong = false;
    std::vector<Column> columns{};
    std::vector<std::string> problems{}; ///< each what is wrong and what would be right
    bool usable = true;                  ///< false: the rows below cannot be understood at all

    /// Where the column of a kind stands; absent where there is none.
    [[nodiscard]] std::optional<std::size_t> find(ColumnKind kind) const;
};

[[nodiscard]] CsvHeader readHeader(const CsvRow &row, std::optional<catalogue::ActionKind> action);

[[nodiscard]] std::string_view trimmedCell(std::string_view cell);
/// 'cell' in quotation marks, cut to a length that a message bears.
[[nodiscard]] std::string quotedCell(std::string_view cell);
/// "key_height, blow, …": what the action has.
[[nodiscard]] std::string quantitiesOf(std::optional<catalogue::ActionKind> action);
/// Empty where the action has the quantity, else what is wrong and what would be right.
[[nodiscard]] std::string notOnAction(catalogue::Quantity quantity, std::optional<catalogue::ActionKind> action);
/// Empty where the unit fits the quantity, else what is wrong and what would be right.
[[nodiscard]] std::string unfitUnit(catalogue::Quantity quantity, units::Unit unit);

} // namespace hammerline::exchange
