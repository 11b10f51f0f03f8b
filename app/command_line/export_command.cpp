// hammerline export: the readings of one pass as a readings file, exact.

#include "command_line/inside/all_commands.h"
#include "command_line/inside/logbook_input.h"
#include "command_line/inside/plain_table.h"
#include "command_line/inside/verdict_words.h"

#include "exchange/exchange.h"
#include "exchange/readings_csv.h"

namespace hammerline::command_line {
namespace {

class ExportCommand : public Command {
public:
    std::string name() const override { return "export"; }
    std::string summary() const override { return "write the readings of a pass as CSV"; }

    void declare(Options &options) override
    {
        options.positional("LOGBOOK", "The logbook", m_logbook);
        options.value("instrument", "ID", "Number of the instrument, see hammerline instruments", m_instrument);
        options.value("pass", "ID", "Number of the pass, see hammerline passes (the newest that has readings)", m_pass);
        options.value("to", "FILE.csv", "The file to write", m_to);
        options.flag("force", "Overwrite a file that is there", m_force);
    }

    outcome::Outcome<Answer> answer(const Surroundings &) override
    {
        const auto book = openToRead(m_logbook);
        const auto instrument = findInstrument(book, m_instrument);
        if (!instrument)
            return instrument.faults();
        const auto pass = chosenPass(book, instrument.value());
        if (!pass)
            return pass.faults();
        const auto readings = book.readings(pass.value());
        if (readings.empty())
            return outcome::Fault{.problem = "pass " + std::to_string(pass.value()) + " has no readings to export"};
        const auto written = exchange::writeFile(m_to, exchange::writeReadingsCsv(readings),
                                                 m_force ? exchange::Overwrite::Yes : exchange::Overwrite::No);
        if (!written)
            return written.faults();
        return Answer{.text = counted(static_cast<int>(readings.size()), "reading", "readings") + " of pass " +
                              std::to_string(pass.value()) + " are in " + withoutControls(m_to) + ".\n"};
    }

private:
    outcome::Outcome<readings::PassId> chosenPass(const logbook::Logbook &book,
                                                  const instrument::Instrument &instrument) const
    {
        if (!m_pass) {
            if (const auto newest = newestReadPass(book, instrument.id))
                return newest->id;
            return outcome::Fault{.problem = "the instrument has no readings to export"};
        }
        const auto id = parseId("pass", *m_pass);
        if (!id)
            return id.faults();
        const auto pass = book.pass(id.value());
        if (!pass || pass->instrument != instrument.id)
            return outcome::Fault{.problem = "--pass: instrument " + std::to_string(instrument.id) + " has no pass " +
                                             *m_pass + "; hammerline passes lists them"};
        return pass->id;
    }

    std::string m_logbook;
    std::string m_instrument;
    std::optional<std::string> m_pass;
    std::string m_to;
    bool m_force = false;
};

} // namespace

std::unique_ptr<Command> makeExportCommand()
{
    return std::make_unique<ExportCommand>();
}

} // namespace hammerline::command_line
