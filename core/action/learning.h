#pragma once
// How an action answers. A plan says "let-off 0.60 mm down, a quarter turn"; the next pass says what came of it. What
// came, over what was asked, is the answer of that screw. Over a section its weighted median (each answer weighted by
// what was asked: the straight line through the origin with the least sum of absolute misses) is robust against the few
// screws that slipped and the few keys that were misread. Nothing is assumed about felt or thread pitch, because no
// published figure exists.

#include "action/plan.h"

#include <optional>
#include <string>
#include <vector>

namespace hammerline::action {

/// One adjustment that was asked for, done, and measured before and after.
struct Trial {
    catalogue::Quantity adjust{};
    std::string rail{}; ///< id; empty for a single adjustment
    keyboard::Note note{};
    double asked = 0;              ///< mm or g, not 0
    double answered = 0;           ///< measured change less what the rest of the work carried to it
    std::optional<double> turns{}; ///< made; absent where nobody said
};

/// The work that was ticked off of one plan.
struct DoneWork {
    std::vector<RailMove> rails{};
    std::vector<Move> moves{}; ///< `turns`: as made
};

/// Trials from a plan's work and the passes around it. A move without a reading of its quantity before and after tells
/// nothing. A rail tells on every note of its range, and what was
/// asked of it is what it was set to. Where a rail and a screw moved the same quantity of a note,
/// neither can be told from the other and both are left out.
[[nodiscard]] std::vector<Trial> trialsOf(const DoneWork &done, const PlanTask &before,
                                          const readings::ValueTable &after);

/// What is known of one adjustment (or rail) on one section.
struct Learned {
    catalogue::Quantity adjust{};
    std::string rail{};
    std::string section{}; ///< its name; empty: the whole instrument
    int trials = 0;        ///< at least 3
    double gain = 1;       ///< answered over asked; 1: it does what it is told
    std::optional<double> low{},
        high{}; ///< of the gain, at least 95 % sure whatever the distribution; from 6 trials on
    std::optional<double> displayPerTurn{}; ///< mm or g; absent where no turns were said
};

/// For each adjustment and rail: the whole instrument first, then each section that has trials enough.
[[nodiscard]] std::vector<Learned> learn(const std::vector<Trial> &trials, const keyboard::Sections &sections);

/// The section's answer where that is known, else the instrument's; null where neither is.
[[nodiscard]] const Learned *findLearned(const std::vector<Learned> &learned, catalogue::Quantity adjust,
                                         const std::string &rail, keyboard::Note note,
                                         const keyboard::Sections &sections);

/// The same plan with its turns as the action has been seen to answer. `by` stays: it is what shall come of it.
[[nodiscard]] Plan withLearnedTurns(Plan plan, const std::vector<Learned> &learned, const keyboard::Sections &sections);

/// The same, and its rails set as they have been seen to answer: in whole steps, within their `most`. What a rail
/// does is its own, not a section's. An answer below 0.3 or above 3 is taken for misread and not followed.
[[nodiscard]] Plan withLearnedAnswers(Plan plan, const std::vector<Learned> &learned, const PlanTask &task);

/// What to ask of an adjustment that answers by `gain` so that `by` comes of it: by / gain, in whole steps.
[[nodiscard]] units::Amount askedFor(units::Amount by, double gain, units::Amount step);

} // namespace hammerline::action
