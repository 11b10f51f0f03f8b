#include "charts/inside/chart_marks.h"

#include <QPainter>
#include <QPolygonF>

namespace hammerline::charts {

namespace {

void fill(QPainter &painter, const QPolygonF &shape, const QColor &colour)
{
    painter.setPen(Qt::NoPen);
    painter.setBrush(colour);
    painter.drawPolygon(shape);
}

/// Half way, opaque: paper of the archival kind knows no transparency.
QColor between(const QColor &a, const QColor &b)
{
    return QColor((a.red() + b.red()) / 2, (a.green() + b.green()) / 2, (a.blue() + b.blue()) / 2);
}

/// `up` 1: tip above.
QPolygonF triangle(QPointF centre, double size, double up)
{
    const double half = size * 0.6;
    return QPolygonF({centre + QPointF(0, -up * half), centre + QPointF(half, up * half * 0.8),
                      centre + QPointF(-half, up * half * 0.8)});
}

/// Drawn line by line: pattern brushes do not survive in every vector format. `slope` 1 rises to the right.
void hatch(QPainter &painter, const QRectF &area, double slope, double line, const QColor &colour)
{
    painter.save();
    painter.setClipRect(area, Qt::IntersectClip);
    painter.setPen(QPen(colour, line));
    const double step = 4 * line;
    for (double x = area.left() - area.height(); x < area.right(); x += step) {
        const double from = slope > 0 ? area.bottom() : area.top();
        const double to = slope > 0 ? area.top() : area.bottom();
        painter.drawLine(QPointF(x, from), QPointF(x + area.height(), to));
    }
    painter.restore();
}

} // namespace

QColor colourOf(Kind kind, const wording::Palette &palette)
{
    switch (kind) {
    case Kind::Within:
        return palette.within;
    case Kind::Doubt:
        return palette.doubt;
    case Kind::TooSmall:
        return palette.tooSmall;
    case Kind::TooLarge:
        return palette.tooLarge;
    case Kind::Unjudged:
        break;
    }
    return palette.quiet;
}

void drawPoint(QPainter &painter, Kind kind, QPointF centre, double size, const wording::Palette &palette)
{
    const QColor colour = colourOf(kind, palette);
    const double half = size / 2;
    switch (kind) {
    case Kind::Within:
        painter.setPen(Qt::NoPen);
        painter.setBrush(colour);
        painter.drawEllipse(centre, half * 0.75, half * 0.75);
        break;
    case Kind::Doubt:
        fill(painter,
             QPolygonF({centre + QPointF(0, -half), centre + QPointF(half, 0), centre + QPointF(0, half),
                        centre + QPointF(-half, 0)}),
             colour);
        break;
    case Kind::TooSmall:
    case Kind::TooLarge:
        fill(painter, triangle(centre, size * 1.1, kind == Kind::TooLarge ? 1 : -1), colour);
        break;
    case Kind::Unjudged:
        painter.setPen(QPen(colour, size * 0.18));
        painter.drawLine(centre - QPointF(half * 0.6, 0), centre + QPointF(half * 0.6, 0));
        painter.drawLine(centre - QPointF(0, half * 0.6), centre + QPointF(0, half * 0.6));
        break;
    }
}

void drawRing(QPainter &painter, QPointF centre, double size, const wording::Palette &palette)
{
    painter.setPen(QPen(palette.quiet, size * 0.15));
    painter.setBrush(palette.paper);
    painter.drawEllipse(centre, size * 0.33, size * 0.33);
}

void drawFill(QPainter &painter, Kind kind, const QRectF &area, double line, const wording::Palette &palette)
{
    const QColor colour = colourOf(kind, palette);
    painter.fillRect(area, kind == Kind::Within ? between(colour, palette.paper) : palette.paper);
    if (kind == Kind::TooLarge || kind == Kind::Doubt)
        hatch(painter, area, 1, line, colour);
    if (kind == Kind::TooSmall || kind == Kind::Doubt)
        hatch(painter, area, -1, line, colour);
    painter.setRenderHint(QPainter::Antialiasing, false); // a bar has crisp edges
    painter.setPen(QPen(colour, line));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(area);
    painter.setRenderHint(QPainter::Antialiasing, true);
}

} // namespace hammerline::charts
