#pragma once
// A random sample of notes, drawn without replacement: every set of that size is equally likely. The same seed draws
// the same sample on every machine and in every version of the program, so that a sample written down with its seed can
// be shown to have been drawn and not chosen.
//
// The numbers are std::mt19937_64's, whose sequence the C++ standard fixes; what the standard leaves open
// (distributions) is not used. Numbers above the largest multiple of the bound are thrown away, so that no note is
// likelier than another.

#include "keyboard/keyboard.h"

#include <cstdint>
#include <vector>

namespace hammerline::analysis {

/// Rising. `size` beyond the number of notes: all of them; below 1: none.
[[nodiscard]] std::vector<keyboard::Note> drawSample(const std::vector<keyboard::Note> &notes, int size,
                                                     std::uint32_t seed);

} // namespace hammerline::analysis
