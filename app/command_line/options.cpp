#include "command_line/options.h"

#include <CLI/App.hpp>
#include <CLI/Config.hpp>
#include <CLI/Formatter.hpp>

#include <algorithm>
#include <vector>

namespace hammerline::command_line {

struct Options::Inside {
    CLI::App app;
    Inside(const std::string &call, const std::string &summary) : app(summary, call) {}

    template <typename Target>
    CLI::Option *bind(const std::string &name, const std::string &help, Target &target)
    {
        return app
            .add_option_function<std::string>(
                name, [&target](const std::string &text) { target = text; }, help)
            ->type_name("");
    }
};

Options::Options(const std::string &call, const std::string &summary)
    : m_inside(std::make_unique<Inside>(call, summary))
{
    m_inside->app.set_help_flag("--help", "Print this help");
}

Options::~Options() = default;

void Options::positional(const std::string &name, const std::string &help, std::string &target)
{
    m_inside->bind(name, help, target)->required();
}

void Options::positional(const std::string &name, const std::string &help, std::optional<std::string> &target)
{
    m_inside->bind(name, help, target);
}

void Options::value(const std::string &name, const std::string &valueName, const std::string &help,
                    std::string &target)
{
    m_inside->bind("--" + name, help, target)->required()->type_name(valueName);
}

void Options::value(const std::string &name, const std::string &valueName, const std::string &help,
                    std::optional<std::string> &target)
{
    m_inside->bind("--" + name, help, target)->type_name(valueName);
}

void Options::flag(const std::string &name, const std::string &help, bool &target)
{
    m_inside->app.add_flag("--" + name, target, help)->disable_flag_override();
}

outcome::Outcome<Options::Wish> Options::parse(std::span<const std::string> arguments)
{
    std::vector<std::string> lastFirst(arguments.begin(), arguments.end());
    std::ranges::reverse(lastFirst);
    try {
        m_inside->app.parse(std::move(lastFirst));
    } catch (const CLI::CallForHelp &) {
        return Wish::Help;
    } catch (const CLI::ParseError &refusal) {
        return outcome::Fault{.problem = refusal.what() + std::string("; see ") + m_inside->app.get_name() + " --help"};
    }
    return Wish::Run;
}

std::string Options::help() const
{
    return m_inside->app.help();
}

} // namespace hammerline::command_line
