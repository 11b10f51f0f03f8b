#include "units/parse_amount.h"

#include "units/inside/base_units.h"
#include "units/inside/decimal.h"

#include <algorithm>
#include <optional>

namespace hammerline::units {

namespace {

using outcome::Fault;
using outcome::Outcome;

bool isBlank(char c)
{
    return c == ' ' || c == '\t';
}

bool isDigit(char c)
{
    return c >= '0' && c <= '9';
}

std::string_view trimmed(std::string_view text)
{
    while (!text.empty() && isBlank(text.front()))
        text.remove_prefix(1);
    while (!text.empty() && isBlank(text.back()))
        text.remove_suffix(1);
    return text;
}

std::string_view takeDigits(std::string_view &text)
{
    const auto end = std::find_if_not(text.begin(), text.end(), isDigit);
    const auto digits = text.substr(0, static_cast<std::size_t>(end - text.begin()));
    text.remove_prefix(digits.size());
    return digits;
}

bool takeChar(std::string_view &text, char wanted)
{
    const bool there = !text.empty() && text.front() == wanted;
    if (there)
        text.remove_prefix(1);
    return there;
}

std::string quoted(std::string_view text)
{
    constexpr std::size_t shown = 40; // a fault is one line, whatever was pasted
    return '\'' + std::string(text.substr(0, shown)) + (text.size() > shown ? "...'" : "'");
}

const char *examples(Dimension dimension)
{
    return dimension == Dimension::Length ? "write a length such as 3.2, 3.2 mm, .125in, 1 3/4 or 125mil"
                                          : "write a mass such as 52 or 52 g";
}

/// What stands before the unit: either a decimal or a fraction.
struct TypedNumber {
    bool negative = false;
    bool isFraction = false;
    bool commaBeforeThreeDigits = false;
    inside::DecimalDigits decimal{};
    std::int64_t whole = 0, numerator = 0, denominator = 1;
};

/// At most nine digits beyond leading zeros: anything longer lies far outside the range, or is no ruler's fraction.
std::optional<std::int64_t> smallWhole(std::string_view digits)
{
    digits.remove_prefix(std::min(digits.find_first_not_of('0'), digits.size()));
    if (digits.size() > 9)
        return std::nullopt;
    std::int64_t value = 0;
    for (const char digit : digits)
        value = value * 10 + (digit - '0');
    return value;
}

Outcome<TypedNumber> fractionOf(std::string_view whole, std::string_view numerator, std::string_view denominator)
{
    const auto w = smallWhole(whole), n = smallWhole(numerator), d = smallWhole(denominator);
    if (!w || !n || !d)
        return Fault{.problem = "too many digits in the fraction; write it shorter, such as 1 3/4"};
    if (*d == 0)
        return Fault{.problem = "the fraction divides by 0; write a denominator such as 64"};
    TypedNumber number;
    number.isFraction = true;
    number.whole = *w;
    number.numerator = *n;
    number.denominator = *d;
    return number;
}

/// After `first` digits: "/4", " 3/4" or "-3/4". Leaves `text` alone where no fraction stands there.
std::optional<Outcome<TypedNumber>> takeFraction(std::string_view first, std::string_view &text)
{
    if (first.empty())
        return std::nullopt;
    auto rest = text;
    std::string_view whole, numerator = first;
    if (!takeChar(rest, '/')) {
        if (!takeChar(rest, '-'))
            rest = trimmed(rest);
        if (rest.size() == text.size())
            return std::nullopt;
        whole = first;
        numerator = takeDigits(rest);
        if (numerator.empty() || !takeChar(rest, '/'))
            return std::nullopt;
    }
    const auto denominator = takeDigits(rest);
    text = rest;
    if (denominator.empty())
        return Fault{.problem = "a digit is missing after '/'; write a fraction such as 1/8"};
    return fractionOf(whole, numerator, denominator);
}

Outcome<TypedNumber> takeDecimal(std::string_view whole, std::string_view &text)
{
    TypedNumber number;
    number.decimal.whole = whole;
    const bool comma = takeChar(text, ',');
    if (comma || takeChar(text, '.')) {
        number.decimal.fraction = takeDigits(text);
        if (number.decimal.fraction.empty())
            return Fault{.problem = "a digit is missing after the decimal mark; write 3.0 or 3"};
        number.commaBeforeThreeDigits = comma && number.decimal.fraction.size() == 3;
    } else if (whole.empty()) {
        return Fault{.problem = "no number"};
    }
    return number;
}

Outcome<TypedNumber> takeNumber(std::string_view &text, bool allowNegative)
{
    const bool negative = allowNegative && takeChar(text, '-');
    if (allowNegative && !negative)
        takeChar(text, '+');
    const auto first = takeDigits(text);
    auto fraction = takeFraction(first, text);
    auto number = fraction ? *fraction : takeDecimal(first, text);
    if (number)
        number.value().negative = negative;
    return number;
}

Outcome<Unit> unitOf(std::string_view typed, const TypedNumber &number, const TypedForm &form)
{
    if (!trimmed(typed).empty())
        return parseUnit(typed);
    if (form.dimension == Dimension::Mass)
        return number.isFraction ? Outcome<Unit>(Fault{.problem = "a fraction without a unit is inches"}) : Unit::Gram;
    return number.isFraction ? Unit::Inch : form.bareUnit;
}

std::int64_t countOf(const TypedNumber &number, Unit unit)
{
    const std::int64_t factor = inside::baseUnitsIn(unit);
    if (!number.isFraction)
        return inside::timesRounded(number.decimal, factor);
    const Wide parts = Wide{number.whole} * number.denominator + number.numerator;
    return roundedQuotient(parts * factor, number.denominator);
}

std::int64_t halfResolutionOf(const TypedNumber &number, Unit unit)
{
    const std::int64_t factor = inside::baseUnitsIn(unit);
    Wide parts = number.denominator;
    if (!number.isFraction)
        for (std::size_t i = 0; i < std::min<std::size_t>(number.decimal.fraction.size(), 18); ++i)
            parts *= 10;
    return roundedQuotient(factor, 2 * parts);
}

Outcome<ParsedAmount> amountOf(const TypedNumber &number, Unit unit, Dimension dimension)
{
    if (dimensionOf(unit) != dimension)
        return Fault{.problem = std::string(symbolOf(unit)) + " is no unit of this quantity"};
    if (unit == Unit::Mil && number.commaBeforeThreeDigits)
        return Fault{.problem = "a comma before three digits is doubtful with mil (a decimal mark, or a thousand?)"};
    const std::int64_t count = countOf(number, unit);
    if (count > largestCount(dimension))
        return Fault{.problem = dimension == Dimension::Length ? "more than 1 m" : "more than 1 kg"};
    return ParsedAmount{.value = {dimension, number.negative ? -count : count},
                        .unit = unit,
                        .halfResolution = {dimension, halfResolutionOf(number, unit)}};
}

Outcome<ParsedAmount> parseTrimmed(std::string_view text, const TypedForm &form)
{
    if (text.empty())
        return Fault{.problem = "nothing is written"};
    if (!form.allowNegative && (text.front() == '-' || text.front() == '+'))
        return Fault{.problem = "no sign may stand here"};
    const auto number = takeNumber(text, form.allowNegative);
    if (!number)
        return number.faults();
    const auto unit = unitOf(text, number.value(), form);
    if (!unit)
        return unit.faults();
    return amountOf(number.value(), unit.value(), form.dimension);
}

} // namespace

Outcome<ParsedAmount> parseAmount(std::string_view typed, const TypedForm &form)
{
    auto parsed = parseTrimmed(trimmed(typed), form);
    if (parsed)
        return parsed;
    return Fault{.problem = quoted(typed) + ": " + parsed.fault().problem + "; " + examples(form.dimension)};
}

Outcome<Unit> parseUnit(std::string_view text)
{
    std::string lower(trimmed(text));
    std::transform(lower.begin(), lower.end(), lower.begin(),
                   [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; });
    if (lower == "\"")
        return Unit::Inch;
    for (const Unit unit : {Unit::Millimetre, Unit::Inch, Unit::Mil, Unit::Gram})
        if (lower == symbolOf(unit))
            return unit;
    return Fault{.problem = quoted(text) + " is no unit; write mm, in, \", mil or g"};
}

} // namespace hammerline::units
