#include "exchange/inside/place_bits.h"

namespace hammerline::exchange {
namespace {

constexpr std::uint32_t noteCount = keyboard::Note::highest - keyboard::Note::lowest + 1;
constexpr std::uint32_t slotCount = std::uint32_t{catalogue::quantityCount} * noteCount;
constexpr std::uint32_t takesOfWord = 64;

std::uint32_t slotOf(const readings::Place &place)
{
    return static_cast<std::uint32_t>(place.quantity) * noteCount +
           static_cast<std::uint32_t>(place.note.number() - keyboard::Note::lowest);
}

} // namespace

PlaceBits::PlaceBits() : m_first(slotCount) {}

bool PlaceBits::again(const readings::Place &place)
{
    const auto take = static_cast<std::uint32_t>(place.take - 1);
    const std::uint32_t word = take / takesOfWord;
    std::uint64_t &bits = word == 0 ? m_first[slotOf(place)] : m_further[word * slotCount + slotOf(place)];
    const std::uint64_t bit = std::uint64_t{1} << take % takesOfWord;
    const bool before = (bits & bit) != 0;
    bits |= bit;
    return before;
}

} // namespace hammerline::exchange
