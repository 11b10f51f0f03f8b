// hammerline tolerances and hammerline setups: list what is built in, or print one as JSON.

#include "command_line/inside/all_commands.h"
#include "command_line/inside/plain_table.h"

#include "exchange/built_in.h"
#include "exchange/setup_json.h"

#include <algorithm>

namespace hammerline::command_line {
namespace {

constexpr auto notice = "\nA maker's manual for the very instrument outranks these.\n";

PlainTable listTable()
{
    return PlainTable({{"id", Align::Left}, {"action", Align::Left}, {"name", Align::Left}});
}

class TolerancesCommand : public Command {
public:
    std::string name() const override { return "tolerances"; }
    std::string summary() const override { return "list the built-in tolerance sets, or print one as JSON"; }

    void declare(Options &options) override
    {
        options.positional("SET", "Id of a built-in set, or a JSON file to check and print", m_set);
    }

    outcome::Outcome<Answer> answer(const Surroundings &) override
    {
        if (!m_set)
            return list();
        const auto named = exchange::findToleranceSet(*m_set);
        return named ? outcome::Outcome(Answer{.text = named.value().text}) : named.faults();
    }

private:
    static outcome::Outcome<Answer> list()
    {
        PlainTable table = listTable();
        for (const exchange::BuiltIn &builtIn : exchange::builtInToleranceSets()) {
            const auto named = exchange::findToleranceSet(builtIn.id);
            if (!named)
                return named.faults();
            const tolerance::ToleranceSet &set = named.value().set;
            table.add({builtIn.id, std::string(catalogue::idOf(set.action)), set.name});
        }
        return Answer{.text = table.text() + notice};
    }

    std::optional<std::string> m_set;
};

class SetupsCommand : public Command {
public:
    std::string name() const override { return "setups"; }
    std::string summary() const override { return "list the built-in action setups, or print one as JSON"; }

    void declare(Options &options) override
    {
        options.positional("SETUP", "Id of a built-in setup, or a JSON file to check and print", m_setup);
    }

    outcome::Outcome<Answer> answer(const Surroundings &) override
    {
        if (!m_setup)
            return list();
        const auto setup = exchange::findSetup(*m_setup);
        if (!setup)
            return setup.faults();
        const auto &builtIns = exchange::builtInSetups();
        const auto builtIn = std::ranges::find(builtIns, *m_setup, &exchange::BuiltIn::id);
        return Answer{.text = builtIn == builtIns.end() ? exchange::writeSetup(setup.value()) : builtIn->text};
    }

private:
    static outcome::Outcome<Answer> list()
    {
        PlainTable table = listTable();
        for (const exchange::BuiltIn &builtIn : exchange::builtInSetups()) {
            const auto setup = exchange::findSetup(builtIn.id);
            if (!setup)
                return setup.faults();
            table.add({builtIn.id, std::string(catalogue::idOf(setup.value().action)), setup.value().name});
        }
        return Answer{.text = table.text() + notice};
    }

    std::optional<std::string> m_setup;
};

} // namespace

std::unique_ptr<Command> makeTolerancesCommand()
{
    return std::make_unique<TolerancesCommand>();
}

std::unique_ptr<Command> makeSetupsCommand()
{
    return std::make_unique<SetupsCommand>();
}

} // namespace hammerline::command_line
