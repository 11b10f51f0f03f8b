#pragma once
// Version tables: how everything but the history itself is stored.
//
// A row is one version of one thing: the columns of its key, its version (1, 2, 3 …), its values and the deed that
// wrote it. The newest version is what holds. A version whose first value is absent is withdrawn. Rows are only ever
// inserted.
//
// The first column of a key is an instrument or a pass (`Scope`), the one that the deed's entry names too: so the rows
// of a deed are found without an index, and an undo or a check never looks beyond one instrument or pass. A gauge study
// is a scope too, which no entry names: its deeds are about no instrument and no pass, and an index leads from them to
// their rows.
//
// To add one: a CREATE TABLE in a new schema step (columns in the order below, `deed` last), a function here that
// describes it, and its line at the end of versionTables(). Undo, history and the check of the history then know it.

#include "logbook/inside/statement.h"

#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace hammerline::logbook::inside {

enum class Scope { Instrument, Pass, Study };

class VersionTable {
public:
    /// `origin` names the value column that says whose deed's stamp a row stands for where it is not its own deed's: an
    /// undo that brings a version back keeps who took it and when. Empty: the table has none.
    VersionTable(std::string_view name, Scope scope, const std::vector<std::string_view> &keys,
                 const std::vector<std::string_view> &values, std::string_view origin = {});

    [[nodiscard]] const std::string &name() const { return m_name; }
    [[nodiscard]] Scope scope() const { return m_scope; }
    [[nodiscard]] std::size_t keyCount() const { return m_keyCount; }
    /// Keys, version, values, in the order of the cells of a Row.
    [[nodiscard]] const std::vector<std::string> &columns() const { return m_columns; }
    [[nodiscard]] std::size_t firstValue() const { return m_keyCount + 1; }
    [[nodiscard]] std::optional<std::size_t> originColumn() const { return m_origin; }
    /// Columns in the order of their names, "table" among them as columns().size(): the order of the canonical form.
    [[nodiscard]] const std::vector<std::size_t> &canonicalOrder() const { return m_canonicalOrder; }
    /// `"note":` of a column, as the canonical form has it.
    [[nodiscard]] const std::string &canonicalName(std::size_t column) const { return m_canonicalNames[column]; }

    // SQL texts; every SELECT gives the columns above, then the deed.
    [[nodiscard]] const std::string &insertSql() const { return m_insert; }   ///< ?1… columns, then deed
    [[nodiscard]] const std::string &newestSql() const { return m_newest; }   ///< ?1… keys
    [[nodiscard]] const std::string &versionSql() const { return m_version; } ///< ?1… keys, then version
    [[nodiscard]] const std::string &standingSql() const
    {
        return m_standing;
    } ///< ?1 scope: newest versions that stand
    [[nodiscard]] const std::string &allStandingSql() const { return m_allStanding; } ///< the same of all scopes
    [[nodiscard]] const std::string &ofScopeSql() const { return m_ofScope; }         ///< ?1 scope: all rows
    [[nodiscard]] const std::string &ofDeedSql() const { return m_ofDeed; }           ///< ?1 scope, ?2 deed
    [[nodiscard]] const std::string &byDeedSql() const { return m_byDeed; }           ///< ?1 deed; Scope::Study alone
    [[nodiscard]] const std::string &strayedSql() const
    {
        return m_strayed;
    }                                                                     ///< rows whose deed is not there or elsewhere
    [[nodiscard]] const std::string &deedsSql() const { return m_deeds; } ///< ?1 scope: deeds that wrote here

private:
    std::string m_name;
    Scope m_scope;
    std::size_t m_keyCount;
    std::vector<std::string> m_columns;
    std::optional<std::size_t> m_origin;
    std::vector<std::size_t> m_canonicalOrder;
    std::vector<std::string> m_canonicalNames; ///< the table's own last, with its name behind it
    std::string m_insert, m_newest, m_version, m_standing, m_allStanding, m_ofScope, m_ofDeed, m_byDeed, m_strayed,
        m_deeds;
};

/// Cells in the order of the table's columns.
struct Row {
    const VersionTable *table = nullptr;
    std::vector<Cell> cells{};

    [[nodiscard]] const Cell &value(std::size_t index) const { return cells[table->firstValue() + index]; }
    [[nodiscard]] std::int64_t version() const { return std::get<std::int64_t>(cells[table->keyCount()]); }
    [[nodiscard]] bool withdrawn() const { return std::holds_alternative<std::monostate>(value(0)); }
    [[nodiscard]] std::span<const Cell> keys() const { return std::span(cells).first(table->keyCount()); }
};

[[nodiscard]] const VersionTable &instrumentTable();
[[nodiscard]] const VersionTable &passTable();
[[nodiscard]] const VersionTable &readingTable();
[[nodiscard]] const VersionTable &faultMarkTable();
[[nodiscard]] const VersionTable &passToleranceTable();
[[nodiscard]] const VersionTable &keptPlanTable();
[[nodiscard]] const VersionTable &workDoneTable();
[[nodiscard]] const VersionTable &passRouteTable();
[[nodiscard]] const VersionTable &confirmedSlipTable();
[[nodiscard]] const VersionTable &passStandingTable(); ///< signed or reopened, and in which revision
[[nodiscard]] const VersionTable &concessionTable();   ///< value absent: accepted as missing
[[nodiscard]] const VersionTable &sentBackTable();     ///< value absent: sent back as missing
[[nodiscard]] const VersionTable &spotCheckTable();    ///< which pass it checks and how its sample was drawn
[[nodiscard]] const VersionTable &actionSetupTable();
[[nodiscard]] const VersionTable &workEntryTable();
[[nodiscard]] const VersionTable &conditionTable();
[[nodiscard]] const VersionTable &photographTable();
[[nodiscard]] const VersionTable &saleTable();
[[nodiscard]] const VersionTable &gaugeStudyTable(); ///< who reads which notes how often with which gauge
[[nodiscard]] const VersionTable &gaugeTrialTable();

/// All of them. The order is part of the digests: a new one goes to the end.
[[nodiscard]] std::span<const VersionTable *const> versionTables();

/// The row a SELECT of the table stands on; the second into a row that may have held another one before.
[[nodiscard]] Row rowOf(const VersionTable &table, const Statement &statement);
void takeRow(Row &row, const VersionTable &table, const Statement &statement);

/// Order of the canonical form: by table, then key and version.
[[nodiscard]] bool before(const Row &a, const Row &b);

/// `{"note":40,…,"table":"reading",…}` in canonical form, without absent columns, appended.
void appendCanonical(std::string &json, const Row &row);

/// `reading pass 3, quantity 4, note 40, take 1, version 2`.
[[nodiscard]] std::string describe(const Row &row);

} // namespace hammerline::logbook::inside
