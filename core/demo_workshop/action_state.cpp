#include "demo_workshop/inside/action_state.h"

#include <algorithm>
#include <cmath>

namespace hammerline::demo_workshop {
namespace {

using catalogue::Quantity;

/// Which way a generation of playing pulls each quantity, in half-widths (invented; the signs follow common practice:
/// dip and blow grow, let-off and checking shrink).
double pullOf(Quantity quantity)
{
    switch (quantity) {
    case Quantity::KeyHeight:
        return -1.0;
    case Quantity::Blow:
        return 1.2;
    case Quantity::LostMotion:
        return 1.4;
    case Quantity::LetOff:
        return -0.9;
    case Quantity::Drop:
        return 0.5;
    case Quantity::Dip:
        return 1.0;
    case Quantity::Aftertouch:
        return 0;
    case Quantity::Checking:
        return -0.8;
    case Quantity::DamperStart:
        return 0.6;
    case Quantity::DownWeight:
        return 0.6;
    case Quantity::UpWeight:
        return -0.7;
    }
    return 0;
}

/// How much a note is played, 0.35 at the ends to 1 around the middle.
double playedAt(keyboard::Note note)
{
    const double away = (note.number() - 43) / 17.0;
    return 0.35 + 0.65 * std::exp(-away * away);
}

std::size_t sectionOf(const keyboard::Sections &sections, keyboard::Note note)
{
    const auto found =
        std::ranges::find_if(sections, [note](const auto &section) { return section.notes.contains(note); });
    return static_cast<std::size_t>(found - sections.begin());
}

/// Half a promise where the set gives no two limits: a tenth of the target.
double usualHalfWidth(double target)
{
    return std::max(0.1, std::abs(target) / 10);
}

} // namespace

ActionState::ActionState(const PianoPlan &plan, const tolerance::ToleranceSet &set, Dice &dice)
    : m_instrument(plan.instrument), m_set(set), m_wear(plan.wear)
{
    for (const auto &[quantity, entry] : set.entries)
        wear(quantity, dice);
    for (int number = m_instrument.compass.first.number(); number <= m_instrument.compass.last.number(); ++number) {
        const keyboard::Note note(number);
        if (!has(Quantity::Aftertouch) || !has(Quantity::Blow) || !has(Quantity::LetOff) || !has(Quantity::Dip))
            break;
        const double lost = has(Quantity::LostMotion) ? target(Quantity::LostMotion, note) : 0;
        const double ratio = (target(Quantity::Blow, note) - target(Quantity::LetOff, note)) /
                             (target(Quantity::Dip, note) - target(Quantity::Aftertouch, note) - lost);
        m_ratios[note] = ratio * (1 + dice.normal(0.004));
    }
    deriveAftertouch();
    keepPossible();
}

void ActionState::wear(Quantity quantity, Dice &dice)
{
    std::vector<double> steps;
    for (std::size_t i = 0; i <= m_instrument.sections.size(); ++i)
        steps.push_back(dice.normal(0.35 * m_wear));
    const double tilt = dice.normal(0.3 * m_wear);
    const keyboard::Compass &compass = m_instrument.compass;
    for (int number = compass.first.number(); number <= compass.last.number(); ++number) {
        const keyboard::Note note(number);
        if (!tolerance::limitsAt(m_set, quantity, note))
            continue;
        const double along = 2.0 * (number - compass.first.number()) / (compass.count() - 1) - 1;
        double off = 0.8 * m_wear * pullOf(quantity) * playedAt(note) + steps[sectionOf(m_instrument.sections, note)] +
                     tilt * along + dice.normal(0.35);
        if (dice.chance(0.04))
            off += dice.normal(1.2);
        m_columns[quantity][note] = target(quantity, note) + off * halfWidth(quantity, note);
    }
}

void ActionState::regulate(const PassPlan &pass, Dice &dice)
{
    const auto wanted = [&pass](Quantity quantity) {
        return pass.quantities.empty() || std::ranges::find(pass.quantities, quantity) != pass.quantities.end();
    };
    for (auto &[quantity, column] : m_columns) {
        if (!wanted(quantity) || quantity == Quantity::Aftertouch || quantity == Quantity::Dip)
            continue;
        for (const auto &[note, value] : column)
            if (!dice.chance(pass.forgotten))
                setNote(quantity, note, pass.spread, dice);
    }
    if (has(Quantity::Dip) && wanted(Quantity::Dip))
        for (const auto &[note, value] : m_columns.at(Quantity::Dip))
            if (!dice.chance(pass.forgotten))
                setDipForAftertouch(note, pass.spread, dice);
    deriveAftertouch();
    keepPossible();
}

void ActionState::setNote(Quantity quantity, keyboard::Note note, double spread, Dice &dice)
{
    double &value = m_columns.at(quantity).at(note);
    const double room = roomAround(quantity, note);
    if (std::abs(value - target(quantity, note)) > 0.5 * room)
        value = target(quantity, note) + dice.normal(spread) * room;
}

void ActionState::setDipForAftertouch(keyboard::Note note, double spread, Dice &dice)
{
    const auto stroke = strokeInKeyTravel(note);
    if (!stroke) {
        setNote(Quantity::Dip, note, spread, dice);
        return;
    }
    const double middle = target(Quantity::Dip, note);
    const double most = 0.75 * roomAround(Quantity::Dip, note);
    const double wanted =
        target(Quantity::Aftertouch, note) + dice.normal(spread) * roomAround(Quantity::Aftertouch, note) + *stroke;
    m_columns.at(Quantity::Dip).at(note) = std::clamp(wanted, middle - most, middle + most);
}

void ActionState::mend(Quantity quantity, keyboard::Note note, Dice &dice)
{
    constexpr double careful = 0.1;
    if (quantity != Quantity::Dip && quantity != Quantity::Aftertouch)
        m_columns.at(quantity).at(note) = target(quantity, note) + dice.normal(careful) * roomAround(quantity, note);
    if (has(Quantity::Dip) && has(Quantity::Aftertouch) && value(Quantity::Dip, note))
        setDipForAftertouch(note, careful, dice);
    deriveAftertouch();
    keepPossible();
}

void ActionState::settle(Dice &dice)
{
    for (auto &[quantity, column] : m_columns) {
        const double season = dice.normal(0.2);
        for (auto &[note, value] : column)
            value += (season + 0.2 * pullOf(quantity) * playedAt(note) + dice.normal(0.1)) * roomAround(quantity, note);
    }
    deriveAftertouch();
    keepPossible();
}

std::optional<double> ActionState::strokeInKeyTravel(keyboard::Note note) const
{
    const auto ratio = m_ratios.find(note);
    const auto blow = value(Quantity::Blow, note);
    const auto letOff = value(Quantity::LetOff, note);
    if (ratio == m_ratios.end() || !blow || !letOff)
        return std::nullopt;
    return value(Quantity::LostMotion, note).value_or(0) + (*blow - *letOff) / ratio->second;
}

void ActionState::deriveAftertouch()
{
    if (!has(Quantity::Aftertouch))
        return;
    for (auto &[note, after] : m_columns.at(Quantity::Aftertouch))
        if (const auto stroke = strokeInKeyTravel(note))
            after = value(Quantity::Dip, note).value() - *stroke;
}

void ActionState::keepPossible()
{
    for (auto &[quantity, column] : m_columns)
        if (!catalogue::infoOf(quantity).mayBeNegative)
            for (auto &[note, value] : column)
                value = std::max(value, 0.0);
}

std::optional<double> ActionState::value(Quantity quantity, keyboard::Note note) const
{
    const auto column = m_columns.find(quantity);
    if (column == m_columns.end())
        return std::nullopt;
    const auto found = column->second.find(note);
    return found == column->second.end() ? std::nullopt : std::optional(found->second);
}

double ActionState::target(Quantity quantity, keyboard::Note note) const
{
    const auto limits = tolerance::limitsAt(m_set, quantity, note);
    return limits ? limits->target.inDisplay() : 0;
}

double ActionState::halfWidth(Quantity quantity, keyboard::Note note) const
{
    const auto limits = tolerance::limitsAt(m_set, quantity, note);
    const auto given = limits ? limits->halfWidth() : std::nullopt;
    return given ? *given : usualHalfWidth(target(quantity, note));
}

/// From the target to the nearer limit.
double ActionState::roomAround(Quantity quantity, keyboard::Note note) const
{
    const auto limits = tolerance::limitsAt(m_set, quantity, note);
    if (!limits || !limits->low || !limits->high)
        return halfWidth(quantity, note);
    const double room =
        std::min((limits->target - *limits->low).inDisplay(), (*limits->high - limits->target).inDisplay());
    return room > 0 ? room : halfWidth(quantity, note);
}

} // namespace hammerline::demo_workshop
