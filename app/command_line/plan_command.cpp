// hammerline plan: the least work that brings the most notes in.

#include "command_line/inside/all_commands.h"
#include "command_line/inside/plan_text.h"
#include "command_line/inside/reading_input.h"

#include "action/plan.h"
#include "exchange/built_in.h"
#include "exchange/plan_json.h"

namespace hammerline::command_line {
namespace {

outcome::Outcome<action::Aim> parseAim(const std::optional<std::string> &text)
{
    if (!text)
        return action::Aim::In;
    if (const auto aim = action::findAim(*text))
        return *aim;
    return outcome::Fault{.problem = "--aim: \"" + *text + "\" is no aim; write in or target"};
}

class PlanCommand : public Command {
public:
    std::string name() const override { return "plan"; }
    std::string summary() const override { return "the least work that brings the most notes in"; }

    void declare(Options &options) override
    {
        options.positional("READINGS.csv", "The readings, one row a note or one row a take", m_file);
        options.value("tolerances", "SET", "Id of a built-in set, or a JSON file", m_set);
        options.value("setup", "SETUP", "Id of a built-in action setup, or a JSON file", m_setup);
        options.value("aim", "in|target",
                      "What decides after the notes inside: the least work, or the closeness to "
                      "the targets (in)",
                      m_aim);
        options.flag("json", "Answer in JSON", m_json);
        m_input.declare(options);
    }

    outcome::Outcome<Answer> answer(const Surroundings &) override
    {
        const auto aim = parseAim(m_aim);
        if (!aim)
            return aim.faults();
        const auto named = exchange::findToleranceSet(m_set);
        if (!named)
            return named.faults();
        const auto setup = exchange::findSetup(m_setup);
        if (!setup)
            return setup.faults();
        if (named.value().set.action != setup.value().action)
            return outcome::Fault{.problem =
                                      "the set is for a " + std::string(catalogue::idOf(named.value().set.action)) +
                                      " and the setup for a " + std::string(catalogue::idOf(setup.value().action)) +
                                      "; both must be for the same action"};
        const auto options = m_input.csvOptions(setup.value().action);
        if (!options)
            return options.faults();
        const auto readings = readReadingsFile(m_file, options.value());
        if (!readings)
            return readings.faults();
        const action::PlanTask task{.values = readings::meansOf(readings.value()),
                                    .set = named.value().set,
                                    .setup = setup.value(),
                                    .compass = options.value().compass,
                                    .aim = aim.value()};
        const action::Plan plan = action::bestPlan(task);
        return Answer{.text = m_json ? exchange::planJson(plan) : planText(plan)};
    }

private:
    std::string m_file;
    std::string m_set;
    std::string m_setup;
    std::optional<std::string> m_aim;
    bool m_json = false;
    ReadingInput m_input;
};

} // namespace

std::unique_ptr<Command> makePlanCommand()
{
    return std::make_unique<PlanCommand>();
}

} // namespace hammerline::command_line
