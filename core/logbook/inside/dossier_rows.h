#pragma once
// The file of an instrument as rows and back: enums as their ids, days as ISO 8601, grades 1 to 5.

#include "dossier/dossier.h"
#include "logbook/inside/version_table.h"

#include <string>
#include <vector>

namespace hammerline::logbook::inside {

[[nodiscard]] std::vector<Cell> valuesOf(const dossier::WorkEntry &entry);
[[nodiscard]] std::vector<Cell> valuesOf(const dossier::Photograph &photograph);
/// None where nothing is said: the version is withdrawn then.
[[nodiscard]] std::vector<Cell> valuesOf(const dossier::Condition &condition);
[[nodiscard]] std::vector<Cell> valuesOf(const dossier::Sale &sale);

/// `path` for the message where the row holds what no logbook of ours does.
[[nodiscard]] dossier::WorkEntry workEntryOf(const Row &row, const std::string &path);
[[nodiscard]] dossier::Photograph photographOf(const Row &row, const std::string &path);
[[nodiscard]] dossier::Conditions::value_type conditionOf(const Row &row, const std::string &path);
[[nodiscard]] dossier::Sale saleOf(const Row &row, const std::string &path);

} // namespace hammerline::logbook::inside
