#include "catalogue/catalogue.h"

#include <algorithm>
#include <array>

namespace hammerline::catalogue {

namespace {

constexpr auto length = units::Dimension::Length;
constexpr auto mass = units::Dimension::Mass;

// In the order of the enum: infoOf looks rows up by it.
constexpr std::array<QuantityInfo, quantityCount> rows{{
    // quantity, id, dimension, on verticals, on grands, may be negative, compares within colour
    {Quantity::KeyHeight, "key_height", length, true, true, true, true},
    {Quantity::Blow, "blow", length, true, true, false, false},
    {Quantity::LostMotion, "lost_motion", length, true, true, false, false},
    {Quantity::LetOff, "let_off", length, true, true, false, false},
    {Quantity::Drop, "drop", length, false, true, false, false},
    {Quantity::Dip, "dip", length, true, true, false, true},
    {Quantity::Aftertouch, "aftertouch", length, true, true, false, true},
    {Quantity::Checking, "checking", length, true, true, false, false},
    {Quantity::DamperStart, "damper_start", length, true, true, false, false},
    {Quantity::DownWeight, "down_weight", mass, true, true, false, false},
    {Quantity::UpWeight, "up_weight", mass, true, true, false, false},
}};

} // namespace

std::string_view idOf(ActionKind action)
{
    return action == ActionKind::Vertical ? "vertical" : "grand";
}

std::optional<ActionKind> findAction(std::string_view id)
{
    for (const ActionKind action : {ActionKind::Vertical, ActionKind::Grand})
        if (id == idOf(action))
            return action;
    return std::nullopt;
}

std::span<const QuantityInfo> all()
{
    return rows;
}

const QuantityInfo &infoOf(Quantity quantity)
{
    return rows[static_cast<std::size_t>(quantity)];
}

std::string_view idOf(Quantity quantity)
{
    return infoOf(quantity).id;
}

std::optional<Quantity> findQuantity(std::string_view id)
{
    const auto row = std::find_if(rows.begin(), rows.end(), [id](const QuantityInfo &info) { return info.id == id; });
    return row == rows.end() ? std::nullopt : std::optional(row->quantity);
}

bool has(std::optional<ActionKind> action, Quantity quantity)
{
    if (!action)
        return true;
    return *action == ActionKind::Vertical ? infoOf(quantity).onVerticals : infoOf(quantity).onGrands;
}

} // namespace hammerline::catalogue
