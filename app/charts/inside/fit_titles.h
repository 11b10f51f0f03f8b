#pragma once
// The titles of a chart and of its axes in lines that the chart has room for. Qt Charts would cut them.

#include "charts/inside/axis_title.h"
#include "charts/inside/chart_maker.h"

namespace hammerline::charts {

/// What stands above a chart; `question` with the subject before it.
struct ChartHead {
    QString question{};
    QString answer{};
};

/// From here on the titles follow the size of the chart; `shorter` stands where the head would take more than its part.
void keepTitlesFitted(QChart &chart, const ChartHead &head, const ChartHead &shorter, const ChartLook &look);

/// Remembers the title for fitting, and shows it in one line until then.
void setTitle(QAbstractAxis &axis, const AxisTitle &title);

/// Its first category is named only where its name does not cover the second's.
void keepFirstName(QCategoryAxis &axis);

/// The whole title of the axis beside which the place lies; empty where there is none.
[[nodiscard]] QString axisTitleAt(const QChart &chart, QPointF place);

} // namespace hammerline::charts
