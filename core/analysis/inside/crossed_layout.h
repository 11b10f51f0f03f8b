#pragma once
// The trials of a gauge study in cells, one a note and person, and their exact sums of squares.

#include "analysis/gauge_study.h"

#include <cstdint>
#include <map>
#include <utility>

namespace hammerline::analysis::inside {

/// Everybody has read every note `takes` times.
struct CrossedLayout {
    int notes = 0, people = 0, takes = 0;
    units::Dimension dimension = units::Dimension::Length;
    std::map<std::pair<keyboard::Note, std::string>, std::map<int, std::int64_t>> cells; ///< take -> base units
};
[[nodiscard]] outcome::Outcome<CrossedLayout> crossedLayout(const std::vector<Trial> &trials);

/// In mm² or g².
struct CrossedSums {
    double note = 0, person = 0, interaction = 0, repeatability = 0, total = 0;
};
[[nodiscard]] CrossedSums sumsOfSquares(const CrossedLayout &layout);

} // namespace hammerline::analysis::inside
