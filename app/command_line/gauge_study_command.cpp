// hammerline gauge-study: how well a gauge and its users agree, from repeated trials.

#include "command_line/inside/all_commands.h"
#include "command_line/inside/plain_table.h"
#include "command_line/inside/reading_input.h"

#include "analysis/gauge_study.h"
#include "exchange/exchange.h"
#include "exchange/study_json.h"
#include "exchange/trials_csv.h"

#include <fmt/format.h>

#include <cmath>

namespace hammerline::command_line {
namespace {

std::string anovaText(const analysis::GaugeStudy &study)
{
    PlainTable table({{"source"},
                      {"df", Align::Right},
                      {"ss", Align::Right},
                      {"ms", Align::Right},
                      {"F", Align::Right},
                      {"p", Align::Right}});
    const auto figure = [](const std::optional<double> &value) {
        return value ? fmt::format("{:.4g}", *value) : std::string("-");
    };
    for (const analysis::AnovaRow &row : study.anova)
        table.add({row.source, std::to_string(row.degreesOfFreedom), figure(row.sumOfSquares), figure(row.meanSquare),
                   figure(row.f), figure(row.p)});
    return table.text();
}

std::string spreadText(const analysis::GaugeStudy &study)
{
    PlainTable table({{"spread of"}, {"sd", Align::Right}, {"% of all", Align::Right}});
    const auto line = [&](const char *name, double analysis::Components::*part) {
        table.add({name, fmt::format("{:.3f}", study.sd.*part),
                   study.percentOfTotalSd ? fmt::format("{:.1f}", (*study.percentOfTotalSd).*part) : "-"});
    };
    line("the same person again", &analysis::Components::repeatability);
    line("another person", &analysis::Components::reproducibility);
    line("gauge and people together", &analysis::Components::gauge);
    line("the notes themselves", &analysis::Components::note);
    line("all", &analysis::Components::total);
    return table.text();
}

/// What to put where, so that a set counts with what was found (its entry in a tolerance set).
std::string memberText(const analysis::GaugeStudy &study, units::Dimension dimension)
{
    constexpr double thousandth = 0.001, slack = 1e-6; // rounded up to the micrometre or milligram
    const double upwards = std::ceil(study.expandedUncertainty / thousandth - slack) * thousandth;
    return fmt::format(
        "To judge by it, put into the quantity's entry of a tolerance set, and the study into its \"source\":\n"
        "  \"expanded_uncertainty_{0}\": {1:.3f}, \"coverage_factor\": 2, \"rule\": \"guarded\"\n"
        "(A scale whose step s is so coarse that 0.577 s is more: that, in the place of it.)\n\n",
        units::displaySymbol(dimension), upwards);
}

std::string studyText(const analysis::GaugeStudy &study, units::Dimension dimension)
{
    const std::string kinds = study.distinctCategories
                                  ? fmt::format("; kinds of note it tells apart: {}", *study.distinctCategories)
                                  : std::string();
    return fmt::format("{} notes, {} people, {} takes\n\n", study.notes, study.people, study.takes) +
           spreadText(study) +
           fmt::format("\nExpanded uncertainty (k = 2): {:.3f}{}.\n\n", study.expandedUncertainty, kinds) +
           memberText(study, dimension) + anovaText(study) +
           (study.interactionPooled ? "Notes and people are tested against interaction and repeatability together.\n"
                                    : "");
}

class GaugeStudyCommand : public Command {
public:
    std::string name() const override { return "gauge-study"; }
    std::string summary() const override { return "how well a gauge and its users agree"; }

    void declare(Options &options) override
    {
        options.positional("TRIALS.csv", "Repeated readings: note,person,take,value", m_file);
        options.value("unit", "mm|in", "Unit of lengths without one (mm)", m_unit);
        options.flag("json", "Answer in JSON", m_json);
    }

    outcome::Outcome<Answer> answer(const Surroundings &) override
    {
        const auto unit = parseLengthUnit(m_unit);
        if (!unit)
            return unit.faults();
        const auto text = exchange::readFile(m_file);
        if (!text)
            return text.faults();
        const auto trials = exchange::readTrialsCsv(text.value(), {.file = m_file, .unit = unit.value()});
        if (!trials)
            return trials.faults();
        const auto study = analysis::gaugeStudy(trials.value());
        if (!study)
            return blamed(study.faults());
        const auto dimension = trials.value().front().value.dimension();
        return Answer{.text = m_json ? exchange::gaugeStudyJson(study.value()) : studyText(study.value(), dimension)};
    }

private:
    std::vector<outcome::Fault> blamed(std::vector<outcome::Fault> faults) const
    {
        for (outcome::Fault &fault : faults)
            fault.file = m_file;
        return faults;
    }

    std::string m_file;
    std::optional<std::string> m_unit;
    bool m_json = false;
};

} // namespace

std::unique_ptr<Command> makeGaugeStudyCommand()
{
    return std::make_unique<GaugeStudyCommand>();
}

} // namespace hammerline::command_line
