#include "support/regulation.h"

#include "action/fit.h"
#include "action/learning.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>

namespace hammerline::support {

using catalogue::Quantity;
using keyboard::Note;

namespace {

bool inside(double value, const tolerance::Limits &limits, double margin)
{
    constexpr double rounding = 1e-7;
    return value >= limits.low->inDisplay() + margin - rounding &&
           value <= limits.high->inDisplay() - margin + rounding;
}

/// Readings of what has not been touched since are takes of one value: they are kept and averaged.
class Takes {
public:
    explicit Takes(int marginalTakes) : m_marginalTakes(marginalTakes) {}

    readings::ValueTable measureAll(SimulatedAction &action, RegulationOutcome &outcome)
    {
        readings::ValueTable values;
        for (const auto &[quantity, entry] : action.set().entries)
            for (int number = 1; number <= 88; ++number) {
                Sum &sum = m_sums[{quantity, Note(number)}];
                do {
                    sum.add(action.measure(quantity, Note(number)));
                    ++outcome.readings;
                } while (sum.count < m_marginalTakes && isMarginal(action, quantity, Note(number), sum.mean()));
                values.set(quantity, Note(number), {units::Length::millimetres(sum.mean()), sum.count});
            }
        return values;
    }

    void forget(const action::Plan &plan)
    {
        for (const action::Move &move : plan.moves)
            std::erase_if(m_sums, [&move](const auto &item) { return item.first.second == move.note; });
        if (!plan.rails.empty())
            m_sums.clear();
    }

private:
    struct Sum {
        double sum = 0;
        int count = 0;
        void add(double value) { sum += value, ++count; }
        [[nodiscard]] double mean() const { return sum / count; }
    };
    static bool isMarginal(const SimulatedAction &action, Quantity quantity, Note note, double value)
    {
        return !inside(value, *tolerance::limitsAt(action.set(), quantity, note),
                       SimulatedAction::expandedUncertainty(quantity));
    }

    int m_marginalTakes;
    std::map<std::pair<Quantity, Note>, Sum> m_sums;
};

tolerance::ToleranceSet setFor(const SimulatedAction &action, const readings::ValueTable &values,
                               const PlanStyle &style)
{
    tolerance::ToleranceSet set = action.set();
    if (style.guarded)
        for (auto &[quantity, entry] : set.entries)
            entry.rule = tolerance::Rule::Guarded;
    if (!style.fits)
        return set;
    const auto fit = action::fitTargets({.values = values, .set = set, .sections = action.sections()});
    return fit ? fit.value().set : set;
}

/// What the plan itself says to measure again is not turned before that is done.
void leaveWhatIsToBeMeasuredAgain(action::Plan &plan)
{
    std::erase_if(plan.moves, [&plan](const action::Move &move) {
        return std::any_of(plan.remeasure.begin(), plan.remeasure.end(), [&move](const action::Remeasure &again) {
            return again.note == move.note && again.quantity == move.adjust;
        });
    });
}

/// A few screws of each kind in each section, to see how they answer before the others are turned.
void keepTrialTurns(action::Plan &plan, const keyboard::Sections &sections)
{
    constexpr int trials = 5;
    std::map<std::pair<Quantity, std::string>, int> seen;
    std::erase_if(plan.moves, [&](const action::Move &move) {
        for (const keyboard::Section &section : sections)
            if (section.notes.contains(move.note))
                return ++seen[{move.adjust, section.name}] > trials;
        return false;
    });
}

void doWork(SimulatedAction &action, const action::Plan &plan, const std::vector<action::Learned> &learned,
            RegulationOutcome &outcome)
{
    const auto gainOf = [&](Quantity quantity, const std::string &rail, Note note) {
        const action::Learned *known = action::findLearned(learned, quantity, rail, note, action.sections());
        return known && known->gain > 0.3 && known->gain < 3 ? known->gain : 1.0;
    };
    for (const action::RailMove &move : plan.rails) {
        const double gain = gainOf(move.quantity, move.rail, Note(1));
        action.moveRail(move.bass.inDisplay() / gain, move.treble.inDisplay() / gain);
        outcome.minutes += move.minutes;
    }
    for (const action::Move &move : plan.moves) {
        action.turn(move.adjust, move.note, move.by.inDisplay() / gainOf(move.adjust, {}, move.note));
        outcome.minutes += move.minutes;
    }
    outcome.adjustments += static_cast<int>(plan.rails.size() + plan.moves.size());
}

/// The work as it was asked of the screws, so that what is learned is their answer and not the remedy's.
action::DoneWork askedWork(const action::Plan &plan, const std::vector<action::Learned> &learned,
                           const keyboard::Sections &sections)
{
    action::DoneWork work{plan.rails, plan.moves};
    for (action::Move &move : work.moves)
        if (const auto *known = action::findLearned(learned, move.adjust, {}, move.note, sections))
            move.by = units::Amount::fromDisplay(move.by.dimension(), move.by.inDisplay() / known->gain);
    return work;
}

void finish(const SimulatedAction &action, RegulationOutcome &outcome)
{
    outcome.pairs = action.pairs();
    outcome.trulyOut = action.trulyOut();
}

/// The textbook's order. Drop after let-off, dip late, checks last.
constexpr std::array<Quantity, 7> textbookOrder{Quantity::Blow, Quantity::LostMotion, Quantity::LetOff,  Quantity::Drop,
                                                Quantity::Dip,  Quantity::Aftertouch, Quantity::Checking};

class Textbook {
public:
    Textbook(SimulatedAction &action, RegulationOutcome &outcome) : m_action(action), m_outcome(outcome) {}

