#pragma once
// Gauge studies and their trials as rows and back: people one a line, notes by their numbers, the seed as a number.

#include "logbook/gauge_studies.h"
#include "logbook/inside/version_table.h"

#include <string>
#include <vector>

namespace hammerline::logbook::inside {

[[nodiscard]] std::vector<Cell> valuesOf(const PlannedStudy &study);
[[nodiscard]] std::vector<Cell> keysOf(StudyId study, const analysis::StudyStop &stop);
[[nodiscard]] std::vector<Cell> valuesOf(const ReadTrial &trial);

/// `path` for the message where the row holds what no logbook of ours does.
[[nodiscard]] PlannedStudy studyOf(const Row &row, const std::string &path);
[[nodiscard]] ReadTrial trialOf(const Row &row, units::Dimension dimension, const std::string &path);

} // namespace hammerline::logbook::inside
