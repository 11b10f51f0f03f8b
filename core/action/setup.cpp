#include "action/action.h"

#include <cmath>
#include <set>
#include <string>

namespace hammerline::action {
namespace {

using catalogue::ActionKind;
using catalogue::Quantity;
using outcome::Fault;

/// Collects faults, each with its place in the setup.
class Findings {
public:
    void add(const std::string &where, const std::string &problem)
    {
        m_faults.push_back({{}, 0, where + ": " + problem});
    }
    [[nodiscard]] std::vector<Fault> take() { return std::move(m_faults); }

private:
    std::vector<Fault> m_faults{};
};

/// What single adjustments and rails have in common.
template <typename Mover>
void checkMover(const Mover &mover, units::Dimension dimension, const std::string &where, Findings &findings)
{
    const std::string unit = units::displaySymbol(dimension);
    if (mover.step.dimension() != dimension || mover.most.dimension() != dimension)
        findings.add(where, "steps and their limit must be given in " + unit);
    if (mover.step.baseCount() <= 0)
        findings.add(where + ".step_" + unit, "must be more than 0");
    if (mover.most.baseCount() < 0)
        findings.add(where + ".max_" + unit, "must not be less than 0");
    if (!std::isfinite(mover.minutes) || mover.minutes < 0)
        findings.add(where + ".minutes", "must not be less than 0");
}

void checkAdjustment(const Setup &setup, Quantity quantity, const Adjustment &adjustment, Findings &findings)
{
    const std::string where = "adjustments." + std::string(catalogue::idOf(quantity));
    if (!catalogue::has(setup.action, quantity))
        findings.add(where, "a " + std::string(catalogue::idOf(setup.action)) + " action has no such quantity");
    if (quantity == Quantity::Aftertouch)
        findings.add(where, "is not adjusted by itself; it follows from dip, blow and let_off, adjust one of these");
    if (quantity == Quantity::Blow && setup.action == ActionKind::Vertical)
        findings.add(where, "a vertical has no blow of single notes; a rail of quantity \"blow\" would be right");
    checkMover(adjustment, catalogue::infoOf(quantity).dimension, where, findings);
    if (adjustment.perTurn && adjustment.perTurn->baseCount() == 0)
        findings.add(where, "a turn that changes nothing cannot be planned with; leave mm_per_turn out or measure it");
    for (const units::Length thickness : adjustment.punchings) {
        if (thickness <= units::Length())
            findings.add(where + ".punchings_mm", "a thickness must be more than 0");
    }
}

void checkRail(const Setup &setup, const Rail &rail, Findings &findings)
{
    const std::string where = "rails." + rail.id;
    const bool movable =
        rail.quantity == Quantity::Blow || rail.quantity == Quantity::LetOff || rail.quantity == Quantity::Checking;
    if (rail.id.empty())
        findings.add("rails", "a rail must have a name");
    if (!movable)
        findings.add(where + ".quantity", "a rail moves blow, let_off or checking, nothing else");
    if (rail.quantity == Quantity::Blow && setup.action == ActionKind::Grand)
        findings.add(where, "a grand sets its blow note by note; an adjustment of blow would be right");
    checkMover(rail, units::Dimension::Length, where, findings);
    if (!rail.notes)
        return;
    if (rail.notes->last < rail.notes->first)
        findings.add(where + ".notes", "the first note must not lie above the last");
    else if (rail.shape == RailShape::Linear && rail.notes->first == rail.notes->last)
        findings.add(where + ".notes", "a linear rail must reach over two notes at least");
}

} // namespace

std::vector<Fault> faultsOf(const Setup &setup)
{
    Findings findings;
    if (!std::isfinite(setup.leverRatio) || setup.leverRatio <= 0)
        findings.add("lever_ratio", "must be more than 0");
    for (const auto &[quantity, adjustment] : setup.adjustments)
        checkAdjustment(setup, quantity, adjustment, findings);
    std::set<std::string> seen;
    for (const Rail &rail : setup.rails) {
        checkRail(setup, rail, findings);
        if (!seen.insert(rail.id).second)
            findings.add("rails." + rail.id, "stands twice; each rail needs its own name");
    }
    return findings.take();
}

} // namespace hammerline::action
