// hammerline hand-over and take-over: one instrument out of one logbook into another.

#include "command_line/inside/all_commands.h"
#include "command_line/inside/logbook_input.h"
#include "command_line/inside/plain_table.h"
#include "command_line/inside/verdict_words.h"

#include "exchange/exchange.h"
#include "logbook/hand_over.h"

namespace hammerline::command_line {
namespace {

class HandOverCommand : public Command {
public:
    std::string name() const override { return "hand-over"; }
    std::string summary() const override { return "write one instrument, with its history and photographs, as JSON"; }

    void declare(Options &options) override
    {
        options.positional("LOGBOOK", "The logbook", m_logbook);
        options.value("instrument", "ID", "Number of the instrument, see hammerline instruments", m_instrument);
        options.value("to", "FILE.json", "The file to write", m_to);
        options.flag("force", "Overwrite a file that is there", m_force);
    }

    outcome::Outcome<Answer> answer(const Surroundings &) override
    {
        const auto book = openToRead(m_logbook);
        const auto instrument = findInstrument(book, m_instrument);
        if (!instrument)
            return instrument.faults();
        const auto document = book.handOver(instrument.value().id);
        if (!document)
            return document.faults();
        const auto written =
            exchange::writeFile(m_to, document.value(), m_force ? exchange::Overwrite::Yes : exchange::Overwrite::No);
        if (!written)
            return written.faults();
        return Answer{.text = withoutControls(instrument.value().name) + " is in " + withoutControls(m_to) +
                              ", buyer and price included.\n"};
    }

private:
    std::string m_logbook;
    std::string m_instrument;
    std::string m_to;
    bool m_force = false;
};

class TakeOverCommand : public Command {
public:
    std::string name() const override { return "take-over"; }
    std::string summary() const override { return "bring an instrument that was handed over into a logbook"; }

    void declare(Options &options) override
    {
        options.positional("LOGBOOK", "The logbook", m_logbook);
        options.positional("FILE.json", "What hammerline hand-over wrote", m_file);
    }

    outcome::Outcome<Answer> answer(const Surroundings &surroundings) override
    {
        const auto document = exchange::readFile(m_file, logbook::mostHandOverBytes);
        if (!document)
            return document.faults();
        auto book = logbook::Logbook::open(m_logbook);
        const auto taken =
            book.takeOver(document.value(), m_file, {.at = surroundings.now(), .person = surroundings.person});
        if (!taken)
            return taken.faults();
        if (!taken.value().conflicts.empty())
            return conflictFaults(taken.value());
        return Answer{.text = told(book, taken.value())};
    }

private:
    std::vector<outcome::Fault> conflictFaults(const logbook::TakenOver &taken) const
    {
        std::vector<outcome::Fault> faults;
        for (const logbook::Conflict &conflict : taken.conflicts)
            faults.push_back({m_file, 0, withoutControls(conflict.text())});
        faults.push_back(
            {m_file, 0, "nothing was taken over; undo on one side what should not stand, hand over from there again"});
        return faults;
    }

    static std::string told(const logbook::Logbook &book, const logbook::TakenOver &taken)
    {
        const auto instrument = book.instrument(taken.instrument);
        const std::string name = instrument ? withoutControls(instrument->name) : "the instrument";
        const std::string number = "instrument " + std::to_string(taken.instrument);
        if (taken.added == 0)
            return "Everything of " + name + " (" + number + ") was here already.\n";
        return name + " is " + number + (taken.isNew ? ", taken over with " : ", gone on with ") +
               counted(static_cast<int>(taken.added), "deed", "deeds") + ".\n";
    }

    std::string m_logbook;
    std::string m_file;
};

} // namespace

std::unique_ptr<Command> makeHandOverCommand()
{
    return std::make_unique<HandOverCommand>();
}

std::unique_ptr<Command> makeTakeOverCommand()
{
    return std::make_unique<TakeOverCommand>();
}

} // namespace hammerline::command_line
