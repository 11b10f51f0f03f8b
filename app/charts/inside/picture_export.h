#pragma once
// Whatever can paint itself, written to a file by its suffix.

#include "outcome/outcome.h"
#include "wording/palette.h"

#include <QString>

#include <functional>
#include <string>

class QPainter;
class QRectF;

namespace hammerline::charts {

struct Picture {
    QString title{};
    QString description{};
    /// Paints itself into the rectangle, in these colours; the number is the size of its small type.
    std::function<void(QPainter &, const QRectF &, const wording::Palette &, int)> render{};
    std::function<std::string()> csv{}; ///< the figures behind it
};

/// As exportChart (charts.h).
[[nodiscard]] outcome::Outcome<QString> exportPicture(const Picture &picture, const QString &path,
                                                      const wording::Palette &palette);

} // namespace hammerline::charts
