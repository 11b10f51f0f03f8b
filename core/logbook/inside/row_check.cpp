#include "logbook/inside/row_check.h"

#include "logbook/inside/decision_rows.h"
#include "logbook/inside/dossier_rows.h"
#include "logbook/inside/handed.h"
#include "logbook/inside/record_rows.h"
#include "units/parse_amount.h"

namespace hammerline::logbook::inside {

namespace {

/// Notes that there are, takes from 1 up.
bool numbersFit(const Row &row)
{
    for (std::size_t column = 0; column < row.cells.size(); ++column) {
        const auto *number = std::get_if<std::int64_t>(&row.cells[column]);
        const std::string &name = row.table->columns()[column];
        const bool note = name == "note" || name == "first_note" || name == "last_note";
        if (number != nullptr && note && (*number < keyboard::Note::lowest || *number > keyboard::Note::highest))
            return false;
        if (number != nullptr && name == "take" && (*number < 1 || *number > 1000))
            return false;
    }
    return true;
}

/// A reading is one that can be typed (parse_amount.h).
bool valueFits(const Row &row)
{
    if (row.table != &readingTable())
        return true;
    const catalogue::QuantityInfo *info = nullptr;
    const std::int64_t *value = nullptr;
    for (std::size_t column = 0; column < row.cells.size(); ++column) {
        const std::string &name = row.table->columns()[column];
        if (name == "quantity")
            if (const auto *id = std::get_if<std::string>(&row.cells[column]))
                if (const auto quantity = catalogue::findQuantity(*id))
                    info = &catalogue::infoOf(*quantity);
        if (name == "value")
            value = std::get_if<std::int64_t>(&row.cells[column]);
    }
    if (info == nullptr || value == nullptr)
        return true;
    const std::int64_t most = units::largestCount(info->dimension);
    return *value <= most && *value >= (info->mayBeNegative ? -most : 0);
}

void readDecisionAgain(const Row &row, const std::string &nowhere)
{
    if (row.table == &passStandingTable())
        static_cast<void>(changeOf(row, nowhere));
    if (row.table == &concessionTable() || row.table == &sentBackTable())
        static_cast<void>(decisionOf(row, nowhere));
    if (row.table == &spotCheckTable())
        static_cast<void>(spotCheckOf(row, nowhere));
}

/// Throws BrokenWorld as reading the row would; what the instrument's own rules find.
std::string readAgain(const Row &row)
{
    const std::string nowhere;
    if (row.table == &instrumentTable()) {
        const auto faults = instrument::faultsOf(instrumentOf(row, nowhere));
        return faults.empty() ? std::string() : faults[0].problem;
    }
    if (row.table == &passTable())
        static_cast<void>(passOf(row, nowhere));
    if (row.table == &workEntryTable())
        static_cast<void>(workEntryOf(row, nowhere));
    if (row.table == &photographTable())
        static_cast<void>(photographOf(row, nowhere));
    if (row.table == &conditionTable())
        static_cast<void>(conditionOf(row, nowhere));
    readDecisionAgain(row, nowhere);
    return {};
}

} // namespace

Row numbered(Row row)
{
    for (std::size_t column = 0; column < row.cells.size(); ++column) {
        const Carried carried = carriedAs(row.table->columns()[column]);
        if (carried != Carried::AsItIs && !std::holds_alternative<std::monostate>(row.cells[column]))
            row.cells[column] = std::int64_t{1};
    }
    return row;
}

std::string unknownIn(const Row &row)
{
    if (row.withdrawn())
        return {};
    const std::string unknown = describe(row) + " holds what no logbook holds";
    if (!numbersFit(row) || !valueFits(row))
        return unknown;
    try {
        return readAgain(numbered(row));
    } catch (const outcome::BrokenWorld &) {
        return unknown;
    }
}

} // namespace hammerline::logbook::inside
