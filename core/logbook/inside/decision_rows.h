#pragma once
// What the lead decided, as rows and back. Person and moment are stored, since an undo brings an older decision back
// under its own name.

#include "decisions/decisions.h"
#include "logbook/inside/version_table.h"
#include "logbook/logbook.h"

#include <string>
#include <vector>

namespace hammerline::logbook::inside {

/// Key of a pair of a pass.
[[nodiscard]] std::vector<Cell> keysOf(readings::PassId pass, catalogue::Quantity quantity, keyboard::Note note);
/// Of both tables of decisions: words, value, kind, person, moment.
[[nodiscard]] std::vector<Cell> valuesOf(const decisions::Decision &decision, const Stamp &stamp);
[[nodiscard]] decisions::Decision decisionOf(const Row &row, const std::string &path);

[[nodiscard]] std::vector<Cell> valuesOf(const decisions::StandingChange &change);
[[nodiscard]] decisions::StandingChange changeOf(const Row &row, const std::string &path);

[[nodiscard]] std::vector<Cell> valuesOf(const decisions::SpotCheck &check);
[[nodiscard]] decisions::SpotCheck spotCheckOf(const Row &row, const std::string &path);

} // namespace hammerline::logbook::inside
