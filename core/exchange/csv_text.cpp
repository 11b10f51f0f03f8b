#include "exchange/csv_text.h"

#include <algorithm>
#include <array>

namespace hammerline::exchange {
namespace {

/// The plain ones, their full-width and their small forms.
constexpr std::array<std::string_view, 12> formulaStarts{"=",
                                                         "+",
                                                         "-",
                                                         "@",
                                                         "\xEF\xBC\x9D",
                                                         "\xEF\xBC\x8B",
                                                         "\xEF\xBC\x8D",
                                                         "\xEF\xBC\xA0",
                                                         "\xEF\xB9\xA6",
                                                         "\xEF\xB9\xA2",
                                                         "\xEF\xB9\xA3",
                                                         "\xEF\xB9\xAB"};
/// What a spreadsheet may pass over before it looks for a formula: blanks of every width, line ends, marks of direction
/// and whatever else has no width (Unicode: White_Space, Default_Ignorable_Code_Point). Of E2 80 and E2 81 some with a
/// width are among them; a needless apostrophe comes off again on reading.
constexpr std::array<std::string_view, 15> passedOver{
    " ",        "\t",       "\r",           "\n",           "\v",           "\f",           "\xC2\x85",    "\xC2\xA0",
    "\xC2\xAD", "\xD8\x9C", "\xE1\x9A\x80", "\xE1\xA0\x8E", "\xE3\x80\x80", "\xEF\xBB\xBF", "\xEF\xB8\x8F"};

/// Length of the one that `text` begins with; 0: it begins with none.
template <std::size_t Count>
std::size_t lengthOfOne(const std::array<std::string_view, Count> &of, std::string_view text)
{
    const auto found = std::ranges::find_if(of, [text](std::string_view one) { return text.starts_with(one); });
    return found == of.end() ? 0 : found->size();
}

std::size_t lengthOfBlank(std::string_view text)
{
    if (text.size() >= 3 && (text.starts_with("\xE2\x80") || text.starts_with("\xE2\x81")))
        return 3;
    return lengthOfOne(passedOver, text);
}

bool isBlank(char character)
{
    return character == ' ' || character == '\t';
}

/// Apostrophes in front do not count: one is added on writing and one taken off on reading.
bool startsLikeFormula(std::string_view text)
{
    text.remove_prefix(std::min(text.find_first_not_of('\''), text.size()));
    if (text.starts_with('\t') || text.starts_with('\r'))
        return true;
    while (const std::size_t length = lengthOfBlank(text))
        text.remove_prefix(length);
    return lengthOfOne(formulaStarts, text) > 0;
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
