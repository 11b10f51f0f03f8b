#include "command_line/command_line.h"

#include "command_line/inside/all_commands.h"
#include "command_line/inside/plain_table.h"

#include <algorithm>
#include <ostream>
#include <span>

namespace hammerline::command_line {
namespace {

std::string generalHelp(const std::vector<std::unique_ptr<Command>> &commands)
{
    PlainTable table({{"", Align::Left}, {"", Align::Left}});
    for (const auto &command : commands)
        table.add({"hammerline " + command->name(), command->summary()});
    return "Hammerline: a logbook for regulating piano actions note by note.\n\n"
           "hammerline [LOGBOOK] opens the desktop. Without a display:\n\n" +
           table.text() +
           "\nhammerline COMMAND --help tells the arguments of a command.\n"
           "hammerline --version tells the version.\n";
}

void tell(const std::vector<outcome::Fault> &faults, const std::string &who, std::ostream &err)
{
    for (const outcome::Fault &fault : faults)
        err << (fault.file.empty() ? who + ": " : std::string()) << withoutControls(fault.text()) << '\n';
}

outcome::Outcome<Answer> answerOf(Command &command, std::span<const std::string> arguments,
                                  const Surroundings &surroundings)
{
    Options options("hammerline " + command.name(), command.summary());
    command.declare(options);
    const auto wish = options.parse(arguments);
    if (!wish)
        return wish.faults();
    if (wish.value() == Options::Wish::Help)
        return Answer{.text = options.help()};
    return command.answer(surroundings);
}

outcome::Outcome<Answer> answerOf(const std::vector<std::string> &arguments, const Surroundings &surroundings)
{
    const auto commands = allCommands();
    if (arguments.empty())
        return outcome::Fault{.problem = "no command was given; see hammerline --help"};
    if (arguments.front() == "--help")
        return Answer{.text = generalHelp(commands)};
    if (arguments.front() == "--version")
        return Answer{.text = "hammerline " + surroundings.programVersion + "\n"};
    const auto found =
        std::ranges::find(commands, arguments.front(), [](const auto &command) { return command->name(); });
    if (found == commands.end())
        return outcome::Fault{.problem = "\"" + arguments.front() +
                                         "\" is no command and no logbook that is there; see hammerline --help"};
    return answerOf(**found, std::span(arguments).subspan(1), surroundings);
}

std::string nameForFaults(const std::vector<std::string> &arguments)
{
    return arguments.empty() || !isCommand(arguments.front()) ? "hammerline" : "hammerline " + arguments.front();
}

} // namespace

bool isCommand(const std::string &word)
{
    if (word == "--help" || word == "--version")
        return true;
    return std::ranges::any_of(allCommands(), [&](const auto &command) { return command->name() == word; });
}

int run(const std::vector<std::string> &arguments, const Surroundings &surroundings)
{
    const std::string who = nameForFaults(arguments);
    try {
        const auto answer = answerOf(arguments, surroundings);
        if (!answer) {
            tell(answer.faults(), who, surroundings.err);
            return Refused;
        }
        tell(answer.value().warnings, who, surroundings.err);
        surroundings.out << answer.value().text << std::flush;
        if (surroundings.out)
            return answer.value().status;
        surroundings.err << who << ": the answer could not be written to standard output\n";
    } catch (const outcome::BrokenWorld &broken) {
        surroundings.err << who << ": " << withoutControls(broken.what()) << '\n';
    }
    return Refused;
}

} // namespace hammerline::command_line
