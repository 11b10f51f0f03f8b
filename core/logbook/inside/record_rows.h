#pragma once
// Instruments and passes as rows and back. Lists of named runs of notes are stored as JSON, `[["bass",1,28]]`; enums as
// their ids; lengths in nanometres; climate in thousandths of a degree and of a percent.

#include "logbook/inside/version_table.h"
#include "logbook/logbook.h"

#include <string>
#include <vector>

namespace hammerline::logbook::inside {

[[nodiscard]] std::vector<Cell> valuesOf(const instrument::Instrument &instrument);
[[nodiscard]] std::vector<Cell> valuesOf(const readings::Pass &pass);
/// `path` for the message where the row holds what no logbook of ours does.
[[nodiscard]] instrument::Instrument instrumentOf(const Row &row, const std::string &path);
/// `row`: an instrument's, up to its sections.
[[nodiscard]] Keyboard keyboardOf(const Row &row, const std::string &path);
[[nodiscard]] readings::Pass passOf(const Row &row, const std::string &path);

/// Numbers of the quantities in the file. They never change, whatever becomes of the enum.
[[nodiscard]] std::int64_t storedQuantity(catalogue::Quantity quantity);
[[nodiscard]] catalogue::Quantity quantityOf(std::int64_t stored, const std::string &path);
/// A note, or a number of nanometres or milligrams, as far as such a thing can be; a crafted file may hold any number.
[[nodiscard]] keyboard::Note noteOf(std::int64_t stored, const std::string &path);
[[nodiscard]] std::int64_t countOf(std::int64_t stored, const std::string &path);

} // namespace hammerline::logbook::inside
