#pragma once
// Lengths and masses, exact.
//
// A length is a whole number of nanometres, a mass a whole number of milligrams: 1/64 in = 396 875 nm and
// 0.001 in = 25 400 nm survive being stored, exported and read back to the last digit (1 in = 25.4 mm since the
// international yard and pound agreement of 1959). What is no whole number is rounded half away from zero.
//
// Length and Mass are kept apart by their types. An Amount is either of the two: it is what a reading, a limit or a
// deviation holds, because judging does not care which. Mixing dimensions is a mistake of the programmer and asserts.

#include <cassert>
#include <compare>
#include <cstdint>
#include <string>

namespace hammerline::units {

/// A whole number of nanometres.
class Length {
public:
    constexpr Length() = default;
    [[nodiscard]] static constexpr Length nanometres(std::int64_t count) { return Length(count); }
    /// Rounded half away from zero to the nanometre.
    [[nodiscard]] static Length millimetres(double mm);
    [[nodiscard]] constexpr std::int64_t inNanometres() const { return m_nm; }
    [[nodiscard]] constexpr double inMillimetres() const { return static_cast<double>(m_nm) / 1e6; }

    constexpr auto operator<=>(const Length &) const = default;
    constexpr Length operator-() const { return Length(-m_nm); }
    constexpr Length operator+(Length other) const { return Length(m_nm + other.m_nm); }
    constexpr Length operator-(Length other) const { return Length(m_nm - other.m_nm); }

private:
    explicit constexpr Length(std::int64_t count) : m_nm(count) {}
    std::int64_t m_nm = 0;
};

/// A whole number of milligrams.
class Mass {
public:
    constexpr Mass() = default;
    [[nodiscard]] static constexpr Mass milligrams(std::int64_t count) { return Mass(count); }
    [[nodiscard]] static Mass grams(double g);
    [[nodiscard]] constexpr std::int64_t inMilligrams() const { return m_mg; }
    [[nodiscard]] constexpr double inGrams() const { return static_cast<double>(m_mg) / 1e3; }

    constexpr auto operator<=>(const Mass &) const = default;
    constexpr Mass operator+(Mass other) const { return Mass(m_mg + other.m_mg); }
    constexpr Mass operator-(Mass other) const { return Mass(m_mg - other.m_mg); }

private:
    explicit constexpr Mass(std::int64_t count) : m_mg(count) {}
    std::int64_t m_mg = 0;
};

enum class Dimension { Length, Mass };

/// A unit that people type and read. Mil is 0.001 in.
enum class Unit { Millimetre, Inch, Mil, Gram };

[[nodiscard]] constexpr Dimension dimensionOf(Unit unit)
{
    return unit == Unit::Gram ? Dimension::Mass : Dimension::Length;
}
/// "mm", "in", "mil", "g".
[[nodiscard]] const char *symbolOf(Unit unit);

/// A length or a mass. `count` is in the base unit of the dimension: nanometres or milligrams.
class Amount {
public:
    constexpr Amount() = default; ///< 0 mm
    constexpr Amount(Length length) : m_dimension(Dimension::Length), m_count(length.inNanometres()) {}
    constexpr Amount(Mass mass) : m_dimension(Dimension::Mass), m_count(mass.inMilligrams()) {}
    constexpr Amount(Dimension dimension, std::int64_t baseCount) : m_dimension(dimension), m_count(baseCount) {}
    /// From millimetres or grams, rounded half away from zero. The decimal meant is the shortest that reads back as
    /// `value`, so 1.0000005 mm is 1 000 001 nm although no binary fraction equals it. `value` is finite; beyond
    /// 1e9 mm or 1e12 g the count stays at 1e15.
    [[nodiscard]] static Amount fromDisplay(Dimension dimension, double value);

    [[nodiscard]] constexpr Dimension dimension() const { return m_dimension; }
    [[nodiscard]] constexpr std::int64_t baseCount() const { return m_count; }
    /// Millimetres or grams, for statistics, JSON and drawing.
    [[nodiscard]] constexpr double inDisplay() const
    {
        return static_cast<double>(m_count) / (m_dimension == Dimension::Length ? 1e6 : 1e3);
    }
    [[nodiscard]] constexpr Length asLength() const
    {
        assert(m_dimension == Dimension::Length);
        return Length::nanometres(m_count);
    }
    [[nodiscard]] constexpr Mass asMass() const
    {
        assert(m_dimension == Dimension::Mass);
        return Mass::milligrams(m_count);
    }

    constexpr bool operator==(const Amount &) const = default;
    constexpr std::strong_ordering operator<=>(const Amount &other) const
    {
        assert(m_dimension == other.m_dimension);
        return m_count <=> other.m_count;
    }
    constexpr Amount operator+(Amount other) const
    {
        assert(m_dimension == other.m_dimension);
        return {m_dimension, m_count + other.m_count};
    }
    constexpr Amount operator-(Amount other) const
    {
        assert(m_dimension == other.m_dimension);
        return {m_dimension, m_count - other.m_count};
    }
    constexpr Amount operator-() const { return {m_dimension, -m_count}; }
    [[nodiscard]] constexpr Amount magnitude() const { return {m_dimension, m_count < 0 ? -m_count : m_count}; }

private:
    Dimension m_dimension = Dimension::Length;
    std::int64_t m_count = 0;
};

/// "mm" or "g": the unit of Amount::inDisplay and the suffix (`_mm`, `_g`) of JSON keys.
[[nodiscard]] const char *displaySymbol(Dimension dimension);

#if defined(__GNUC__)
__extension__ using Wide = __int128; ///< room for products of two base counts
#endif

/// numerator / denominator rounded half away from zero; denominator > 0. The one rounding of the house.
/// The arguments may be as large as a mean of takes or an interpolation needs (128 bits inside).
[[nodiscard]] std::int64_t roundedQuotient(Wide numerator, Wide denominator);

/// Exact decimal text in mm or g, no trailing zeros, '.' as the mark: 3175000 nm -> "3.175". Never an exponent.
[[nodiscard]] std::string exactDecimal(Amount amount);

/// Text for people in `unit` with a fixed number of decimals, rounded half away from zero, '.' as the mark.
[[nodiscard]] std::string fixedDecimal(Amount amount, Unit unit, int decimals);

} // namespace hammerline::units
