#include "command_line/inside/check_text.h"

#include "command_line/inside/plain_table.h"
#include "command_line/inside/verdict_words.h"

#include <algorithm>
#include <map>

namespace hammerline::command_line {
namespace {

using tolerance::Status;
using tolerance::Verdict;

std::string headLine(const CheckedFile &checked)
{
    return withoutControls(checked.file) + ", judged by " + withoutControls(checked.setId) + " (" +
           std::string(catalogue::idOf(checked.set.action)) + "), " + checked.compass.first.name() + " to " +
           checked.compass.last.name() + "\n\n";
}

std::string summaryTable(const analysis::Summaries &summaries)
{
    PlainTable table({{"quantity", Align::Left},
                      {"read", Align::Right},
                      {"in", Align::Right},
                      {"marginal", Align::Right},
                      {"out", Align::Right},
                      {"missing", Align::Right},
                      {"uneven", Align::Right},
                      {"mean", Align::Right},
                      {"sd", Align::Right},
                      {"least", Align::Right},
                      {"most", Align::Right}});
    for (const auto &[quantity, summary] : summaries) {
        const auto dimension = catalogue::infoOf(quantity).dimension;
        const auto verdicts = [&](int count) { return summary.judged ? std::to_string(count) : std::string("-"); };
        const auto figure = [&](const std::optional<double> &value) {
            return value ? benchText(*value, dimension) : std::string("-");
        };
        table.add({std::string(catalogue::idOf(quantity)), std::to_string(summary.count), verdicts(summary.in),
                   verdicts(summary.marginal), verdicts(summary.out), verdicts(summary.missing),
                   verdicts(summary.uneven), figure(summary.mean), figure(summary.sd), figure(summary.min),
                   figure(summary.max)});
    }
    return table.text();
}

std::vector<Verdict> worstFirst(const std::vector<Verdict> &verdicts, Status status)
{
    std::vector<Verdict> found;
    std::ranges::copy_if(verdicts, std::back_inserter(found),
                         [status](const Verdict &v) { return v.status == status; });
    std::ranges::stable_sort(found, std::ranges::greater(),
                             [](const Verdict &v) { return v.halfWidths().value_or(-1); });
    return found;
}

std::string listed(const std::string &title, const std::vector<Verdict> &verdicts)
{
    if (verdicts.empty())
        return {};
    PlainTable table(std::vector<PlainTable::Column>(5));
    for (const Verdict &verdict : verdicts)
        table.add({"  " + verdict.note.name(), std::string(catalogue::idOf(verdict.quantity)),
                   benchText(*verdict.value), sentenceOf(verdict), "(" + limitsText(*verdict.limits) + ")"});
    return "\n" + title + "\n" + table.text();
}

template <typename Chosen>
std::string notesByQuantity(const std::string &title, const std::vector<Verdict> &verdicts, Chosen chosen)
{
    std::map<catalogue::Quantity, std::vector<keyboard::Note>> notes;
    for (const Verdict &verdict : verdicts)
        if (chosen(verdict))
            notes[verdict.quantity].push_back(verdict.note);
    PlainTable table(std::vector<PlainTable::Column>(2));
    for (const auto &[quantity, those] : notes)
        table.add({"  " + std::string(catalogue::idOf(quantity)), notesText(those)});
    return table.empty() ? std::string() : "\n" + title + "\n" + table.text();
}

bool isInByDoubt(const Verdict &verdict)
{
    return verdict.status == Status::In && verdict.withinDoubt();
}

std::string countsLine(const std::vector<Verdict> &verdicts)
{
    const auto count = [&](Status status) {
        return static_cast<int>(std::ranges::count(verdicts, status, &Verdict::status));
    };
    const int unjudged = count(Status::Unjudged);
    const int out = count(Status::Out);
    const int missing = count(Status::Missing);
    const int judged = static_cast<int>(verdicts.size()) - unjudged;
    std::string line = "\n";
    line += out + missing == 0 ? "All " + counted(judged, "pair", "pairs") + " inside"
                               : counted(out, "pair", "pairs") + " out and " + std::to_string(missing) +
                                     " missing of " + std::to_string(judged);
    if (count(Status::Marginal) > 0)
        line += "; " + std::to_string(count(Status::Marginal)) + " within the gauge's doubt";
    const auto doubtful = std::ranges::count_if(verdicts, isInByDoubt);
    if (doubtful > 0)
        line += "; " + std::to_string(doubtful) + " in, but within the doubt of the reading";
    return line + ".\n";
}

} // namespace

std::string checkText(const CheckedFile &checked, const analysis::Summaries &summaries)
{
    const auto &verdicts = checked.judgement.verdicts;
    return headLine(checked) + summaryTable(summaries) + countsLine(verdicts) +
           listed("Out, worst first", worstFirst(verdicts, Status::Out)) +
           listed("Marginal, inside but within the gauge's doubt of a limit", worstFirst(verdicts, Status::Marginal)) +
           notesByQuantity("In, but nearer to a limit than the set's uncertainty and the digits written down can tell",
                           verdicts, isInByDoubt) +
           notesByQuantity("Missing", verdicts, [](const Verdict &v) { return v.status == Status::Missing; }) +
           notesByQuantity("Uneven with the note below", verdicts, [](const Verdict &v) { return v.uneven; });
}

} // namespace hammerline::command_line
