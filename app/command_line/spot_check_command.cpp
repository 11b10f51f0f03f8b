// hammerline spot-check: what a sample proves about all notes.

#include "command_line/inside/all_commands.h"
#include "command_line/inside/plain_table.h"
#include "command_line/inside/verdict_words.h"

#include "analysis/spot_check.h"
#include "exchange/study_json.h"

#include <charconv>

namespace hammerline::command_line {
namespace {

outcome::Outcome<int> parseCount(const std::string &option, const std::string &text)
{
    int count = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), count);
    if (error != std::errc() || end != text.data() + text.size() || count < 0)
        return outcome::Fault{.problem =
                                  "--" + option + ": \"" + text + "\" is no count; write a whole number from 0 up"};
    return count;
}

std::string spotCheckText(const analysis::SpotCheck &check, int notes, const std::string &confidence)
{
    PlainTable table({{"at most out", Align::Right}, {"sample with none found", Align::Right}});
    for (const analysis::SampleToProve &one : check.sampleToProve)
        table.add({std::to_string(one.atMostOut), one.sample == 0 ? "none needed" : std::to_string(one.sample)});
    return "With confidence " + confidence + " at most " + std::to_string(check.mostOut) + " of " +
           counted(notes, "note", "notes") + (check.mostOut == 1 ? " is" : " are") + " out.\n\n" + table.text();
}

class SpotCheckCommand : public Command {
public:
    std::string name() const override { return "spot-check"; }
    std::string summary() const override { return "what a sample proves about all notes"; }

    void declare(Options &options) override
    {
        options.value("notes", "N", "How many notes there are", m_notes);
        options.value("sample", "n", "How many were measured", m_sample);
        options.value("found", "c", "How many of these were out", m_found);
        options.value("confidence", "DECIMAL", "Between 0 and 1 (0.95)", m_confidence);
        options.flag("json", "Answer in JSON", m_json);
    }

    outcome::Outcome<Answer> answer(const Surroundings &) override
    {
        const auto notes = parseCount("notes", m_notes);
        const auto sample = parseCount("sample", m_sample);
        const auto found = parseCount("found", m_found);
        std::vector<outcome::Fault> faults;
        for (const auto *one : {&notes, &sample, &found})
            if (!*one)
                faults.push_back(one->fault());
        if (!faults.empty())
            return faults;
        const std::string confidence = m_confidence.value_or("0.95");
        const auto check = analysis::spotCheck(notes.value(), sample.value(), found.value(), confidence);
        if (!check)
            return check.faults();
        return Answer{.text = m_json ? exchange::spotCheckJson(check.value())
                                     : spotCheckText(check.value(), notes.value(), withoutControls(confidence))};
    }

private:
    std::string m_notes;
    std::string m_sample;
    std::string m_found;
    std::optional<std::string> m_confidence;
    bool m_json = false;
};

} // namespace

std::unique_ptr<Command> makeSpotCheckCommand()
{
    return std::make_unique<SpotCheckCommand>();
}

} // namespace hammerline::command_line
