#pragma once
// Whether the rows of a file have spoken of a place before: a bit a place, where PlacesSeen keeps the line too.
//
// Takes are kept by sixty-fours of one note and quantity: a million readings whose takes are numbered from 1 on want
// less than a megabyte, in whatever order they come. Takes numbered far apart want some words each.

#include "readings/readings.h"

#include <cstdint>
#include <unordered_map>
#include <vector>

namespace hammerline::exchange {

class PlaceBits {
public:
    PlaceBits();
    /// True where it was spoken of before; from now on it was.
    [[nodiscard]] bool again(const readings::Place &place);
    /// How many sixty-fours of takes are kept beyond the first ones: what the memory grows with.
    [[nodiscard]] std::size_t further() const { return m_further.size(); }

private:
    std::vector<std::uint64_t> m_first;                           ///< takes 1 to 64, by quantity and note
    std::unordered_map<std::uint32_t, std::uint64_t> m_further{}; ///< by sixty-four, then quantity and note
};

} // namespace hammerline::exchange
