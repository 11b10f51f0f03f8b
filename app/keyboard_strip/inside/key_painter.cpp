#include "keyboard_strip/inside/key_painter.h"

#include "keyboard_strip/inside/marks.h"

#include <QFontInfo>
#include <QPainter>

#include <algorithm>
#include <cmath>
#include <vector>

namespace hammerline::keyboard_strip {

namespace {

using keyboard::Colour;
using tolerance::Status;

double yOf(double height, const QRectF &gauge)
{
    const double clamped = std::clamp(height, -gaugeReach, gaugeReach);
    return gauge.center().y() - clamped / gaugeReach * gauge.height() / 2;
}

Mark outMark(double height)
{
    const bool far = std::abs(height) > gaugeReach;
    if (height < 0)
        return far ? Mark::FarTooSmall : Mark::TooSmall;
    return far ? Mark::FarTooLarge : Mark::TooLarge;
}

Mark markOf(const StripKey &key)
{
    if (!key.now)
        return Mark::Unjudged;
    if (key.status == Status::Out)
        return outMark(*key.now);
    return key.status == Status::Marginal ? Mark::Doubt : Mark::Within;
}

std::vector<Mark> marksOf(const Flags &flags)
{
    std::vector<Mark> marks;
    if (flags.concession)
        marks.push_back(Mark::Concession);
    if (flags.confirmedSlip)
        marks.push_back(Mark::Slip);
    if (flags.uneven)
        marks.push_back(Mark::Uneven);
    return marks;
}

} // namespace

double lineOf(const StripStyle &style)
{
    constexpr double fontPixelsPerLine = 12;
    return std::max(QFontInfo(style.font).pixelSize(), 1) / fontPixelsPerLine;
}

KeyPainter::KeyPainter(QPainter &painter, const StripGeometry &geometry, const StripStyle &style)
    : m_painter(painter), m_geometry(geometry), m_style(style), m_line(lineOf(style))
{
}

void KeyPainter::paint(const StripKey &key) const
{
    const QRectF gauge = m_geometry.gaugeRect(key.note);
    paintBody(key.note);
    m_painter.setRenderHint(QPainter::Antialiasing, true);
    if (key.used) {
        paintBand(key, gauge);
        paintReadings(key, gauge);
    }
    paintFlags(key, gauge);
    if (key.flags.fault)
        paintNotch(key.note);
}

void KeyPainter::paintBody(keyboard::Note note) const
{
    // Edges fall on whole pixels: a keyboard of blurred lines is no gauge.
    m_painter.setRenderHint(QPainter::Antialiasing, false);
    m_painter.setPen(QPen(m_style.palette.line, m_line));
    m_painter.setBrush(note.colour() == Colour::Sharp ? m_style.palette.sharp : m_style.palette.paper);
    m_painter.drawRect(m_geometry.keyRect(note));
}

void KeyPainter::paintBand(const StripKey &key, const QRectF &gauge) const
{
    if (key.status == Status::Missing) {
        QPen pen(m_style.palette.quiet, m_line);
        pen.setDashPattern({2, 3});
        m_painter.setPen(pen);
        m_painter.setBrush(Qt::NoBrush);
        const QRectF outline(QPointF(gauge.left(), yOf(1, gauge)), QPointF(gauge.right(), yOf(-1, gauge)));
        m_painter.drawRect(outline);
        return;
    }
    if (key.status == Status::Unjudged)
        return;
    const double top = key.openAbove ? gauge.top() : yOf(1, gauge);
    const double bottom = key.openBelow ? gauge.bottom() : yOf(-1, gauge);
    m_painter.fillRect(QRectF(QPointF(gauge.left(), top), QPointF(gauge.right(), bottom)), m_style.palette.band);
    m_painter.setRenderHint(QPainter::Antialiasing, false);
    m_painter.setPen(QPen(m_style.palette.quiet, m_line * 0.75));
    const double target = yOf(key.target, gauge);
    m_painter.drawLine(QPointF(gauge.left(), target), QPointF(gauge.right(), target));
    m_painter.setRenderHint(QPainter::Antialiasing, true);
}

double KeyPainter::markSize(const QRectF &gauge) const
{
    return std::min(gauge.width() * 0.9, gauge.height() * 0.26);
}

double KeyPainter::notchSide() const
{
    return m_geometry.naturalWidth() * 0.38;
}

void KeyPainter::paintReadings(const StripKey &key, const QRectF &gauge) const
{
    const MarkScale scale{markSize(gauge), m_line};
    if (key.before && key.now) {
        m_painter.setPen(QPen(m_style.palette.quiet, m_line));
        m_painter.drawLine(QPointF(gauge.center().x(), yOf(*key.before, gauge)),
                           QPointF(gauge.center().x(), yOf(*key.now, gauge)));
    }
    if (key.before)
        drawMark(m_painter, Mark::Before, {gauge.center().x(), yOf(*key.before, gauge)}, scale, m_style.palette);
    paintNow(key, gauge);
    if (key.planned) {
        const QPointF edge(gauge.right() - scale.size * 0.2, yOf(*key.planned, gauge));
        drawMark(m_painter, Mark::Planned, edge, scale, m_style.palette);
    }
}

void KeyPainter::paintNow(const StripKey &key, const QRectF &gauge) const
{
    if (key.status == Status::Missing)
        return;
    const Mark mark = markOf(key);
    const double size = markSize(gauge);
    double y = yOf(key.now.value_or(0), gauge);
    if (mark == Mark::FarTooSmall || mark == Mark::FarTooLarge) // the pair ends where the gauge ends
        y = std::clamp(y, gauge.top() + size * 0.6, gauge.bottom() - size * 0.6);
    drawMark(m_painter, mark, {gauge.center().x(), y}, {size, m_line}, m_style.palette);
}

void KeyPainter::paintFlags(const StripKey &key, const QRectF &gauge) const
{
    const std::vector<Mark> marks = marksOf(key.flags);
    if (marks.empty())
        return;
    // Naturals carry flags at their front beside the notch, sharps one above the other at their back.
    const QRectF body = m_geometry.keyRect(key.note);
    const bool sharp = key.note.colour() == Colour::Sharp;
    const double left = key.flags.fault ? std::max(body.left() + notchSide() * 0.7, gauge.left()) : gauge.left();
    const QRectF room = sharp ? QRectF(QPointF(gauge.left(), body.top() + m_line), gauge.topRight())
                              : QRectF(QPointF(left, gauge.bottom()), QPointF(gauge.right(), body.bottom()));
    const double step = (sharp ? room.height() : room.width()) / static_cast<double>(marks.size());
    const double size = std::min({step * 1.1, gauge.width(), m_geometry.naturalWidth() * 0.42});
    for (std::size_t i = 0; i < marks.size(); ++i) {
        const double along = (static_cast<double>(i) + 0.5) * step;
        const QPointF centre =
            sharp ? QPointF(room.center().x(), room.top() + along) : QPointF(room.left() + along, room.center().y());
        drawMark(m_painter, marks[i], centre, {size, m_line}, m_style.palette);
    }
}

void KeyPainter::paintNotch(keyboard::Note note) const
{
    m_painter.setPen(Qt::NoPen);
    m_painter.setBrush(m_style.palette.ink);
    m_painter.drawPolygon(cornerNotch(m_geometry.keyRect(note).bottomLeft(), notchSide()));
}

void KeyPainter::paintOutline(keyboard::Note note, double thickness) const
{
    m_painter.setRenderHint(QPainter::Antialiasing, true);
    m_painter.setPen(QPen(m_style.palette.ink, thickness, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
    m_painter.setBrush(Qt::NoBrush);
    m_painter.drawPolygon(m_geometry.outline(note));
}

void KeyPainter::paintSelection(keyboard::Note note) const
{
    paintOutline(note, 3 * m_line);
}

void KeyPainter::paintPointedAt(keyboard::Note note) const
{
    paintOutline(note, 1.5 * m_line);
}

} // namespace hammerline::keyboard_strip
