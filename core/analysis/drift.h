#pragma once
// A year later: what has moved since the instrument was left, and whether the gauges can tell.
//
// A change of one note is told apart from none where it is larger than the expanded uncertainty of a difference, the
// root of the sum of the squares of both readings' expanded uncertainties (GUM, 5.1.2, uncorrelated, k = 2). The mean
// of many notes is held against the same figure: what a gauge has wrong it has wrong on every note alike, so that
// averaging takes none of it away.

#include "analysis/analysis.h"
#include "keyboard/keyboard.h"
#include "readings/readings.h"
#include "tolerance/tolerance.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace hammerline::analysis {

enum class Way {
    NotToldApart, ///< the mean change is within the uncertainty of a difference
    Smaller,
    Larger,
    Unknown, ///< no uncertainty is known: neither gauge nor tolerance set states one
};
/// "not-told-apart", "smaller", "larger", "unknown".
[[nodiscard]] std::string_view idOf(Way way);

/// One quantity over the whole instrument or over one section; lengths in mm, masses in g.
struct Drift {
    catalogue::Quantity quantity{};
    std::string section{}; ///< empty: the whole instrument
    Comparison change{};   ///< of the notes read on both days
    /// Expanded uncertainty of a difference; absent: not known.
    std::optional<double> toldApart{};
    Way way = Way::Unknown;     ///< of the mean
    std::optional<int> moved{}; ///< notes whose own change is told apart; absent where that is not known
    keyboard::Note most{};      ///< the note that changed most, the lowest of equals
    double mostChange = 0;
};

struct MeasuredPass {
    readings::Pass pass{};
    readings::ValueTable values{};
};

/// Expanded uncertainty (k = 2) of one reading, in mm or g. Of a length, what the gauge states, or its resolution as a
/// rectangular distribution (GUM, 4.3.7: resolution / √12, twice) where that is larger or it states no other (why not
/// both: tolerance/doubt.h); where there is none either, and of a mass, what the set states for the quantity, brought
/// to k = 2. Absent: nobody says.
[[nodiscard]] std::optional<double> uncertaintyOf(catalogue::Quantity quantity, const readings::Gauge &gauge,
                                                  const tolerance::ToleranceSet *set);

/// By quantity in the order of the catalogue, the whole first, then the sections with notes read on both days (none
/// where the instrument has fewer than two sections). `set` may be null.
[[nodiscard]] std::vector<Drift> driftBetween(const MeasuredPass &before, const MeasuredPass &after,
                                              const keyboard::Sections &sections, const tolerance::ToleranceSet *set);

/// What a recheck is held against: the newest as-left pass before it; where there is none, the newest recheck before
/// it. Null: none. `passes` in any order.
[[nodiscard]] const readings::Pass *leftBefore(std::span<const readings::Pass> passes, const readings::Pass &recheck);

} // namespace hammerline::analysis
