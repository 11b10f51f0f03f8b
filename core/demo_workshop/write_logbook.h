#pragma once
// The invented workshop as a logbook.

#include "demo_workshop/demo_workshop.h"
#include "outcome/outcome.h"

namespace hammerline::demo_workshop {

struct LogbookTarget {
    std::string path{};
    bool overwrite = false;
    /// A name in the same folder that nobody uses: the logbook is made there and renamed when it is whole, so that a
    /// full disk leaves nothing at `path`, or what was there before.
    std::string scratchPath{};
};

/// A fault where something is at `path` already and may not be overwritten. Throws outcome::BrokenWorld.
[[nodiscard]] outcome::Outcome<bool> writeLogbook(const Workshop &workshop, const LogbookTarget &target);

} // namespace hammerline::demo_workshop
