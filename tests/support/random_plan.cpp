#include "support/random_plan.h"

#include <array>
#include <random>

namespace hammerline::support {

using action::PlanTask;
using action::Rail;
using action::RailShape;
using catalogue::ActionKind;
using catalogue::Quantity;
using units::Amount;
using units::Dimension;

namespace {

using Random = std::mt19937_64;

/// The library's distributions differ between implementations; these don't.
int whole(Random &random, int least, int most)
{
    return least + static_cast<int>(random() % static_cast<std::uint64_t>(most - least + 1));
}
bool oneIn(Random &random, int chances)
{
    return whole(random, 1, chances) == 1;
}

/// Ordinary values in base units: target, half-width, step of adjustment.
struct Ordinary {
    Quantity quantity;
    std::int64_t target, halfWidth, step;
};
constexpr std::array<Ordinary, 11> ordinary{{{Quantity::KeyHeight, 0, 200'000, 100'000},
                                             {Quantity::Blow, 46'000'000, 1'000'000, 250'000},
                                             {Quantity::LostMotion, 150'000, 150'000, 50'000},
                                             {Quantity::LetOff, 2'000'000, 500'000, 50'000},
                                             {Quantity::Drop, 1'200'000, 400'000, 100'000},
                                             {Quantity::Dip, 10'000'000, 300'000, 50'000},
                                             {Quantity::Aftertouch, 1'100'000, 240'000, 0},
                                             {Quantity::Checking, 15'000'000, 2'000'000, 500'000},
                                             {Quantity::DamperStart, 22'000'000, 3'000'000, 500'000},
                                             {Quantity::DownWeight, 50'000, 4'000, 1'000},
                                             {Quantity::UpWeight, 24'000, 4'000, 1'000}}};

Amount amount(Quantity quantity, std::int64_t count)
{
    return {catalogue::infoOf(quantity).dimension, count};
}

tolerance::Entry entryOf(Random &random, const Ordinary &usual)
{
    tolerance::Entry entry;
    const std::int64_t half = usual.halfWidth * whole(random, 1, 8) / 4;
    const std::int64_t skew = half * whole(random, -3, 3) / 4;
    const bool low = !oneIn(random, 8), high = !oneIn(random, 8), closed = low && high && oneIn(random, 16);
    for (const int note : {1, 60}) {
        tolerance::Point point{.note = keyboard::Note(note), .target = amount(usual.quantity, usual.target)};
        const std::int64_t wide = note == 1 ? half : half * 3 / 4;
        if (low)
            point.low = amount(usual.quantity, usual.target - (closed ? 0 : wide + skew));
        if (high)
            point.high = amount(usual.quantity, usual.target + (closed ? 0 : wide - skew));
        entry.both.push_back(point);
    }
    if (oneIn(random, 3)) {
        entry.rule = tolerance::Rule::Guarded;
        entry.expandedUncertainty = amount(usual.quantity, half * whole(random, 1, 9) / 8);
    }
    return entry;
}

void fillSet(Random &random, PlanTask &task)
{
    task.set.action = task.setup.action;
    for (const Ordinary &usual : ordinary)
        if (catalogue::has(task.setup.action, usual.quantity) && !oneIn(random, 5))
            task.set.entries[usual.quantity] = entryOf(random, usual);
}

void fillReadings(Random &random, PlanTask &task)
{
    for (int note = task.compass.first.number(); note <= task.compass.last.number(); ++note)
        for (const Ordinary &usual : ordinary) {
            if (!catalogue::has(task.setup.action, usual.quantity) ||
                oneIn(random, usual.quantity == Quantity::Aftertouch ? 3 : 10))
                continue;
            std::int64_t value = usual.target + usual.halfWidth * whole(random, -250, 250) / 100;
            if (!catalogue::infoOf(usual.quantity).mayBeNegative)
                value = std::max<std::int64_t>(value, 0);
            task.values.set(usual.quantity, keyboard::Note(note), {amount(usual.quantity, value), 1});
        }
}

void fillAdjustments(Random &random, PlanTask &task, int mostSteps)
{
    for (const Ordinary &usual : ordinary) {
        const bool railOnly = usual.quantity == Quantity::Blow && task.setup.action == ActionKind::Vertical;
        if (usual.step == 0 || railOnly || !catalogue::has(task.setup.action, usual.quantity) ||
            whole(random, 1, 9) > 5)
            continue;
        const std::int64_t step = usual.step * whole(random, 1, 20) / 2;
        action::Adjustment adjustment;
        adjustment.step = amount(usual.quantity, step);
        adjustment.most = amount(usual.quantity, step * whole(random, 1, mostSteps) + step / 3);
        adjustment.minutes = whole(random, oneIn(random, 6) ? 0 : 1, 4) / 2.0;
        task.setup.adjustments[usual.quantity] = adjustment;
    }
}

void fillRails(Random &random, PlanTask &task, const RandomPlanSize &size)
{
    const std::array<Quantity, 3> movable{Quantity::LetOff, Quantity::Checking, Quantity::Blow};
    const int kinds = task.setup.action == ActionKind::Grand ? 2 : 3;
    const int count = whole(random, 0, size.rails);
    for (int i = 0; i < count; ++i) {
        Rail rail;
        rail.id = "rail_" + std::to_string(i);
        rail.quantity = movable[static_cast<std::size_t>(whole(random, 0, kinds - 1))];
        rail.shape = oneIn(random, 2) ? RailShape::Uniform : RailShape::Linear;
        rail.step = units::Length::nanometres(250'000 * whole(random, 1, 4));
        rail.most = Amount(Dimension::Length, rail.step.baseCount() * whole(random, 1, size.mostRailSteps));
        rail.minutes = whole(random, 0, 8) / 2.0;
        const int first = whole(random, task.compass.first.number() - 2, task.compass.last.number());
        if (oneIn(random, 2))
            rail.notes =
                keyboard::NoteRange{keyboard::Note(first), keyboard::Note(whole(random, first + 1, first + 6))};
        else if (size.notes == 1)
            rail.shape = RailShape::Uniform; // a straight line needs two ends
        task.setup.rails.push_back(rail);
    }
}

} // namespace

PlanTask randomPlanTask(std::uint64_t seed, const RandomPlanSize &size)
{
    Random random(seed);
    PlanTask task;
    task.setup.action = oneIn(random, 2) ? ActionKind::Grand : ActionKind::Vertical;
    task.setup.leverRatio = whole(random, 40, 60) / 10.0;
    const int first = whole(random, 1, 80);
    task.compass = {keyboard::Note(first), keyboard::Note(first + size.notes - 1)};
    task.aim = oneIn(random, 2) ? action::Aim::Target : action::Aim::In;
    fillSet(random, task);
    fillReadings(random, task);
    fillAdjustments(random, task, size.mostSteps);
    fillRails(random, task, size);
    return task;
}

PlanTask wholeActionTask(std::uint64_t seed, ActionKind kind)
{
    Random random(seed);
    PlanTask task;
    task.setup.action = task.set.action = kind;
    for (const Ordinary &usual : ordinary) {
        if (!catalogue::has(kind, usual.quantity))
            continue;
        tolerance::Point point{.note = keyboard::Note(1),
                               .low = amount(usual.quantity, usual.target - usual.halfWidth),
                               .target = amount(usual.quantity, usual.target),
                               .high = amount(usual.quantity, usual.target + usual.halfWidth)};
        task.set.entries[usual.quantity].both = {point};
        for (int note = 1; note <= 88; ++note) {
            const std::int64_t off = usual.halfWidth * (whole(random, -90, 90) + whole(random, -90, 90)) / 100;
            task.values.set(usual.quantity, keyboard::Note(note),
                            {amount(usual.quantity, std::max<std::int64_t>(usual.target + off, 0)), 1});
        }
        if (usual.step > 0 && !(usual.quantity == Quantity::Blow && kind == ActionKind::Vertical))
            task.setup.adjustments[usual.quantity] = {.step = amount(usual.quantity, usual.step),
                                                      .most = amount(usual.quantity, usual.halfWidth * 4),
                                                      .minutes = usual.quantity == Quantity::Dip ? 1.0 : 0.5};
    }
    return task;
}

PlanTask wholeActionWithRail(std::uint64_t seed, ActionKind kind, Quantity quantity)
{
    PlanTask task = wholeActionTask(seed, kind);
    const std::int64_t step = quantity == Quantity::LetOff ? 100'000 : 250'000;
    task.setup.rails.push_back({.id = "rail",
                                .quantity = quantity,
                                .shape = RailShape::Linear,
                                .step = units::Length::nanometres(step),
                                .most = units::Length::nanometres(step * 20),
                                .minutes = 12});
    // The whole line stands askew: 2 mm at the bass, 1 mm the other way at the treble.
    for (int note = 1; note <= 88; ++note) {
        const auto read = task.values.value(quantity, keyboard::Note(note));
        const std::int64_t askew = step * (8 - 12 * (note - 1) / 87);
        const std::int64_t value = std::max<std::int64_t>(read->baseCount() + askew, 0);
        task.values.set(quantity, keyboard::Note(note), {amount(quantity, value), 1});
    }
    return task;
}

} // namespace hammerline::support
