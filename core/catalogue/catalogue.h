#pragma once
// The quantities of regulation: what is measured on a note, in the order in which every output lists them.
// To add one: a line in the enum, a row in catalogue.cpp, words in app/wording; the rest of the house follows.

#include "keyboard/keyboard.h"
#include "units/units.h"

#include <optional>
#include <span>
#include <string_view>

namespace hammerline::catalogue {

enum class ActionKind { Vertical, Grand };
/// "vertical", "grand".
[[nodiscard]] std::string_view idOf(ActionKind action);
[[nodiscard]] std::optional<ActionKind> findAction(std::string_view id);

enum class Quantity {
    KeyHeight,   ///< top of the key at rest, above the key bed or the workshop's own reference line (may be negative)
    Blow,        ///< hammer at rest to string
    LostMotion,  ///< key travel at the front before the hammer moves
    LetOff,      ///< hammer to string at the point where it escapes
    Drop,        ///< how far the hammer falls below the let-off point, key held, slow stroke; grands only
    Dip,         ///< travel of the key at its front edge from rest to the bottom
    Aftertouch,  ///< key travel at the front from let-off to the bottom
    Checking,    ///< caught hammer to string
    DamperStart, ///< hammer travel from rest when the damper starts to move
    DownWeight,  ///< mass that just lowers the key slowly, dampers off
    UpWeight,    ///< mass that the key just raises
};
inline constexpr int quantityCount = 11;

struct QuantityInfo {
    Quantity quantity;
    std::string_view id; ///< as in files and commands: "let_off"
    units::Dimension dimension;
    bool onVerticals;
    bool onGrands;
    bool mayBeNegative;
    /// Evenness compares naturals with naturals and sharps with sharps (key_height, dip, aftertouch).
    bool comparesWithinColour;
};

/// All quantities, in the order of output.
[[nodiscard]] std::span<const QuantityInfo> all();
[[nodiscard]] const QuantityInfo &infoOf(Quantity quantity);
[[nodiscard]] std::string_view idOf(Quantity quantity);
[[nodiscard]] std::optional<Quantity> findQuantity(std::string_view id);
/// True where the action has the quantity; every quantity where no action is known.
[[nodiscard]] bool has(std::optional<ActionKind> action, Quantity quantity);

} // namespace hammerline::catalogue
