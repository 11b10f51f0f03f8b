#pragma once
// Which setup and aim the plan of a pass starts from. A plan that was kept with the pass is shown as it was made; else
// what was last chosen for the instrument, on whichever pass; else the built-in setup that is usual for its size.

#include "action/plan.h"
#include "instrument/instrument.h"
#include "logbook/logbook.h"
#include "plan_sheet/plan_sheet.h"

#include <optional>
#include <vector>

namespace hammerline::main_window {

/// Absent: none is kept, or its text no longer reads.
[[nodiscard]] std::optional<action::PlanTask> keptTask(const logbook::Logbook &book, readings::PassId pass);

struct ChosenSetup {
    action::Setup setup{};
    action::Aim aim = action::Aim::In;
};
/// The instrument's own; absent: none was chosen yet, or its text no longer reads.
[[nodiscard]] std::optional<ChosenSetup> chosenSetup(const logbook::Logbook &book, instrument::InstrumentId instrument);
/// Keeps setup and aim of `task` with the instrument, and `task` with the pass where a plan is kept with that already.
void rememberSetup(logbook::Logbook &book, const readings::Pass &pass, const action::PlanTask &task,
                   const logbook::Stamp &stamp);

/// Setup, aim and what was ruled out go into `task`. What there is to choose from: the instrument's own, the one of the
/// kept plan, and the built-in ones, the usual one first.
[[nodiscard]] std::vector<plan_sheet::NamedSetup> startFrom(const logbook::Logbook &book,
                                                            const instrument::Instrument &instrument,
                                                            readings::PassId pass, action::PlanTask &task);

} // namespace hammerline::main_window
