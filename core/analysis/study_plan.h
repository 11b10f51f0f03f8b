#pragma once
// A gauge study before it is taken: who reads which notes how often, and in which order each is asked.
//
// The order is by rounds: in one round everybody reads every note once, one person after the other (nobody wants to
// hand the gauge over after each note), the people in an order drawn for the round and the notes in an order drawn for
// the person. So a value is never read twice in a row, and what drifts while the study is taken (warmth, a tired hand)
// falls on everybody alike. The same plan has the same order on every machine.

#include "analysis/gauge_study.h"
#include "keyboard/keyboard.h"
#include "outcome/outcome.h"

#include <cstdint>
#include <string>
#include <vector>

namespace hammerline::analysis {

struct StudyPlan {
    std::vector<keyboard::Note> notes{}; ///< rising
    std::vector<std::string> people{};
    int takes = 3; ///< how often each person reads each note
    std::uint32_t seed = 0;
    bool operator==(const StudyPlan &) const = default;
};

inline constexpr std::size_t mostPeople = 20;
inline constexpr int mostTakes = 10;

/// Nothing where it can be taken: two or more notes, people (each once, on one line) and takes, and not too many.
[[nodiscard]] std::vector<outcome::Fault> faultsOf(const StudyPlan &plan);

struct StudyStop {
    keyboard::Note note{};
    std::string person{};
    int take = 1;
    auto operator<=>(const StudyStop &) const = default;
};

/// Every stop once, in the order in which they are asked.
[[nodiscard]] std::vector<StudyStop> orderOf(const StudyPlan &plan);

} // namespace hammerline::analysis
