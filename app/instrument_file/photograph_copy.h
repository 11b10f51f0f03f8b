#pragma once
// The copy of a photograph that the logbook keeps: upright, at most mostSide pixels a side, and nothing in it but the
// picture. What a camera writes beside it (place, moment, owner, comments) stays in the camera's own file.

#include "outcome/outcome.h"

#include <QByteArray>
#include <QString>

namespace hammerline::instrument_file {

/// Enough for half a page of a record at 300 dots an inch.
inline constexpr int mostSide = 1600;

/// A JPEG. A fault where the file is no picture that Qt reads, or one of more than a hundred million pixels, or a JPEG
/// whose end is missing.
[[nodiscard]] outcome::Outcome<QByteArray> photographCopy(const QString &path);

} // namespace hammerline::instrument_file
