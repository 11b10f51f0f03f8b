#include "keyboard/keyboard.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <optional>

namespace hammerline::keyboard {

namespace {

constexpr int notesPerOctave = 12;
constexpr std::array<const char *, notesPerOctave> names{"C",  "C#", "D",  "D#", "E",  "F",
                                                         "F#", "G",  "G#", "A",  "A#", "B"};

std::string_view trimmed(std::string_view text)
{
    constexpr std::string_view blanks = " \t";
    const auto first = text.find_first_not_of(blanks);
    if (first == std::string_view::npos)
        return {};
    return text.substr(first, text.find_last_not_of(blanks) - first + 1);
}

std::optional<int> wholeNumber(std::string_view text)
{
    int number = 0;
    const auto end = text.data() + text.size();
    const auto [stopped, error] = std::from_chars(text.data(), end, number);
    return error == std::errc() && stopped == end ? std::optional(number) : std::nullopt;
}

/// Semitones above C.
std::optional<int> takeLetter(std::string_view &text)
{
    constexpr std::array<int, 7> aboveC{9, 11, 0, 2, 4, 5, 7}; // A to G
    if (text.empty())
        return std::nullopt;
    const char letter = static_cast<char>(text.front() | 0x20);
    if (letter < 'a' || letter > 'g')
        return std::nullopt;
    text.remove_prefix(1);
    return aboveC[static_cast<std::size_t>(letter - 'a')];
}

int takeAccidental(std::string_view &text)
{
    struct Sign {
        std::string_view text;
        int semitones;
    };
    for (const auto &[sign, semitones] : {Sign{"#", 1}, Sign{"b", -1}, Sign{"\u266f", 1}, Sign{"\u266d", -1}}) {
        if (text.starts_with(sign)) {
            text.remove_prefix(sign.size());
            return semitones;
        }
    }
    return 0;
}

std::optional<int> numberOfName(std::string_view text)
{
    const auto aboveC = takeLetter(text);
    if (!aboveC)
        return std::nullopt;
    const int accidental = takeAccidental(text);
    const auto octave = wholeNumber(text);
    const std::size_t digits = octave && *octave < 0 ? 2 : 1;
    if (!octave || *octave < -1 || text.size() != digits)
        return std::nullopt;
    constexpr int c4 = 40;
    return c4 + (*octave - 4) * notesPerOctave + *aboveC + accidental;
}

} // namespace

std::string Note::name() const
{
    return names[static_cast<std::size_t>(midi() % notesPerOctave)] + std::to_string(midi() / notesPerOctave - 1);
}

double Note::frequencyHz() const
{
    return 440.0 * std::exp2((m_number - 49) / 12.0);
}

outcome::Outcome<Note> parseNote(std::string_view text)
{
    const auto bare = trimmed(text);
    const auto plain = wholeNumber(bare);
    const auto number = plain ? plain : numberOfName(bare);
    if (number && *number >= Note::lowest && *number <= Note::highest)
        return Note(*number);
    return outcome::Fault{.problem = "'" + std::string(text.substr(0, 40)) +
                                     "' is no note; write a name such as C#4 or "
                                     "a number such as 41 (A0 is 1, C8 is 88)"};
}

bool sameSection(const Sections &sections, Note a, Note b)
{
    return sections.empty() || std::any_of(sections.begin(), sections.end(), [&](const Section &section) {
               return section.notes.contains(a) && section.notes.contains(b);
           });
}

} // namespace hammerline::keyboard
