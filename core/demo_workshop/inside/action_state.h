#pragma once
// What an action truly is, before any gauge is held to it: a number for every quantity on every note, in mm or g.

#include "demo_workshop/inside/dice.h"
#include "demo_workshop/inside/piano_plans.h"
#include "tolerance/tolerance.h"

#include <map>
#include <optional>

namespace hammerline::demo_workshop {

class ActionState {
public:
    /// Worn as the plan says, away from the targets of `set`.
    ActionState(const PianoPlan &plan, const tolerance::ToleranceSet &set, Dice &dice);

    /// A worker sets what is far from its target; the dip last, for the aftertouch. `spread` in distances from the
    /// target to its nearer limit.
    void regulate(const PassPlan &pass, Dice &dice);
    /// One note set again after a lead's word; where it can be, the dip follows for the aftertouch.
    void mend(catalogue::Quantity quantity, keyboard::Note note, Dice &dice);
    /// Felt gives and the season turns: small changes, alike on neighbours.
    void settle(Dice &dice);

    [[nodiscard]] std::optional<double> value(catalogue::Quantity quantity, keyboard::Note note) const;

private:
    using Column = std::map<keyboard::Note, double>;

    void wear(catalogue::Quantity quantity, Dice &dice);
    void setNote(catalogue::Quantity quantity, keyboard::Note note, double spread, Dice &dice);
    void setDipForAftertouch(keyboard::Note note, double spread, Dice &dice);
    void deriveAftertouch();
    [[nodiscard]] std::optional<double> strokeInKeyTravel(keyboard::Note note) const;
    [[nodiscard]] double target(catalogue::Quantity quantity, keyboard::Note note) const;
    [[nodiscard]] double halfWidth(catalogue::Quantity quantity, keyboard::Note note) const;
    [[nodiscard]] double roomAround(catalogue::Quantity quantity, keyboard::Note note) const;
    [[nodiscard]] bool has(catalogue::Quantity quantity) const { return m_columns.contains(quantity); }
    void keepPossible();

    instrument::Instrument m_instrument;
    tolerance::ToleranceSet m_set;
    double m_wear;
    std::map<catalogue::Quantity, Column> m_columns;
    std::map<keyboard::Note, double> m_ratios;
};

} // namespace hammerline::demo_workshop
