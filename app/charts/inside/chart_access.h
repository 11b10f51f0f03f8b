#pragma once
// What a screen reader finds of a chart: one thing, a chart, with its title as name and its answer as description. The
// same figures stand as a table in the readings.

namespace hammerline::charts {

/// Makes charts known to QAccessible; once is enough, more does no harm.
void installChartAccess();

} // namespace hammerline::charts
