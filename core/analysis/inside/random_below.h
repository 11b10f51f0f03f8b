#pragma once
// Whole numbers by chance that are the same on every machine: std::mt19937_64's sequence is fixed by the C++ standard;
// what the standard leaves open (distributions, shuffle) is not used. Numbers above the largest multiple of the bound
// are thrown away, so that none is likelier than another.

#include <cstdint>
#include <limits>
#include <random>
#include <utility>
#include <vector>

namespace hammerline::analysis::inside {

/// 0 to bound - 1, each as likely as the others.
[[nodiscard]] inline std::size_t below(std::size_t bound, std::mt19937_64 &numbers)
{
    constexpr std::uint64_t most = std::numeric_limits<std::uint64_t>::max();
    const std::uint64_t usable = most - most % bound;
    std::uint64_t number = numbers();
    while (number >= usable)
        number = numbers();
    return static_cast<std::size_t>(number % bound);
}

/// The first `wanted` of `things` are drawn, in the order of drawing (Fisher and Yates).
template <typename Thing>
void shuffleFirst(std::vector<Thing> &things, std::size_t wanted, std::mt19937_64 &numbers)
{
    for (std::size_t place = 0; place < wanted; ++place)
        std::swap(things[place], things[place + below(things.size() - place, numbers)]);
}

} // namespace hammerline::analysis::inside
