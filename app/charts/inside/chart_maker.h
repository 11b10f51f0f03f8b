#pragma once
// From data to a QChart: band, lines and axes by Qt Charts; marks, bars and legend by layers of our own on top, because
// they need shapes that Qt Charts has not got and must stay vectors on paper.

#include "charts/inside/axis_title.h"
#include "charts/inside/plotted.h"

#include <QFont>

#include <memory>
#include <vector>

class QAbstractAxis;
class QAbstractSeries;
class QCategoryAxis;
class QChart;
class QValueAxis;
class QGraphicsItem;

namespace hammerline::charts {

struct ChartLook {
    wording::Palette palette{};
    int pixelSize = 12; ///< of the small type

    [[nodiscard]] QFont smallFont() const;
    [[nodiscard]] QFont titleFont() const;
    [[nodiscard]] double line() const { return pixelSize / 12.0; }
    [[nodiscard]] double markSize() const { return pixelSize * 0.75; }
};

class ChartLayer;

struct MadeChart {
    std::unique_ptr<QChart> chart;
    ChartLayer *layer = nullptr; ///< a child of the chart; null where there is nothing to show
};
/// Its titles follow its size (fit_titles.h); of names of any length so much is shown as leaves room for the rest.
[[nodiscard]] MadeChart makeChart(const ChartData &data, const ChartLook &look);

/// The kinds; the chart already has title, ground and fonts.
[[nodiscard]] ChartLayer *fillKeyboardChart(QChart &chart, const ChartData &data, const ChartLook &look);
[[nodiscard]] ChartLayer *fillSpreadChart(QChart &chart, const ChartData &data, const ChartLook &look);
[[nodiscard]] ChartLayer *fillMovedChart(QChart &chart, const ChartData &data, const ChartLook &look);
[[nodiscard]] ChartLayer *fillTrendChart(QChart &chart, const ChartData &data, const ChartLook &look);
[[nodiscard]] ChartLayer *fillAgreementChart(QChart &chart, const ChartData &data, const ChartLook &look);

/// The notes of the compass, named at each C.
[[nodiscard]] QCategoryAxis *addNoteAxis(QChart &chart, const keyboard::Compass &compass, const ChartLook &look);
/// An axis in the look of the house, owned by the chart.
[[nodiscard]] QValueAxis *addAxis(QChart &chart, Qt::Alignment side, const AxisTitle &title, const ChartLook &look);
void dressAxis(QAbstractAxis &axis, const AxisTitle &title, const ChartLook &look);

} // namespace hammerline::charts
