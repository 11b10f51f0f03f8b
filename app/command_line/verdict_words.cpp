#include "command_line/inside/verdict_words.h"

#include <fmt/format.h>

#include <map>

namespace hammerline::command_line {
namespace {

using catalogue::Quantity;

struct Directions {
    std::string_view below;
    std::string_view above;
};

const std::map<Quantity, Directions> directions{
    {Quantity::KeyHeight, {"too low", "too high"}},
    {Quantity::Blow, {"too close to the string", "too far from the string"}},
    {Quantity::LostMotion, {"too little play", "too much play"}},
    {Quantity::LetOff, {"too close to the string", "too far from the string"}},
    {Quantity::Drop, {"too little drop", "too much drop"}},
    {Quantity::Dip, {"too shallow", "too deep"}},
    {Quantity::Aftertouch, {"too little left", "too much left"}},
    {Quantity::Checking, {"caught too close to the string", "caught too far from the string"}},
    {Quantity::DamperStart, {"lifts too early", "lifts too late"}},
    {Quantity::DownWeight, {"too light", "too heavy"}},
    {Quantity::UpWeight, {"returns too weakly", "returns too strongly"}},
};

} // namespace

std::string benchText(units::Amount amount)
{
    const bool length = amount.dimension() == units::Dimension::Length;
    const units::Unit unit = length ? units::Unit::Millimetre : units::Unit::Gram;
    return units::fixedDecimal(amount, unit, length ? 2 : 1) + " " + units::symbolOf(unit);
}

std::string benchText(double display, units::Dimension dimension)
{
    return fmt::format("{:.{}f} {}", display, dimension == units::Dimension::Length ? 2 : 1,
                       units::displaySymbol(dimension));
}

std::string_view directionOf(Quantity quantity, bool aboveTarget)
{
    const Directions &words = directions.at(quantity);
    return aboveTarget ? words.above : words.below;
}

std::string sentenceOf(const tolerance::Verdict &verdict)
{
    if (!verdict.value)
        return "not read";
    if (!verdict.deviation)
        return "not judged";
    if (verdict.deviation->baseCount() == 0)
        return "on target";
    return benchText(verdict.deviation->magnitude()) + " " +
           std::string(directionOf(verdict.quantity, verdict.deviation->baseCount() > 0));
}

std::string limitsText(const tolerance::Limits &limits)
{
    if (limits.low && limits.high) {
        const std::string low = benchText(*limits.low);
        return low.substr(0, low.find(' ')) + " to " + benchText(*limits.high);
    }
    if (limits.low)
        return "at least " + benchText(*limits.low);
    return limits.high ? "at most " + benchText(*limits.high) : std::string("any");
}

std::string counted(int count, const std::string &one, const std::string &many)
{
    return std::to_string(count) + " " + (count == 1 ? one : many);
}

std::string notesText(const std::vector<keyboard::Note> &notes)
{
    std::string text;
    for (std::size_t first = 0; first < notes.size();) {
        std::size_t last = first;
        while (last + 1 < notes.size() && notes[last + 1].number() == notes[last].number() + 1)
            ++last;
        text += (text.empty() ? "" : ", ") + notes[first].name();
        if (last > first)
            text += (last == first + 1 ? ", " : "-") + notes[last].name();
        first = last + 1;
    }
    return text;
}

} // namespace hammerline::command_line
