#include "bench/route.h"

namespace hammerline::bench {

Route alongTheKeyboard(catalogue::Quantity quantity, const keyboard::Compass &compass)
{
    return noteByNote({quantity}, compass);
}

Route noteByNote(const std::vector<catalogue::Quantity> &quantities, const keyboard::Compass &compass)
{
    Route route;
    for (int number = compass.first.number(); number <= compass.last.number(); ++number)
        for (const catalogue::Quantity quantity : quantities)
            route.push_back({quantity, keyboard::Note(number), 1});
    return route;
}

} // namespace hammerline::bench
