// hammerline demo: writes the invented workshop into a new logbook.

#include "command_line/inside/all_commands.h"
#include "command_line/inside/drawn_photographs.h"
#include "command_line/inside/verdict_words.h"

#include "demo_workshop/demo_workshop.h"
#include "demo_workshop/write_logbook.h"

#include <filesystem>

namespace hammerline::command_line {
namespace {

class DemoCommand : public Command {
public:
    std::string name() const override { return "demo"; }
    std::string summary() const override { return "write the demonstration workshop into a new logbook"; }

    void declare(Options &options) override
    {
        options.positional("LOGBOOK", "The file to make", m_logbook);
        options.flag("force", "Overwrite a file that is there", m_force);
    }

    outcome::Outcome<Answer> answer(const Surroundings &surroundings) override
    {
        const auto workshop = demo_workshop::makeWorkshop();
        const demo_workshop::LogbookTarget target{.path = m_logbook,
                                                  .overwrite = m_force,
                                                  .scratchPath = m_logbook + ".making-" + surroundings.newUid(),
                                                  .drawer = drawnPhotograph};
        const auto written = demo_workshop::writeLogbook(workshop, target);
        if (!written)
            return written.faults();
        return Answer{.text = "An invented workshop with " +
                              counted(static_cast<int>(workshop.instruments.size()), "instrument", "instruments") +
                              " is in " + m_logbook + ".\n"};
    }

private:
    std::string m_logbook;
    bool m_force = false;
};

} // namespace

std::unique_ptr<Command> makeDemoCommand()
{
    return std::make_unique<DemoCommand>();
}

} // namespace hammerline::command_line
