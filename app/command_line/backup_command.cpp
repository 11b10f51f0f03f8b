// hammerline backup: a whole copy of a logbook as it is now, while others may go on writing to it. To restore it, open
// the copy, or copy it to where the logbook was.

#include "command_line/inside/all_commands.h"
#include "command_line/inside/logbook_input.h"
#include "command_line/inside/plain_table.h"
#include "command_line/inside/verdict_words.h"

#include "logbook/verify_history.h"

namespace hammerline::command_line {
namespace {

class BackupCommand : public Command {
public:
    std::string name() const override { return "backup"; }
    std::string summary() const override { return "copy a logbook while it may be in use, and check the copy"; }

    void declare(Options &options) override
    {
        options.positional("LOGBOOK", "The logbook", m_logbook);
        options.value("to", "FILE", "The copy; a file that is there is never overwritten", m_to);
    }

    outcome::Outcome<Answer> answer(const Surroundings &) override
    {
        const auto copied = openToRead(m_logbook).copyTo(m_to);
        if (!copied)
            return copied.faults();
        const auto check = logbook::verifyHistory(m_to);
        if (!check.whole())
            return Answer{
                .text = {},
                .warnings = {{.file = m_to,
                              .problem = "was copied as it is, but the logbook was edited by another program: " +
                                         withoutControls(check.alterations.front().text())}},
                .status = NotConforming};
        return Answer{.text = "The logbook is in " + withoutControls(m_to) + ": " +
                              counted(static_cast<int>(check.deeds), "deed", "deeds") + ", all whole.\n"};
    }

private:
    std::string m_logbook;
    std::string m_to;
};

} // namespace

std::unique_ptr<Command> makeBackupCommand()
{
    return std::make_unique<BackupCommand>();
}

} // namespace hammerline::command_line
