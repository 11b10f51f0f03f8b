#pragma once
// What SQLite reports, in words fit for the user: what went wrong, what is safe, what to do.

#include <string>
#include <string_view>

namespace hammerline::logbook::inside {

/// Throws the BrokenWorld that fits SQLite's result code (extended or not).
[[noreturn]] void throwBroken(int resultCode, const std::string &path);

/// The file holds something that no logbook of ours holds; `found` says what.
[[noreturn]] void throwDamaged(const std::string &path, std::string_view found);

/// A mistake of the caller or a state that another window changed meanwhile: nothing was written.
[[noreturn]] void throwRefused(const std::string &path, std::string_view why);

} // namespace hammerline::logbook::inside
