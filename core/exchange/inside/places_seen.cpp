#include "exchange/inside/places_seen.h"

#include <algorithm>

namespace hammerline::exchange {
namespace {

constexpr std::size_t noteCount = keyboard::Note::highest - keyboard::Note::lowest + 1;

std::size_t slotOf(const readings::Place &place)
{
    return static_cast<std::size_t>(place.quantity) * noteCount +
           static_cast<std::size_t>(place.note.number() - keyboard::Note::lowest);
}

} // namespace

PlacesSeen::PlacesSeen() : m_rising(std::size_t{catalogue::quantityCount} * noteCount) {}

std::optional<std::size_t> PlacesSeen::before(const readings::Place &place, std::size_t line)
{
    auto &rising = m_rising[slotOf(place)];
    if (rising.empty() || rising.back().take < place.take) {
        rising.push_back({place.take, line});
        return std::nullopt;
    }
    const auto found = std::ranges::lower_bound(rising, place.take, {}, &Spoken::take);
    if (found->take == place.take)
        return found->line;
    const std::uint64_t key = (std::uint64_t{slotOf(place)} << 32) | static_cast<std::uint32_t>(place.take);
    const auto [other, added] = m_others.try_emplace(key, line);
    return added ? std::nullopt : std::optional(other->second);
}

} // namespace hammerline::exchange
