#pragma once
// What a logbook keeps beside the things that the rooms below know (instruments, passes, readings, decisions, the file
// of an instrument), and what it tells of them in short.
//
// Names of deeds: logbook-created, instrument-added, instrument-changed, pass-begun, pass-changed, pass-imported,
// reading-entered, reading-corrected, reading-withdrawn, fault-marked, fault-cleared, tolerance-remembered,
// route-chosen, slip-confirmed, plan-kept, work-logged, work-taken-back, setup-chosen, work-written, work-changed,
// work-struck, condition-said, photograph-added, photograph-changed, photograph-removed, sale-noted,
// instrument-taken-over, items-accepted, items-sent-back, decision-taken-back, pass-signed, pass-reopened,
// spot-check-begun, undone, redone; those of gauge studies are in gauge_studies.h. More may come; show an unknown one
// as it is.

#include "catalogue/catalogue.h"
#include "instrument/instrument.h"
#include "keyboard/keyboard.h"
#include "readings/readings.h"
#include "units/units.h"

#include <chrono>
#include <compare>
#include <cstddef>
#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace hammerline::logbook {

/// Number of an entry of the history, from 1 upwards without gaps.
using DeedId = std::int64_t;

/// Who does it and when; handed in from the top, since no lower room asks the clock.
struct Stamp {
    readings::Instant at{};
    std::string person{};
};

/// One entry of the history.
struct Deed {
    DeedId id = 0;
    Stamp stamp{};
    std::string name{};             ///< what was done, an id: "reading-entered", "reading-corrected", "pass-begun"…
    std::string subject{};          ///< what it was done to, for people: "let_off C#4"
    std::string reason{};           ///< why, where one was given
    std::optional<DeedId> undoes{}; ///< the deed that this one took back
    instrument::InstrumentId instrument = 0; ///< 0: none
    readings::PassId pass = 0;               ///< 0: none
};

/// One version of a reading, oldest first; without a value: withdrawn.
struct ReadingVersion {
    std::optional<units::Amount> value{};
    std::string typed{};
    DeedId deed = 0;
    Stamp stamp{};
    std::string reason{};
};

/// A fault that is heard or felt and not measured ("blocking"), on a note of a pass. `fault` is a free id.
struct FaultMark {
    keyboard::Note note{};
    std::string fault{};
    auto operator<=>(const FaultMark &) const = default;
};

/// The tolerance set a pass is judged by: its id or name, and its whole text as it was then.
struct PassTolerance {
    std::string id{};
    std::string text{};
    bool operator==(const PassTolerance &) const = default;
};

/// A piece of planned work that was ticked off: which one, how long it took by the clock (0: nobody timed it), by whom
/// and when.
struct WorkDone {
    std::string item{}; ///< names the move (action/work_item.h): "let_off 40 by -0.6 mm"
    std::chrono::seconds took{};
    std::string person{};
    readings::Instant at{};
    bool operator==(const WorkDone &) const = default;
};

/// How a pass is walked and typed, as the bench writes it down: free texts to the logbook.
struct PassRoute {
    std::string route{};
    std::string typing{};
    bool operator==(const PassRoute &) const = default;
};

/// An unlikely value that its reader stood by. Holds as long as the reading at `place` has that value.
struct ConfirmedSlip {
    readings::Place place{};
    units::Amount value{};
    std::string suspicion{}; ///< a free id
    bool operator==(const ConfirmedSlip &) const = default;
};

/// How an instrument's action is set up for planning and what its plans aim at: free texts to the logbook.
struct ActionSetup {
    std::string setup{}; ///< never empty
    std::string aim{};
    bool operator==(const ActionSetup &) const = default;
};

/// Who read what in a pass, for the sums of a whole shop: takes one by one, by quantity as stored, note and take.
struct ReadBy {
    struct Take {
        readings::TakenValue value{};
        std::size_t reader = 0; ///< into `people`
    };
    std::vector<std::string> people{};
    std::vector<Take> takes{};
};

/// What a list shows of an instrument.
struct InstrumentLine {
    instrument::InstrumentId id = 0;
    std::string name{};
    instrument::State state = instrument::State::TakenIn;
    bool operator==(const InstrumentLine &) const = default;
};

/// What judging needs of an instrument.
struct Keyboard {
    instrument::InstrumentId instrument = 0;
    catalogue::ActionKind action = catalogue::ActionKind::Vertical;
    keyboard::Compass compass{};
    keyboard::Sections sections{};
};

struct PassOf {
    readings::PassId pass = 0;
    instrument::InstrumentId instrument = 0;
    readings::Purpose purpose = readings::Purpose::AsFound;
    readings::Instant began{};
};

/// The sets that instruments are judged by now, each text once.
struct SetsInUse {
    std::vector<PassTolerance> sets{};
    std::map<instrument::InstrumentId, std::size_t> of{}; ///< into `sets`; absent: none is chosen
};

} // namespace hammerline::logbook
