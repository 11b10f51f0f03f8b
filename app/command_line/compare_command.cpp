// hammerline compare: what changed between two readings files.

#include "command_line/inside/all_commands.h"
#include "command_line/inside/plain_table.h"
#include "command_line/inside/reading_input.h"
#include "command_line/inside/verdict_words.h"

#include "exchange/answers_json.h"
#include "exchange/built_in.h"

#include <fmt/format.h>

namespace hammerline::command_line {
namespace {

std::string figure(const std::optional<double> &value, units::Dimension dimension)
{
    return value ? benchText(*value, dimension) : std::string("-");
}

std::string range(const std::optional<double> &low, const std::optional<double> &high, units::Dimension dimension)
{
    return low && high ? fmt::format("{} to {}", benchText(*low, dimension), benchText(*high, dimension))
                       : std::string("-");
}

std::string changeTable(const analysis::Comparisons &comparisons)
{
    PlainTable table({{"quantity", Align::Left},
                      {"pairs", Align::Right},
                      {"mean change", Align::Right},
                      {"sd", Align::Right},
                      {"95 % interval of the mean", Align::Right},
                      {"p", Align::Right},
                      {"19 of 20 notes changed by", Align::Right}});
    for (const auto &[quantity, one] : comparisons) {
        const auto dimension = catalogue::infoOf(quantity).dimension;
        table.add({std::string(catalogue::idOf(quantity)), std::to_string(one.pairs),
                   benchText(one.meanChange, dimension), figure(one.sdChange, dimension),
                   range(one.ci95Low, one.ci95High, dimension),
                   one.p ? fmt::format("{:.2g}", *one.p) : std::string("-"),
                   range(one.agreementLow, one.agreementHigh, dimension)});
    }
    return table.text();
}

std::string verdictTable(const analysis::Comparisons &comparisons)
{
    PlainTable table({{"quantity", Align::Left},
                      {"out before", Align::Right},
                      {"out after", Align::Right},
                      {"mended", Align::Right},
                      {"spoiled", Align::Right}});
    for (const auto &[quantity, one] : comparisons)
        if (one.outBefore && one.outAfter && one.mended && one.spoiled)
            table.add({std::string(catalogue::idOf(quantity)), std::to_string(*one.outBefore),
                       std::to_string(*one.outAfter), std::to_string(*one.mended), std::to_string(*one.spoiled)});
    return table.empty() ? std::string() : "\n" + table.text();
}

std::string compareText(const analysis::Comparisons &comparisons)
{
    if (comparisons.empty())
        return "No note was read in both files for the same quantity.\n";
    return changeTable(comparisons) + verdictTable(comparisons);
}

class CompareCommand : public Command {
public:
    std::string name() const override { return "compare"; }
    std::string summary() const override { return "what changed between two readings files"; }

    void declare(Options &options) override
    {
        options.positional("BEFORE.csv", "The earlier readings", m_before);
        options.positional("AFTER.csv", "The later readings", m_after);
        options.value("tolerances", "SET", "Count too what went out and what came in by this set", m_set);
        options.flag("json", "Answer in JSON", m_json);
        m_input.declare(options);
    }

    outcome::Outcome<Answer> answer(const Surroundings &) override
    {
        std::optional<tolerance::ToleranceSet> set;
        if (m_set) {
            auto named = exchange::findToleranceSet(*m_set);
            if (!named)
                return named.faults();
            set = std::move(named).value().set;
        }
        const auto options = m_input.csvOptions(set ? std::optional(set->action) : std::nullopt);
        if (!options)
            return options.faults();
        return compareFiles(options.value(), set ? &*set : nullptr);
    }

private:
    outcome::Outcome<Answer> compareFiles(const exchange::CsvReadingOptions &options,
                                          const tolerance::ToleranceSet *set) const
    {
        const auto before = readReadingsFile(m_before, options);
        const auto after = readReadingsFile(m_after, options);
        std::vector<outcome::Fault> faults;
        for (const auto *file : {&before, &after})
            if (!*file)
                faults.insert(faults.end(), file->faults().begin(), file->faults().end());
        if (!faults.empty())
            return faults;
        const auto comparisons =
            analysis::compare(readings::meansOf(before.value()), readings::meansOf(after.value()), set);
        return Answer{.text = m_json ? exchange::compareJson(comparisons) : compareText(comparisons)};
    }

    std::string m_before;
    std::string m_after;
    std::optional<std::string> m_set;
    bool m_json = false;
    ReadingInput m_input;
};

} // namespace

std::unique_ptr<Command> makeCompareCommand()
{
    return std::make_unique<CompareCommand>();
}

} // namespace hammerline::command_line
