// hammerline check: judges a readings file by a tolerance set.

#include "command_line/inside/all_commands.h"
#include "command_line/inside/check_text.h"
#include "command_line/inside/reading_input.h"

#include "exchange/answers_json.h"
#include "exchange/built_in.h"
#include "tolerance/doubt.h"

namespace hammerline::command_line {
namespace {

class CheckCommand : public Command {
public:
    std::string name() const override { return "check"; }
    std::string summary() const override { return "judge a readings file by a tolerance set"; }

    void declare(Options &options) override
    {
        options.positional("READINGS.csv", "The readings, one row a note or one row a take", m_file);
        options.value("tolerances", "SET", "Id of a built-in set, or a JSON file", m_set);
        options.flag("json", "Answer in JSON", m_json);
        m_input.declare(options);
    }

    outcome::Outcome<Answer> answer(const Surroundings &) override
    {
        const auto named = exchange::findToleranceSet(m_set);
        if (!named)
            return named.faults();
        const tolerance::ToleranceSet &set = named.value().set;
        const auto options = m_input.csvOptions(set.action);
        if (!options)
            return options.faults();
        const auto readings = readReadingsFile(m_file, options.value());
        if (!readings)
            return readings.faults();
        const auto values = readings::meansOf(readings.value());
        const CheckedFile checked{.file = m_file,
                                  .setId = named.value().id,
                                  .compass = options.value().compass,
                                  .judgement = tolerance::judge(values, set, options.value().compass, {}),
                                  .set = set};
        return answerTo(checked, readings.value());
    }

private:
    Answer answerTo(CheckedFile checked, const std::vector<readings::Reading> &readings) const
    {
        const auto summaries = analysis::summarise(checked.judgement, &checked.set);
        const ExitStatus status = checked.judgement.anyOutOrMissing() ? NotConforming : Done;
        if (m_json)
            return {.text = exchange::checkJson(checked.judgement, summaries), .status = status};
        tolerance::weighDoubt(checked.judgement, readings, {}); // a file names no gauge
        return {.text = checkText(checked, summaries), .status = status};
    }

    std::string m_file;
    std::string m_set;
    bool m_json = false;
    ReadingInput m_input;
};

} // namespace

std::unique_ptr<Command> makeCheckCommand()
{
    return std::make_unique<CheckCommand>();
}

} // namespace hammerline::command_line
