#include "charts/inside/chart_legend.h"

#include <QColor>
#include <QFontMetricsF>
#include <QPainter>

namespace hammerline::charts {

namespace {

constexpr double rowSpacing = 1.4;

/// Calls `put` with the place of each entry, row after row; returns the height used.
template <typename Put>
double layOut(const std::vector<LegendEntry> &entries, const QFont &font, double width, Put put)
{
    const QFontMetricsF metrics(font);
    const double em = metrics.height();
    double x = 0;
    double y = 0;
    for (const LegendEntry &entry : entries) {
        const double needs = 1.3 * em + metrics.horizontalAdvance(entry.text);
        if (x > 0 && x + needs > width) {
            x = 0;
            y += em * rowSpacing;
        }
        put(entry, QPointF(x, y));
        x += needs + em * 1.2;
    }
    return y + em * rowSpacing;
}

} // namespace

double chartLegendHeight(const std::vector<LegendEntry> &entries, const QFont &font, double width)
{
    return layOut(entries, font, width, [](const LegendEntry &, QPointF) {});
}

void paintChartLegend(QPainter &painter, const QRectF &area, const std::vector<LegendEntry> &entries, const QFont &font,
                      const QColor &textColour)
{
    const QFontMetricsF metrics(font);
    const double em = metrics.height();
    layOut(entries, font, area.width(), [&](const LegendEntry &entry, QPointF offset) {
        const QPointF at = area.topLeft() + offset;
        entry.draw(painter, QRectF(at, QSizeF(em, em)).adjusted(em * 0.12, em * 0.12, -em * 0.12, -em * 0.12));
        painter.setPen(textColour);
        painter.setFont(font);
        painter.drawText(at + QPointF(em * 1.3, metrics.ascent()), entry.text);
    });
}

} // namespace hammerline::charts
