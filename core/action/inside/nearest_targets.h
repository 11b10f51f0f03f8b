#pragma once
// The fit of one note as bare numbers: the point of a box on a plane that is nearest to a wish.

#include <array>

namespace hammerline::action {

/// One of the four targets, in nm.
struct Wish {
    double target = 0;
    double low = 0; ///< acceptance interval
    double high = 0;
    double halfWidth = 0; ///< 0: held at the target
    double factor = 0;    ///< in the plane's equation
};

struct NearestTargets {
    bool feasible = false;
    std::array<double, 4> values{};
};

/// Least sum of ((value - target) / halfWidth)^2 with low <= value <= high and sum of factor x value = `level`. Where
/// no point of the box is on the plane: the one nearest to it.
///
/// By the conditions of Karush, Kuhn and Tucker each value is its target plus a multiple of factor x halfWidth^2, cut
/// to its interval; the sum rises with the multiple along straight pieces, so the piece that meets the level is found
/// exactly.
[[nodiscard]] NearestTargets nearestTargets(const std::array<Wish, 4> &wishes, double level);

} // namespace hammerline::action
