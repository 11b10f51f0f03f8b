#pragma once
// A small vertical with four notes out: two let-offs too far, one dip too shallow, one blow that the rail mends.

#include "action/plan.h"
#include "exchange/built_in.h"

namespace hammerline::plan_sheet {

inline action::PlanTask smallTask()
{
    const auto mm = [](double value) { return units::Amount(units::Length::millimetres(value)); };
    action::PlanTask task;
    task.set = exchange::findToleranceSet("full-upright").value().set;
    task.setup = exchange::findSetup("full-upright").value();
    task.compass = {keyboard::Note(40), keyboard::Note(47)};
    for (int number = 40; number <= 47; ++number) {
        const keyboard::Note note(number);
        task.values.set(catalogue::Quantity::LetOff, note, {mm(number < 42 ? 4.6 : 2.6), 1});
        task.values.set(catalogue::Quantity::Checking, note, {mm(15), 1});
    }
    return task;
}

} // namespace hammerline::plan_sheet
