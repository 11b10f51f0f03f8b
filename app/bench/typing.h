#pragma once
// How bare digits are read, for each quantity of a pass: a scale, so that no mark is typed (31 is 3.1 mm, 5 is 5/64
// in), and a number of digits after which a reading is taken without Enter. Text with a mark, a fraction or a unit is
// left alone: whoever types those says all of it. Masses are whole grams and have no scale.

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
    bool operator==(const Typing &) const = default;
};
inline constexpr int mostDigits = 4;

using Typings = std::map<catalogue::Quantity, Typing>;

[[nodiscard]] bool isBareDigits(std::string_view typed);
/// What is meant, in a form that reads back as that value whatever the scale: "31" with Tenths is "3.1mm".
[[nodiscard]] std::string spelledOut(std::string_view typed, Scale scale);

/// For keeping: `let_off 10ths 2; dip 10ths 3`. What can't be read is left out: typing then asks for more keys, never
/// for another value.
[[nodiscard]] std::string textOf(const Typings &typings);
[[nodiscard]] Typings parseTypings(std::string_view text);

} // namespace hammerline::bench
