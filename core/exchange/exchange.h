#pragma once
// Files and documents that leave or enter Hammerline: readings as CSV (readings_csv.h), tolerance sets and setups as
// JSON with the built-in ones (tolerance_json.h, setup_json.h, built_in.h), and the JSON answers of the commands
// (answers_json.h). The form of each JSON document is told by its JSON Schema in resources/schemas.
//
// Readers take text and the name to blame; they never open a file themselves but through readFile and openText. Writers
// return text.

#include "outcome/outcome.h"

#include <cstddef>
#include <memory>
#include <span>
#include <string>
#include <string_view>

namespace hammerline::exchange {

/// The whole file. A fault where it is missing, a folder, unreadable, or larger than `mostBytes`; and where it is a
/// database of SQLite, which may be the logbook that is open: it stays open until the process ends, since closing it
/// would take away SQLite's locks (logbook/inside/held_files.h).
[[nodiscard]] outcome::Outcome<std::string> readFile(const std::string &path, std::size_t mostBytes = 512u << 20);

/// A text that comes in pieces.
class TextSource {
public:
    TextSource() = default;
    TextSource(const TextSource &) = delete;
    TextSource &operator=(const TextSource &) = delete;
    virtual ~TextSource() = default;
    /// Puts the next bytes into the front of the span and says how many; it fills the span as long as it has enough.
    /// 0: the end. A fault: it could not be read to its end.
    [[nodiscard]] virtual outcome::Outcome<std::size_t> read(std::span<char> into) = 0;
    /// Back to the beginning.
    virtual void rewind() = 0;
};

/// The same file as readFile takes, and refused as it refuses, but piece by piece. It is refused at its end where it
/// was changed in the meantime, as far as its size and its time tell. A file has been looked through once when this
/// returns, and a pipe, which would keep its reader waiting for whoever writes into it, read whole: no piece is long in
/// coming.
[[nodiscard]] outcome::Outcome<std::unique_ptr<TextSource>> openText(const std::string &path,
                                                                     std::size_t mostBytes = 512u << 20);

enum class Overwrite { No, Yes };
/// Writes beside the target, flushes to disk and renames, so that a file is there whole or not at all.
/// A fault where the target exists and Overwrite is No. Throws outcome::BrokenWorld where the disk fails.
[[nodiscard]] outcome::Outcome<bool> writeFile(const std::string &path, std::string_view content, Overwrite overwrite);

} // namespace hammerline::exchange
