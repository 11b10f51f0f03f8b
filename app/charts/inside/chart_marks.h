#pragma once
// Shapes of the charts' marks and fills; each is told apart without its colour.

#include "charts/inside/plotted.h"
#include "wording/palette.h"

#include <QPointF>
#include <QRectF>

class QPainter;

namespace hammerline::charts {

[[nodiscard]] QColor colourOf(Kind kind, const wording::Palette &palette);
/// Disc, diamond, triangle down, triangle up, small cross.
void drawPoint(QPainter &painter, Kind kind, QPointF centre, double size, const wording::Palette &palette);
/// A ring, for before.
void drawRing(QPainter &painter, QPointF centre, double size, const wording::Palette &palette);
/// Plain, or hatched one way or the other, or crossed.
void drawFill(QPainter &painter, Kind kind, const QRectF &area, double line, const wording::Palette &palette);

} // namespace hammerline::charts
