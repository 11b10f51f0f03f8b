#pragma once
// What the planner knows of an action: which adjustments there are, how fine, how far and at what cost in minutes. The
// lever model, the best plan and the fitting of targets are side doors:
// lever_model.h, plan.h, fit.h.

#include "catalogue/catalogue.h"
#include "keyboard/keyboard.h"
#include "outcome/outcome.h"
#include "units/units.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace hammerline::action {

/// Changes its own quantity on one note by a whole number of steps, at most `most` either way.
struct Adjustment {
    units::Amount step{}; ///< > 0
    units::Amount most{}; ///< >= 0
    double minutes = 0;   ///< per note it is used on, >= 0
    /// What one full turn of the screw does to the quantity; the sign says which way a positive turn goes.
    /// Absent where nobody has measured it: no published value exists.
    std::optional<units::Amount> perTurn{};
    std::vector<units::Length> punchings{}; ///< thicknesses on the shelf
    std::string source{};
    std::string remark{};
    bool operator==(const Adjustment &) const = default;
};

enum class RailShape {
    Uniform, ///< moves every note of its range alike
    Linear,  ///< bass end and treble end by different amounts, straight between
};

/// Moves blow, let_off or checking on all notes of its range at once.
struct Rail {
    std::string id{};
    catalogue::Quantity quantity = catalogue::Quantity::Blow;
    RailShape shape = RailShape::Uniform;
    units::Amount step{};
    units::Amount most{};
    double minutes = 0;                         ///< once
    std::optional<keyboard::NoteRange> notes{}; ///< absent: the instrument's; may go beyond the instrument
    std::string source{};
    std::string remark{};
    bool operator==(const Rail &) const = default;
};

struct Setup {
    std::string name{};
    catalogue::ActionKind action = catalogue::ActionKind::Vertical;
    double leverRatio = 5.0; ///< > 0, used where no note tells its own
    std::map<catalogue::Quantity, Adjustment> adjustments{};
    std::vector<Rail> rails{}; ///< ids unique, sorted by id
    std::string source{};
    std::string remark{};
    bool operator==(const Setup &) const = default;
};

/// What is wrong with a setup's content (aftertouch adjustable, a vertical with a single blow adjustment, a grand with
/// a blow rail, a linear rail whose range is one note, a step of 0…). Empty: nothing.
[[nodiscard]] std::vector<outcome::Fault> faultsOf(const Setup &setup);

} // namespace hammerline::action
