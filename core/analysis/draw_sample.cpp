#include "analysis/draw_sample.h"

#include <algorithm>
#include <limits>
#include <random>

namespace hammerline::analysis {

namespace {

/// 0 to bound - 1, each as likely as the others.
std::size_t below(std::size_t bound, std::mt19937_64 &numbers)
{
    constexpr std::uint64_t most = std::numeric_limits<std::uint64_t>::max();
    const std::uint64_t usable = most - most % bound;
    std::uint64_t number = numbers();
    while (number >= usable)
        number = numbers();
    return static_cast<std::size_t>(number % bound);
}

} // namespace

std::vector<keyboard::Note> drawSample(const std::vector<keyboard::Note> &notes, int size, std::uint32_t seed)
{
    std::vector<keyboard::Note> drawn = notes;
    std::ranges::sort(drawn);
    const auto wanted = std::min(drawn.size(), static_cast<std::size_t>(std::max(size, 0)));
    std::mt19937_64 numbers(seed);
    for (std::size_t place = 0; place < wanted; ++place)
        std::swap(drawn[place], drawn[place + below(drawn.size() - place, numbers)]);
    drawn.resize(wanted);
    std::ranges::sort(drawn);
    return drawn;
}

} // namespace hammerline::analysis
