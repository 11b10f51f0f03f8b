#pragma once
// How bare digits are read, for each quantity of a pass: a scale, so that no mark is typed (31 is 3.1 mm, 5 is 5/64
// in), what is to be added where all values have it in common (from 40 mm on, 79 is 47.9 mm), and a number of digits
// after which a reading is taken without Enter. Text with a mark, a fraction or a unit is left alone: whoever types
// those says all of it. Masses are whole grams and have no scale.

#include "catalogue/catalogue.h"
#include "units/units.h"

#include <map>
#include <string>
#include <string_view>

namespace hammerline::bench {

enum class Scale {
    Whole,           ///< the unit of the pass
    Tenths,          ///< of a millimetre
    Hundredths,      ///< of a millimetre
    ThirtySeconds,   ///< of an inch
    SixtyFourths,    ///< of an inch
    ThousandthsInch, ///< mil
};

struct Typing {
    Scale scale = Scale::Whole;
    int digits = 0; ///< 0: Enter takes the reading
    int from = 0;   ///< millimetres to be added; only with Tenths and Hundredths
    bool operator==(const Typing &) const = default;
};
inline constexpr int mostDigits = 4;
inline constexpr int farthestFrom = 90;
[[nodiscard]] constexpr bool mayBeginFrom(Scale scale)
{
    return scale == Scale::Tenths || scale == Scale::Hundredths;
}

using Typings = std::map<catalogue::Quantity, Typing>;

[[nodiscard]] bool isBareDigits(std::string_view typed);
/// What is meant, in a form that reads back as that value whatever the scale: "31" with Tenths is "3.1mm".
[[nodiscard]] std::string spelledOut(std::string_view typed, const Typing &typing);

/// For keeping: `let_off 10ths 2; blow 10ths 2 40`. What can't be read is left out: typing then asks for more keys,
/// never for another value.
[[nodiscard]] std::string textOf(const Typings &typings);
[[nodiscard]] Typings parseTypings(std::string_view text);

} // namespace hammerline::bench
