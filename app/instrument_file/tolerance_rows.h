#pragma once
// A tolerance set as rows to read: every number with the source that stands behind it, or "no source".

#include "tolerance/tolerance.h"
#include "wording/number_form.h"

#include <QString>

#include <vector>

namespace hammerline::instrument_file {

struct ToleranceRow {
    QString quantity{}; ///< "Dip, naturals"
    QString note{};
    QString low{}; ///< empty: no limit on that side
    QString target{};
    QString high{};
    QString doubt{};  ///< what it counts with: "± 0.2 mm, guarded"; empty: nothing
    QString source{}; ///< the point's, else the entry's, else the set's, else "no source"
    QString remark{};
};

[[nodiscard]] std::vector<ToleranceRow> rowsOf(const tolerance::ToleranceSet &set, const wording::NumberForm &form);

} // namespace hammerline::instrument_file
