#pragma once
// The bars of a histogram, stacked by verdict, and the outline of those before. A bar is a pile of notes, one unit high
// each: pointing at a unit tells its note, a click stands on it.

#include "charts/inside/mark_layer.h"

#include <map>

namespace hammerline::charts {

struct PiledNote {
    keyboard::Note note{};
    QString story{};
};

struct Bar {
    double from = 0;
    double to = 0;
    std::map<Kind, std::vector<PiledNote>> now{}; ///< by verdict, from the foot up
    int before = 0;
    [[nodiscard]] int height() const;
};

class BarLayer : public ChartLayer {
    Q_OBJECT
public:
    BarLayer(QChart &chart, QAbstractSeries &series, const ChartLook &look, std::vector<LegendEntry> legend,
             std::vector<Bar> bars, bool withBefore, std::vector<double> edges);

protected:
    void paintContent(QPainter &painter) override;
    void hoverMoveEvent(QGraphicsSceneHoverEvent *event) override;
    void hoverLeaveEvent(QGraphicsSceneHoverEvent *event) override;
    void mousePressEvent(QGraphicsSceneMouseEvent *event) override;

private:
    [[nodiscard]] const PiledNote *noteAt(QPointF place) const;
    void paintBar(QPainter &painter, const Bar &bar) const;
    void paintBefore(QPainter &painter) const;
    void paintEdges(QPainter &painter) const;
    std::vector<Bar> m_bars;
    bool m_withBefore;
    QString m_told{};            ///< of the note pointed at
    std::vector<double> m_edges; ///< limits, drawn over the bars
};

} // namespace hammerline::charts
