#pragma once
// Files and documents that leave or enter Hammerline: readings as CSV (readings_csv.h), tolerance sets and setups as
// JSON with the built-in ones (tolerance_json.h, setup_json.h, built_in.h), and the JSON answers of the commands
// (answers_json.h). Every form is the contract's; resources/schemas/ holds a JSON Schema of each.
//
// Readers take text and the name to blame; they never open a file themselves but through readFile. Writers return text.

#include "outcome/outcome.h"

#include <string>
#include <string_view>

namespace hammerline::exchange {

/// The whole file. A fault where it is missing, a folder, unreadable, or larger than `mostBytes`; and where it is a
/// database of SQLite, which may be the logbook that is open: it stays open until the process ends, since closing it
/// would take away SQLite's locks (logbook/inside/held_files.h).
[[nodiscard]] outcome::Outcome<std::string> readFile(const std::string &path, std::size_t mostBytes = 512u << 20);

enum class Overwrite { No, Yes };
/// Writes beside the target, flushes to disk and renames, so that a file is there whole or not at all.
/// A fault where the target exists and Overwrite is No. Throws outcome::BrokenWorld where the disk fails.
[[nodiscard]] outcome::Outcome<bool> writeFile(const std::string &path, std::string_view content, Overwrite overwrite);

} // namespace hammerline::exchange
