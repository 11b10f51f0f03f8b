#include "keyboard_strip/inside/marks.h"

#include <QPainter>
#include <QPolygonF>

#include <algorithm>

namespace hammerline::keyboard_strip {

namespace {

using wording::Palette;

void fillShape(QPainter &painter, const QPolygonF &shape, const QColor &colour)
{
    painter.setPen(Qt::NoPen);
    painter.setBrush(colour);
    painter.drawPolygon(shape);
}

void outlineShape(QPainter &painter, const QColor &colour, const QColor &inside, double line)
{
    painter.setPen(QPen(colour, line, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
    painter.setBrush(inside);
}

/// `direction` 1 points up, -1 down; the base lies on the reading's side towards the band.
QPolygonF triangle(QPointF centre, double width, double height, double direction)
{
    const double tip = centre.y() - direction * height / 2;
    const double base = centre.y() + direction * height / 2;
    return QPolygonF({{centre.x(), tip}, {centre.x() + width / 2, base}, {centre.x() - width / 2, base}});
}

/// Twice: one above the other, the pair around the centre.
void drawTriangles(QPainter &painter, QPointF centre, double size, double direction, bool twice, const QColor &colour)
{
    const double height = size * 0.75;
    const QPointF apart(0, twice ? direction * height * 0.45 : 0);
    fillShape(painter, triangle(centre - apart, size, height, direction), colour);
    if (twice)
        fillShape(painter, triangle(centre + apart, size, height, direction), colour);
}

void drawBar(QPainter &painter, QPointF centre, double width, double height, const QColor &colour)
{
    fillShape(painter, QPolygonF(QRectF(centre.x() - width / 2, centre.y() - height / 2, width, height)), colour);
}

void drawDiamond(QPainter &painter, QPointF centre, double size, const QColor &colour)
{
    const double half = size * 0.42;
    fillShape(painter,
              QPolygonF({centre + QPointF(0, -half), centre + QPointF(half, 0), centre + QPointF(0, half),
                         centre + QPointF(-half, 0)}),
              colour);
}

void drawRing(QPainter &painter, QPointF centre, MarkScale scale, const Palette &palette)
{
    outlineShape(painter, palette.quiet, palette.paper, scale.line * 1.25);
    const double radius = std::max(scale.size * 0.2, 1.5 * scale.line);
    painter.drawEllipse(centre, radius, radius);
}

void drawWedge(QPainter &painter, QPointF centre, MarkScale scale, const Palette &palette)
{
    outlineShape(painter, palette.ink, palette.paper, scale.line);
    const double half = scale.size * 0.24;
    painter.drawPolygon(
        QPolygonF({centre + QPointF(-half, 0), centre + QPointF(half, -half), centre + QPointF(half, half)}));
}

void drawStep(QPainter &painter, QPointF centre, MarkScale scale, const Palette &palette)
{
    const double half = scale.size * 0.34;
    outlineShape(painter, palette.ink, Qt::transparent, scale.line * 1.5);
    painter.drawPolyline(QPolygonF({centre + QPointF(-half, half * 0.7), centre + QPointF(0, half * 0.7),
                                    centre + QPointF(0, -half * 0.7), centre + QPointF(half, -half * 0.7)}));
}

void drawSquare(QPainter &painter, QPointF centre, MarkScale scale, const Palette &palette)
{
    outlineShape(painter, palette.ink, palette.paper, scale.line * 1.25);
    const double half = scale.size * 0.25;
    painter.drawRect(QRectF(centre - QPointF(half, half), centre + QPointF(half, half)));
}

void drawEmptyOutline(QPainter &painter, QPointF centre, MarkScale scale, const Palette &palette)
{
    QPen pen(palette.quiet, scale.line);
    pen.setDashPattern({2, 2});
    painter.setPen(pen);
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(QRectF(centre.x() - scale.size * 0.3, centre.y() - scale.size / 2, scale.size * 0.6, scale.size));
}

void drawTwoBars(QPainter &painter, QPointF centre, MarkScale scale, const QColor &colour)
{
    const QPointF apart(0, scale.size * 0.17);
    for (const QPointF &middle : {centre - apart, centre + apart})
        drawBar(painter, middle, scale.size * 0.6, std::max(scale.size * 0.13, scale.line), colour);
}

void drawFlag(QPainter &painter, Mark mark, QPointF centre, MarkScale scale, const Palette &palette)
{
    if (mark == Mark::Uneven)
        drawStep(painter, centre, scale, palette);
    else if (mark == Mark::Slip)
        drawTwoBars(painter, centre, scale, palette.ink);
    else if (mark == Mark::Concession)
        drawSquare(painter, centre, scale, palette);
    else if (mark == Mark::Fault)
        fillShape(painter, cornerNotch(centre + QPointF(-0.3, 0.3) * scale.size, scale.size * 0.6), palette.ink);
}

} // namespace

QPolygonF cornerNotch(QPointF corner, double side)
{
    return QPolygonF({corner, corner - QPointF(0, side), corner + QPointF(side, 0)});
}

void drawMark(QPainter &painter, Mark mark, QPointF centre, MarkScale scale, const Palette &palette)
{
    switch (mark) {
    case Mark::Within:
        return drawBar(painter, centre, scale.size, std::max(scale.size * 0.24, 2.5 * scale.line), palette.within);
    case Mark::Doubt:
        return drawDiamond(painter, centre, scale.size, palette.doubt);
    case Mark::TooSmall:
    case Mark::FarTooSmall:
        return drawTriangles(painter, centre, scale.size, -1, mark == Mark::FarTooSmall, palette.tooSmall);
    case Mark::TooLarge:
    case Mark::FarTooLarge:
        return drawTriangles(painter, centre, scale.size, 1, mark == Mark::FarTooLarge, palette.tooLarge);
    case Mark::Unjudged:
        return drawBar(painter, centre, scale.size * 0.6, scale.line, palette.quiet);
    case Mark::Missing:
        return drawEmptyOutline(painter, centre, scale, palette);
    case Mark::Before:
        return drawRing(painter, centre, scale, palette);
    case Mark::Planned:
        return drawWedge(painter, centre, scale, palette);
    default:
        return drawFlag(painter, mark, centre, scale, palette);
    }
}

} // namespace hammerline::keyboard_strip
