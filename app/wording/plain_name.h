#pragma once
// What people call things, as a part of a file's name.

#include <QString>

namespace hammerline::wording {

/// In small letters, a hyphen for all that is no letter or figure, cut behind a whole letter at 90 bytes: two of them
/// and some words are a name that every file system takes. "rule 3/b" is "rule-3-b".
[[nodiscard]] QString plainName(const QString &name);

} // namespace hammerline::wording
