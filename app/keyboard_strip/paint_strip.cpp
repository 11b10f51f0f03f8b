#include "keyboard_strip/paint_strip.h"

#include "keyboard_strip/inside/key_painter.h"
#include "keyboard_strip/inside/strip_legend.h"
#include "wording/wording.h"

#include <QFontMetricsF>
#include <QPainter>
#include <QWidget>

#include <algorithm>

namespace hammerline::keyboard_strip {

namespace {

using keyboard::Colour;
using keyboard::Note;

constexpr double lengthPerWidth = 5.6; ///< of a natural; on a piano some 6.4
constexpr double breakDepth = 8;       ///< hairlines that a section break reaches into the keys
constexpr double shortestKey = 9;      ///< in heights of the small type
constexpr double longestKey = 14;

QFont tabFont(const StripStyle &style)
{
    QFont face = style.font;
    face.setBold(true);
    constexpr double tabOverLabel = 14.0 / 9;
    if (face.pointSizeF() > 0)
        face.setPointSizeF(face.pointSizeF() * tabOverLabel);
    else
        face.setPixelSize(static_cast<int>(face.pixelSize() * tabOverLabel));
    return face;
}

/// The plate under the selected key; kept inside the strip at both ends.
QRectF tabRect(const StripStyle &style, const StripLayout &layout, const StripGeometry &geometry, Note note)
{
    const QFontMetricsF metrics(tabFont(style));
    const double width = metrics.horizontalAdvance(wording::nameOf(note)) + metrics.height() * 0.5;
    const double middle = geometry.keyRect(note).center().x();
    const double rightmost = std::max(layout.labels.right() - width, layout.labels.left());
    const double left = std::clamp(middle - width / 2, layout.labels.left(), rightmost);
    return {left, layout.labels.top() + lineOf(style), width, layout.labels.height() - lineOf(style)};
}

void paintLabels(QPainter &painter, const StripModel &model, const StripStyle &style, const StripLayout &layout,
                 const StripGeometry &geometry)
{
    painter.setFont(style.font);
    painter.setPen(style.palette.quiet);
    for (const StripKey &key : model.keys) {
        const bool isC = key.note.midi() % 12 == 0;
        if (!isC && key.note != model.compass.first)
            continue;
        const QRectF body = geometry.keyRect(key.note);
        const QRectF room(body.center().x() - body.width() * 2, layout.labels.top(), body.width() * 4,
                          layout.labels.height());
        painter.drawText(room, Qt::AlignCenter, wording::nameOf(key.note));
    }
}

void paintTab(QPainter &painter, const StripStyle &style, const QRectF &tab, Note note)
{
    painter.setRenderHint(QPainter::Antialiasing, true);
    painter.setPen(Qt::NoPen);
    painter.setBrush(style.palette.ink);
    painter.drawRect(tab);
    painter.setFont(tabFont(style));
    painter.setPen(style.palette.paper);
    painter.drawText(tab, Qt::AlignCenter, wording::nameOf(note));
}

void paintFocus(QPainter &painter, const StripStyle &style, const StripLayout &layout)
{
    const double thickness = 2 * lineOf(style);
    painter.fillRect(QRectF(layout.labels.left(), layout.labels.bottom() - thickness, layout.labels.width(), thickness),
                     style.palette.ink);
}

void paintSectionName(QPainter &painter, const StripStyle &style, const QRectF &run, const QString &name)
{
    painter.setPen(style.palette.quiet);
    const QFontMetricsF metrics(style.font);
    painter.drawText(run, Qt::AlignCenter, metrics.elidedText(name, Qt::ElideRight, run.width()));
}

/// Names over their runs, and a tick down into the keys where one section ends.
void paintSections(QPainter &painter, const StripModel &model, const StripStyle &style, const StripLayout &layout,
                   const StripGeometry &geometry)
{
    painter.setFont(style.font);
    const double line = lineOf(style);
    const auto breakAt = [&](double x) {
        painter.fillRect(
            QRectF(x - line, layout.sections.top(), 2 * line, layout.sections.height() + breakDepth * line),
            style.palette.ink);
    };
    for (const keyboard::Section &section : model.sections) {
        const Note first = std::max(section.notes.first, model.compass.first);
        const Note last = std::min(section.notes.last, model.compass.last);
        if (last < first)
            continue;
        const Note below(first.number() - 1);
        const double left = first == model.compass.first ? layout.keys.left() : geometry.boundaryAbove(below);
        const double right = last == model.compass.last ? layout.keys.right() : geometry.boundaryAbove(last);
        paintSectionName(painter, style,
                         {left, layout.sections.top(), right - left, layout.sections.height() - 2 * line},
                         QString::fromStdString(section.name));
        if (first != model.compass.first)
            breakAt(left);
        if (last != model.compass.last)
            breakAt(right);
    }
}

void paintKeys(const KeyPainter &keys, const StripModel &model, const StripGeometry &geometry, const QRectF &exposed)
{
    for (const Colour colour : {Colour::Natural, Colour::Sharp})
        for (const StripKey &key : model.keys)
            if (key.note.colour() == colour &&
                (exposed.isNull() || geometry.keyRect(key.note).adjusted(-1, -1, 1, 1).intersects(exposed)))
                keys.paint(key);
}

bool onKeyboard(const StripModel &model, const std::optional<Note> &note)
{
    return note && model.compass.contains(*note);
}

} // namespace

StripStyle screenStyle(const QWidget &widget)
{
    StripStyle style;
    style.palette = wording::paletteFor(widget);
    style.font = wording::font(wording::TextSize::Small);
    style.textScale = wording::textScale();
    style.focused = widget.hasFocus();
    return style;
}

StripStyle printStyle(int pixelSize)
{
    StripStyle style;
    style.palette = wording::printPalette();
    style.font = wording::paperFont(pixelSize);
    return style;
}

StripLayout layoutOf(const StripStyle &style, const QRectF &rect)
{
    const double em = QFontMetricsF(style.font).height();
    const double sections = em * 1.2;
    const double labels = QFontMetricsF(tabFont(style)).height();
    const double legend = style.legend ? legendHeight(style, rect.width()) : 0;
    StripLayout layout;
    layout.sections = {rect.left(), rect.top(), rect.width(), sections};
    layout.legend = {rect.left(), rect.bottom() - legend, rect.width(), legend};
    layout.labels = {rect.left(), layout.legend.top() - labels, rect.width(), labels};
    layout.keys = QRectF(QPointF(rect.left(), layout.sections.bottom()), QPointF(rect.right(), layout.labels.top()));
    return layout;
}

StripGeometry geometryOf(const StripStyle &style, const QRectF &rect, const keyboard::Compass &compass)
{
    // The outline of the last key needs its own pixel.
    return {compass, layoutOf(style, rect).keys.adjusted(0, 0, -lineOf(style), -lineOf(style))};
}

double heightFor(const StripStyle &style, const keyboard::Compass &compass, double width)
{
    const double em = QFontMetricsF(style.font).height() / style.textScale;
    const double naturalWidth = StripGeometry(compass, {0, 0, width, 1}).naturalWidth();
    const double length = std::clamp(naturalWidth * lengthPerWidth, shortestKey * em, longestKey * em);
    const StripLayout layout = layoutOf(style, {0, 0, width, 1000});
    return 1000 - layout.keys.height() + length;
}

void paintStrip(QPainter &painter, const QRectF &rect, const StripModel &model, const StripStyle &style,
                const QRectF &exposed)
{
    painter.save();
    painter.fillRect(exposed.isNull() ? rect : exposed, style.palette.paper);
    const StripLayout layout = layoutOf(style, rect);
    const StripGeometry geometry = geometryOf(style, rect, model.compass);
    const KeyPainter keys(painter, geometry, style);
    paintKeys(keys, model, geometry, exposed);
    const auto meets = [&](const QRectF &part) { return exposed.isNull() || part.intersects(exposed); };
    if (meets(layout.sections.adjusted(0, 0, 0, breakDepth * lineOf(style))))
        paintSections(painter, model, style, layout, geometry);
    if (meets(layout.labels))
        paintLabels(painter, model, style, layout, geometry);
    if (style.focused)
        paintFocus(painter, style, layout);
    if (onKeyboard(model, style.pointedAt))
        keys.paintPointedAt(*style.pointedAt);
    if (onKeyboard(model, style.selected)) {
        keys.paintSelection(*style.selected);
        paintTab(painter, style, tabRect(style, layout, geometry, *style.selected), *style.selected);
    }
    if (style.legend && meets(layout.legend))
        paintLegend(painter, layout.legend, style);
    painter.restore();
}

QRectF dirtyRect(const QRectF &rect, const StripModel &model, const StripStyle &style, Note note)
{
    const StripLayout layout = layoutOf(style, rect);
    const StripGeometry geometry = geometryOf(style, rect, model.compass);
    const double outline = 3 * lineOf(style);
    return geometry.keyRect(note).adjusted(-outline, -outline, outline, outline) |
           tabRect(style, layout, geometry, note);
}

} // namespace hammerline::keyboard_strip
