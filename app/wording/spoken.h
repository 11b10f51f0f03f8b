#pragma once
// What the core says in its own ids, as people say it: "let_off C#4 is out" -> "Let-off C♯4 is out".

#include <QString>

namespace hammerline::wording {

/// An id of a quantity that a note follows, with or without a comma between them, and the note; all else as it is.
[[nodiscard]] QString spoken(const QString &text);

} // namespace hammerline::wording
