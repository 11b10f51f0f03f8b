#include "exchange/inside/csv_header.h"

#include "units/parse_amount.h"

#include <algorithm>
#include <array>
#include <utility>

namespace hammerline::exchange {
namespace {

/// A heading such as "dip (in)": its name and the unit in parentheses.
struct Heading {
    std::string_view name{};
    std::optional<std::string_view> unit{};
};

Heading headingOf(std::string_view cell)
{
    cell = trimmedCell(cell);
    const std::size_t open = cell.find('(');
    if (open == std::string_view::npos || !cell.ends_with(')'))
        return {cell, std::nullopt};
    return {trimmedCell(cell.substr(0, open)), cell.substr(open + 1, cell.size() - open - 2)};
}

constexpr std::array<std::pair<std::string_view, ColumnKind>, 5> longNames{{{"quantity", ColumnKind::QuantityId},
                                                                            {"value", ColumnKind::Value},
                                                                            {"unit", ColumnKind::Unit},
                                                                            {"take", ColumnKind::Take},
                                                                            {"remark", ColumnKind::Remark}}};

bool hasLongName(const std::vector<Heading> &headings)
{
    return std::ranges::any_of(headings,
                               [](const Heading &one) { return one.name == "quantity" || one.name == "value"; });
}

class HeaderReading {
public:
    explicit HeaderReading(std::optional<catalogue::ActionKind> action) : m_action(action) {}

    CsvHeader read(const CsvRow &row)
    {
        std::vector<Heading> headings;
        for (const std::string_view field : row.fields)
            headings.push_back(headingOf(field));
        m_header.isLong = hasLongName(headings);
        for (const Heading &heading : headings)
            m_header.columns.push_back(columnOf(heading));
        refuseTwice(headings);
        requireColumns();
        return std::move(m_header);
    }

private:
    void add(const std::string &problem) { m_header.problems.push_back(problem); }

    Column columnOf(const Heading &heading)
    {
        Column column;
        if (heading.name == "note") {
            column.kind = ColumnKind::Note;
        } else if (m_header.isLong) {
            const auto place =
                std::ranges::find(longNames, heading.name, &std::pair<std::string_view, ColumnKind>::first);
            column.kind = place == longNames.end() ? ColumnKind::Unknown : place->second;
        } else if (const auto quantity = catalogue::findQuantity(heading.name)) {
            column = {ColumnKind::Measured, *quantity, std::nullopt};
            addIfAny(notOnAction(*quantity, m_action));
        }
        if (column.kind == ColumnKind::Unknown)
            refuseUnknown(heading);
        else if (heading.unit)
            readUnit(heading, column);
        return column;
    }

    void addIfAny(const std::string &problem)
    {
        if (!problem.empty())
            add(problem);
    }

    void refuseUnknown(const Heading &heading)
    {
        const std::string right = m_header.isLong ? "note, quantity, value and, if wanted, unit, take, remark"
                                                  : "note, " + quantitiesOf(m_action) +
                                                        ", a quantity with its unit such as 'let_off (mm)'; or the "
                                                        "long form: note, quantity, value, unit, take, remark";
        const bool otherMark = heading.name.find_first_of(";\t|") != std::string_view::npos;
        add(quotedCell(heading.name) + " is no column that may stand here; these may: " + right +
            (otherMark ? "; fields are separated by commas" : ""));
    }

    void readUnit(const Heading &heading, Column &column)
    {
        const auto unit = units::parseUnit(*heading.unit);
        if (column.kind != ColumnKind::Measured && column.kind != ColumnKind::Value)
            add(quotedCell(heading.name) + " has no unit; the name alone would be right");
        else if (!unit)
            add("column " + quotedCell(heading.name) + ": " + unit.fault().problem);
        else if (column.kind == ColumnKind::Measured && !unfitUnit(column.quantity, unit.value()).empty())
            add("column " + quotedCell(heading.name) + ": " + unfitUnit(column.quantity, unit.value()));
        else
            column.unit = unit.value();
    }

    void refuseTwice(const std::vector<Heading> &headings)
    {
        for (std::size_t at = 0; at < headings.size(); ++at) {
            const auto before = headings.begin() + static_cast<std::ptrdiff_t>(at);
            const bool known = m_header.columns[at].kind != ColumnKind::Unknown;
            if (known && std::find_if(headings.begin(), before,
                                      [&](const Heading &other) { return other.name == headings[at].name; }) != before)
                add("column " + quotedCell(headings[at].name) + " stands twice; once would be right");
        }
    }

    void requireColumns()
    {
        require(ColumnKind::Note, "there is no column 'note'; it says which note a row is about");
        if (m_header.isLong) {
            require(ColumnKind::QuantityId, "there is no column 'quantity'; the long form is note,quantity,value");
            require(ColumnKind::Value, "there is no column 'value'; the long form is note,quantity,value");
        } else if (m_header.problems.empty() && !m_header.find(ColumnKind::Measured)) {
            add("there is no column of a quantity; these may stand here: " + quantitiesOf(m_action));
        }
    }

    void require(ColumnKind kind, const std::string &problem)
    {
        if (m_header.find(kind))
            return;
        add(problem);
        m_header.usable = false;
    }

    std::optional<catalogue::ActionKind> m_action;
    CsvHeader m_header{};
};

} // namespace

std::optional<std::size_t> CsvHeader::find(ColumnKind kind) const
{
    const auto place = std::ranges::find(columns, kind, &Column::kind);
    if (place == columns.end())
        return std::nullopt;
    return static_cast<std::size_t>(place - columns.begin());
}

CsvHeader readHeader(const CsvRow &row, std::optional<catalogue::ActionKind> action)
{
    return HeaderReading(action).read(row);
}

std::string_view trimmedCell(std::string_view cell)
{
    const auto first = cell.find_first_not_of(" \t");
    if (first == std::string_view::npos)
        return {};
    return cell.substr(first, cell.find_last_not_of(" \t") - first + 1);
}

std::string quotedCell(std::string_view cell)
{
    constexpr std::size_t shown = 40;
    if (cell.size() <= shown)
        return "'" + std::string(cell) + "'";
    std::size_t end = shown;
    while (end > 0 && (static_cast<unsigned char>(cell[end]) & 0xC0) == 0x80)
        --end; // not through the middle of a character
    return "'" + std::string(cell.substr(0, end)) + "...'";
}

std::string quantitiesOf(std::optional<catalogue::ActionKind> action)
{
    std::string ids;
    for (const auto &info : catalogue::all()) {
        if (catalogue::has(action, info.quantity))
            ids += (ids.empty() ? "" : ", ") + std::string(info.id);
    }
    return ids;
}

std::string notOnAction(catalogue::Quantity quantity, std::optional<catalogue::ActionKind> action)
{
    if (catalogue::has(action, quantity))
        return {};
    return "a " + std::string(catalogue::idOf(*action)) + " action has no " + std::string(catalogue::idOf(quantity)) +
           "; these may stand here: " + quantitiesOf(action);
}

std::string unfitUnit(catalogue::Quantity quantity, units::Unit unit)
{
    const auto &info = catalogue::infoOf(quantity);
    if (units::dimensionOf(unit) == info.dimension)
        return {};
    const bool length = info.dimension == units::Dimension::Length;
    return std::string(info.id) +
           (length ? " is a length; mm, in or mil would be right" : " is a mass; g would be right") + ", not " +
           units::symbolOf(unit);
}

} // namespace hammerline::exchange
