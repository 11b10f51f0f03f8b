#pragma once
// What we draw over Qt Charts ourselves. A ChartLayer covers its chart, knows the way from values to pixels, and draws
// the legend into the chart's lower margin.

#include "charts/inside/chart_legend.h"
#include "charts/inside/chart_maker.h"

#include <QGraphicsObject>

class QChart;

namespace hammerline::charts {

class ChartLayer : public QGraphicsObject {
    Q_OBJECT
public:
    /// `series`: any series of the chart that hangs on its two axes. The chart owns the layer.
    ChartLayer(QChart &chart, QAbstractSeries &series, const ChartLook &look, std::vector<LegendEntry> legend);

    QRectF boundingRect() const override;
    void paint(QPainter *painter, const QStyleOptionGraphicsItem *option, QWidget *widget) override;
    void select(std::optional<keyboard::Note> note);

signals:
    void noteChosen(hammerline::keyboard::Note note);
    void noteTold(const QString &story);

protected:
    virtual void paintContent(QPainter &painter) = 0;
    [[nodiscard]] QPointF at(double x, double y) const;
    [[nodiscard]] QRectF plotArea() const;
    /// In its tooltip the title of an axis is whole, whatever the axis has room for.
    [[nodiscard]] QString axisTitleAt(QPointF place) const;
    [[nodiscard]] const ChartLook &look() const { return m_look; }
    [[nodiscard]] std::optional<keyboard::Note> selected() const { return m_selected; }

private:
    void makeRoomForLegend();
    QChart &m_chart;
    QAbstractSeries &m_series;
    ChartLook m_look;
    std::vector<LegendEntry> m_legend;
    std::optional<keyboard::Note> m_selected{};
};

/// Readings along the keyboard, with section names over their runs.
class MarkLayer : public ChartLayer {
    Q_OBJECT
public:
    MarkLayer(QChart &chart, QAbstractSeries &series, const ChartLook &look, std::vector<LegendEntry> legend,
              std::vector<Plotted> points, keyboard::Sections sections);

protected:
    void paintContent(QPainter &painter) override;
    void hoverMoveEvent(QGraphicsSceneHoverEvent *event) override;
    void hoverLeaveEvent(QGraphicsSceneHoverEvent *event) override;
    void mousePressEvent(QGraphicsSceneMouseEvent *event) override;

private:
    [[nodiscard]] QPointF placeOf(const Plotted &point, double value) const;
    [[nodiscard]] const Plotted *nearest(QPointF place) const;
    void paintPoint(QPainter &painter, const Plotted &point) const;
    void paintSectionNames(QPainter &painter) const;
    std::vector<Plotted> m_points;
    keyboard::Sections m_sections;
    const Plotted *m_pointedAt = nullptr;
};

} // namespace hammerline::charts
