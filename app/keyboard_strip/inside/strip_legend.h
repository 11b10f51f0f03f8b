#pragma once
// What the marks mean, in one or more rows under the strip.

#include "keyboard_strip/paint_strip.h"

class QPainter;

namespace hammerline::keyboard_strip {

[[nodiscard]] double legendHeight(const StripStyle &style, double width);
void paintLegend(QPainter &painter, const QRectF &rect, const StripStyle &style);

} // namespace hammerline::keyboard_strip
