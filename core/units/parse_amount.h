#pragma once
// What people type, to an Amount.
//
// Accepted lengths: 3.2  3,2  3.2mm  3.2 mm  .125in  1/8  1 3/4  1-3/4"  125mil; masses: 52  52g. Blanks around the
// text and before the unit may stand, case does not matter. A bare fraction is inches whatever the column says; a bare
// decimal takes `bareUnit`. A comma is a decimal mark; with `mil`, a comma before exactly three digits is refused as
// doubtful (1,125 mil: one and an eighth, or a thousand?). No exponents, no digit grouping; a sign only where
// `allowNegative`. Range: 0 to 1 m, 0 to 1 kg (-1 m to 1 m where negative values are allowed).

#include "outcome/outcome.h"
#include "units/units.h"

#include <cstdint>
#include <string_view>

namespace hammerline::units {

struct ParsedAmount {
    Amount value;
    /// The unit that was typed, or taken for a bare number.
    Unit unit = Unit::Millimetre;
    /// Half the distance between neighbours of what was typed (0.05 mm for "3.2", 1/128 in for "1/64"):
    /// the half-width of the rectangular distribution of its resolution (GUM 4.3.7).
    Amount halfResolution;
};

/// The largest that is taken, in the counts of Amount (nm, mg): 1 m, 1 kg.
[[nodiscard]] constexpr std::int64_t largestCount(Dimension dimension)
{
    return dimension == Dimension::Length ? 1'000'000'000 : 1'000'000;
}

struct TypedForm {
    Dimension dimension = Dimension::Length;
    Unit bareUnit = Unit::Millimetre; ///< for a bare decimal; ignored for masses, which are grams
    bool allowNegative = false;
};

/// The fault says what is wrong with the text and what would be right; its file and line are empty.
[[nodiscard]] outcome::Outcome<ParsedAmount> parseAmount(std::string_view typed, const TypedForm &form);

/// "mm", "in", "\"", "mil", "g", any case, blanks around; anything else is a fault.
[[nodiscard]] outcome::Outcome<Unit> parseUnit(std::string_view text);

} // namespace hammerline::units
