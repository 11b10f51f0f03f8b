#pragma once
// "1 note", "3 notes": the window's own texts are not translated, so that their plurals are written out where they
// stand.

#include <QString>

namespace hammerline::wording {

/// `one` as it is where the count is 1; else `many` with the count, as text, at its lowest place marker.
[[nodiscard]] inline QString counted(qlonglong count, const QString &one, const QString &many, const QString &asText)
{
    return count == 1 ? one : many.arg(asText);
}
[[nodiscard]] inline QString counted(qlonglong count, const QString &one, const QString &many)
{
    return counted(count, one, many, QString::number(count));
}

} // namespace hammerline::wording
