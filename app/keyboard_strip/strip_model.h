#pragma once
// What the strip shows: one StripKey for every note of the compass, and how to get them from a judgement.
//
// Heights are in half-widths of the tolerance band, measured from the band's middle: the band runs from -1 to 1 on
// every key whatever its limits, so all keys compare. With one limit alone the band is open on the other side, and
// the distance from target to limit counts as the half-width.

#include "catalogue/catalogue.h"
#include "keyboard/keyboard.h"
#include "tolerance/judge.h"
#include "wording/number_form.h"

#include <QString>

#include <map>
#include <optional>
#include <utility>
#include <vector>

namespace hammerline::keyboard_strip {

/// What stands on a key beside its verdict; each has a shape of its own.
struct Flags {
    bool fault = false;         ///< something is wrong with the key itself: a notch at its edge
    bool confirmedSlip = false; ///< an unlikely value that its reader stood by
    bool concession = false;    ///< accepted by the lead as it is
    bool uneven = false;        ///< a step from its neighbour below
    bool operator==(const Flags &) const = default;
};

struct StripKey {
    keyboard::Note note{};
    tolerance::Status status = tolerance::Status::Unjudged;
    /// False: nothing to show, neither read nor judged.
    bool used = false;
    std::optional<double> now{};     ///< height of the reading; absent where missing, or read and unjudged
    std::optional<double> before{};  ///< of the pass compared with
    std::optional<double> planned{}; ///< where the plan would put it
    double target = 0;               ///< height of the hairline; not 0 where target is not the middle of the band
    bool openAbove = false;          ///< no upper limit
    bool openBelow = false;          ///< no lower limit
    Flags flags{};
    /// Note, quantity, value, limits, verdict in words: tooltip, status line, screen reader.
    QString story{};
    QString valueText{}; ///< "3.20 mm"; "not read" where missing
    bool operator==(const StripKey &) const = default;
};

struct StripModel {
    keyboard::Compass compass{};
    keyboard::Sections sections{};
    std::vector<StripKey> keys{}; ///< one per note of the compass, rising
    QString caption{};            ///< "Let-off", or "Worst of all quantities"

    [[nodiscard]] const StripKey *find(keyboard::Note note) const;
};

struct PairOf {
    catalogue::Quantity quantity{};
    keyboard::Note note{};
    auto operator<=>(const PairOf &) const = default;
};

/// All that a model is made from; pointers may be null and need only live through the call.
struct StripSource {
    keyboard::Compass compass{};
    keyboard::Sections sections{};
    const tolerance::Judgement *now = nullptr;
    const tolerance::Judgement *before = nullptr;
    const std::map<PairOf, units::Amount> *planned = nullptr;
    /// Absent: on each key the worst pair of all (out before missing before marginal, then by half-widths).
    std::optional<catalogue::Quantity> quantity{};
    /// `uneven` is added from the judgement.
    std::map<keyboard::Note, Flags> flags{};
    wording::NumberForm form{};
};

[[nodiscard]] StripModel modelOf(const StripSource &source);
/// Every key there, none used: before an instrument has readings.
[[nodiscard]] StripModel emptyModel(const keyboard::Compass &compass, const keyboard::Sections &sections);

/// Height of a value in the band of its limits; absent where there is neither limit. Where low = high, or a lone limit
/// is the target, there is no width to measure by: 0 on the target, else 2 towards its side (0 on the open side).
[[nodiscard]] std::optional<double> heightOf(units::Amount value, const tolerance::Limits &limits);

} // namespace hammerline::keyboard_strip
