#pragma once
// Readings as rows. What can be told from elsewhere is not stored again, since there are millions of them:
// - the text typed, where it is the exact decimal of the value (absent; an empty one is stored empty);
// - person and moment, where they are the deed's, or, for readings written by the deed that wrote their pass (an
//   import), the pass's. `origin` names the deed meant where an undo has brought the reading back.

#include "logbook/inside/version_table.h"
#include "logbook/logbook.h"

#include <vector>

namespace hammerline::logbook::inside {

/// Key of a place: pass, quantity, note, take.
[[nodiscard]] std::vector<Cell> keysOf(readings::PassId pass, const readings::Place &place);
/// `usual`: the person and moment that need not be stored.
[[nodiscard]] std::vector<Cell> valuesOf(const readings::Reading &reading, const Stamp &usual);
/// First version of a reading, into a row that may have held another one before: a file's readings pass through one
/// row. `usual` as above.
void fillRow(Row &row, readings::PassId pass, const readings::Reading &reading, const Stamp &usual);
/// "let_off C#4", "let_off C#4 take 2".
[[nodiscard]] std::string subjectOf(const readings::Place &place);

} // namespace hammerline::logbook::inside
