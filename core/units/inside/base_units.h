#pragma once
// How many base units (nanometres, milligrams) a unit holds. 1 in = 25.4 mm: international yard and pound, 1959.

#include "units/units.h"

namespace hammerline::units::inside {

[[nodiscard]] constexpr std::int64_t baseUnitsIn(Unit unit)
{
    switch (unit) {
    case Unit::Millimetre:
        return 1'000'000;
    case Unit::Inch:
        return 25'400'000;
    case Unit::Mil:
        return 25'400;
    case Unit::Gram:
        return 1'000;
    }
    return 1;
}

[[nodiscard]] constexpr Unit displayUnit(Dimension dimension)
{
    return dimension == Dimension::Length ? Unit::Millimetre : Unit::Gram;
}

} // namespace hammerline::units::inside
