// hammerline rejudge: what if the whole shop were judged by another set? Every pass is judged by what its instrument is
// judged by now, and by that set; nothing is written.

#include "command_line/inside/all_commands.h"
#include "command_line/inside/logbook_input.h"
#include "command_line/inside/plain_table.h"

#include "exchange/tolerance_json.h"
#include "shop/judge_shop.h"

#include <fmt/format.h>

#include <algorithm>
#include <filesystem>
#include <span>
#include <thread>

namespace hammerline::command_line {
namespace {

using shop::TwoSets;
using tolerance::Status;

constexpr std::size_t mostInstruments = 20; ///< in the text; JSON has them all

/// A built-in set, a file, or a set that an instrument of the logbook is judged by.
outcome::Outcome<tolerance::ToleranceSet> findSet(const logbook::Logbook &book, const std::string &name)
{
    auto named = exchange::findToleranceSet(name);
    if (named)
        return std::move(named).value().set;
    std::error_code tooLong; // then it is no file either
    if (!std::filesystem::exists(name, tooLong))
        for (const logbook::PassTolerance &used : book.setsInUse().sets)
            if (auto set = exchange::readToleranceSet(used.text, used.id);
                set && (used.id == name || set.value().name == name))
                return set;
    return named.faults();
}

std::string percent(const tolerance::Tally &tally)
{
    const int judged = tally.of(Status::In) + tally.of(Status::Marginal) + tally.of(Status::Out);
    return judged == 0 ? "-" : fmt::format("{:.1f} %", 100.0 * tally.of(Status::Out) / judged);
}

PlainTable tableOf(const std::string &what)
{
    std::vector<PlainTable::Column> columns{{what}};
    for (const char *head :
         {"in now", "then", "marginal now", "then", "out now", "then", "out now", "then", "more out"})
        columns.push_back({head, Align::Right});
    return PlainTable(std::move(columns));
}

void add(PlainTable &table, const std::string &name, const TwoSets &counts)
{
    std::vector<std::string> cells{name};
    for (const Status status : {Status::In, Status::Marginal, Status::Out})
        for (const tolerance::Tally &tally : {counts.now, counts.then})
            cells.push_back(std::to_string(tally.of(status)));
    for (const tolerance::Tally &tally : {counts.now, counts.then})
        cells.push_back(percent(tally));
    cells.push_back(counts.bothJudge() ? fmt::format("{:+d}", counts.moreOut()) : "-");
    table.add(std::move(cells));
}

/// Somebody may have taken it in meanwhile.
std::string nameOf(instrument::InstrumentId id, const shop::Names &names)
{
    const auto name = names.find(id);
    return name == names.end() ? std::to_string(id) : name->second;
}

std::string rejudgedText(const shop::Asked &asked, const shop::ShopJudged &judged, const shop::Names &names)
{
    std::string text =
        fmt::format("\"{}\" beside what each instrument is judged by now; instruments: {}, passes: {} ({})\n\n",
                    withoutControls(asked.set.name), judged.size(), shop::passesIn(judged), shop::idOf(asked.which));
    if (judged.empty())
        return text + "No instrument with that set's action was read in such a pass.\n";
    PlainTable quantities = tableOf("quantity");
    for (const auto &row : shop::rowsByQuantity(judged))
        add(quantities, std::string(catalogue::idOf(row.key)), row.counts);
    add(quantities, "all", shop::sumOf(judged));
    PlainTable instruments = tableOf("instrument, worst change first");
    const auto rows = shop::rowsByInstrument(judged);
    for (const auto &row : std::span(rows).first(std::min(rows.size(), mostInstruments)))
        add(instruments, nameOf(row.key, names), row.counts);
    text += quantities.text() + '\n' + instruments.text();
    if (rows.size() > mostInstruments)
        text += fmt::format("and {} more; --json lists all\n", rows.size() - mostInstruments);
    return text;
}

class RejudgeCommand : public Command {
public:
    std::string name() const override { return "rejudge"; }
    std::string summary() const override { return "what another tolerance set would say of the whole shop"; }

    void declare(Options &options) override
    {
        options.positional("LOGBOOK", "The logbook", m_logbook);
        options.value("tolerances", "SET", "Id of a built-in set, a JSON file, or a set that the logbook judges by",
                      m_set);
        options.value("passes", "WHICH", "all (the default), newest, as-found or as-left", m_passes);
        options.flag("json", "Answer in JSON", m_json);
    }

    outcome::Outcome<Answer> answer(const Surroundings &) override
    {
        const auto which = shop::findWhich(m_passes.value_or("all"));
        if (!which)
            return outcome::Fault{.problem =
                                      "--passes: \"" + *m_passes + "\" is none of all, newest, as-found and as-left"};
        const auto book = openToRead(m_logbook);
        auto set = findSet(book, m_set);
        if (!set)
            return set.faults();
        const shop::Asked asked{.set = std::move(set).value(), .which = *which};
        shop::Names names;
        for (const logbook::InstrumentLine &line : book.instrumentLines())
            names[line.id] = line.name;
        shop::Course course;
        const auto judged =
            *shop::judgeShop(m_logbook, asked, std::max(1U, std::thread::hardware_concurrency()), course);
        return Answer{.text = m_json ? shop::judgedJson(asked, judged, names) : rejudgedText(asked, judged, names)};
    }

private:
    std::string m_logbook;
    std::string m_set;
    std::optional<std::string> m_passes;
    bool m_json = false;
};

} // namespace

std::unique_ptr<Command> makeRejudgeCommand()
{
    return std::make_unique<RejudgeCommand>();
}

} // namespace hammerline::command_line
