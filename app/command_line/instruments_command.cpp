// hammerline instruments: what stands in the workshop.

#include "command_line/inside/all_commands.h"
#include "command_line/inside/logbook_input.h"
#include "command_line/inside/plain_table.h"

#include "exchange/answers_json.h"

namespace hammerline::command_line {
namespace {

std::string instrumentsText(const std::vector<instrument::Instrument> &instruments)
{
    if (instruments.empty())
        return "No instrument is in this logbook yet.\n";
    PlainTable table({{"id", Align::Right}, {"name"}, {"action"}, {"first"}, {"last"}, {"state"}});
    for (const instrument::Instrument &one : instruments)
        table.add({std::to_string(one.id), elided(one.name), std::string(catalogue::idOf(one.action)),
                   one.compass.first.name(), one.compass.last.name(), std::string(instrument::idOf(one.state))});
    return table.text();
}

class InstrumentsCommand : public Command {
public:
    std::string name() const override { return "instruments"; }
    std::string summary() const override { return "the instruments of a logbook"; }

    void declare(Options &options) override
    {
        options.positional("LOGBOOK", "The logbook", m_logbook);
        options.flag("json", "Answer in JSON", m_json);
    }

    outcome::Outcome<Answer> answer(const Surroundings &) override
    {
        const auto instruments = openToRead(m_logbook).instruments();
        return Answer{.text = m_json ? exchange::instrumentsJson(instruments) : instrumentsText(instruments)};
    }

private:
    std::string m_logbook;
    bool m_json = false;
};

} // namespace

std::unique_ptr<Command> makeInstrumentsCommand()
{
    return std::make_unique<InstrumentsCommand>();
}

} // namespace hammerline::command_line
