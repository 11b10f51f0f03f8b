#include "logbook/inside/version_table.h"

#include "logbook/inside/canonical_json.h"

#include <algorithm>
#include <numeric>

namespace hammerline::logbook::inside {

namespace {

std::string joined(std::span<const std::string> names, const std::string &prefix = {})
{
    std::string text;
    for (const std::string &name : names)
        text += (text.empty() ? "" : ", ") + prefix + name;
    return text;
}

std::string parameters(std::size_t count)
{
    std::string text = "?1";
    for (std::size_t number = 2; number <= count; ++number)
        text += ", ?" + std::to_string(number);
    return text;
}

std::string whereKeys(std::span<const std::string> keys)
{
    std::string text = " WHERE ";
    for (std::size_t index = 0; index < keys.size(); ++index)
        text += (index == 0 ? "" : " AND ") + keys[index] + " = ?" + std::to_string(index + 1);
    return text;
}

std::string newestOfKey(const std::string &table, std::span<const std::string> keys)
{
    std::string same;
    for (const std::string &key : keys)
        same += (same.empty() ? "" : " AND ") + ("n." + key) + " = r." + key;
    return "r.version = (SELECT max(n.version) FROM " + table + " AS n WHERE " + same + ")";
}

std::vector<std::string> columnsOf(const std::vector<std::string_view> &keys,
                                   const std::vector<std::string_view> &values)
{
    std::vector<std::string> columns(keys.begin(), keys.end());
    columns.emplace_back("version");
    columns.insert(columns.end(), values.begin(), values.end());
    return columns;
}

std::vector<std::size_t> sortedByName(std::vector<std::string> names)
{
    names.emplace_back("table");
    std::vector<std::size_t> order(names.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::ranges::sort(order, {}, [&](std::size_t index) { return names[index]; });
    return order;
}

std::vector<std::string> canonicalNames(std::span<const std::string> columns, const std::string &table)
{
    std::vector<std::string> names;
    for (const std::string &column : columns) {
        appendCanonical(names.emplace_back(), std::string_view(column));
        names.back() += ':';
    }
    appendCanonical(names.emplace_back("\"table\":"), std::string_view(table));
    return names;
}

/// Whether the entry of a deed is about something else than the row.
std::string isAboutAnother(Scope scope, const std::string &scopeKey)
{
    switch (scope) {
    case Scope::Instrument:
        return "h.instrument IS NOT r." + scopeKey;
    case Scope::Pass:
        return "h.pass IS NOT r." + scopeKey;
    case Scope::Study:
        break;
    }
    return "h.instrument IS NOT NULL OR h.pass IS NOT NULL";
}

std::string textOf(const Cell &cell)
{
    if (const auto *number = std::get_if<std::int64_t>(&cell))
        return std::to_string(*number);
    const auto *text = std::get_if<std::string>(&cell);
    return text == nullptr ? "nothing" : '"' + *text + '"';
}

} // namespace

// The texts are put together from the names below in this file, never from data.
VersionTable::VersionTable(std::string_view name, Scope scope, const std::vector<std::string_view> &keys,
                           const std::vector<std::string_view> &values, std::string_view origin)
    : m_name(name),
      m_scope(scope),
      m_keyCount(keys.size()),
      m_columns(columnsOf(keys, values)),
      m_canonicalOrder(sortedByName(m_columns)),
      m_canonicalNames(canonicalNames(m_columns, m_name))
{
    if (!origin.empty())
        m_origin = static_cast<std::size_t>(std::ranges::find(m_columns, origin) - m_columns.begin());
    const auto key = std::span<const std::string>(m_columns).first(m_keyCount);
    const auto keyAndVersion = std::span<const std::string>(m_columns).first(m_keyCount + 1);
    const std::string &scopeKey = m_columns.front();
    const std::string select = "SELECT " + joined(m_columns, "r.") + ", r.deed FROM " + m_name + " AS r";
    const std::string inOrder = " ORDER BY " + joined(keyAndVersion, "r.");
    const std::string ofScope = " WHERE r." + scopeKey + " = ?1";

    m_insert =
        "INSERT INTO " + m_name + "(" + joined(m_columns) + ", deed) VALUES (" + parameters(m_columns.size() + 1) + ")";
    m_newest = select + whereKeys(key) + " ORDER BY r.version DESC LIMIT 1";
    m_version = select + whereKeys(keyAndVersion);
    const std::string stands = newestOfKey(m_name, key) + " AND r." + m_columns[firstValue()] + " IS NOT NULL";
    m_standing = select + ofScope + " AND " + stands + inOrder;
    m_allStanding = select + " WHERE " + stands + inOrder;
    m_ofScope = select + ofScope + inOrder;
    m_ofDeed = select + ofScope + " AND r.deed = ?2" + inOrder;
    if (scope == Scope::Study)
        m_byDeed = select + " WHERE r.deed = ?1" + inOrder;
    m_strayed = select + " LEFT JOIN history AS h ON h.deed = r.deed WHERE h.deed IS NULL OR " +
                isAboutAnother(scope, scopeKey) + inOrder;
    m_deeds = "SELECT r.deed FROM " + m_name + " AS r" + ofScope;
}

const VersionTable &instrumentTable()
{
    static const VersionTable table("instrument", Scope::Instrument, {"instrument"},
                                    {"uid", "name", "action", "first_note", "last_note", "sections", "maker", "model",
                                     "serial", "year", "size", "stringing", "dampers", "condition", "owner", "remark",
                                     "state", "tolerance_id", "tolerance_text"});
    return table;
}

const VersionTable &passTable()
{
    static const VersionTable table("pass", Scope::Pass, {"pass"},
                                    {"uid", "instrument", "purpose", "began", "person", "celsius", "humidity", "gauge",
                                     "gauge_resolution", "gauge_uncertainty", "dip_datum", "drop_datum", "unit",
                                     "remark"});
    return table;
}

const VersionTable &readingTable()
{
    static const VersionTable table("reading", Scope::Pass, {"pass", "quantity", "note", "take"},
                                    {"value", "typed", "remark", "person", "at", "origin"}, "origin");
    return table;
}

const VersionTable &faultMarkTable()
{
    static const VersionTable table("fault_mark", Scope::Pass, {"pass", "note", "fault"}, {"marked"});
    return table;
}

const VersionTable &passToleranceTable()
{
    static const VersionTable table("pass_tolerance", Scope::Pass, {"pass"}, {"tolerance_id", "tolerance_text"});
    return table;
}

const VersionTable &keptPlanTable()
{
    static const VersionTable table("kept_plan", Scope::Pass, {"pass"}, {"inputs"});
    return table;
}

const VersionTable &workDoneTable()
{
    static const VersionTable table("work_done", Scope::Pass, {"pass", "item"}, {"seconds", "person", "at"});
    return table;
}

const VersionTable &passRouteTable()
{
    static const VersionTable table("pass_route", Scope::Pass, {"pass"}, {"route", "typing"});
    return table;
}

const VersionTable &confirmedSlipTable()
{
    static const VersionTable table("confirmed_slip", Scope::Pass, {"pass", "quantity", "note", "take"},
                                    {"value", "suspicion"});
    return table;
}

// Schema step 2.

const VersionTable &passStandingTable()
{
    static const VersionTable table("pass_standing", Scope::Pass, {"pass"},
                                    {"standing", "revision", "person", "at", "reason"});
    return table;
}

const VersionTable &concessionTable()
{
    static const VersionTable table("concession", Scope::Pass, {"pass", "quantity", "note"},
                                    {"reason", "value", "kind", "person", "at"});
    return table;
}

const VersionTable &sentBackTable()
{
    static const VersionTable table("sent_back", Scope::Pass, {"pass", "quantity", "note"},
                                    {"word", "value", "kind", "person", "at"});
    return table;
}

const VersionTable &spotCheckTable()
{
    static const VersionTable table("spot_check", Scope::Pass, {"pass"},
                                    {"checked", "seed", "size", "notes", "quantities"});
    return table;
}

const VersionTable &actionSetupTable()
{
    static const VersionTable table("action_setup", Scope::Instrument, {"instrument"}, {"setup", "aim"});
    return table;
}

const VersionTable &workEntryTable()
{
    static const VersionTable table("work_entry", Scope::Instrument, {"instrument", "entry"},
                                    {"kind", "what", "first_note", "last_note", "material", "person", "day", "minutes",
                                     "departure", "why", "remark"});
    return table;
}

const VersionTable &conditionTable()
{
    static const VersionTable table("condition_said", Scope::Instrument, {"instrument", "moment", "area"},
                                    {"words", "grade"});
    return table;
}

const VersionTable &photographTable()
{
    static const VersionTable table("photograph", Scope::Instrument, {"instrument", "photograph"},
                                    {"digest", "moment", "view", "caption", "width", "height"});
    return table;
}

const VersionTable &saleTable()
{
    static const VersionTable table("sale", Scope::Instrument, {"instrument"}, {"buyer", "price", "remark"});
    return table;
}

// Schema step 3.

const VersionTable &gaugeStudyTable()
{
    static const VersionTable table(
        "gauge_study", Scope::Study, {"study"},
        {"gauge", "resolution", "quantity", "people", "notes", "takes", "seed", "unit", "instrument", "person", "at"});
    return table;
}

const VersionTable &gaugeTrialTable()
{
    static const VersionTable table("gauge_trial", Scope::Study, {"study", "note", "person", "take"},
                                    {"value", "typed", "at"});
    return table;
}

std::span<const VersionTable *const> versionTables()
{
    static const VersionTable *const tables[] = {
        &instrumentTable(),    &passTable(),       &readingTable(),    &faultMarkTable(), &passToleranceTable(),
        &keptPlanTable(),      &workDoneTable(),   &passRouteTable(),
        &confirmedSlipTable(), // here ends step 1
        &passStandingTable(),  &concessionTable(), &sentBackTable(),   &spotCheckTable(), &actionSetupTable(),
        &workEntryTable(),     &conditionTable(),  &photographTable(), &saleTable(), // here ends step 2
        &gaugeStudyTable(),    &gaugeTrialTable()};
    return tables;
}

Row rowOf(const VersionTable &table, const Statement &statement)
{
    Row row;
    takeRow(row, table, statement);
    return row;
}

void takeRow(Row &row, const VersionTable &table, const Statement &statement)
{
    row.table = &table;
    row.cells.resize(table.columns().size());
    for (std::size_t column = 0; column < row.cells.size(); ++column)
        row.cells[column] = statement.cell(static_cast<int>(column));
}

bool before(const Row &a, const Row &b)
{
    if (a.table == b.table)
        return std::ranges::lexicographical_compare(std::span(a.cells).first(a.table->firstValue()),
                                                    std::span(b.cells).first(b.table->firstValue()));
    const auto tables = versionTables();
    return std::ranges::find(tables, a.table) < std::ranges::find(tables, b.table);
}

void appendCanonical(std::string &json, const Row &row)
{
    const VersionTable &table = *row.table;
    char separator = '{';
    for (const std::size_t column : table.canonicalOrder()) {
        const bool isName = column == table.columns().size();
        if (!isName && std::holds_alternative<std::monostate>(row.cells[column]))
            continue;
        json += separator;
        separator = ',';
        json += table.canonicalName(column);
        if (isName)
            continue;
        if (const auto *number = std::get_if<std::int64_t>(&row.cells[column]))
            appendCanonical(json, *number);
        else
            appendCanonical(json, std::string_view(std::get<std::string>(row.cells[column])));
    }
    json += '}';
}

std::string describe(const Row &row)
{
    std::string text = row.table->name();
    for (std::size_t column = 0; column <= row.table->keyCount(); ++column)
        text += (column == 0 ? " " : ", ") + row.table->columns()[column] + ' ' + textOf(row.cells[column]);
    return text;
}

} // namespace hammerline::logbook::inside
