#pragma once
// The bars of a histogram, stacked by verdict, and the outline of those before.

#include "charts/inside/mark_layer.h"

#include <map>

namespace hammerline::charts {

struct Bar {
    double from = 0;
    double to = 0;
    std::map<Kind, int> now{}; ///< notes by verdict
    int before = 0;
};

class BarLayer : public ChartLayer {
    Q_OBJECT
public:
    BarLayer(QChart &chart, QAbstractSeries &series, const ChartLook &look, std::vector<LegendEntry> legend,
             std::vector<Bar> bars, bool withBefore, std::vector<double> edges);

protected:
    void paintContent(QPainter &painter) override;

private:
    void paintBar(QPainter &painter, const Bar &bar) const;
    void paintBefore(QPainter &painter) const;
    void paintEdges(QPainter &painter) const;
    std::vector<Bar> m_bars;
    bool m_withBefore;
    std::vector<double> m_edges; ///< limits, drawn over the bars
};

} // namespace hammerline::charts
