#pragma once
// An invented action that behaves as worn ones do and the lever model doesn't: its ratio bends along the stroke and
// differs from note to note, screws answer by their own section's measure and unevenly, now and then one slips, fresh
// punchings settle, capstans and dip move the checks, and the gauge is noisy. Nothing here is a published figure.

#include "action/plan.h"

#include <array>
#include <cstdint>
#include <map>
#include <random>

namespace hammerline::support {

class SimulatedAction {
public:
    SimulatedAction(std::uint64_t seed, catalogue::ActionKind kind);

    /// The shop's set and what the technician can turn on it.
    [[nodiscard]] const tolerance::ToleranceSet &set() const { return m_set; }
    [[nodiscard]] const action::Setup &setup() const { return m_setup; }
    [[nodiscard]] const keyboard::Sections &sections() const { return m_sections; }
    /// Every quantity that the set names, one noisy reading a note.
    [[nodiscard]] readings::ValueTable measure();
    /// One noisy reading.
    [[nodiscard]] double measure(catalogue::Quantity quantity, keyboard::Note note);
    /// Expanded uncertainty of a reading, k = 2, mm.
    [[nodiscard]] static double expandedUncertainty(catalogue::Quantity quantity);

    /// What is true, mm.
    [[nodiscard]] double truth(catalogue::Quantity quantity, keyboard::Note note) const;
    [[nodiscard]] int pairs() const;
    [[nodiscard]] int trulyOut() const;

    /// Turns a screw (or changes punchings) by what should give `by` mm.
    void turn(catalogue::Quantity quantity, keyboard::Note note, double by);
    /// Moves the rest rail of a vertical.
    void moveRail(double bass, double treble);
    /// A heavy hand on every key: fresh punchings settle.
    void playIn();

private:
    struct State {
        double ratio, bend;    ///< over the whole stroke; how much it grows along it
        double blow, capstan;  ///< capstan: lost motion; below 0 it lifts the hammer
        double letOff, caught; ///< caught: the dropped hammer from the string (grands)
        double dip, checking;
        double toSettle;                                ///< of fresh punchings
        std::map<catalogue::Quantity, double> answer{}; ///< of each screw
    };
    void buildAction();
    void buildSet();
    [[nodiscard]] double between(double low, double high);
    [[nodiscard]] double normal(double sd);
    [[nodiscard]] const State &at(keyboard::Note note) const { return m_notes[index(note)]; }
    [[nodiscard]] static std::size_t index(keyboard::Note note) { return static_cast<std::size_t>(note.number() - 1); }
    [[nodiscard]] double aftertouch(const State &state) const;

    std::mt19937_64 m_random;
    catalogue::ActionKind m_kind;
    keyboard::Sections m_sections;
    tolerance::ToleranceSet m_set;
    action::Setup m_setup;
    double m_railAnswer = 1;
    std::array<State, 88> m_notes{};
};

} // namespace hammerline::support
