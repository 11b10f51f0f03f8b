#pragma once
// The rows of a deed, for those who look at one deed after the other: those of an instrument or a pass are read once
// and kept for the deeds that follow, of a few of them at a time.

#include "logbook/inside/database.h"
#include "logbook/inside/version_table.h"
#include "logbook/logbook.h"

#include <map>
#include <utility>
#include <vector>

namespace hammerline::logbook::inside {

/// Those of the version tables that the file has: one of an older structure lacks the newer ones.
[[nodiscard]] std::vector<const VersionTable *> presentTables(Database &database);

class SubjectRows {
public:
    SubjectRows(Database &database, std::vector<const VersionTable *> tables);
    /// In the order of `before`.
    [[nodiscard]] std::vector<Row> of(const Deed &deed);

private:
    using ByDeed = std::map<DeedId, std::vector<Row>>;
    const ByDeed &ofSubject(Scope scope, std::int64_t id);
    void addStudyRows(DeedId deed, std::vector<Row> &rows);
    Database *m_database;
    std::vector<const VersionTable *> m_tables;
    std::map<std::pair<Scope, std::int64_t>, ByDeed> m_kept;
};

} // namespace hammerline::logbook::inside
