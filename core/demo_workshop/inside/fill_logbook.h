#pragma once
// One invented instrument played into a logbook, deed by deed.

#include "demo_workshop/write_logbook.h"
#include "logbook/logbook.h"

namespace hammerline::demo_workshop {

[[nodiscard]] outcome::Outcome<bool> fill(logbook::Logbook &book, const MadeInstrument &made, const Drawer &drawer);

} // namespace hammerline::demo_workshop
