#pragma once
// The marks that stand on keys and in the legend: each a shape of its own, so that none needs its colour.

#include "wording/palette.h"

#include <QPointF>
#include <QPolygonF>

class QPainter;

namespace hammerline::keyboard_strip {

enum class Mark {
    Within,      ///< a bar
    Doubt,       ///< a diamond
    TooSmall,    ///< a triangle pointing down
    TooLarge,    ///< a triangle pointing up
    FarTooSmall, ///< two of them: off the scale
    FarTooLarge,
    Unjudged,   ///< a dash
    Missing,    ///< an empty outline
    Before,     ///< a ring
    Planned,    ///< an open wedge at the gauge's right edge
    Uneven,     ///< a step
    Slip,       ///< two bars: unlikely, and its reader stood by it
    Concession, ///< an open square
    Fault,      ///< a filled notch
};

/// `size`: width of the widest mark; `line`: thickness of a thin line.
struct MarkScale {
    double size = 12;
    double line = 1;
};

/// The notch of a faulty key, in the front left corner of its body.
[[nodiscard]] QPolygonF cornerNotch(QPointF corner, double side);

void drawMark(QPainter &painter, Mark mark, QPointF centre, MarkScale scale, const wording::Palette &palette);

} // namespace hammerline::keyboard_strip
