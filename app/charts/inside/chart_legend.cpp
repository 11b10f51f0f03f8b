#include "charts/inside/chart_legend.h"

#include "charts/inside/axis_title.h"

#include <QColor>
#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>

namespace hammerline::charts {

namespace {

constexpr double rowSpacing = 1.4;

/// Calls `put` with the place and the lines of each entry, row after row; returns the height used. An entry that is
/// wider than all of it goes on in lines of its own.
template <typename Put>
double layOut(const std::vector<LegendEntry> &entries, const QFont &font, double width, Put put)
{
    const QFontMetricsF metrics(font);
    const double em = metrics.height();
    const double mark = 1.3 * em;
    double x = 0;
    double y = 0;
    double row = em * rowSpacing;
    for (const LegendEntry &entry : entries) {
        const QStringList lines = wordLines(entry.text.split(' '), metrics, width - mark);
        double text = 0;
        for (const QString &line : lines)
            text = std::max(text, metrics.horizontalAdvance(line));
        if (x > 0 && x + mark + text > width) {
            x = 0;
            y += row;
            row = em * rowSpacing;
        }
        put(entry, lines, QPointF(x, y));
        x += mark + text + em * 1.2;
        row = std::max(row, em * (static_cast<double>(lines.size()) - 1 + rowSpacing));
    }
    return y + row;
}

} // namespace

double chartLegendHeight(const std::vector<LegendEntry> &entries, const QFont &font, double width)
{
    return layOut(entries, font, width, [](const LegendEntry &, const QStringList &, QPointF) {});
}

void paintChartLegend(QPainter &painter, const QRectF &area, const std::vector<LegendEntry> &entries, const QFont &font,
                      const QColor &textColour)
{
    const QFontMetricsF metrics(font);
    const double em = metrics.height();
    layOut(entries, font, area.width(), [&](const LegendEntry &entry, const QStringList &lines, QPointF offset) {
        const QPointF at = area.topLeft() + offset;
        entry.draw(painter, QRectF(at, QSizeF(em, em)).adjusted(em * 0.12, em * 0.12, -em * 0.12, -em * 0.12));
        painter.setPen(textColour);
        painter.setFont(font);
        for (qsizetype line = 0; line < lines.size(); ++line)
            painter.drawText(at + QPointF(em * 1.3, metrics.ascent() + em * static_cast<double>(line)), lines[line]);
    });
}

} // namespace hammerline::charts
