#pragma once
// Notes read in both passes of the data, as plain numbers in the unit of the form.

#include "analysis/analysis.h"
#include "charts/inside/plotted.h"

#include <optional>
#include <vector>

namespace hammerline::charts {

struct ChangedNote {
    keyboard::Note note{};
    Kind kind = Kind::Unjudged; ///< of what it is now
    double before = 0;
    double after = 0;
    double change = 0;
    /// The changes that would have brought it inside; an end is absent where that side has no limit, both where it is
    /// not judged.
    std::optional<double> least{}, most{};
    bool apart = false; ///< its change is an outlier among the changes (analysis/outliers.h)
    QString story{};
};
/// Notes rising.
[[nodiscard]] std::vector<ChangedNote> changedNotes(const ChartData &data);

/// Of the same notes, in the unit of the form; absent where there are none.
[[nodiscard]] std::optional<analysis::Comparison> comparisonOf(const std::vector<ChangedNote> &notes);

/// mm or g in the unit of the form.
[[nodiscard]] double shownFigure(double figure, const ChartData &data);
/// "+0.30 mm" of a number in the unit of the form.
[[nodiscard]] QString changeFigure(double shown, const ChartData &data);

/// Who or what stands for each pass: the person where two different people read, else its name.
[[nodiscard]] QString nowParty(const ChartData &data);
[[nodiscard]] QString beforeParty(const ChartData &data);
[[nodiscard]] bool twoPeople(const ChartData &data);

} // namespace hammerline::charts
