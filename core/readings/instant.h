#pragma once
// A moment in UTC, to the millisecond, and its RFC 3339 text. No room of the core asks a clock: moments are handed in.

#include "outcome/outcome.h"

#include <chrono>
#include <string>
#include <string_view>

namespace hammerline::readings {

using Instant = std::chrono::sys_time<std::chrono::milliseconds>;

/// `2026-03-02T09:10:00Z`; milliseconds are written only where they are not 0 (`…:00.250Z`).
[[nodiscard]] std::string rfc3339(Instant instant);
/// Any RFC 3339 date-time (offset, fraction, lower-case t and z, leap second taken as the second before), to the
/// millisecond; further digits are cut off.
[[nodiscard]] outcome::Outcome<Instant> parseRfc3339(std::string_view text);
/// `2026-03-02`.
[[nodiscard]] std::string isoDate(Instant instant);

} // namespace hammerline::readings
