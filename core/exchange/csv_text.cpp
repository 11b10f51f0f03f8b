#include "exchange/csv_text.h"

namespace hammerline::exchange {
namespace {

constexpr std::string_view formulaStarts = "=+-@\t\r";

bool isBlank(char character)
{
    return character == ' ' || character == '\t';
}

/// Apostrophes in front do not count: one is added on writing and one taken off on reading.
bool startsLikeFormula(std::string_view text)
{
    const std::size_t at = text.find_first_not_of('\'');
    return at != std::string_view::npos && formulaStarts.find(text[at]) != std::string_view::npos;
}

/// Length of the well-formed sequence that begins `text`, 0 for none (Unicode 15, table 3-7).
std::size_t sequenceLength(std::string_view text)
{
    const auto byte = [text](std::size_t index) { return static_cast<unsigned char>(text[index]); };
    const auto within = [&](std::size_t index, unsigned low, unsigned high) {
        return index < text.size() && byte(index) >= low && byte(index) <= high;
    };
    const unsigned first = byte(0);
    if (first < 0x80)
        return first == 0 ? 0 : 1;
    if (first >= 0xC2 && first <= 0xDF)
        return within(1, 0x80, 0xBF) ? 2 : 0;
    if (first >= 0xE0 && first <= 0xEF) {
        const unsigned low = first == 0xE0 ? 0xA0 : 0x80;
        const unsigned high = first == 0xED ? 0x9F : 0xBF;
        return within(1, low, high) && within(2, 0x80, 0xBF) ? 3 : 0;
    }
    if (first >= 0xF0 && first <= 0xF4) {
        const unsigned low = first == 0xF0 ? 0x90 : 0x80;
        const unsigned high = first == 0xF4 ? 0x8F : 0xBF;
        return within(1, low, high) && within(2, 0x80, 0xBF) && within(3, 0x80, 0xBF) ? 4 : 0;
    }
    return 0;
}

} // namespace

std::string csvField(std::string_view field)
{
    const bool padded = !field.empty() && (isBlank(field.front()) || isBlank(field.back()));
    if (!padded && field.find_first_of(",\"\r\n") == std::string_view::npos)
        return std::string(field);
    std::string quoted = "\"";
    for (const char character : field)
        quoted.append(character == '"' ? 2 : 1, character);
    return quoted + '"';
}

std::string csvText(std::string_view text)
{
    return csvField(startsLikeFormula(text) ? "'" + std::string(text) : std::string(text));
}

std::string plainText(std::string_view cell)
{
    if (cell.starts_with('\'') && startsLikeFormula(cell))
        cell.remove_prefix(1);
    return std::string(cell);
}

bool isCleanUtf8(std::string_view text)
{
    while (!text.empty()) {
        const std::size_t length = sequenceLength(text);
        if (length == 0)
            return false;
        text.remove_prefix(length);
    }
    return true;
}

} // namespace hammerline::exchange
