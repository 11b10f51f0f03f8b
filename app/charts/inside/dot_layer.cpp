#include "charts/inside/dot_layer.h"

#include "charts/inside/chart_marks.h"

#include <QFontMetricsF>
#include <QGraphicsSceneHoverEvent>
#include <QGraphicsSceneMouseEvent>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace hammerline::charts {

DotLayer::DotLayer(QChart &chart, QAbstractSeries &series, const ChartLook &look, std::vector<LegendEntry> legend,
                   Content content)
    : ChartLayer(chart, series, look, std::move(legend)), m_content(std::move(content))
{
    setAcceptHoverEvents(true);
    setAcceptedMouseButtons(Qt::LeftButton);
}

void DotLayer::paintReach(QPainter &painter, const Dot &dot) const
{
    if (!dot.low || !dot.high)
        return;
    const QPointF low = at(dot.x, *dot.low), high = at(dot.x, *dot.high);
    const double top = std::clamp(high.y(), plotArea().top(), plotArea().bottom());
    const double bottom = std::clamp(low.y(), plotArea().top(), plotArea().bottom());
    if (m_content.reach == Reach::Gauge) {
        const double half = std::abs(at(dot.x + 0.4, 0).x() - low.x());
        painter.fillRect(QRectF(QPointF(low.x() - half, top), QPointF(low.x() + half, bottom)), look().palette.band);
        return;
    }
    const double cap = look().markSize() * 0.5;
    painter.setPen(QPen(look().palette.ink, look().line()));
    painter.drawLine(QPointF(low.x(), top), QPointF(low.x(), bottom));
    painter.drawLine(QPointF(low.x() - cap, top), QPointF(low.x() + cap, top));
    painter.drawLine(QPointF(low.x() - cap, bottom), QPointF(low.x() + cap, bottom));
}

void DotLayer::paintDot(QPainter &painter, const Dot &dot) const
{
    const double size = look().markSize();
    const QPointF place = at(dot.x, dot.y);
    if (dot.stemFrom) {
        painter.setPen(QPen(look().palette.line, look().line()));
        painter.drawLine(at(dot.x, *dot.stemFrom), place);
    }
    if (dot.kind)
        drawPoint(painter, *dot.kind, place, size, look().palette);
    else
        drawRing(painter, place, size, look().palette);
    painter.setBrush(Qt::NoBrush);
    if (dot.apart) {
        painter.setPen(QPen(look().palette.ink, look().line()));
        painter.drawRect(QRectF(place - QPointF(size, size) * 0.8, QSizeF(size, size) * 1.6));
    }
    if (selected() == dot.note || m_pointedAt == &dot) {
        painter.setPen(QPen(look().palette.ink, look().line() * 2));
        painter.drawEllipse(place, size, size);
    }
}

void DotLayer::paintLabels(QPainter &painter) const
{
    const QFontMetricsF metrics(look().smallFont());
    painter.setFont(look().smallFont());
    painter.setPen(look().palette.ink);
    for (const ChartLabel &label : m_content.labels) {
        if (!label.y)
            continue;
        const double line = at(label.x, *label.y).y();
        const double top = label.side == ChartLabel::Side::BelowRight ? line + 1 : line - metrics.height() - 1;
        const int end = label.side == ChartLabel::Side::AboveLeft ? int{Qt::AlignLeft} : int{Qt::AlignRight};
        painter.drawText(QRectF(plotArea().left() + 4, top, plotArea().width() - 8, metrics.height()),
                         end | int{Qt::AlignVCenter}, label.text);
    }
}

void DotLayer::paintMoments(QPainter &painter) const
{
    const QFontMetricsF metrics(look().smallFont());
    painter.setFont(look().smallFont());
    std::vector<double> rowEnds;
    for (const ChartLabel &label : m_content.labels) {
        if (label.y)
            continue;
        const double x = at(label.x, 0).x();
        const double width = metrics.horizontalAdvance(label.text) + metrics.height();
        const double left =
            std::clamp(x + 4, plotArea().left(), std::max(plotArea().left(), plotArea().right() - width));
        const auto free = std::ranges::find_if(rowEnds, [left](double end) { return end <= left; });
        const auto row = free - rowEnds.begin();
        if (free == rowEnds.end())
            rowEnds.push_back(0);
        rowEnds[static_cast<std::size_t>(row)] = left + width;
        const double top = plotArea().top() + static_cast<double>(row) * metrics.height();
        painter.setPen(QPen(look().palette.line, look().line(), Qt::DotLine));
        painter.drawLine(QPointF(x, top), QPointF(x, plotArea().bottom()));
        painter.setPen(look().palette.quiet);
        painter.drawText(QRectF(left, top, width, metrics.height()), Qt::AlignLeft | Qt::AlignVCenter, label.text);
    }
}

void DotLayer::paintContent(QPainter &painter)
{
    for (const Dot &dot : m_content.dots)
        paintReach(painter, dot);
    if (m_content.reach == Reach::Gauge) {
        // Small gauges hide the line that nothing moved from.
        painter.setPen(QPen(look().palette.ink, look().line()));
        if (std::ranges::any_of(m_content.dots, [](const Dot &dot) { return dot.stemFrom.has_value(); }))
            painter.drawLine(QPointF(plotArea().left(), at(0, 0).y()), QPointF(plotArea().right(), at(0, 0).y()));
    }
    paintMoments(painter);
    for (const Dot &dot : m_content.dots)
        paintDot(painter, dot);
    paintLabels(painter);
}

const Dot *DotLayer::nearest(QPointF place) const
{
    const Dot *best = nullptr;
    double bestDistance = look().markSize() * 1.2;
    for (const Dot &dot : m_content.dots) {
        const QPointF away = at(dot.x, dot.y) - place;
        if (const double distance = std::hypot(away.x(), away.y()); distance < bestDistance) {
            best = &dot;
            bestDistance = distance;
        }
    }
    return best;
}

void DotLayer::hoverMoveEvent(QGraphicsSceneHoverEvent *event)
{
    const Dot *dot = nearest(event->pos());
    setToolTip(dot ? dot->story : axisTitleAt(event->pos()));
    if (dot == m_pointedAt)
        return;
    m_pointedAt = dot;
    update();
    emit noteTold(dot ? dot->story : QString());
}

void DotLayer::hoverLeaveEvent(QGraphicsSceneHoverEvent *)
{
    m_pointedAt = nullptr;
    update();
    emit noteTold({});
}

void DotLayer::mousePressEvent(QGraphicsSceneMouseEvent *event)
{
    if (const Dot *dot = nearest(event->pos()))
        emit noteChosen(dot->note);
    else
        event->ignore();
}

} // namespace hammerline::charts
