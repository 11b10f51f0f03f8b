#include "units/units.h"

#include "units/inside/base_units.h"
#include "units/inside/decimal.h"

#include <array>
#include <charconv>
#include <cmath>
#include <limits>

namespace hammerline::units {

namespace {

/// Shortest digits that read back as `magnitude`, without an exponent.
std::string shortestDigits(double magnitude)
{
    std::array<char, 1100> text{}; // the smallest double takes 1076 characters
    const auto end = std::to_chars(text.data(), text.data() + text.size(), magnitude, std::chars_format::fixed).ptr;
    return {text.data(), end};
}

inside::DecimalDigits splitAtMark(std::string_view digits)
{
    const auto mark = digits.find('.');
    if (mark == std::string_view::npos)
        return {digits, {}};
    return {digits.substr(0, mark), digits.substr(mark + 1)};
}

std::string withMark(Wide count, int decimals)
{
    std::string digits = std::to_string(static_cast<std::int64_t>(count < 0 ? -count : count));
    const auto wanted = static_cast<std::size_t>(decimals) + 1;
    if (digits.size() < wanted)
        digits.insert(0, wanted - digits.size(), '0');
    if (decimals > 0)
        digits.insert(digits.size() - static_cast<std::size_t>(decimals), 1, '.');
    return count < 0 ? "-" + digits : digits;
}

std::string withoutTrailingZeros(std::string text)
{
    text.erase(text.find_last_not_of('0') + 1);
    if (text.back() == '.')
        text.pop_back();
    return text;
}

} // namespace

Length Length::millimetres(double mm)
{
    return Amount::fromDisplay(Dimension::Length, mm).asLength();
}

Mass Mass::grams(double g)
{
    return Amount::fromDisplay(Dimension::Mass, g).asMass();
}

Amount Amount::fromDisplay(Dimension dimension, double value)
{
    assert(std::isfinite(value));
    const std::string digits = shortestDigits(std::abs(value));
    const std::int64_t count =
        inside::timesRounded(splitAtMark(digits), inside::baseUnitsIn(inside::displayUnit(dimension)));
    return {dimension, value < 0 ? -count : count};
}

const char *symbolOf(Unit unit)
{
    switch (unit) {
    case Unit::Millimetre:
        return "mm";
    case Unit::Inch:
        return "in";
    case Unit::Mil:
        return "mil";
    case Unit::Gram:
        return "g";
    }
    return "";
}

const char *displaySymbol(Dimension dimension)
{
    return symbolOf(inside::displayUnit(dimension));
}

std::int64_t roundedQuotient(Wide numerator, Wide denominator)
{
    assert(denominator > 0);
    const Wide magnitude = numerator < 0 ? -numerator : numerator;
    const Wide dividend = 2 * magnitude + denominator;
    const Wide divisor = 2 * denominator;
    constexpr Wide most = std::numeric_limits<std::int64_t>::max();
    // Nearly always there is room in 64 bits, where dividing takes a fraction of the time.
    const auto quotient = dividend <= most && divisor <= most
                              ? static_cast<std::int64_t>(dividend) / static_cast<std::int64_t>(divisor)
                              : static_cast<std::int64_t>(dividend / divisor);
    return numerator < 0 ? -quotient : quotient;
}

std::string exactDecimal(Amount amount)
{
    return withoutTrailingZeros(withMark(amount.baseCount(), amount.dimension() == Dimension::Length ? 6 : 3));
}

std::string fixedDecimal(Amount amount, Unit unit, int decimals)
{
    assert(dimensionOf(unit) == amount.dimension() && decimals >= 0 && decimals <= 9);
    Wide scaled = amount.baseCount();
    for (int i = 0; i < decimals; ++i)
        scaled *= 10;
    return withMark(roundedQuotient(scaled, inside::baseUnitsIn(unit)), decimals);
}

} // namespace hammerline::units
