#pragma once
// Decimal digits times a whole number, exact however many digits there are.

#include <cstdint>
#include <string_view>

namespace hammerline::units::inside {

/// A decimal without sign: the digits before and after the mark, either may be empty. Digits only.
struct DecimalDigits {
    std::string_view whole;
    std::string_view fraction;
};

/// Far above anything that the house measures, far below overflow: 1e6 m, 1e9 kg.
inline constexpr std::int64_t saturated = 1'000'000'000'000'000;

/// digits * factor, rounded half away from zero; everything above `saturated` is `saturated`. 0 < factor < 1e9.
[[nodiscard]] std::int64_t timesRounded(DecimalDigits digits, std::int64_t factor);

} // namespace hammerline::units::inside
