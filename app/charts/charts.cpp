#include "charts/charts.h"

#include "charts/inside/chart_maker.h"

#include <QChart>
#include <QGraphicsScene>
#include <QPainter>

namespace hammerline::charts {

void renderChart(QPainter &painter, const QRectF &rect, const ChartData &data, const wording::Palette &palette,
                 int pixelSize)
{
    painter.fillRect(rect, palette.paper); // Qt Charts leaves a rim
    MadeChart made = makeChart(data, {palette, pixelSize});
    QGraphicsScene scene;
    QChart *chart = made.chart.release();
    scene.addItem(chart); // which the scene owns from here on
    chart->resize(rect.size());
    scene.render(&painter, rect, QRectF(QPointF(0, 0), rect.size()));
}

} // namespace hammerline::charts
