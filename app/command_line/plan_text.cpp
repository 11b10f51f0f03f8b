#include "command_line/inside/plan_text.h"

#include "command_line/inside/plain_table.h"
#include "command_line/inside/verdict_words.h"

#include "exchange/plan_json.h"

#include <fmt/format.h>

#include <cmath>
#include <map>

namespace hammerline::command_line {
namespace {

std::string signedText(units::Amount amount)
{
    return (amount.baseCount() > 0 ? "+" : "") + benchText(amount);
}

std::string idText(catalogue::Quantity quantity)
{
    return std::string(catalogue::idOf(quantity));
}

/// To the nearest eighth, as far as a hand can tell: "+1/4 turn", "-1 3/8 turns".
std::string turnsText(double turns)
{
    const long eighths = std::lround(std::abs(turns) * 8);
    if (eighths == 0)
        return "less than 1/8 turn";
    static constexpr const char *parts[] = {"", "1/8", "1/4", "3/8", "1/2", "5/8", "3/4", "7/8"};
    const long whole = eighths / 8;
    std::string text = whole > 0 ? std::to_string(whole) : std::string();
    if (eighths % 8 != 0)
        text += (text.empty() ? "" : " ") + std::string(parts[eighths % 8]);
    return (turns < 0 ? "-" : "+") + text + (eighths > 8 ? " turns" : " turn");
}

std::string thickness(units::Length length)
{
    return units::exactDecimal(length);
}

std::string howText(const action::Move &move)
{
    if (move.turns)
        return turnsText(*move.turns);
    if (!move.punchings)
        return {};
    if (move.punchings->empty())
        return "no punching comes near";
    std::string text;
    for (const units::Length piece : *move.punchings)
        text += (text.empty() ? "" : " + ") + thickness(piece);
    return (move.by.baseCount() > 0 ? "take out " : "put in ") + text + " mm";
}

std::string railsText(const action::Plan &plan)
{
    if (plan.rails.empty())
        return {};
    PlainTable table({{"rail"}, {"moves"}, {"bass end", Align::Right}, {"treble end", Align::Right}});
    for (const action::RailMove &move : plan.rails)
        table.add({move.rail, idText(move.quantity), signedText(move.bass), signedText(move.treble)});
    return table.text() + "\n";
}

std::string movesText(const action::Plan &plan)
{
    PlainTable table({{"", Align::Right}, {"note"}, {"adjust"}, {"by", Align::Right}, {"how"}});
    for (const action::Move &move : plan.moves)
        table.add(
            {std::to_string(move.order), move.note.name(), idText(move.adjust), signedText(move.by), howText(move)});
    return table.empty() ? std::string("Nothing is to be moved.\n") : table.text();
}

std::string unresolvedText(const action::Plan &plan)
{
    PlainTable table(std::vector<PlainTable::Column>(3));
    for (const action::Unresolved &one : plan.unresolved)
        table.add({"  " + one.note.name(), idText(one.quantity), std::string(exchange::wordsOf(one.why))});
    return table.empty() ? std::string() : "\nStays outside\n" + table.text();
}

std::string remeasureText(const action::Plan &plan)
{
    std::map<catalogue::Quantity, std::vector<keyboard::Note>> notes;
    for (const action::Remeasure &one : plan.remeasure)
        if (notes[one.quantity].empty() || notes[one.quantity].back() != one.note)
            notes[one.quantity].push_back(one.note);
    PlainTable table(std::vector<PlainTable::Column>(2));
    for (const auto &[quantity, those] : notes)
        table.add({"  " + idText(quantity), notesText(those)});
    return table.empty() ? std::string() : "\nMeasure again afterwards\n" + table.text();
}

} // namespace

std::string planText(const action::Plan &plan)
{
    const std::string head = fmt::format("{} of {} pairs are inside, {} after {:.0f} minutes of work.\n\n",
                                         plan.pairsInBefore, plan.pairs.size(), plan.pairsInAfter, plan.minutes);
    return head + railsText(plan) + movesText(plan) + unresolvedText(plan) + remeasureText(plan);
}

} // namespace hammerline::command_line
