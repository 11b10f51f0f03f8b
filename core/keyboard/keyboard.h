#pragma once
// Notes, numbered as the trade numbers keys: A0 is 1, A4 (440 Hz, ISO 16) is 49, C8 is 88; MIDI number minus 20.
// Extended basses go on downwards (G#0 is 0, C0 is -8). The compass of an instrument is a first and a last note.

#include "outcome/outcome.h"

#include <compare>
#include <string>
#include <string_view>
#include <vector>

namespace hammerline::keyboard {

enum class Colour { Natural, Sharp };

class Note {
public:
    /// MIDI 0 to 127; no keyboard reaches further.
    static constexpr int lowest = -20;
    static constexpr int highest = 107;

    constexpr Note() = default; ///< A0
    explicit constexpr Note(int number) : m_number(number) {}
    [[nodiscard]] constexpr int number() const { return m_number; }
    [[nodiscard]] constexpr int midi() const { return m_number + 20; }
    [[nodiscard]] constexpr Colour colour() const
    {
        constexpr unsigned sharps = 0b0101'0100'1010; // of an octave, C first
        return ((sharps >> (midi() % 12)) & 1U) != 0 ? Colour::Sharp : Colour::Natural;
    }
    /// Scientific pitch notation, sharps written as `C#4`.
    [[nodiscard]] std::string name() const;
    /// Equal temperament on A4 = 440 Hz (ISO 16:1975).
    [[nodiscard]] double frequencyHz() const;
    constexpr auto operator<=>(const Note &) const = default;

private:
    int m_number = 1;
};

/// `C#4`, `Db4`, `c#4` or a number such as `49` or `-8`; blanks around may stand.
[[nodiscard]] outcome::Outcome<Note> parseNote(std::string_view text);

/// first <= last, always.
struct NoteRange {
    Note first{1};
    Note last{88};
    [[nodiscard]] constexpr bool contains(Note note) const { return first <= note && note <= last; }
    [[nodiscard]] constexpr int count() const { return last.number() - first.number() + 1; }
    constexpr bool operator==(const NoteRange &) const = default;
};
using Compass = NoteRange;

/// A named run of notes between two breaks ("bass", "tenor", "treble"…).
struct Section {
    std::string name{};
    NoteRange notes{};
    bool operator==(const Section &) const = default;
};
/// Sections in rising order that do not overlap. Empty: sections are not known, there are no breaks.
using Sections = std::vector<Section>;

/// True where both notes lie in one section, or sections are not known. A note in no section is alone.
[[nodiscard]] bool sameSection(const Sections &sections, Note a, Note b);

} // namespace hammerline::keyboard
