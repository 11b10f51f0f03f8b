#pragma once
// Marks anywhere on a chart, each of a note that a click goes to: over a small gauge of its own, with a whisker, or
// bare. Labels stand beside lines and above moments.

#include "charts/inside/mark_layer.h"

namespace hammerline::charts {

struct Dot {
    keyboard::Note note{};
    std::optional<Kind> kind{}; ///< absent: a ring
    double x = 0;
    double y = 0;
    QString story{};
    /// Both present: a reach about the mark, drawn as the layer says.
    std::optional<double> low{}, high{};
    std::optional<double> stemFrom{}; ///< a thin line from there to the mark
    bool apart = false;               ///< in a square of its own
};

/// Words at a place of the chart. Above a moment (y absent) they stand at the top, in the next row where they would
/// cover others; at a line they stand at one of its ends, just above or below it.
struct ChartLabel {
    enum class Side { AboveRight, BelowRight, AboveLeft };
    double x = 0;
    std::optional<double> y{};
    QString text{};
    Side side = Side::AboveRight;
};

enum class Reach { Gauge, Whisker };

class DotLayer : public ChartLayer {
    Q_OBJECT
public:
    struct Content {
        std::vector<Dot> dots{};
        std::vector<ChartLabel> labels{};
        Reach reach = Reach::Gauge;
    };
    DotLayer(QChart &chart, QAbstractSeries &series, const ChartLook &look, std::vector<LegendEntry> legend,
             Content content);

protected:
    void paintContent(QPainter &painter) override;
    void hoverMoveEvent(QGraphicsSceneHoverEvent *event) override;
    void hoverLeaveEvent(QGraphicsSceneHoverEvent *event) override;
    void mousePressEvent(QGraphicsSceneMouseEvent *event) override;

private:
    [[nodiscard]] const Dot *nearest(QPointF place) const;
    void paintReach(QPainter &painter, const Dot &dot) const;
    void paintDot(QPainter &painter, const Dot &dot) const;
    void paintLabels(QPainter &painter) const;
    void paintMoments(QPainter &painter) const;
    Content m_content;
    const Dot *m_pointedAt = nullptr;
};

} // namespace hammerline::charts
