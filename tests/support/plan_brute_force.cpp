#include "support/plan_brute_force.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <functional>
#include <map>

namespace hammerline::support {

using action::PlanTask;
using catalogue::ActionKind;
using catalogue::Quantity;
using keyboard::Note;

namespace {

/// nm or mg, by quantity; NaN: no value.
struct Values {
    std::array<double, catalogue::quantityCount> of{};
    double &operator[](Quantity quantity) { return of[static_cast<std::size_t>(quantity)]; }
    double operator[](Quantity quantity) const { return of[static_cast<std::size_t>(quantity)]; }
    bool has(Quantity quantity) const { return !std::isnan((*this)[quantity]); }
};
/// The change that the turned screws make on purpose, and their minutes.
struct Turns {
    Values change{};
    double minutes = 0;
};

double counts(std::optional<units::Amount> amount)
{
    return amount ? static_cast<double>(amount->baseCount()) : 0;
}

double middle(std::vector<double> values)
{
    std::sort(values.begin(), values.end());
    const std::size_t half = values.size() / 2;
    return values.size() % 2 == 1 ? values[half] : (values[half - 1] + values[half]) / 2;
}

std::optional<double> tellsRatio(const PlanTask &task, Note note)
{
    for (const Quantity needed : {Quantity::Blow, Quantity::LetOff, Quantity::Dip, Quantity::Aftertouch})
        if (!task.values.value(needed, note))
            return std::nullopt;
    const auto read = [&](Quantity quantity) { return counts(task.values.value(quantity, note)); };
    const double key = read(Quantity::Dip) - read(Quantity::Aftertouch) - read(Quantity::LostMotion);
    const double ratio = (read(Quantity::Blow) - read(Quantity::LetOff)) / key;
    return key > 0 && 3 <= ratio && ratio <= 8 ? std::optional(ratio) : std::nullopt;
}

double ratioOn(const PlanTask &task, Note note)
{
    if (const auto own = tellsRatio(task, note))
        return *own;
    std::vector<double> like, all;
    for (int n = task.compass.first.number(); n <= task.compass.last.number(); ++n)
        if (const auto ratio = tellsRatio(task, Note(n))) {
            all.push_back(*ratio);
            if (Note(n).colour() == note.colour())
                like.push_back(*ratio);
        }
    return !like.empty() ? middle(like) : !all.empty() ? middle(all) : task.setup.leverRatio;
}

/// One note with its values before, its limits, and what the rails add.
struct OneNote {
    const PlanTask *task;
    Note note;
    double ratio;
    Values before{};
    std::vector<std::pair<Quantity, tolerance::Limits>> judged{};
    double railBlow = 0, railLetOff = 0, railChecking = 0;
};

OneNote noteOf(const PlanTask &task, Note note)
{
    OneNote one{.task = &task, .note = note, .ratio = ratioOn(task, note)};
    Values &v = one.before;
    v.of.fill(std::nan(""));
    for (const auto &info : catalogue::all())
        if (const auto read = task.values.value(info.quantity, note))
            v[info.quantity] = counts(read);
    if (!v.has(Quantity::Aftertouch) && v.has(Quantity::Blow) && v.has(Quantity::LetOff) && v.has(Quantity::Dip))
        v[Quantity::Aftertouch] = v[Quantity::Dip] - (v.has(Quantity::LostMotion) ? v[Quantity::LostMotion] : 0) -
                                  (v[Quantity::Blow] - v[Quantity::LetOff]) / one.ratio;
    for (const auto &info : catalogue::all())
        if (const auto limits = tolerance::limitsAt(task.set, info.quantity, note); limits && v.has(info.quantity))
            one.judged.emplace_back(info.quantity, *limits);
    return one;
}

Values after(const OneNote &one, const Values &turned)
{
    const bool grand = one.task->setup.action == ActionKind::Grand;
    const double r = one.ratio, h = turned[Quantity::KeyHeight], m = turned[Quantity::LostMotion],
                 d = turned[Quantity::Dip], b = turned[Quantity::Blow] + one.railBlow,
                 l = turned[Quantity::LetOff] + one.railLetOff;
    Values values = one.before;
    values[Quantity::KeyHeight] += h;
    values[Quantity::Blow] += b;
    values[Quantity::LostMotion] += m - (grand ? 0 : b / r);
    values[Quantity::LetOff] += l;
    values[Quantity::Drop] += turned[Quantity::Drop] - l;
    values[Quantity::Dip] += d + h;
    values[Quantity::Aftertouch] += l / r - (grand ? b / r : 0) - m + d + h;
    values[Quantity::Checking] += turned[Quantity::Checking] + one.railChecking;
    for (const Quantity alone : {Quantity::DamperStart, Quantity::DownWeight, Quantity::UpWeight})
        values[alone] += turned[alone];
    return values;
}

void addPair(const tolerance::Limits &limits, double value, PlanWorth &worth)
{
    const double w = limits.rule == tolerance::Rule::Guarded ? counts(limits.expandedUncertainty) : 0;
    double low = limits.low ? counts(limits.low) + w : -1e300, high = limits.high ? counts(limits.high) - w : 1e300;
    if (low > high)
        low = high = (counts(limits.low) + counts(limits.high)) / 2;
    worth.pairs += value >= low - 0.1 && value <= high + 0.1 ? 1 : 0;
    if (limits.low && limits.high && *limits.low < *limits.high)
        worth.closeness += std::abs(value - counts(limits.target)) / ((counts(limits.high) - counts(limits.low)) / 2);
}

std::optional<PlanWorth> worthOfNote(const OneNote &one, const Turns &turns)
{
    PlanWorth worth{.minutes = turns.minutes};
    const Values values = after(one, turns.change);
    for (const auto &info : catalogue::all())
        if (values[info.quantity] < -0.1 && info.quantity != Quantity::KeyHeight &&
            info.quantity != Quantity::Aftertouch)
            return std::nullopt;
    for (const auto &[quantity, limits] : one.judged)
        addPair(limits, values[quantity], worth);
    return worth;
}

void addTurn(const PlanTask &task, Quantity quantity, int steps, Turns &turns)
{
    if (steps == 0)
        return;
    const action::Adjustment &adjustment = task.setup.adjustments.at(quantity);
    turns.change[quantity] = steps * counts(adjustment.step);
    turns.minutes += adjustment.minutes;
}

std::optional<PlanWorth> bestOfNote(const OneNote &one)
{
    std::vector<std::pair<Quantity, int>> screws;
    for (const auto &[quantity, adjustment] : one.task->setup.adjustments)
        if (one.task->values.value(quantity, one.note))
            screws.emplace_back(quantity, static_cast<int>(adjustment.most.baseCount() / adjustment.step.baseCount()));
    std::optional<PlanWorth> best;
    const std::function<void(std::size_t, const Turns &)> tryFrom = [&](std::size_t index, const Turns &turns) {
        if (index == screws.size()) {
            const auto worth = worthOfNote(one, turns);
            if (worth && (!best || betterPlan(*worth, *best, one.task->aim)))
                best = worth;
            return;
        }
        for (int steps = -screws[index].second; steps <= screws[index].second; ++steps) {
            Turns more = turns;
            addTurn(*one.task, screws[index].first, steps, more);
            tryFrom(index + 1, more);
        }
    };
    tryFrom(0, {});
    return best;
}

void addRail(const action::Rail &rail, const PlanTask &task, double bass, double treble, OneNote &one)
{
    const keyboard::NoteRange range = rail.notes.value_or(task.compass);
    if (!range.contains(one.note))
        return;
    double change = bass;
    if (rail.shape == action::RailShape::Linear)
        change +=
            (treble - bass) * (one.note.number() - range.first.number()) / (range.last.number() - range.first.number());
    (rail.quantity == Quantity::Blow     ? one.railBlow
     : rail.quantity == Quantity::LetOff ? one.railLetOff
                                         : one.railChecking) += change;
}

void add(PlanWorth &sum, const PlanWorth &share)
{
    sum.pairs += share.pairs;
    sum.minutes += share.minutes;
    sum.closeness += share.closeness;
}

std::vector<OneNote> notesOf(const PlanTask &task)
{
    std::vector<OneNote> notes;
    for (int n = task.compass.first.number(); n <= task.compass.last.number(); ++n)
        notes.push_back(noteOf(task, Note(n)));
    return notes;
}

void tryRails(const PlanTask &task, std::size_t index, double minutes, const std::vector<OneNote> &notes,
              std::optional<PlanWorth> &best)
{
    if (index == task.setup.rails.size()) {
        PlanWorth worth{.minutes = minutes};
        for (const OneNote &one : notes) {
            const auto share = bestOfNote(one);
            if (!share)
                return;
            add(worth, *share);
        }
        if (!best || betterPlan(worth, *best, task.aim))
            best = worth;
        return;
    }
    const action::Rail &rail = task.setup.rails[index];
    const int most = static_cast<int>(rail.most.baseCount() / rail.step.baseCount());
    const bool linear = rail.shape == action::RailShape::Linear;
    for (int bass = -most; bass <= most; ++bass)
        for (int treble = linear ? -most : bass; treble <= (linear ? most : bass); ++treble) {
            std::vector<OneNote> moved = notes;
            for (OneNote &one : moved)
                addRail(rail, task, bass * counts(rail.step), treble * counts(rail.step), one);
            tryRails(task, index + 1, minutes + (bass != 0 || treble != 0 ? rail.minutes : 0), moved, best);
        }
}

bool isWholeSteps(units::Amount by, units::Amount step, units::Amount most)
{
    return by.baseCount() % step.baseCount() == 0 && by.magnitude() <= most;
}

} // namespace

bool betterPlan(const PlanWorth &one, const PlanWorth &other, action::Aim aim)
{
    if (one.pairs != other.pairs)
        return one.pairs > other.pairs;
    const double minutes = one.minutes - other.minutes, closeness = one.closeness - other.closeness;
    const double first = aim == action::Aim::In ? minutes : closeness;
    const double second = aim == action::Aim::In ? closeness : minutes;
    return std::abs(first) >= 1e-9 ? first < 0 : second <= -1e-9;
}

PlanWorth bestOfAllPlans(const PlanTask &task)
{
    std::optional<PlanWorth> best;
    tryRails(task, 0, 0, notesOf(task), best);
    return best.value();
}

std::optional<PlanWorth> worthOf(const PlanTask &task, const action::Plan &plan)
{
    PlanWorth sum;
    std::vector<OneNote> notes = notesOf(task);
    for (const action::RailMove &move : plan.rails) {
        const auto rail = std::find_if(task.setup.rails.begin(), task.setup.rails.end(),
                                       [&](const action::Rail &each) { return each.id == move.rail; });
        if (!isWholeSteps(move.bass, rail->step, rail->most) || !isWholeSteps(move.treble, rail->step, rail->most))
            return std::nullopt;
        sum.minutes += rail->minutes;
        for (OneNote &one : notes)
            addRail(*rail, task, counts(move.bass), counts(move.treble), one);
    }
    std::map<Note, Turns> turns;
    for (const action::Move &move : plan.moves) {
        const auto adjustment = task.setup.adjustments.find(move.adjust);
        if (adjustment == task.setup.adjustments.end() || !task.values.value(move.adjust, move.note) ||
            !isWholeSteps(move.by, adjustment->second.step, adjustment->second.most) || move.by.baseCount() == 0)
            return std::nullopt;
        addTurn(task, move.adjust, static_cast<int>(move.by.baseCount() / adjustment->second.step.baseCount()),
                turns[move.note]);
    }
    for (const OneNote &one : notes) {
        const auto share = worthOfNote(one, turns[one.note]);
        if (!share)
            return std::nullopt;
        add(sum, *share);
    }
    return sum;
}

} // namespace hammerline::support
