#include "analysis/draw_sample.h"

#include "analysis/inside/random_below.h"

#include <algorithm>

namespace hammerline::analysis {

std::vector<keyboard::Note> drawSample(const std::vector<keyboard::Note> &notes, int size, std::uint32_t seed)
{
    std::vector<keyboard::Note> drawn = notes;
    std::ranges::sort(drawn);
    const auto wanted = std::min(drawn.size(), static_cast<std::size_t>(std::max(size, 0)));
    std::mt19937_64 numbers(seed);
    inside::shuffleFirst(drawn, wanted, numbers);
    drawn.resize(wanted);
    std::ranges::sort(drawn);
    return drawn;
}

} // namespace hammerline::analysis
