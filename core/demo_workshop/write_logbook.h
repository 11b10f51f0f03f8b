#pragma once
// The invented workshop as a logbook.

#include "demo_workshop/demo_workshop.h"
#include "outcome/outcome.h"

#include <functional>

namespace hammerline::demo_workshop {

/// A JPEG without anything beside its pixels for what a photograph would show, by its view and moment. The core draws
/// nothing, so it is handed in.
using Drawer = std::function<std::string(const dossier::Photograph &)>;

struct LogbookTarget {
    std::string path{};
    bool overwrite = false;
    /// A name in the same folder that nobody uses: the logbook is made there and renamed when it is whole, so that a
    /// full disk leaves nothing at `path`, or what was there before.
    std::string scratchPath{};
    Drawer drawer{}; ///< empty: the logbook holds no photographs
};

/// A fault where something is at `path` already and may not be overwritten. Throws outcome::BrokenWorld.
[[nodiscard]] outcome::Outcome<bool> writeLogbook(const Workshop &workshop, const LogbookTarget &target);

} // namespace hammerline::demo_workshop
