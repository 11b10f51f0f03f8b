#pragma once
// The best plan: which screws, punchings and rails to move by how much, so that the most pairs come
// inside their acceptance intervals in the fewest minutes, as close to the targets as can be. It is the best, not a
// good one.
//
// How it is found. Once the rails stand, notes know nothing of each other, and the order of plans (pairs, minutes,
// closeness) adds up over notes: the best plan is the best of every note. Within a note only the adjustments that
// meet in aftertouch and drop are tied; they are searched to the end with bounds (inside/note_search.h). Rails are
// searched by halving boxes of their positions, each box bounded by notes solved with that much slack
// (inside/rail_search.h). Rails that share no note are searched apart. Where a rail moves let-off, which its screws
// also set, every position is nearly as good for Aim::Target; they are told apart by what is left of the shift after
// whole steps of the screw (inside/residue_bound.h). Worst cases, exact but slow: many fine rails on the same notes,
// and such a rail above screws of 10 micrometres and less, on actions whose targets contradict each other (seconds).

#include "action/action.h"
#include "readings/readings.h"
#include "tolerance/tolerance.h"

#include <cstdint>
#include <optional>
#include <set>
#include <string>
#include <utility>
#include <vector>

namespace hammerline::action {

/// What decides after the number of pairs inside.
enum class Aim {
    In,     ///< minutes, then closeness: the least work
    Target, ///< closeness, then minutes: a first regulation, where every screw is turned anyway
};
/// "in", "target".
[[nodiscard]] std::string_view idOf(Aim aim);
[[nodiscard]] std::optional<Aim> findAim(std::string_view id);

/// What the technician has ruled out for this plan.
struct Forbidden {
    std::set<catalogue::Quantity> everywhere{};
    std::set<std::pair<catalogue::Quantity, keyboard::Note>> single{};
    std::set<std::string> rails{}; ///< ids
    bool operator==(const Forbidden &) const = default;
};

/// All that a plan is made from; two equal tasks give the same plan.
struct PlanTask {
    readings::ValueTable values{};
    tolerance::ToleranceSet set{}; ///< of the setup's action
    Setup setup{};                 ///< without faults
    keyboard::Compass compass{};
    keyboard::Sections sections{}; ///< empty: not known
    Aim aim = Aim::In;
    Forbidden forbidden{};
};

/// By how much to move the ends of a rail.
struct RailSetting {
    units::Amount bass{};
    units::Amount treble{};
    bool operator==(const RailSetting &) const = default;
};

struct RailMove {
    std::string rail{};
    catalogue::Quantity quantity{};
    units::Amount bass{};   ///< at the first note of its range
    units::Amount treble{}; ///< at the last; the same for a uniform rail
    double minutes = 0;
    std::optional<keyboard::NoteRange> notes{}; ///< as the setup has it; absent: the instrument's
    /// What to set so that `bass` and `treble` come of it, where the rail has been seen to answer otherwise.
    std::optional<RailSetting> setting{};
};

struct Move {
    int order = 0; ///< from 1: no move disturbs an earlier one
    keyboard::Note note{};
    catalogue::Quantity adjust{};
    units::Amount by{}; ///< change of the quantity itself, never 0
    double minutes = 0;
    std::optional<double> turns{};                         ///< by / mm_per_turn; absent where that isn't known
    std::optional<std::vector<units::Length>> punchings{}; ///< dip only, thickest first; absent without a shelf
};

/// A note and quantity that the set judges and that was read or is predicted; values in mm or g, not rounded.
struct Pair {
    keyboard::Note note{};
    catalogue::Quantity quantity{};
    double before = 0;
    double after = 0;
    bool predicted = false;
    bool insideBefore = false; ///< inside the acceptance interval
    bool insideAfter = false;
    tolerance::Status status{}; ///< of `after`, as judging would say
};

/// Why a pair is not inside after the plan.
enum class Hindrance {
    NothingMovesIt, ///< no adjustment that is available changes it
    OutOfReach,     ///< its adjustments do not reach far enough
    BetweenSteps,   ///< they pass over the interval between two steps
    AtTheCostOf,    ///< it could come in, but another pair would go out or a reading below 0
};
struct Unresolved {
    keyboard::Note note{};
    catalogue::Quantity quantity{};
    Hindrance why{};
};

/// To measure again after the work, because the lever model does not say where it comes out.
struct Remeasure {
    keyboard::Note note{};
    catalogue::Quantity quantity{};
    catalogue::Quantity movedBy{}; ///< what was changed
};

struct Plan {
    Aim aim = Aim::In;
    std::vector<RailMove> rails{}; ///< those that move, in the setup's order
    std::vector<Move> moves{}; ///< by order: key_height, blow, lost_motion, let_off, drop, dip…, within one by note
    double minutes = 0;
    int pairsInBefore = 0;
    int pairsInAfter = 0;
    double closeness = 0;
    std::vector<Pair> pairs{}; ///< every pair, by quantity, then by note
    std::vector<Unresolved> unresolved{};
    std::vector<Remeasure> remeasure{}; ///< by quantity, then by note
};

[[nodiscard]] Plan bestPlan(const PlanTask &task);
/// The same where it is found by trying no more than so many turns of screws and boxes of rail positions; absent where
/// it takes more. A usual plan takes some ten thousand; a million take about a second.
[[nodiscard]] std::optional<Plan> bestPlanWithin(const PlanTask &task, std::int64_t tries);

/// Punchings to fetch for the whole job: how many of each thickness, thickest first.
[[nodiscard]] std::vector<std::pair<units::Length, int>> punchingsToFetch(const Plan &plan);

} // namespace hammerline::action
