#pragma once
// The verdicts of one quantity as plain numbers in the unit of the form, ready for drawing.

#include "charts/charts.h"

#include <optional>
#include <vector>

namespace hammerline::charts {

enum class Kind { Within, Doubt, TooSmall, TooLarge, Unjudged };

struct Plotted {
    keyboard::Note note{};
    Kind kind = Kind::Unjudged;
    std::optional<double> now{}; ///< absent where only before was read
    std::optional<double> before{};
    std::optional<double> target{}; ///< absent where not judged
    QString story{};
};
/// Notes rising; those read now or before.
[[nodiscard]] std::vector<Plotted> plottedOf(const ChartData &data);

/// Limits of one note, in the unit of the form.
struct Rung {
    int note = 0;
    std::optional<double> low{};
    double target = 0;
    std::optional<double> high{};
};
using Ladder = std::vector<Rung>;

/// One ladder for all notes where the limits of both colours run together, else one per colour (naturals first).
[[nodiscard]] std::vector<Ladder> laddersOf(const ChartData &data);

[[nodiscard]] QString nowName(const ChartData &data);
[[nodiscard]] QString beforeName(const ChartData &data);
/// "Let-off (mm)", or of another measure of the quantity "Change of Let-off (mm)": the unit stands at the end.
[[nodiscard]] QString axisTitle(const ChartData &data);
[[nodiscard]] QString axisTitle(const QString &measure, const ChartData &data);

/// Names that people gave as they are drawn (shortName), of so many letters.
[[nodiscard]] ChartData withShortNames(ChartData data, int most);

} // namespace hammerline::charts
