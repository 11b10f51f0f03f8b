#pragma once
// Lines and fields of a chart on its two axes, in the look of the house.

#include "charts/inside/chart_maker.h"

#include <QList>
#include <QPen>
#include <QPointF>

class QLineSeries;

namespace hammerline::charts {

/// Both axes belong to the chart.
struct Plot {
    QChart &chart;
    const ChartLook &look;
    QAbstractAxis *x;
    QAbstractAxis *y;

    QLineSeries &line(const QList<QPointF> &points, const QPen &pen) const;
    /// A series without a point, for what only needs to know the way to the pixels. Comes last.
    QLineSeries &frame() const { return line({}, QPen(Qt::NoPen)); }
    /// Of the colour of the tolerance band.
    void field(const QPointF &from, const QPointF &to) const;
    [[nodiscard]] QPen pen(const QColor &colour, double width, Qt::PenStyle style = Qt::SolidLine) const
    {
        return QPen(colour, look.line() * width, style);
    }
};

} // namespace hammerline::charts
