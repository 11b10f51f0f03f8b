#include "logbook/inside/canonical_json.h"

#include <charconv>

namespace hammerline::logbook::inside {

namespace {

void appendEscaped(std::string &json, char letter)
{
    constexpr char digits[] = "0123456789abcdef";
    constexpr std::string_view shortOnes = "\b\t\n\f\r\"\\";
    constexpr std::string_view shortNames = "btnfr\"\\";
    const auto found = shortOnes.find(letter);
    if (found != std::string_view::npos) {
        json += '\\';
        json += shortNames[found];
        return;
    }
    const auto byte = static_cast<unsigned char>(letter);
    json += "\\u00";
    json += digits[byte >> 4];
    json += digits[byte & 0xf];
}

} // namespace

void appendCanonical(std::string &json, std::string_view text)
{
    json += '"';
    for (const char letter : text) {
        if (static_cast<unsigned char>(letter) < 0x20 || letter == '"' || letter == '\\')
            appendEscaped(json, letter);
        else
            json += letter;
    }
    json += '"';
}

void appendCanonical(std::string &json, std::int64_t number)
{
    char digits[24];
    const auto result = std::to_chars(digits, digits + sizeof digits, number);
    json.append(digits, result.ptr);
}

} // namespace hammerline::logbook::inside
