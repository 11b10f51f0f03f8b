#include "action/punchings.h"

#include <algorithm>
#include <cstdint>
#include <cstdlib>
#include <functional>
#include <limits>
#include <numeric>

namespace hammerline::action {

namespace {

using Count = std::int64_t;
constexpr Count mostCells = 4'000'000;
constexpr std::int32_t unreachable = std::numeric_limits<std::int32_t>::max();

/// pieces[s]: the fewest pieces whose sum is s.
std::vector<std::int32_t> fewestPieces(const std::vector<Count> &shelf, Count largest)
{
    std::vector<std::int32_t> pieces(static_cast<std::size_t>(largest) + 1, unreachable);
    pieces[0] = 0;
    for (const Count piece : shelf)
        for (Count sum = piece; sum <= largest; ++sum)
            if (const std::int32_t before = pieces[static_cast<std::size_t>(sum - piece)]; before != unreachable)
                pieces[static_cast<std::size_t>(sum)] = std::min(pieces[static_cast<std::size_t>(sum)], before + 1);
    return pieces;
}

/// The list with the thicker pieces first among those with fewest pieces.
std::vector<Count> listOf(Count sum, const std::vector<Count> &shelf, const std::vector<std::int32_t> &pieces)
{
    std::vector<Count> list;
    while (sum > 0)
        for (const Count piece : shelf)
            if (piece <= sum &&
                pieces[static_cast<std::size_t>(sum - piece)] == pieces[static_cast<std::size_t>(sum)] - 1) {
                list.push_back(piece);
                sum -= piece;
                break;
            }
    return list;
}

/// Fewer pieces first, then thicker ones.
bool preferred(const std::vector<Count> &one, const std::vector<Count> &other)
{
    return one.size() != other.size() ? one.size() < other.size() : one > other;
}

/// Both sides of the aim are looked at: half a paper too much may be nearer than half too little.
std::vector<Count> nearestList(Count aim, Count unit, const std::vector<Count> &shelf)
{
    const Count largest = aim / unit + shelf.front() + 1;
    const std::vector<std::int32_t> pieces = fewestPieces(shelf, largest);
    const auto away = [&](Count sum) { return std::abs(sum * unit - aim); };
    const auto reachable = [&](Count sum) { return pieces[static_cast<std::size_t>(sum)] != unreachable; };
    Count below = aim / unit, above = below + 1;
    while (!reachable(below))
        --below;
    while (above < largest && !reachable(above))
        ++above;
    const std::vector<Count> shorter = listOf(below, shelf, pieces);
    if (!reachable(above) || away(below) < away(above))
        return shorter;
    const std::vector<Count> longer = listOf(above, shelf, pieces);
    return away(above) < away(below) || preferred(longer, shorter) ? longer : shorter;
}

} // namespace

std::vector<units::Length> fewestPunchings(const std::vector<units::Length> &shelf, units::Length thickness)
{
    std::vector<Count> sizes;
    Count unit = 0;
    for (const units::Length piece : shelf) {
        sizes.push_back(piece.inNanometres());
        unit = std::gcd(unit, sizes.back());
    }
    if (sizes.empty())
        return {};
    std::sort(sizes.begin(), sizes.end(), std::greater<>());
    for (Count &size : sizes)
        size /= unit;
    Count aim = std::abs(thickness.inNanometres());
    std::vector<Count> list;
    // No key dips that far; without this a setup of metres would ask for a table of gigabytes.
    while (aim / unit > mostCells && aim / unit > 2 * sizes.front()) {
        list.push_back(sizes.front());
        aim -= sizes.front() * unit;
    }
    const std::vector<Count> rest = nearestList(aim, unit, sizes);
    list.insert(list.end(), rest.begin(), rest.end());
    std::vector<units::Length> punchings;
    for (const Count size : list)
        punchings.push_back(units::Length::nanometres(size * unit));
    return punchings;
}

} // namespace hammerline::action
