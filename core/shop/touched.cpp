#include "shop/touched.h"

namespace hammerline::shop {

std::optional<Instruments> touchedSince(const logbook::Logbook &book, logbook::DeedId seen)
{
    constexpr int mostDeeds = 10'000;
    if (book.newestDeed() - seen > mostDeeds)
        return std::nullopt;
    Instruments touched;
    for (const logbook::Deed &deed : book.deeds(seen, mostDeeds))
        touched.insert(deed.instrument);
    return touched;
}

} // namespace hammerline::shop