    /// True where something was out.
    bool goOver(Quantity quantity)
    {
        std::vector<std::pair<Note, double>> out; // and how far from the target
        std::vector<double> all;
        for (int number = 1; number <= 88; ++number) {
            const Note note(number);
            const auto limits = tolerance::limitsAt(m_action.set(), quantity, note);
            const double value = m_action.measure(quantity, note), away = limits->target.inDisplay() - value;
            ++m_outcome.readings;
            all.push_back(away);
            if (!inside(value, *limits, 0))
                out.emplace_back(note, away);
        }
        const bool byRail = quantity == Quantity::Blow && !m_action.setup().rails.empty();
        if (byRail && out.size() > 4)
            setRail(all);
        for (const auto &[note, away] : out)
            if (!byRail)
                turn(quantity == Quantity::Aftertouch ? Quantity::Dip : quantity, note, away);
        return !out.empty();
    }

private:
    void setRail(std::vector<double> away)
    {
        const auto middle = [](std::vector<double> part) {
            std::nth_element(part.begin(), part.begin() + static_cast<std::ptrdiff_t>(part.size() / 2), part.end());
            return part[part.size() / 2];
        };
        // Bass and treble by the middle of either half, carried on to the ends.
        const double low = middle({away.begin(), away.begin() + 44}), high = middle({away.begin() + 44, away.end()});
        m_action.moveRail(low - (high - low) / 2, high + (high - low) / 2);
        m_outcome.minutes += m_action.setup().rails.front().minutes;
        ++m_outcome.adjustments;
    }

    void turn(Quantity quantity, Note note, double by)
    {
        m_action.turn(quantity, note, by);
        m_outcome.minutes += m_action.setup().adjustments.at(quantity).minutes;
        ++m_outcome.adjustments;
    }

    SimulatedAction &m_action;
    RegulationOutcome &m_outcome;
};

} // namespace

RegulationOutcome &RegulationOutcome::operator+=(const RegulationOutcome &other)
{
    minutes += other.minutes;
    adjustments += other.adjustments;
    rounds += other.rounds;
    readings += other.readings;
    pairs += other.pairs;
    trulyOut += other.trulyOut;
    return *this;
}

RegulationOutcome regulateByPlans(SimulatedAction action, const PlanStyle &style)
{
    RegulationOutcome outcome;
    action::PlanTask task{.setup = action.setup(), .sections = action.sections()};
    std::vector<action::Trial> trials;
    std::vector<action::Learned> learned;
    Takes takes(style.marginalTakes);
    task.values = takes.measureAll(action, outcome);
    while (outcome.rounds < mostRounds) {
        task.set = setFor(action, task.values, style);
        action::Plan plan = action::bestPlan(task);
        leaveWhatIsToBeMeasuredAgain(plan);
        if (style.learns && outcome.rounds == 0)
            keepTrialTurns(plan, action.sections());
        if (plan.moves.empty() && plan.rails.empty())
            break;
        ++outcome.rounds;
        doWork(action, plan, style.learns ? learned : std::vector<action::Learned>{}, outcome);
        action.playIn();
        const action::PlanTask before = task;
        takes.forget(plan);
        task.values = takes.measureAll(action, outcome);
        if (!style.learns)
            continue;
        const auto fresh = action::trialsOf(askedWork(plan, learned, action.sections()), before, task.values);
        trials.insert(trials.end(), fresh.begin(), fresh.end());
        learned = action::learn(trials, action.sections());
    }
    finish(action, outcome);
    return outcome;
}

RegulationOutcome regulateByTextbook(SimulatedAction action, int rounds)
{
    RegulationOutcome outcome;
    Textbook textbook(action, outcome);
    bool anythingOut = true;
    while (anythingOut && outcome.rounds < rounds) {
        anythingOut = false;
        ++outcome.rounds;
        for (const Quantity quantity : textbookOrder)
            if (action.set().entries.contains(quantity))
                anythingOut = textbook.goOver(quantity) || anythingOut;
        action.playIn();
    }
    finish(action, outcome);
    return outcome;
}

} // namespace hammerline::support
