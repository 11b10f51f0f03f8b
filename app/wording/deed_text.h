#pragma once
// Deeds of the history in words: "reading of let-off, C♯4"; for undo, redo and the history.

#include "logbook/logbook.h"

#include <QString>

namespace hammerline::wording {

/// A deed of an unknown name is shown as it is.
[[nodiscard]] QString deedText(const logbook::Deed &deed);

} // namespace hammerline::wording
