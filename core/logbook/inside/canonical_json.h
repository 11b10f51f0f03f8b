#pragma once
// The canonical form of RFC 8785 for what the history digests: objects of texts and whole numbers. Members come sorted
// by name, without blanks; the caller adds them in that order (names are ASCII, so their bytes sort as RFC 8785 wants).
// Whole numbers stay below 2^53, where a double of JSON is exact.

#include <cstdint>
#include <string>
#include <string_view>

namespace hammerline::logbook::inside {

/// Appends `text` as a JSON string, escaped as RFC 8785, 3.2.2.2 says.
void appendCanonical(std::string &json, std::string_view text);
void appendCanonical(std::string &json, std::int64_t number);

} // namespace hammerline::logbook::inside
