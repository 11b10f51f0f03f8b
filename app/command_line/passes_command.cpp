// hammerline passes: the tours of measuring over one instrument.

#include "command_line/inside/all_commands.h"
#include "command_line/inside/logbook_input.h"
#include "command_line/inside/plain_table.h"

#include "exchange/answers_json.h"

namespace hammerline::command_line {
namespace {

std::string passesText(const std::vector<exchange::PassCount> &passes)
{
    if (passes.empty())
        return "No pass of this instrument is in the logbook yet.\n";
    PlainTable table({{"id", Align::Right}, {"purpose"}, {"began"}, {"by"}, {"readings", Align::Right}});
    for (const exchange::PassCount &one : passes)
        table.add({std::to_string(one.pass.id), std::string(readings::idOf(one.pass.purpose)),
                   readings::rfc3339(one.pass.began), elided(one.pass.person), std::to_string(one.readings)});
    return table.text();
}

class PassesCommand : public Command {
public:
    std::string name() const override { return "passes"; }
    std::string summary() const override { return "the passes of one instrument"; }

    void declare(Options &options) override
    {
        options.positional("LOGBOOK", "The logbook", m_logbook);
        options.value("instrument", "ID", "Number of the instrument, see hammerline instruments", m_instrument);
        options.flag("json", "Answer in JSON", m_json);
    }

    outcome::Outcome<Answer> answer(const Surroundings &) override
    {
        const auto book = openToRead(m_logbook);
        const auto instrument = findInstrument(book, m_instrument);
        if (!instrument)
            return instrument.faults();
        std::vector<exchange::PassCount> passes;
        for (const readings::Pass &pass : book.passes(instrument.value().id))
            passes.push_back({.pass = pass, .readings = book.readingCount(pass.id)});
        return Answer{.text = m_json ? exchange::passesJson(passes) : passesText(passes)};
    }

private:
    std::string m_logbook;
    std::string m_instrument;
    bool m_json = false;
};

} // namespace

std::unique_ptr<Command> makePassesCommand()
{
    return std::make_unique<PassesCommand>();
}

} // namespace hammerline::command_line
