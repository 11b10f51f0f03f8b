#pragma once
// One rail's error or single notes'? For one quantity, what is the most that a common remedy would bring in: moving all
// notes alike, along a straight line, or each section by itself. Each answer is exact: the shift or line that lies
// inside the most intervals, found among those that touch the ends of intervals, in whole numbers without rounding.

#include "keyboard/keyboard.h"
#include "readings/readings.h"
#include "tolerance/tolerance.h"

#include <cstdint>
#include <optional>
#include <vector>

namespace hammerline::action {

/// The change of one note that would bring it in: from low to high (either may be open), in halves of a base unit, so
/// that the midpoint of an empty guarded interval is a whole number too.
struct Wanted {
    keyboard::Note note{};
    std::optional<std::int64_t> low{};
    std::optional<std::int64_t> high{};
};

/// A change along the keyboard, straight between two notes; the same at both for a shift. Base units (nm, mg), not
/// rounded.
struct Straight {
    keyboard::NoteRange notes{};
    double bass = 0;
    double treble = 0;
    int inside = 0; ///< notes that it brings or leaves in
    [[nodiscard]] double at(keyboard::Note note) const;
};
/// The shift, or the line, inside the most intervals; amid what is allowed for the notes that it pleases. `wanted` by
/// note, each once, not empty.
[[nodiscard]] Straight bestShift(const std::vector<Wanted> &wanted);
[[nodiscard]] Straight bestLine(const std::vector<Wanted> &wanted);

enum class Remedy { SingleNotes, Shift, Line, ShiftBySection, LineBySection };
struct RemedyOutcome {
    Remedy remedy{};
    int inside = 0;                  ///< notes inside after it, single notes left alone
    std::vector<Straight> changes{}; ///< one, or one a section; none for SingleNotes
};

struct Pattern {
    int read = 0;                          ///< judged and read
    int inside = 0;                        ///< as they are
    std::vector<RemedyOutcome> remedies{}; ///< in the order of Remedy; by section only where sections are known
    /// The simplest remedy that mends more than half of the notes outside and that no freer one beats by more than two
    /// notes; SingleNotes where none does.
    Remedy likely = Remedy::SingleNotes;
    /// Middle of the keyboard against its ends after the best line, mm or g: median of the middle third less the mean
    /// of the medians of the outer thirds. A bow is no rail's error but the bed's or the string line's.
    double bow = 0;
};
/// Absent where the set does not judge the quantity or nothing was read.
[[nodiscard]] std::optional<Pattern> patternOf(const readings::ValueTable &values, catalogue::Quantity quantity,
                                               const tolerance::ToleranceSet &set, const keyboard::Compass &compass,
                                               const keyboard::Sections &sections);

} // namespace hammerline::action
