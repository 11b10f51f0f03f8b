#pragma once
// What stands in the workshop: one piano, its build, and what is known of it on the day it is taken in.
// Everything but name, action and compass may be unknown; unknown text is empty, unknown numbers are absent.

#include "catalogue/catalogue.h"
#include "keyboard/keyboard.h"
#include "outcome/outcome.h"
#include "units/units.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace hammerline::instrument {

/// Number within one logbook. 0: not stored yet.
using InstrumentId = std::int64_t;

/// Where an instrument is on its way through the shop, in this order.
enum class State { TakenIn, InWork, InReview, SignedOff, Delivered };
/// "taken-in", "in-work", "in-review", "signed-off", "delivered".
[[nodiscard]] std::string_view idOf(State state);
[[nodiscard]] std::optional<State> findState(std::string_view id);

/// Something that holds over a run of notes: "three plain strings" on 40-88, "flat damper felt" on 50-70.
struct Fitting {
    keyboard::NoteRange notes{};
    std::string kind{};
    bool operator==(const Fitting &) const = default;
};

struct Instrument {
    InstrumentId id = 0;
    /// 32 hex digits that name the instrument in every logbook it travels to; made by the caller who adds it.
    std::string uid{};
    std::string name{}; ///< what the shop calls it
    catalogue::ActionKind action = catalogue::ActionKind::Vertical;
    keyboard::Compass compass{};
    keyboard::Sections sections{};
    std::string maker{};
    std::string model{};
    std::string serial{};
    std::optional<int> year{};
    std::optional<units::Length> size{}; ///< height of a vertical, length of a grand
    std::vector<Fitting> stringing{};
    std::vector<Fitting> dampers{};
    std::string condition{}; ///< as received, in the shop's words
    std::string owner{};     ///< kept out of the record unless asked for
    std::string remark{};    ///< for the workshop itself; never in the record
    State state = State::TakenIn;
    /// Built-in id or name of the tolerance set in force, and its whole text as chosen (JSON as in
    /// exchange/tolerance_json.h): a set edited later does not change what an instrument was judged by. Empty: none chosen yet.
    std::string toleranceId{};
    std::string toleranceText{};

    bool operator==(const Instrument &) const = default;
};

/// What is wrong with an instrument as entered: no name, sections out of order, overlapping or outside the compass,
/// a fitting outside the compass, a year outside 1700-2100, a size that is not above 0, a name over 200 characters or
/// with control characters. Empty: nothing.
[[nodiscard]] std::vector<outcome::Fault> faultsOf(const Instrument &instrument);

} // namespace hammerline::instrument
