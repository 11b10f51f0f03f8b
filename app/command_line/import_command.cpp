// hammerline import: a readings file becomes a new pass of an instrument.

#include "command_line/inside/all_commands.h"
#include "command_line/inside/logbook_input.h"
#include "command_line/inside/reading_input.h"
#include "command_line/inside/verdict_words.h"

#include "exchange/answers_json.h"

namespace hammerline::command_line {
namespace {

outcome::Outcome<readings::Purpose> parsePurpose(const std::string &text)
{
    if (const auto purpose = readings::findPurpose(text))
        return *purpose;
    return outcome::Fault{.problem =
                              "--purpose: \"" + text + "\" is no purpose; write as-found, setting, as-left or recheck"};
}

class ImportCommand : public Command {
public:
    std::string name() const override { return "import"; }
    std::string summary() const override { return "make a new pass of an instrument from a readings file"; }

    void declare(Options &options) override
    {
        options.positional("LOGBOOK", "The logbook", m_logbook);
        options.positional("READINGS.csv", "The readings, one row a note or one row a take", m_file);
        options.value("instrument", "ID", "Number of the instrument, see hammerline instruments", m_instrument);
        options.value("purpose", "as-found|setting|as-left|recheck", "What the pass was for", m_purpose);
        options.value("person", "NAME", "Who measured (the name of the account)", m_person);
        options.flag("json", "Answer in JSON", m_json);
        m_input.declare(options);
    }

    outcome::Outcome<Answer> answer(const Surroundings &surroundings) override
    {
        const auto purpose = parsePurpose(m_purpose);
        if (!purpose)
            return purpose.faults();
        const std::string person = m_person.value_or(surroundings.person);
        if (auto unsound = unsoundText("person", person))
            return *std::move(unsound);
        if (const auto missing = noLogbookAt(m_logbook, "readings go to an instrument of a logbook: name one that is "
                                                        "there, or make one in the window, with hammerline demo, or "
                                                        "with hammerline take-over --new"))
            return *missing;
        auto book = logbook::Logbook::open(m_logbook);
        const auto instrument = findInstrument(book, m_instrument);
        if (!instrument)
            return instrument.faults();
        const auto options = optionsFor(instrument.value());
        if (!options)
            return options.faults();
        auto file = openReadingsFile(m_file, options.value());
        if (!file)
            return file.faults();
        readings::Pass pass{.uid = surroundings.newUid(),
                            .instrument = instrument.value().id,
                            .purpose = purpose.value(),
                            .began = surroundings.now(),
                            .person = person,
                            .unit = options.value().unit};
        return store(book, pass, *file.value());
    }

private:
    /// The instrument says its action and its compass; the options may repeat but not contradict it.
    outcome::Outcome<exchange::CsvReadingOptions> optionsFor(const instrument::Instrument &instrument) const
    {
        auto options = m_input.csvOptions(instrument.action);
        if (!options)
            return options;
        if (m_input.compassGiven() && options.value().compass != instrument.compass)
            return outcome::Fault{.problem = "--first, --last: the logbook has " + instrument.compass.first.name() +
                                             " to " + instrument.compass.last.name() +
                                             " for this instrument; leave them out"};
        options.value().compass = instrument.compass;
        return options;
    }

    outcome::Outcome<Answer> store(logbook::Logbook &book, const readings::Pass &pass,
                                   exchange::CsvReadings &file) const
    {
        auto warnings = clockGoneBack(book, pass.began);
        const auto outcome = book.importPassFrom(pass, [&file](auto &batch) { return file.next(batch); },
                                                 {.at = pass.began, .person = pass.person});
        if (!outcome)
            return file.faults();
        const readings::Pass &stored = outcome.value();
        const int count = static_cast<int>(file.count());
        for (outcome::Fault &fault : backUpOfTheDay(book, pass.began))
            warnings.push_back(std::move(fault));
        if (m_json)
            return Answer{.text = exchange::importJson(stored.id, count), .warnings = std::move(warnings)};
        return Answer{.text = "Pass " + std::to_string(stored.id) + " (" + std::string(readings::idOf(stored.purpose)) +
                              ") has " + counted(count, "reading", "readings") + ".\n",
                      .warnings = std::move(warnings)};
    }

    std::string m_logbook;
    std::string m_file;
    std::string m_instrument;
    std::string m_purpose;
    std::optional<std::string> m_person;
    bool m_json = false;
    ReadingInput m_input;
};

} // namespace

std::unique_ptr<Command> makeImportCommand()
{
    return std::make_unique<ImportCommand>();
}

} // namespace hammerline::command_line
