#include "main_window/action_setups.h"

#include "exchange/built_in.h"
#include "exchange/plan_inputs_json.h"
#include "exchange/setup_json.h"

#include <QObject>

#include <algorithm>

namespace hammerline::main_window {

namespace {

constexpr double tallConsole = 1200; // mm: below it a vertical is called a console here (facts of the trade vary)
constexpr double longGrand = 2000;   // mm

std::string usualSetup(const instrument::Instrument &instrument)
{
    const double size = instrument.size ? instrument.size->inMillimetres() : 0;
    if (instrument.action == catalogue::ActionKind::Vertical)
        return instrument.size && size < tallConsole ? "console" : "full-upright";
    return size > longGrand ? "grand-over-2m" : "grand-under-2m";
}

/// The built-in setups of the action, the usual one for its size first.
std::vector<plan_sheet::NamedSetup> builtInFor(const instrument::Instrument &instrument)
{
    std::vector<plan_sheet::NamedSetup> setups;
    for (const exchange::BuiltIn &each : exchange::builtInSetups()) {
        const auto setup = exchange::readSetup(each.text, each.id);
        if (!setup || setup.value().action != instrument.action)
            continue;
        const auto at = each.id == usualSetup(instrument) ? setups.begin() : setups.end();
        setups.insert(
            at, {QString::fromStdString(setup.value().name.empty() ? each.id : setup.value().name), setup.value()});
    }
    return setups;
}

void offer(std::vector<plan_sheet::NamedSetup> &setups, const QString &name, const action::Setup &setup)
{
    if (std::ranges::find(setups, setup, &plan_sheet::NamedSetup::setup) == setups.end())
        setups.insert(setups.begin(), {name, setup});
}

} // namespace

std::optional<action::PlanTask> keptTask(const logbook::Logbook &book, readings::PassId pass)
{
    const auto inputs = book.keptPlan(pass);
    if (!inputs)
        return std::nullopt;
    auto task = exchange::readPlanInputs(*inputs);
    return task ? std::optional(std::move(task).value()) : std::nullopt;
}

std::optional<ChosenSetup> chosenSetup(const logbook::Logbook &book, instrument::InstrumentId instrument)
{
    const auto kept = book.actionSetup(instrument);
    if (!kept)
        return std::nullopt;
    auto setup = exchange::readSetup(kept->setup, {});
    if (!setup)
        return std::nullopt;
    return ChosenSetup{std::move(setup).value(), action::findAim(kept->aim).value_or(action::Aim::In)};
}

void rememberSetup(logbook::Logbook &book, const readings::Pass &pass, const action::PlanTask &task,
                   const logbook::Stamp &stamp)
{
    const logbook::ActionSetup chosen{exchange::writeSetup(task.setup), std::string(action::idOf(task.aim))};
    if (book.actionSetup(pass.instrument) != chosen)
        book.chooseActionSetup(pass.instrument, chosen, stamp);
    const auto kept = book.keptPlan(pass.id);
    const std::string inputs = exchange::planInputsJson(task);
    if (kept && *kept != inputs)
        book.keepPlan(pass.id, inputs, stamp);
}

std::vector<plan_sheet::NamedSetup> startFrom(const logbook::Logbook &book, const instrument::Instrument &instrument,
                                              readings::PassId pass, action::PlanTask &task)
{
    auto setups = builtInFor(instrument);
    const auto kept = keptTask(book, pass);
    const auto own = chosenSetup(book, instrument.id);
    if (kept)
        offer(setups, QObject::tr("As kept with the plan"), kept->setup);
    if (own && own->setup.action == instrument.action)
        offer(setups, QObject::tr("Own setup of this instrument"), own->setup);
    if (kept) {
        task.setup = kept->setup;
        task.aim = kept->aim;
        task.forbidden = kept->forbidden;
    } else if (own && own->setup.action == instrument.action) {
        task.setup = own->setup;
        task.aim = own->aim;
    } else if (!setups.empty()) {
        task.setup = setups.front().setup;
    }
    return setups;
}

} // namespace hammerline::main_window
