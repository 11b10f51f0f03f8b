#include "exchange/setup_json.h"

#include "exchange/inside/document_reader.h"
#include "exchange/inside/json_writer.h"

#include <algorithm>

namespace hammerline::exchange {
namespace {

using action::Adjustment;
using action::Rail;
using action::Setup;
using catalogue::Quantity;

constexpr const char *formatName = "hammerline-action-setup";
constexpr int newestVersion = 1;

void readPunchings(ObjectReader &reader, Adjustment &adjustment)
{
    const Json *value = reader.find("punchings_mm");
    if (value == nullptr)
        return;
    const std::string path = reader.pathOf("punchings_mm");
    if (!value->is_array()) {
        reader.faults().add(path, "must be a list in brackets of thicknesses in mm");
        return;
    }
    for (std::size_t index = 0; index < value->size(); ++index) {
        const auto number = numberOf((*value)[index], path + "[" + std::to_string(index) + "]", reader.faults());
        if (number)
            adjustment.punchings.push_back(units::Amount::fromDisplay(units::Dimension::Length, *number).asLength());
    }
}

std::optional<units::Amount> readPerTurn(ObjectReader &reader, units::Dimension dimension)
{
    const std::string key = std::string(units::displaySymbol(dimension)) + "_per_turn";
    const auto number = reader.number(key);
    return number ? std::optional(units::Amount::fromDisplay(dimension, *number)) : std::nullopt;
}

double readMinutes(ObjectReader &reader)
{
    return reader.requiredNumber("minutes", "the minutes that it takes must stand here").value_or(0);
}

Adjustment readAdjustment(const Json &json, const std::string &path, Quantity quantity, FaultList &list)
{
    ObjectReader reader(json, path, list);
    const units::Dimension dimension = catalogue::infoOf(quantity).dimension;
    Adjustment adjustment;
    adjustment.step = reader.requiredAmount("step", dimension);
    adjustment.most = reader.requiredAmount("max", dimension);
    adjustment.minutes = readMinutes(reader);
    adjustment.perTurn = readPerTurn(reader, dimension);
    if (quantity == Quantity::Dip || quantity == Quantity::KeyHeight)
        readPunchings(reader, adjustment);
    adjustment.source = reader.text("source");
    adjustment.remark = reader.text("remark");
    reader.refuseOthers();
    return adjustment;
}

void readAdjustments(ObjectReader &root, Setup &setup)
{
    const Json *json = root.find("adjustments");
    if (json == nullptr)
        return;
    if (!json->is_object()) {
        root.faults().add("adjustments", "must be an object in braces, one adjustment a quantity");
        return;
    }
    for (const auto &item : json->items()) {
        const std::string path = "adjustments." + item.key();
        const auto quantity = catalogue::findQuantity(item.key());
        if (!quantity)
            root.faults().add(path, "is no quantity; key_height, lost_motion, let_off and the like would be right");
        else
            setup.adjustments[*quantity] = readAdjustment(item.value(), path, *quantity, root.faults());
    }
}

std::optional<keyboard::NoteRange> readRange(ObjectReader &reader)
{
    const Json *value = reader.find("notes");
    if (value == nullptr)
        return std::nullopt;
    const std::string path = reader.pathOf("notes");
    if (!value->is_array() || value->size() != 2) {
        reader.faults().add(path, "must be a list of two notes, the first and the last, such as [1, 88]");
        return std::nullopt;
    }
    const auto first = noteNumberOf((*value)[0], path + "[0]", reader.faults());
    const auto last = noteNumberOf((*value)[1], path + "[1]", reader.faults());
    if (!first || !last)
        return std::nullopt;
    return keyboard::NoteRange{keyboard::Note(*first), keyboard::Note(*last)};
}

Quantity readRailQuantity(ObjectReader &reader)
{
    const std::string right = "\"blow\", \"let_off\" or \"checking\" must stand here";
    const Json *value = reader.require("quantity", right);
    if (value == nullptr)
        return Quantity::Blow;
    const auto quantity = value->is_string() ? catalogue::findQuantity(value->get<std::string>()) : std::nullopt;
    if (!quantity)
        reader.faults().add(reader.pathOf("quantity"), "is no quantity; " + right);
    return quantity.value_or(Quantity::Blow);
}

action::RailShape readShape(ObjectReader &reader)
{
    const std::string right = "\"uniform\" or \"linear\" must stand here";
    const Json *value = reader.require("shape", right);
    if (value == nullptr || *value == Json("uniform"))
        return action::RailShape::Uniform;
    if (*value != Json("linear"))
        reader.faults().add(reader.pathOf("shape"), "is no shape; " + right);
    return action::RailShape::Linear;
}

Rail readRail(const Json &json, const std::string &id, FaultList &list)
{
    ObjectReader reader(json, "rails." + id, list);
    Rail rail;
    rail.id = id;
    rail.quantity = readRailQuantity(reader);
    rail.shape = readShape(reader);
    rail.step = reader.requiredAmount("step", units::Dimension::Length);
    rail.most = reader.requiredAmount("max", units::Dimension::Length);
    rail.minutes = readMinutes(reader);
    rail.notes = readRange(reader);
    rail.source = reader.text("source");
    rail.remark = reader.text("remark");
    reader.refuseOthers();
    return rail;
}

void readRails(ObjectReader &root, Setup &setup)
{
    const Json *json = root.find("rails");
    if (json == nullptr)
        return;
    if (!json->is_object()) {
        root.faults().add("rails", "must be an object in braces, one rail a name");
        return;
    }
    for (const auto &item : json->items())
        setup.rails.push_back(readRail(item.value(), item.key(), root.faults()));
    std::ranges::sort(setup.rails, {}, &Rail::id);
}

OrderedJson adjustmentJson(const Adjustment &adjustment)
{
    OrderedJson json;
    putAmount(json, "step", adjustment.step);
    putAmount(json, "max", adjustment.most);
    putNumber(json, "minutes", adjustment.minutes);
    if (adjustment.perTurn)
        json[std::string(units::displaySymbol(adjustment.perTurn->dimension())) + "_per_turn"] =
            adjustment.perTurn->inDisplay();
    for (const units::Length thickness : adjustment.punchings)
        json["punchings_mm"].push_back(thickness.inMillimetres());
    putText(json, "source", adjustment.source);
    putText(json, "remark", adjustment.remark);
    return json;
}

OrderedJson railJson(const Rail &rail)
{
    OrderedJson json;
    json["quantity"] = catalogue::idOf(rail.quantity);
    json["shape"] = rail.shape == action::RailShape::Linear ? "linear" : "uniform";
    putAmount(json, "step", rail.step);
    putAmount(json, "max", rail.most);
    putNumber(json, "minutes", rail.minutes);
    if (rail.notes)
        json["notes"] = {rail.notes->first.number(), rail.notes->last.number()};
    putText(json, "source", rail.source);
    putText(json, "remark", rail.remark);
    return json;
}

void readParts(ObjectReader &reader, Setup &setup)
{
    setup.name = reader.text("name");
    setup.action = readAction(reader);
    const std::string ratio = "the action's lever ratio, such as 5.0, must stand here";
    setup.leverRatio = reader.requiredNumber("lever_ratio", ratio).value_or(setup.leverRatio);
    setup.source = reader.text("source");
    setup.remark = reader.text("remark");
    readAdjustments(reader, setup);
    readRails(reader, setup);
}

} // namespace

outcome::Outcome<Setup> readSetup(std::string_view json, const std::string &file)
{
    return readDocument<Setup>(
        json, file,
        {.format = formatName, .newestVersion = newestVersion, .read = readParts, .faultsOf = action::faultsOf});
}

std::string writeSetup(const Setup &setup)
{
    OrderedJson json = documentHead(formatName, newestVersion);
    putText(json, "name", setup.name);
    json["action"] = catalogue::idOf(setup.action);
    putNumber(json, "lever_ratio", setup.leverRatio);
    putText(json, "source", setup.source);
    putText(json, "remark", setup.remark);
    json["adjustments"] = OrderedJson::object();
    for (const auto &[quantity, adjustment] : setup.adjustments)
        json["adjustments"][std::string(catalogue::idOf(quantity))] = adjustmentJson(adjustment);
    json["rails"] = OrderedJson::object();
    for (const Rail &rail : setup.rails)
        json["rails"][rail.id] = railJson(rail);
    return documentText(json);
}

} // namespace hammerline::exchange
