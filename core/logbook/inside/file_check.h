#pragma once
// What a check of the history can tell of the whole file at once, however large it is: its structure and where its
// numbering ends.

#include "logbook/inside/database.h"
#include "logbook/verify_history.h"

#include <vector>

namespace hammerline::logbook::inside {

/// Appends what the structure and the file's head are otherwise than the program makes them. True where the tables
/// stand as they were made, so that it makes sense to read them. Throws where the file is no logbook or a newer one.
[[nodiscard]] bool checkStructure(Database &database, std::vector<Alteration> &found);

/// Appends entries with numbers that none has, and where SQLite's own note of the largest number ever given to an entry
/// says otherwise than `newest`.
void checkNumbering(Database &database, DeedId newest, std::vector<Alteration> &found);

/// An entry, or several, that are not there.
[[nodiscard]] Alteration gap(DeedId first, DeedId last);

} // namespace hammerline::logbook::inside
