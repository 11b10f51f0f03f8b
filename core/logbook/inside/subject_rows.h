#pragma once
// The rows of a deed, for those who look at one deed after the other: those of an instrument or a pass are read once
// and kept for the deeds that follow, of a few of them at a time.

#include "logbook/inside/database.h"
#include "logbook/inside/version_table.h"
#include "logbook/logbook.h"

#include <compare>
#include <cstdint>
#include <map>
#include <vector>

namespace hammerline::logbook::inside {

/// Those of the version tables that the file has: one of an older structure lacks the newer ones.
[[nodiscard]] std::vector<const VersionTable *> presentTables(Database &database);

/// What an entry may name: an instrument or a pass.
struct Subject {
    Scope scope = Scope::Instrument;
    std::int64_t id = 0;
    auto operator<=>(const Subject &) const = default;
};

class SubjectRows {
public:
    using ByDeed = std::map<DeedId, std::vector<Row>>;

    SubjectRows(Database &database, std::vector<const VersionTable *> tables);
    /// In the order of `before`.
    [[nodiscard]] std::vector<Row> of(const Deed &deed);
    /// All rows of an instrument (its passes' not among them) or a pass. Stands until the next call of either.
    [[nodiscard]] const ByDeed &ofSubject(const Subject &subject);

private:
    void addStudyRows(DeedId deed, std::vector<Row> &rows);
    Database *m_database;
    std::vector<const VersionTable *> m_tables;
    std::map<Subject, ByDeed> m_kept;
};

} // namespace hammerline::logbook::inside
