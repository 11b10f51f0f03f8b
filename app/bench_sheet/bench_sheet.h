#pragma once
// The bench sheet: a pass on paper, to be filled in by hand beside the action and typed in afterwards. One box a stop,
// in the order of the route, so that typing it back in on the same route is reading along the rows.
//
// For pencil and a copier: black alone, no greys; a box is 7.5 mm high. A natural's name stands in a white tab, a
// sharp's in a black one. Vector, fonts embedded. It only paints: what it is handed it does not look up.

#include "instrument/instrument.h"
#include "paper/paper.h"
#include "readings/readings.h"
#include "route/route.h"
#include "tolerance/tolerance.h"
#include "wording/number_form.h"

#include <QByteArray>
#include <QString>

#include <optional>
#include <vector>

namespace hammerline::bench_sheet {

struct BenchSheetInput {
    QString instrument{};
    QString pass{}; ///< as the windows head it: "As found, 2 March 2026"
    /// Person, gauge and climate are printed where they are known, else there is a line to write on; tells where dip
    /// and drop are taken.
    readings::Pass details{};
    route::Choice choice{};
    std::vector<route::Stop> stops{}; ///< route::stopsOf(choice, …)
    keyboard::Sections sections{};    ///< breaks are marked; empty: none are known
    /// Limits stand small below each box that the set judges.
    std::optional<tolerance::ToleranceSet> set{};
    wording::NumberForm form{}; ///< of the pass; limits are printed in its unit
};

struct BenchSheetOptions {
    paper::Size size = paper::Size::A4;
};

/// The whole file. Without stops: one page that says so. Needs a QApplication. Throws outcome::BrokenWorld where Qt
/// gives no document.
[[nodiscard]] QByteArray makeBenchSheet(const BenchSheetInput &input, const BenchSheetOptions &options = {});

} // namespace hammerline::bench_sheet
