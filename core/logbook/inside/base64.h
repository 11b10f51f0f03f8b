#pragma once
// Base64 (RFC 4648, 4) by OpenSSL: bytes in a JSON document.

#include <optional>
#include <string>
#include <string_view>

namespace hammerline::logbook::inside {

[[nodiscard]] std::string base64Of(std::string_view bytes);
/// Absent where the text is not exactly what base64Of writes.
[[nodiscard]] std::optional<std::string> fromBase64(std::string_view text);

} // namespace hammerline::logbook::inside
