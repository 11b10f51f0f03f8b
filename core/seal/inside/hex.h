#pragma once
// Bytes as lower-case hex digits and back; capitals are not read, since only one spelling counts.

#include <optional>
#include <string>
#include <string_view>

namespace hammerline::seal {

[[nodiscard]] inline std::string hexOf(std::string_view bytes)
{
    constexpr std::string_view digits = "0123456789abcdef";
    std::string hex;
    hex.reserve(2 * bytes.size());
    for (const char c : bytes) {
        const auto byte = static_cast<unsigned char>(c);
        hex += digits[byte >> 4];
        hex += digits[byte & 0xf];
    }
    return hex;
}

[[nodiscard]] inline std::optional<unsigned> hexDigit(char c)
{
    if (c >= '0' && c <= '9')
        return static_cast<unsigned>(c - '0');
    if (c >= 'a' && c <= 'f')
        return static_cast<unsigned>(c - 'a' + 10);
    return std::nullopt;
}

/// Absent where a character is no lower-case hex digit, or their number is odd.
[[nodiscard]] inline std::optional<std::string> bytesFromHex(std::string_view hex)
{
    if (hex.size() % 2 != 0)
        return std::nullopt;
    std::string bytes;
    bytes.reserve(hex.size() / 2);
    for (std::size_t i = 0; i < hex.size(); i += 2) {
        const auto high = hexDigit(hex[i]);
        const auto low = hexDigit(hex[i + 1]);
        if (!high || !low)
            return std::nullopt;
        bytes += static_cast<char>(*high << 4 | *low);
    }
    return bytes;
}

} // namespace hammerline::seal
