#include "action/work_item.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <memory>
#include <optional>

namespace hammerline::action {

using units::Amount;

namespace {

constexpr std::string_view railWord = "rail ", byWord = " by ", toWord = " to ", turnsWord = " turns", comma = ", ",
                           setWord = ", set ";

std::string amountText(Amount amount)
{
    return units::exactDecimal(amount) + ' ' + units::displaySymbol(amount.dimension());
}

std::string endsText(Amount bass, Amount treble)
{
    return amountText(bass) + (bass == treble ? std::string() : std::string(toWord) + amountText(treble));
}

std::string turnsText(double turns)
{
    char text[32]; // NOLINT: std::to_chars writes into it
    const auto end = std::to_chars(std::begin(text), std::end(text), std::round(turns * 1e4) / 1e4).ptr;
    return std::string(std::begin(text), end);
}

std::optional<double> numberIn(std::string_view text)
{
    double number = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
    if (error != std::errc() || end != text.data() + text.size() || !std::isfinite(number))
        return std::nullopt;
    return number;
}

/// The inverse of amountText.
std::optional<Amount> amountIn(std::string_view text)
{
    for (const units::Dimension dimension : {units::Dimension::Length, units::Dimension::Mass}) {
        const std::string symbol = std::string(" ") + units::displaySymbol(dimension);
        if (!text.ends_with(symbol))
            continue;
        const auto number = numberIn(text.substr(0, text.size() - symbol.size()));
        return number ? std::optional(Amount::fromDisplay(dimension, *number)) : std::nullopt;
    }
    return std::nullopt;
}

/// The two sides of the last `word`; the second is empty where it isn't there.
std::pair<std::string_view, std::string_view> split(std::string_view text, std::string_view word)
{
    const auto where = text.rfind(word);
    if (where == std::string_view::npos)
        return {text, {}};
    return {text.substr(0, where), text.substr(where + word.size())};
}

std::optional<double> turnsIn(std::string_view item)
{
    std::string_view turns = split(item, comma).second;
    if (!turns.ends_with(turnsWord))
        return std::nullopt;
    turns.remove_suffix(turnsWord.size());
    return numberIn(turns);
}

/// The inverse of endsText.
std::optional<RailSetting> endsIn(std::string_view text)
{
    const auto [from, to] = split(text, toWord);
    const auto bass = amountIn(from), treble = to.empty() ? bass : amountIn(to);
    if (!bass || !treble || bass->dimension() != treble->dimension())
        return std::nullopt;
    return RailSetting{*bass, *treble};
}

RailSetting sum(const RailSetting &one, const RailSetting &other)
{
    return {one.bass + other.bass, one.treble + other.treble};
}

RailSetting askedOf(const RailMove &move)
{
    return move.setting.value_or(RailSetting{move.bass, move.treble});
}

/// "let_off 40": the screw; no amount yet.
std::optional<Move> screwIn(std::string_view name)
{
    const auto [id, number] = split(name, " ");
    const auto quantity = catalogue::findQuantity(id);
    const auto note = numberIn(number);
    if (!quantity || !note || *note != std::floor(*note) || std::abs(*note) > 1000)
        return std::nullopt;
    return Move{.note = keyboard::Note(static_cast<int>(*note)), .adjust = *quantity};
}

class Collecting {
public:
    explicit Collecting(const PlanTask &kept) : m_kept(kept) {}

    void add(std::string_view item)
    {
        const auto [name, amount] = split(workIn(item), byWord);
        if (name.starts_with(railWord))
            addRail(name.substr(railWord.size()), amount, endsIn(split(item, setWord).second));
        else if (auto move = screwIn(name))
            addMove(*move, amount, turnsIn(item));
    }
    [[nodiscard]] DoneWork work() const { return m_work; }

private:
    void addRail(std::string_view id, std::string_view amount, const std::optional<RailSetting> &setting)
    {
        RailMove move{.rail = std::string(id)};
        const auto rail = std::ranges::find(m_kept.setup.rails, move.rail, &Rail::id);
        if (rail == m_kept.setup.rails.end())
            return;
        move.quantity = rail->quantity;
        if (const auto by = endsIn(amount))
            move.bass = by->bass, move.treble = by->treble, move.setting = setting;
        else if (const RailMove *planned = plannedRail(move.rail); planned && amount.empty())
            move = *planned;
        else
            return;
        const auto known = std::ranges::find(m_work.rails, move.rail, &RailMove::rail);
        if (known == m_work.rails.end())
            return m_work.rails.push_back(move);
        if (known->setting || move.setting)
            known->setting = sum(askedOf(*known), askedOf(move));
        known->bass = known->bass + move.bass;
        known->treble = known->treble + move.treble;
    }

    void addMove(Move move, std::string_view amount, std::optional<double> turns)
    {
        const auto by = amountIn(amount);
        if (by && by->dimension() == catalogue::infoOf(move.adjust).dimension)
            move.by = *by, move.turns = turns;
        else if (const Move *planned = plannedMove(move); planned && amount.empty())
            move = *planned;
        else
            return;
        const auto known = std::ranges::find_if(
            m_work.moves, [&move](const Move &each) { return each.note == move.note && each.adjust == move.adjust; });
        if (known == m_work.moves.end())
            return m_work.moves.push_back(move);
        known->by = known->by + move.by;
        known->turns = known->turns && move.turns ? std::optional(*known->turns + *move.turns) : std::nullopt;
    }

    const Plan &plan()
    {
        if (!m_plan)
            m_plan = std::make_unique<const Plan>(bestPlan(m_kept));
        return *m_plan;
    }
    const RailMove *plannedRail(const std::string &id)
    {
        const auto found = std::ranges::find(plan().rails, id, &RailMove::rail);
        return found == plan().rails.end() ? nullptr : &*found;
    }
    const Move *plannedMove(const Move &screw)
    {
        for (const Move &move : plan().moves)
            if (move.note == screw.note && move.adjust == screw.adjust)
                return &move;
        return nullptr;
    }

    const PlanTask &m_kept;
    std::unique_ptr<const Plan> m_plan{}; ///< made where an item needs it
    DoneWork m_work{};
};

} // namespace

std::string itemOf(const Move &move)
{
    std::string item =
        std::string(catalogue::idOf(move.adjust)) + ' ' + std::to_string(move.note.number()) + std::string(byWord);
    item += amountText(move.by);
    if (move.turns)
        item += std::string(comma) + turnsText(*move.turns) + std::string(turnsWord);
    return item;
}

std::string itemOf(const RailMove &rail)
{
    std::string item = std::string(railWord) + rail.rail + std::string(byWord) + endsText(rail.bass, rail.treble);
    if (rail.setting)
        item += std::string(setWord) + endsText(rail.setting->bass, rail.setting->treble);
    return item;
}

std::string_view workIn(std::string_view item)
{
    return split(item, item.starts_with(railWord) ? setWord : comma).first;
}

DoneWork workFrom(const std::vector<std::string> &items, const PlanTask &kept)
{
    Collecting collecting(kept);
    for (const std::string &item : items)
        collecting.add(item);
    return collecting.work();
}

} // namespace hammerline::action
