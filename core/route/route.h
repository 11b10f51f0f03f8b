#pragma once
// Routes: the order in which a pass asks for its notes. A choice is made per pass, kept as text beside it, and turned
// into stops whenever the pass is taken up again; what was read already is skipped by the one who walks the route, not
// here.

#include "catalogue/catalogue.h"
#include "keyboard/keyboard.h"
#include "outcome/outcome.h"
#include "readings/readings.h"
#include "tolerance/judge.h"

#include <string>
#include <string_view>
#include <vector>

namespace hammerline::route {

enum class Order {
    Chromatic,          ///< bass to treble
    NaturalsThenSharps, ///< all naturals, then all sharps
    SamplesFirst,       ///< samples of every section, then the rest section by section
    OnlyOut,            ///< what was out, or sent back and not read again, when the route was drawn
    OnlyMissing,        ///< what has no reading yet
    Own,                ///< the notes the user listed, in that order
};
enum class Sweep {
    AlongTheNotes, ///< one quantity along all notes, then the next quantity
    NoteByNote,    ///< all quantities of a note before the next note
};
/// Which notes SamplesFirst takes as samples.
enum class Samples {
    SectionEnds, ///< first and last note of each section
    EveryFifth,  ///< every fifth note of each section, from its first, and its last
    Listed,      ///< `Choice::listed`
};

struct Choice {
    Order order = Order::Chromatic;
    Sweep sweep = Sweep::AlongTheNotes;
    Samples samples = Samples::SectionEnds;
    std::vector<keyboard::Note> listed{};          ///< for Samples::Listed and Order::Own; no note twice
    std::vector<catalogue::Quantity> quantities{}; ///< what is asked for, in this order; no quantity twice
    bool operator==(const Choice &) const = default;
};

struct Stop {
    catalogue::Quantity quantity{};
    keyboard::Note note{};
    auto operator<=>(const Stop &) const = default;
};

/// What a route needs to know of the instrument and the readings so far.
struct Ground {
    keyboard::Compass compass{};
    keyboard::Sections sections{};    ///< empty: the compass is one section
    tolerance::Judgement judgement{}; ///< of the pass that OnlyOut looks at; else may be empty
    readings::ValueTable values{};    ///< of the pass to walk, for OnlyMissing
    std::vector<Stop> sentBack{};     ///< what somebody wants read again, for OnlyOut; any order
};

/// Every stop once. Listed notes outside the compass are left out.
[[nodiscard]] std::vector<Stop> stopsOf(const Choice &choice, const Ground &ground);

/// One line for keeping: `samples-first; ends; along-the-notes; let_off dip; A0 C4`.
[[nodiscard]] std::string textOf(const Choice &choice);
[[nodiscard]] outcome::Outcome<Choice> parseChoice(std::string_view text);

/// Notes as people list them: names or numbers, ranges with "-" or "..", separated by blanks, commas or semicolons
/// (`A0, C4..E4, 88`). A fault names what can't be read; a note listed twice is taken once.
[[nodiscard]] outcome::Outcome<std::vector<keyboard::Note>> parseNoteList(std::string_view text);

} // namespace hammerline::route
