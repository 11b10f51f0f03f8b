#pragma once
// One command: its name, its options and what it does. To add one: a file with a class, its maker in
// inside/all_commands.h, a line in all_commands.cpp, a paragraph in the manual page.

#include "command_line/command_line.h"
#include "command_line/options.h"
#include "outcome/outcome.h"

#include <string>
#include <vector>

namespace hammerline::command_line {

/// What goes to standard output, what goes to standard error beside it, and how the command ended.
struct Answer {
    std::string text{};
    std::vector<outcome::Fault> warnings{}; ///< what the caller should know though the command was done
    ExitStatus status = ExitStatus::Done;
};

class Command {
public:
    Command() = default;
    Command(const Command &) = delete;
    Command &operator=(const Command &) = delete;
    virtual ~Command() = default;

    [[nodiscard]] virtual std::string name() const = 0;
    /// One line, for the list of commands.
    [[nodiscard]] virtual std::string summary() const = 0;
    /// Binds the options to the command's own members; called once, before `answer`.
    virtual void declare(Options &options) = 0;
    /// The faults of what was given, with nothing written anywhere; or the answer. May throw outcome::BrokenWorld.
    [[nodiscard]] virtual outcome::Outcome<Answer> answer(const Surroundings &surroundings) = 0;
};

} // namespace hammerline::command_line
