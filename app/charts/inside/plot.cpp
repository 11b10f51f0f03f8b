#include "charts/inside/plot.h"

#include <QAreaSeries>
#include <QChart>
#include <QLineSeries>

namespace hammerline::charts {

namespace {

void hang(QAbstractSeries &series, const Plot &plot)
{
    plot.chart.addSeries(&series);
    series.attachAxis(plot.x);
    series.attachAxis(plot.y);
}

} // namespace

QLineSeries &Plot::line(const QList<QPointF> &points, const QPen &pen) const
{
    auto *series = new QLineSeries;
    series->replace(points);
    series->setPen(pen);
    hang(*series, *this);
    return *series;
}

void Plot::field(const QPointF &from, const QPointF &to) const
{
    auto *lower = new QLineSeries(&chart);
    auto *upper = new QLineSeries(&chart);
    lower->replace(QList<QPointF>{from, {to.x(), from.y()}});
    upper->replace(QList<QPointF>{{from.x(), to.y()}, to});
    auto *area = new QAreaSeries(upper, lower);
    area->setPen(Qt::NoPen);
    area->setBrush(look.palette.band);
    hang(*area, *this);
}

} // namespace hammerline::charts
