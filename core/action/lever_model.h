#pragma once
// The lever model: one number a note, its lever ratio r, says how far the hammer goes for a millimetre of
// key, and with it what a change of one quantity does to the others of the same note.
//
//     blow - let_off = r (dip - aftertouch - lost_motion)
//
// It is an average over the stroke (the true ratio bends along it). A missing lost motion counts as 0. The ratio keeps
// its value through a plan. Published sets imply 4.6 to 5.3; what is outside 3 to 8 is taken for a slip of the gauge.

#include "catalogue/catalogue.h"
#include "keyboard/keyboard.h"
#include "readings/readings.h"

#include <array>
#include <map>
#include <optional>

namespace hammerline::action {

enum class RatioSource {
    Own,                  ///< the note's own four readings
    SameColourAndSection, ///< median of such ratios on the same colour and section
    Instrument,           ///< median of all of them
    Setup,                ///< no note tells; the setup's
};
struct LeverRatio {
    double ratio = 0;
    RatioSource source = RatioSource::Own;
};

/// From blow, let_off, dip and aftertouch, all read; absent where one isn't, the key's free travel is not above 0 or
/// the ratio is outside 3 to 8 (compared exactly).
[[nodiscard]] std::optional<double> ownRatio(const readings::ValueTable &values, keyboard::Note note);

using OwnRatios = std::map<keyboard::Note, double>;
[[nodiscard]] OwnRatios ownRatios(const readings::ValueTable &values, const keyboard::Compass &compass);
/// Median of the ratios on `note`'s colour and section, else of all; absent where there are none.
[[nodiscard]] std::optional<LeverRatio> medianRatio(const OwnRatios &ratios, keyboard::Note note,
                                                    const keyboard::Sections &sections);
/// The note's own ratio, else the median of its like, else of all, else `setupRatio`.
[[nodiscard]] LeverRatio ratioOf(const OwnRatios &ratios, keyboard::Note note, const keyboard::Sections &sections,
                                 double setupRatio);

/// dip - lost_motion - (blow - let_off) / r in mm, not rounded; absent unless blow, let_off and dip were read. May come
/// out negative: the key is down before the jack is out.
[[nodiscard]] std::optional<double> predictedAftertouch(const readings::ValueTable &values, keyboard::Note note,
                                                        double ratio);

/// By how much `other` changes on the same note when `changed` is changed by 1: 1 for itself, 0 for what stands alone.
/// What is carried carries nothing further.
[[nodiscard]] double carriedBy(catalogue::Quantity changed, catalogue::Quantity other, catalogue::ActionKind action,
                               double ratio);

/// Changes made to one note on purpose, by quantity, in mm or g (screws and rails together).
using Changes = std::array<double, catalogue::quantityCount>;
/// What `quantity` changes by in all: its own change and all that is carried to it.
[[nodiscard]] double changeOf(catalogue::Quantity quantity, const Changes &changes, catalogue::ActionKind action,
                              double ratio);

} // namespace hammerline::action
