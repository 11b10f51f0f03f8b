#pragma once
// Is the file ours, and is its structure exactly what the steps make? Anything else in it (a trigger, a view, a table,
// a changed column) is refused, so that a crafted file runs nothing and nothing stands outside the history.

#include "logbook/inside/database.h"
#include "logbook/inside/schema_steps.h"

#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace hammerline::logbook::inside {

using Steps = std::span<const std::string_view>;

/// Turns an empty database into a logbook without entries, within the caller's transaction.
void makeSchema(Database &database, Steps steps = schemaSteps());

/// Number of the last step that the file has taken. Throws where the file is not a logbook, is newer than `steps`, or
/// says of itself what its tables do not bear out.
[[nodiscard]] int schemaNumber(Database &database, Steps steps = schemaSteps());

/// What the file's head (application_id, user_version) says, held against its tables.
struct ShownStructure {
    int number = 0;                     ///< of the step that the tables show
    std::vector<std::string> altered{}; ///< what the head says otherwise, a line each
};
/// For a check that is to name what was altered: a wrong head hides no logbook whose tables are those of a step, nor
/// one that lacks something but holds our history. Throws as schemaNumber does where the file is none of ours, or holds
/// what only a newer program can have made.
[[nodiscard]] ShownStructure shownStructure(Database &database, Steps steps = schemaSteps());

/// One thing in the file that the steps up to its number do not make, or make otherwise, or make and is not there.
struct SchemaDifference {
    std::string type{}; ///< "table", "index", "trigger", "view"
    std::string name{};
    std::string what{}; ///< "was altered", "was added", "was removed"
};
[[nodiscard]] std::vector<SchemaDifference> schemaDifferences(Database &database, int number,
                                                              Steps steps = schemaSteps());
/// Throws at the first difference.
void requireSchema(Database &database, int number, Steps steps = schemaSteps());

/// Takes the steps that are missing, after a copy of the file as it is: `<path>.schema-N-backup`.
void bringUpToDate(Database &database, Steps steps = schemaSteps());

} // namespace hammerline::logbook::inside
