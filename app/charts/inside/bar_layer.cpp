#include "charts/inside/bar_layer.h"

#include "charts/inside/chart_marks.h"

#include <QGraphicsSceneHoverEvent>
#include <QGraphicsSceneMouseEvent>
#include <QPainter>
#include <QPolygonF>

#include <numeric>

namespace hammerline::charts {

int Bar::height() const
{
    return std::accumulate(now.begin(), now.end(), 0,
                           [](int sum, const auto &pile) { return sum + static_cast<int>(pile.second.size()); });
}

BarLayer::BarLayer(QChart &chart, QAbstractSeries &series, const ChartLook &look, std::vector<LegendEntry> legend,
                   std::vector<Bar> bars, bool withBefore, std::vector<double> edges)
    : ChartLayer(chart, series, look, std::move(legend)),
      m_bars(std::move(bars)),
      m_withBefore(withBefore),
      m_edges(std::move(edges))
{
    setAcceptHoverEvents(true);
    setAcceptedMouseButtons(Qt::LeftButton);
}

void BarLayer::paintBar(QPainter &painter, const Bar &bar) const
{
    int below = 0;
    for (const auto &[kind, notes] : bar.now) {
        const int count = static_cast<int>(notes.size());
        const QRectF area(at(bar.from, below + count), at(bar.to, below));
        const double gap = look().line();
        drawFill(painter, kind, area.adjusted(gap, 0, -gap, 0), look().line(), look().palette);
        below += count;
    }
}

void BarLayer::paintBefore(QPainter &painter) const
{
    QPolygonF outline;
    outline << at(m_bars.front().from, 0);
    for (const Bar &bar : m_bars)
        outline << at(bar.from, bar.before) << at(bar.to, bar.before);
    outline << at(m_bars.back().to, 0);
    painter.setPen(QPen(look().palette.ink, look().line() * 2, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
    painter.setBrush(Qt::NoBrush);
    painter.drawPolyline(outline);
}

void BarLayer::paintEdges(QPainter &painter) const
{
    painter.setPen(QPen(look().palette.ink, look().line(), Qt::DashLine));
    for (const double edge : m_edges) {
        const double x = at(edge, 0).x();
        painter.drawLine(QPointF(x, plotArea().top()), QPointF(x, plotArea().bottom()));
    }
}

void BarLayer::paintContent(QPainter &painter)
{
    for (const Bar &bar : m_bars)
        paintBar(painter, bar);
    if (m_withBefore && !m_bars.empty())
        paintBefore(painter);
    paintEdges(painter);
}

const PiledNote *BarLayer::noteAt(QPointF place) const
{
    for (const Bar &bar : m_bars) {
        if (place.x() < at(bar.from, 0).x() || place.x() >= at(bar.to, 0).x())
            continue;
        int top = 0;
        for (const auto &[kind, notes] : bar.now)
            for (const PiledNote &note : notes)
                if (QRectF(at(bar.from, top + 1), at(bar.to, top)).contains(place))
                    return &note;
                else
                    ++top;
    }
    return nullptr;
}

void BarLayer::hoverMoveEvent(QGraphicsSceneHoverEvent *event)
{
    const PiledNote *note = noteAt(event->pos());
    const QString story = note ? note->story : QString();
    setToolTip(note ? story : axisTitleAt(event->pos()));
    if (story == m_told)
        return;
    m_told = story;
    emit noteTold(story);
}

void BarLayer::hoverLeaveEvent(QGraphicsSceneHoverEvent *)
{
    m_told.clear();
    setToolTip({});
    emit noteTold({});
}

void BarLayer::mousePressEvent(QGraphicsSceneMouseEvent *event)
{
    if (const PiledNote *note = noteAt(event->pos()))
        emit noteChosen(note->note);
    else
        event->ignore();
}

} // namespace hammerline::charts
