#include "support/action_simulator.h"

#include <cmath>

namespace hammerline::support {

using catalogue::ActionKind;
using catalogue::Quantity;
using keyboard::Note;

namespace {

/// Standard deviation of one reading, mm.
double gaugeSd(Quantity quantity)
{
    switch (quantity) {
    case Quantity::Blow:
        return 0.15;
    case Quantity::Checking:
        return 0.3;
    case Quantity::LetOff:
    case Quantity::Drop:
        return 0.05;
    default:
        return 0.025;
    }
}

constexpr double fullStroke = 8.8; ///< key travel to let-off that the ratio is stated for, mm

tolerance::Entry entry(double low, double target, double high)
{
    tolerance::Entry entry;
    entry.both = {{.note = Note(1),
                   .low = units::Length::millimetres(low),
                   .target = units::Length::millimetres(target),
                   .high = units::Length::millimetres(high)}};
    return entry;
}

action::Adjustment adjustment(double step, double most, double minutes)
{
    return {.step = units::Length::millimetres(step), .most = units::Length::millimetres(most), .minutes = minutes};
}

} // namespace

SimulatedAction::SimulatedAction(std::uint64_t seed, ActionKind kind)
    : m_random(seed),
      m_kind(kind),
      m_sections{{"bass", {Note(1), Note(28)}}, {"tenor", {Note(29), Note(58)}}, {"treble", {Note(59), Note(88)}}}
{
    buildSet();
    buildAction();
}

double SimulatedAction::between(double low, double high)
{
    return low + (high - low) * static_cast<double>(m_random() >> 11U) / 9007199254740992.0;
}

/// Twelve uniform draws less six: close enough to normal, the same everywhere.
double SimulatedAction::normal(double sd)
{
    double sum = -6;
    for (int i = 0; i < 12; ++i)
        sum += between(0, 1);
    return sum * sd;
}

void SimulatedAction::buildSet()
{
    const bool grand = m_kind == ActionKind::Grand;
    m_set.action = m_setup.action = m_kind;
    m_setup.leverRatio = 5;
    m_set.entries = {{Quantity::Blow, entry(45, 46, 47)},
                     {Quantity::LetOff, entry(1.6, 2.2, 2.8)},
                     {Quantity::Dip, entry(9.7, 10, 10.3)},
                     {Quantity::Aftertouch, entry(0.8, 1.1, 1.4)},
                     {Quantity::Checking, entry(13.5, 15, 16.5)}};
    m_setup.adjustments = {{Quantity::LetOff, adjustment(0.05, 3, 0.5)},
                           {Quantity::Dip, adjustment(0.05, 1.5, 1)},
                           {Quantity::Checking, adjustment(0.25, 8, 0.5)}};
    if (grand) {
        m_set.entries[Quantity::Drop] = entry(0.8, 1.2, 1.6);
        m_setup.adjustments[Quantity::Blow] = adjustment(0.25, 5, 0.5);
        m_setup.adjustments[Quantity::Drop] = adjustment(0.1, 3, 0.5);
    } else {
        m_set.entries[Quantity::LostMotion] = entry(0, 0.12, 0.3);
        m_setup.adjustments[Quantity::LostMotion] = adjustment(0.05, 2, 0.5);
        m_setup.rails = {{.id = "rest_rail",
                          .shape = action::RailShape::Linear,
                          .step = units::Length::millimetres(0.5),
                          .most = units::Length::millimetres(5),
                          .minutes = 12}};
    }
    for (auto &[quantity, limits] : m_set.entries)
        limits.expandedUncertainty = units::Length::millimetres(expandedUncertainty(quantity));
}

void SimulatedAction::buildAction()
{
    const double ratio = between(4.7, 5.3), bend = between(0.04, 0.12), tilt = between(-1.5, 1.5),
                 worn = between(0, 1.2);
    const bool grand = m_kind == ActionKind::Grand; // a vertical's hammers lie on one rail, evenly
    m_railAnswer = between(0.85, 1.1);
    std::map<std::pair<Quantity, std::string>, double> answers;
    for (const auto &[quantity, each] : m_setup.adjustments)
        for (const keyboard::Section &section : m_sections)
            answers[{quantity, section.name}] = between(0.7, 1.2);
    for (const keyboard::Section &section : m_sections)
        for (int number = section.notes.first.number(); number <= section.notes.last.number(); ++number) {
            State &note = m_notes[index(Note(number))];
            note = {.ratio = ratio * (1 + normal(0.01)),
                    .bend = bend,
                    .blow = 46 + worn + tilt * (number - 44.5) / 43.5 + normal(grand ? 0.5 : 0.2),
                    .capstan = m_kind == ActionKind::Grand ? 0 : std::max(0.0, 0.25 + normal(0.15)),
                    .letOff = 2.3 + normal(0.6),
                    .caught = 0,
                    .dip = 10.05 + normal(0.25),
                    .checking = 15.5 + normal(1.3),
                    .toSettle = 0};
            note.letOff = std::max(0.5, note.letOff);
            note.caught = note.letOff + std::max(0.2, 1.3 + normal(0.4));
            for (const auto &[quantity, each] : m_setup.adjustments)
                note.answer[quantity] = answers[{quantity, section.name}] * (1 + normal(0.06));
        }
}

double SimulatedAction::expandedUncertainty(Quantity quantity)
{
    return 2 * gaugeSd(quantity);
}

/// Key travel at which the hammer has gone from rest to let-off: ratio x s x (1 + bend x (s / fullStroke - 1)) =
/// travel.
double SimulatedAction::aftertouch(const State &state) const
{
    const double travel = state.blow - state.letOff, a = state.ratio * state.bend / fullStroke,
                 b = state.ratio * (1 - state.bend);
    const double key = (-b + std::sqrt(b * b + 4 * a * travel)) / (2 * a);
    return state.dip - std::max(0.0, state.capstan) - key;
}

double SimulatedAction::truth(Quantity quantity, Note note) const
{
    const State &state = at(note);
    switch (quantity) {
    case Quantity::Blow:
        return state.blow;
    case Quantity::LostMotion:
        return std::max(0.0, state.capstan);
    case Quantity::LetOff:
        return state.letOff;
    case Quantity::Drop:
        return std::max(0.0, state.caught - state.letOff);
    case Quantity::Dip:
        return state.dip;
    case Quantity::Aftertouch:
        return aftertouch(state);
    default:
        return state.checking;
    }
}

double SimulatedAction::measure(Quantity quantity, Note note)
{
    const double reading = truth(quantity, note) + normal(gaugeSd(quantity));
    const double scale = quantity == Quantity::Blow || quantity == Quantity::Checking ? 0.1 : 0.01;
    return std::max(0.0, std::round(reading / scale) * scale);
}

readings::ValueTable SimulatedAction::measure()
{
    readings::ValueTable values;
    for (const auto &[quantity, limits] : m_set.entries)
        for (int number = 1; number <= 88; ++number)
            values.set(quantity, Note(number), {units::Length::millimetres(measure(quantity, Note(number))), 1});
    return values;
}

int SimulatedAction::pairs() const
{
    return 88 * static_cast<int>(m_set.entries.size());
}

int SimulatedAction::trulyOut() const
{
    int out = 0;
    for (const auto &[quantity, limits] : m_set.entries)
        for (int number = 1; number <= 88; ++number) {
            const auto at = tolerance::limitsAt(m_set, quantity, Note(number));
            const double value = truth(quantity, Note(number));
            out += value < at->low->inDisplay() || value > at->high->inDisplay() ? 1 : 0;
        }
    return out;
}

void SimulatedAction::turn(Quantity quantity, Note note, double by)
{
    State &state = m_notes[index(note)];
    const bool slipped = between(0, 1) < 0.02;
    const double change = by * state.answer[quantity] * (slipped ? 0.2 : 1 + normal(0.03));
    switch (quantity) {
    case Quantity::Blow:
        state.blow += change;
        break;
    case Quantity::LostMotion:
        state.capstan += change;
        if (state.capstan < 0) { // the hammer is lifted off its rail
            state.blow += state.capstan * state.ratio;
            state.capstan = 0;
        }
        state.checking += 0.8 * change;
        break;
    case Quantity::LetOff:
        state.letOff = std::max(0.2, state.letOff + change);
        break;
    case Quantity::Drop:
        state.caught += change;
        break;
    case Quantity::Dip:
        state.dip += change;
        state.checking -= 0.6 * change;
        state.toSettle += between(0.01, 0.05);
        break;
    default:
        state.checking += change;
    }
}

void SimulatedAction::moveRail(double bass, double treble)
{
    for (std::size_t i = 0; i < m_notes.size(); ++i) {
        const double change =
            m_railAnswer * (bass + (treble - bass) * static_cast<double>(i) / static_cast<double>(m_notes.size() - 1));
        m_notes[i].blow += change;
        m_notes[i].capstan -= change / m_notes[i].ratio;
        if (m_notes[i].capstan < 0) { // the jack holds the hammer off the rail
            m_notes[i].blow += m_notes[i].capstan * m_notes[i].ratio;
            m_notes[i].capstan = 0;
        }
    }
}

void SimulatedAction::playIn()
{
    for (State &state : m_notes) {
        state.dip += state.toSettle;
        state.toSettle = 0;
    }
}

} // namespace hammerline::support
