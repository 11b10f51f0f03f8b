#include "tolerance/takes_apart.h"

#include <algorithm>

namespace hammerline::tolerance {

namespace {

struct Span {
    units::Amount least{};
    units::Amount most{};
};

} // namespace

std::optional<units::Amount> statedUncertainty(catalogue::Quantity quantity, const readings::Gauge &gauge,
                                               const ToleranceSet *set)
{
    const bool isLength = catalogue::infoOf(quantity).dimension == units::Dimension::Length;
    if (isLength && gauge.expandedUncertainty != units::Length())
        return units::Amount(gauge.expandedUncertainty);
    if (!set)
        return std::nullopt;
    const auto entry = set->entries.find(quantity);
    if (entry == set->entries.end() || entry->second.expandedUncertainty.baseCount() == 0)
        return std::nullopt;
    return entry->second.expandedUncertainty;
}

PairsApart takesApart(const std::vector<readings::Reading> &readings, const readings::Gauge &gauge,
                      const ToleranceSet *set)
{
    std::map<std::pair<catalogue::Quantity, keyboard::Note>, Span> spans;
    for (const readings::Reading &reading : readings) {
        const std::pair at{reading.place.quantity, reading.place.note};
        Span &span = spans.try_emplace(at, Span{reading.value, reading.value}).first->second;
        span.least = std::min(span.least, reading.value);
        span.most = std::max(span.most, reading.value);
    }
    PairsApart apart;
    for (const auto &[at, span] : spans) {
        const auto uncertainty = statedUncertainty(at.first, gauge, set);
        const units::Amount spread = span.most - span.least;
        if (uncertainty && spread > *uncertainty)
            apart.emplace(at, TakesApart{spread, *uncertainty});
    }
    return apart;
}

} // namespace hammerline::tolerance
