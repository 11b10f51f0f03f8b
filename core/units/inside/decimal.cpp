#include "units/inside/decimal.h"

#include <algorithm>
#include <string>

namespace hammerline::units::inside {

namespace {

/// Schoolbook multiplication from the right: only the digits pass through here, never a rounded number.
std::string productDigits(std::string_view digits, std::int64_t factor)
{
    std::string product(digits.size() + 10, '0'); // the factor has at most nine digits
    std::int64_t carry = 0;
    auto out = product.rbegin();
    for (auto digit = digits.rbegin(); digit != digits.rend(); ++digit, ++out) {
        carry += (*digit - '0') * factor;
        *out = static_cast<char>('0' + carry % 10);
        carry /= 10;
    }
    for (; carry > 0; ++out, carry /= 10)
        *out = static_cast<char>('0' + carry % 10);
    return product;
}

std::int64_t saturatingWhole(std::string_view digits)
{
    std::int64_t whole = 0;
    for (const char digit : digits)
        whole = std::min(saturated, whole * 10 + (digit - '0'));
    return whole;
}

/// Nine digits times less than 1e9 stay below 1e18.
constexpr std::size_t mostInOneWord = 9;

std::int64_t timesRoundedInOneWord(DecimalDigits digits, std::int64_t factor)
{
    std::int64_t number = 0;
    for (const char digit : digits.whole)
        number = number * 10 + (digit - '0');
    std::int64_t parts = 1;
    for (const char digit : digits.fraction) {
        number = number * 10 + (digit - '0');
        parts *= 10;
    }
    const std::int64_t product = number * factor;
    return product / parts + (product % parts * 2 >= parts ? 1 : 0);
}

} // namespace

std::int64_t timesRounded(DecimalDigits digits, std::int64_t factor)
{
    // What people type: no text is needed for it, and a file may hold a million.
    if (digits.whole.size() + digits.fraction.size() <= mostInOneWord)
        return std::min(saturated, timesRoundedInOneWord(digits, factor));
    const auto product = productDigits(std::string(digits.whole).append(digits.fraction), factor);
    const auto wholeDigits = product.size() - digits.fraction.size();
    const bool up = wholeDigits < product.size() && product[wholeDigits] >= '5';
    return std::min(saturated, saturatingWhole(std::string_view(product).substr(0, wholeDigits)) + (up ? 1 : 0));
}

} // namespace hammerline::units::inside
