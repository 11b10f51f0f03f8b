#pragma once
// The words of a bench sheet that take some thought.

#include "bench_sheet/bench_sheet.h"

namespace hammerline::bench_sheet {

[[nodiscard]] QString words(const char *text); ///< translated, context "bench_sheet"

/// "Let-off (mm)".
[[nodiscard]] QString headOf(catalogue::Quantity quantity, const wording::NumberForm &form);
/// How it is measured, with the pass's own place for dip and drop.
[[nodiscard]] QString howOf(catalogue::Quantity quantity, const readings::Pass &pass);
/// "bass to treble; one quantity along all notes: let-off, dip".
[[nodiscard]] QString routeText(const route::Choice &choice);
/// What a set promises for one box: "2.4 · 3.2 · 4", "≥ 0.5 · 1", "1 · ≤ 1.5", "3.2"; empty where it judges nothing.
/// With the digits of the pass's gauge (0.01 mm, 0.001 in, 0.1 mil or 0.1 g at least); a limit that has more is drawn
/// inwards, so that what keeps to the printed limits keeps to the promise.
[[nodiscard]] QString limitsLine(const BenchSheetInput &input, const route::Stop &stop);

} // namespace hammerline::bench_sheet
