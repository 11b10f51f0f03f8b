// hammerline fit: targets that this action can reach together.

#include "command_line/inside/all_commands.h"
#include "command_line/inside/plain_table.h"
#include "command_line/inside/reading_input.h"
#include "command_line/inside/verdict_words.h"

#include "action/fit.h"
#include "exchange/built_in.h"
#include "exchange/exchange.h"
#include "exchange/plan_json.h"
#include "exchange/tolerance_json.h"

#include <fmt/format.h>

namespace hammerline::command_line {
namespace {

std::string fitText(const action::Fit &fit)
{
    PlainTable table({{"note"},
                      {"ratio", Align::Right},
                      {"blow", Align::Right},
                      {"let_off", Align::Right},
                      {"dip", Align::Right},
                      {"aftertouch", Align::Right},
                      {"with the old targets", Align::Right},
                      {""}});
    for (const action::FittedNote &note : fit.notes)
        table.add({note.note.name(), fmt::format("{:.2f}", note.ratio), benchText(note.blow), benchText(note.letOff),
                   benchText(note.dip), benchText(note.aftertouch), benchText(note.aftertouchOfOldTargets),
                   note.feasible ? "" : "cannot be reached within the limits"});
    return table.text();
}

class FitCommand : public Command {
public:
    std::string name() const override { return "fit"; }
    std::string summary() const override { return "targets that this action can reach together"; }

    void declare(Options &options) override
    {
        options.positional("READINGS.csv", "The readings, one row a note or one row a take", m_file);
        options.value("tolerances", "SET", "Id of a built-in set, or a JSON file", m_set);
        options.value("to", "SET.json", "Write the set with the new targets", m_to);
        options.flag("force", "Overwrite a file that is there", m_force);
        options.flag("json", "Answer in JSON", m_json);
        m_input.declare(options);
    }

    outcome::Outcome<Answer> answer(const Surroundings &) override
    {
        const auto named = exchange::findToleranceSet(m_set);
        if (!named)
            return named.faults();
        const auto options = m_input.csvOptions(named.value().set.action);
        if (!options)
            return options.faults();
        const auto readings = readReadingsFile(m_file, options.value());
        if (!readings)
            return readings.faults();
        const auto fit = action::fitTargets({.values = readings::meansOf(readings.value()),
                                             .set = named.value().set,
                                             .compass = options.value().compass});
        return fit ? answerTo(fit.value()) : fit.faults();
    }

private:
    outcome::Outcome<Answer> answerTo(const action::Fit &fit) const
    {
        if (m_to) {
            const auto written = exchange::writeFile(*m_to, exchange::writeToleranceSet(fit.set),
                                                     m_force ? exchange::Overwrite::Yes : exchange::Overwrite::No);
            if (!written)
                return written.faults();
        }
        return Answer{.text = m_json ? exchange::fitJson(fit) : fitText(fit)};
    }

    std::string m_file;
    std::string m_set;
    std::optional<std::string> m_to;
    bool m_force = false;
    bool m_json = false;
    ReadingInput m_input;
};

} // namespace

std::unique_ptr<Command> makeFitCommand()
{
    return std::make_unique<FitCommand>();
}

} // namespace hammerline::command_line
