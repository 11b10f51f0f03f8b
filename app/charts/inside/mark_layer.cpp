#include "charts/inside/mark_layer.h"

#include "charts/inside/chart_marks.h"
#include "charts/inside/fit_titles.h"

#include <QChart>
#include <QFontMetricsF>
#include <QGraphicsSceneHoverEvent>
#include <QGraphicsSceneMouseEvent>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace hammerline::charts {

ChartLayer::ChartLayer(QChart &chart, QAbstractSeries &series, const ChartLook &look, std::vector<LegendEntry> legend)
    : QGraphicsObject(&chart), m_chart(chart), m_series(series), m_look(look), m_legend(std::move(legend))
{
    constexpr double overEverything = 100;
    setZValue(overEverything);
    connect(&chart, &QGraphicsWidget::geometryChanged, this, &ChartLayer::makeRoomForLegend);
}

void ChartLayer::makeRoomForLegend()
{
    prepareGeometryChange();
    const int rim = m_look.pixelSize;
    const double legend = chartLegendHeight(m_legend, m_look.smallFont(), m_chart.size().width() - 3 * rim);
    m_chart.setMargins(QMargins(rim, rim / 2, rim, static_cast<int>(std::ceil(legend)) + rim / 2));
}

QRectF ChartLayer::boundingRect() const
{
    return {QPointF(0, 0), m_chart.size()};
}

QPointF ChartLayer::at(double x, double y) const
{
    return m_chart.mapToPosition({x, y}, &m_series);
}

QString ChartLayer::axisTitleAt(QPointF place) const
{
    return charts::axisTitleAt(m_chart, place);
}

QRectF ChartLayer::plotArea() const
{
    return m_chart.plotArea();
}

void ChartLayer::select(std::optional<keyboard::Note> note)
{
    m_selected = note;
    update();
}

void ChartLayer::paint(QPainter *painter, const QStyleOptionGraphicsItem *, QWidget *)
{
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing, true);
    paintContent(*painter);
    const double rim = m_look.pixelSize;
    const double height = chartLegendHeight(m_legend, m_look.smallFont(), m_chart.size().width() - 3 * rim);
    const QRectF foot(rim * 1.5, m_chart.size().height() - height - rim / 4, m_chart.size().width() - 3 * rim, height);
    paintChartLegend(*painter, foot, m_legend, m_look.smallFont(), m_look.palette.quiet);
    painter->restore();
}

MarkLayer::MarkLayer(QChart &chart, QAbstractSeries &series, const ChartLook &look, std::vector<LegendEntry> legend,
                     std::vector<Plotted> points, keyboard::Sections sections)
    : ChartLayer(chart, series, look, std::move(legend)), m_points(std::move(points)), m_sections(std::move(sections))
{
    setAcceptHoverEvents(true);
    setAcceptedMouseButtons(Qt::LeftButton);
}

QPointF MarkLayer::placeOf(const Plotted &point, double value) const
{
    // A reading far off the scale stands at its edge.
    const QPointF place = at(point.note.number(), value);
    return {place.x(), std::clamp(place.y(), plotArea().top(), plotArea().bottom())};
}

void MarkLayer::paintPoint(QPainter &painter, const Plotted &point) const
{
    const double size = look().markSize();
    if (point.before && point.now) {
        painter.setPen(QPen(look().palette.line, look().line()));
        painter.drawLine(placeOf(point, *point.before), placeOf(point, *point.now));
    }
    if (point.before)
        drawRing(painter, placeOf(point, *point.before), size, look().palette);
    if (!point.now)
        return;
    const QPointF place = placeOf(point, *point.now);
    drawPoint(painter, point.kind, place, size, look().palette);
    if (selected() == point.note || m_pointedAt == &point) {
        painter.setPen(QPen(look().palette.ink, look().line() * 2));
        painter.setBrush(Qt::NoBrush);
        painter.drawEllipse(place, size, size);
    }
}

void MarkLayer::paintSectionNames(QPainter &painter) const
{
    painter.setFont(look().smallFont());
    painter.setPen(look().palette.quiet);
    const QFontMetricsF metrics(look().smallFont());
    for (const keyboard::Section &section : m_sections) {
        const double left = std::max(at(section.notes.first.number() - 0.5, 0).x(), plotArea().left());
        const double right = std::min(at(section.notes.last.number() + 0.5, 0).x(), plotArea().right());
        const QString name = metrics.elidedText(QString::fromStdString(section.name), Qt::ElideRight, right - left);
        if (right > left)
            painter.drawText(QRectF(left, plotArea().top(), right - left, metrics.height()), Qt::AlignCenter, name);
    }
}

void MarkLayer::paintContent(QPainter &painter)
{
    paintSectionNames(painter);
    for (const Plotted &point : m_points)
        paintPoint(painter, point);
}

const Plotted *MarkLayer::nearest(QPointF place) const
{
    const Plotted *best = nullptr;
    double bestDistance = look().markSize() * 1.2;
    for (const Plotted &point : m_points) {
        const QPointF away = placeOf(point, point.now ? *point.now : *point.before) - place;
        const double distance = std::hypot(away.x(), away.y());
        if (distance < bestDistance) {
            best = &point;
            bestDistance = distance;
        }
    }
    return best;
}

void MarkLayer::hoverMoveEvent(QGraphicsSceneHoverEvent *event)
{
    const Plotted *point = nearest(event->pos());
    setToolTip(point ? point->story : axisTitleAt(event->pos()));
    if (point == m_pointedAt)
        return;
    m_pointedAt = point;
    update();
    emit noteTold(point ? point->story : QString());
}

void MarkLayer::hoverLeaveEvent(QGraphicsSceneHoverEvent *)
{
    m_pointedAt = nullptr;
    update();
    emit noteTold({});
}

void MarkLayer::mousePressEvent(QGraphicsSceneMouseEvent *event)
{
    if (const Plotted *point = nearest(event->pos()))
        emit noteChosen(point->note);
    else
        event->ignore();
}

} // namespace hammerline::charts
