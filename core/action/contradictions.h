#pragma once
// Readings that cannot all be true. A slip of the gauge or of the pencil is found here before a screw is turned for it:
// distances on one note bound each other (the hammer cannot be let off further out than it rests), and the lever model
// ties four of them by a ratio that no action has outside 3 to 8. What each gauge may be wrong by is granted first.
//
// A ratio that is possible but stands apart from its neighbours' is a reading to repeat or a part to look at.

#include "action/lever_model.h"

#include <map>
#include <vector>

namespace hammerline::action {

/// Expanded uncertainty (k = 2) of a reading, by quantity; none counts as 0.
using GaugeUncertainty = std::map<catalogue::Quantity, units::Amount>;

enum class Impossibility {
    LetOffBeyondBlow,        ///< let_off is not nearer to the string than the hammer at rest
    DropBelowRest,           ///< let_off and drop together are more than blow
    CheckBeyondBlow,         ///< the caught hammer is further from the string than at rest
    CheckBeforeLetOff,       ///< the caught hammer is nearer to the string than at let-off
    DamperAfterString,       ///< the damper starts later than the hammer can travel
    AftertouchBeyondDip,     ///< aftertouch and lost motion leave no key travel
    RatioOutOfReach,         ///< blow, let_off, dip and aftertouch ask for a lever ratio outside 3 to 8
    UpWeightAboveDownWeight, ///< friction would be below 0
};
struct Contradiction {
    keyboard::Note note{};
    Impossibility what{};
    std::vector<catalogue::Quantity> readings{}; ///< which cannot all be true, in the catalogue's order
    double beyond = 0; ///< by how much, mm or g, beyond what the gauge may be wrong by; of a ratio, the ratio itself
};
/// By note, then in the order of Impossibility.
[[nodiscard]] std::vector<Contradiction> contradictionsIn(const readings::ValueTable &values,
                                                          const keyboard::Compass &compass,
                                                          catalogue::ActionKind action,
                                                          const GaugeUncertainty &uncertainty);

/// What one reading would have to be changed by, the others standing, for the ratio to be that of the neighbours.
struct Suspect {
    catalogue::Quantity quantity{};
    double byMm = 0;
};
struct RatioApart {
    keyboard::Note note{};
    double ratio = 0;
    double neighbours = 0;           ///< median of up to four such ratios on either side, same colour and section
    std::vector<Suspect> suspects{}; ///< smallest change first
};
/// Notes whose own ratio differs from its neighbours' by more than the gauges explain (expanded uncertainty of the
/// difference to first order) and by more than 3.5 robust standard deviations (1.4826 times the median absolute
/// deviation) of all such differences. At least three neighbours are needed.
[[nodiscard]] std::vector<RatioApart> ratiosApart(const readings::ValueTable &values, const keyboard::Compass &compass,
                                                  const keyboard::Sections &sections,
                                                  const GaugeUncertainty &uncertainty);

} // namespace hammerline::action
