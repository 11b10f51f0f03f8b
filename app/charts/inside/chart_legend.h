#pragma once
// Explanations along the foot of a chart, in the charts' own shapes, in as many rows as they need; none is cut.

#include <QFont>
#include <QRectF>
#include <QString>

#include <functional>
#include <vector>

class QPainter;
class QColor;

namespace hammerline::charts {

struct LegendEntry {
    QString text{};
    std::function<void(QPainter &, const QRectF &)> draw{}; ///< into a square
};

/// Rows that are needed at that width, in heights of the font.
[[nodiscard]] double chartLegendHeight(const std::vector<LegendEntry> &entries, const QFont &font, double width);
void paintChartLegend(QPainter &painter, const QRectF &area, const std::vector<LegendEntry> &entries, const QFont &font,
                      const QColor &textColour);

} // namespace hammerline::charts
