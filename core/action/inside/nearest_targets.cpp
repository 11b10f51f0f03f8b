#include "action/inside/nearest_targets.h"

#include <algorithm>
#include <vector>

namespace hammerline::action {

namespace {

using Wishes = std::array<Wish, 4>;
using Values = std::array<double, 4>;

/// What still counts as on the plane, in nm.
constexpr double onThePlane = 0.1;

double pullOf(const Wish &wish)
{
    return wish.factor * wish.halfWidth * wish.halfWidth;
}

Values valuesAt(const Wishes &wishes, double multiple)
{
    Values values{};
    for (std::size_t i = 0; i < wishes.size(); ++i) {
        const Wish &wish = wishes[i];
        const bool held = wish.halfWidth <= 0;
        values[i] = held ? wish.target : std::clamp(wish.target + multiple * pullOf(wish), wish.low, wish.high);
    }
    return values;
}

double levelOf(const Wishes &wishes, const Values &values)
{
    double level = 0;
    for (std::size_t i = 0; i < wishes.size(); ++i)
        level += wishes[i].factor * values[i];
    return level;
}

/// Multiples at which a value meets one of its limits, rising.
std::vector<double> corners(const Wishes &wishes)
{
    std::vector<double> multiples;
    for (const Wish &wish : wishes)
        if (wish.halfWidth > 0)
            for (const double limit : {wish.low, wish.high})
                multiples.push_back((limit - wish.target) / pullOf(wish));
    std::sort(multiples.begin(), multiples.end());
    return multiples;
}

NearestTargets between(const Wishes &wishes, double level, double lower, double upper)
{
    const double below = levelOf(wishes, valuesAt(wishes, lower)), above = levelOf(wishes, valuesAt(wishes, upper));
    const double share = above > below ? (level - below) / (above - below) : 0;
    return {.feasible = true, .values = valuesAt(wishes, lower + share * (upper - lower))};
}

} // namespace

NearestTargets nearestTargets(const std::array<Wish, 4> &wishes, double level)
{
    const std::vector<double> multiples = corners(wishes);
    if (multiples.empty()) {
        const Values held = valuesAt(wishes, 0);
        const double away = levelOf(wishes, held) - level;
        return {.feasible = away <= onThePlane && away >= -onThePlane, .values = held};
    }
    const Values least = valuesAt(wishes, multiples.front()), most = valuesAt(wishes, multiples.back());
    if (const double lowest = levelOf(wishes, least); level <= lowest)
        return {.feasible = level >= lowest - onThePlane, .values = least};
    if (const double highest = levelOf(wishes, most); level >= highest)
        return {.feasible = level <= highest + onThePlane, .values = most};
    std::size_t upper = 1;
    while (levelOf(wishes, valuesAt(wishes, multiples[upper])) < level)
        ++upper;
    return between(wishes, level, multiples[upper - 1], multiples[upper]);
}

} // namespace hammerline::action
