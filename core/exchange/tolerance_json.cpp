#include "exchange/tolerance_json.h"

#include "exchange/inside/answer_parts.h"
#include "exchange/inside/document_reader.h"

#include <algorithm>

namespace hammerline::exchange {
namespace {

using tolerance::Entry;
using tolerance::Point;
using tolerance::Points;
using tolerance::ToleranceSet;
using units::Dimension;

constexpr const char *formatName = "hammerline-tolerance-set";
constexpr int newestVersion = 1;

Point readPoint(const Json &json, const std::string &path, Dimension dimension, FaultList &list)
{
    ObjectReader reader(json, path, list);
    Point point;
    if (const Json *note = reader.require("note", "the number of a note must stand here"))
        point.note = keyboard::Note(noteNumberOf(*note, reader.pathOf("note"), list).value_or(0));
    point.low = reader.amount("low", dimension);
    point.target = reader.requiredAmount("target", dimension);
    point.high = reader.amount("high", dimension);
    point.source = reader.text("source");
    point.remark = reader.text("remark");
    reader.refuseOthers();
    return point;
}

/// Sorted by note; what is wrong between points is found by tolerance::faultsOf.
Points readPoints(const Json &json, const std::string &path, Dimension dimension, FaultList &list)
{
    Points points;
    if (!json.is_array() || json.empty()) {
        list.add(path, "must be a list in brackets of at least one point");
        return points;
    }
    for (std::size_t index = 0; index < json.size(); ++index)
        points.push_back(readPoint(json[index], path + "[" + std::to_string(index) + "]", dimension, list));
    std::ranges::stable_sort(points, {}, &Point::note);
    return points;
}

/// A colour's object, which holds `points` alone.
Points readColour(const Json &json, const std::string &path, Dimension dimension, FaultList &list)
{
    ObjectReader reader(json, path, list);
    Points points;
    if (const Json *inner = reader.require("points", "a list of points must stand here"))
        points = readPoints(*inner, reader.pathOf("points"), dimension, list);
    reader.refuseOthers();
    return points;
}

void readLists(ObjectReader &reader, Entry &entry, Dimension dimension)
{
    FaultList &list = reader.faults();
    const Json *both = reader.find("points");
    const Json *naturals = reader.find("naturals");
    const Json *sharps = reader.find("sharps");
    if (both != nullptr && (naturals != nullptr || sharps != nullptr))
        list.add(reader.pathOf("points"),
                 "stands beside naturals or sharps; either points alone, or one or both of these");
    else if (both == nullptr && naturals == nullptr && sharps == nullptr && reader.isObject())
        list.add(reader.pathOf("points"), "is missing; points, or one or both of naturals and sharps, must stand here");
    if (both != nullptr)
        entry.both = readPoints(*both, reader.pathOf("points"), dimension, list);
    if (naturals != nullptr)
        entry.naturals = readColour(*naturals, reader.pathOf("naturals"), dimension, list);
    if (sharps != nullptr)
        entry.sharps = readColour(*sharps, reader.pathOf("sharps"), dimension, list);
}

tolerance::Rule readRule(ObjectReader &reader)
{
    const Json *value = reader.find("rule");
    if (value == nullptr || *value == Json("simple"))
        return tolerance::Rule::Simple;
    if (*value != Json("guarded"))
        reader.faults().add(reader.pathOf("rule"), "must be \"simple\" or \"guarded\"");
    return tolerance::Rule::Guarded;
}

Entry readEntry(const Json &json, const std::string &path, Dimension dimension, FaultList &list)
{
    ObjectReader reader(json, path, list);
    Entry entry;
    readLists(reader, entry, dimension);
    entry.step = reader.amount("step", dimension);
    entry.expandedUncertainty = reader.amount("expanded_uncertainty", dimension).value_or(units::Amount(dimension, 0));
    entry.coverageFactor = reader.number("coverage_factor").value_or(2);
    entry.rule = readRule(reader);
    entry.source = reader.text("source");
    entry.remark = reader.text("remark");
    reader.refuseOthers();
    return entry;
}

std::string quantityIds()
{
    std::string ids;
    for (const auto &info : catalogue::all())
        ids += (ids.empty() ? "" : ", ") + std::string(info.id);
    return ids;
}

void readEntries(const Json &json, ToleranceSet &set, FaultList &list)
{
    const std::string path = "quantities";
    if (!json.is_object()) {
        list.add(path, "must be an object in braces, one entry a quantity");
        return;
    }
    for (const auto &item : json.items()) {
        const std::string itemPath = path + "." + item.key();
        const auto quantity = catalogue::findQuantity(item.key());
        if (!quantity)
            list.add(itemPath, "is no quantity; these are: " + quantityIds());
        else
            set.entries[*quantity] = readEntry(item.value(), itemPath, catalogue::infoOf(*quantity).dimension, list);
    }
}

OrderedJson pointJson(const Point &point)
{
    OrderedJson json;
    json["note"] = point.note.number();
    putAmount(json, "low", point.low);
    putAmount(json, "target", point.target);
    putAmount(json, "high", point.high);
    putText(json, "source", point.source);
    putText(json, "remark", point.remark);
    return json;
}

OrderedJson pointsJson(const Points &points)
{
    OrderedJson list = OrderedJson::array();
    for (const Point &point : points)
        list.push_back(pointJson(point));
    return list;
}

OrderedJson entryJson(const Entry &entry)
{
    OrderedJson json;
    if (!entry.both.empty())
        json["points"] = pointsJson(entry.both);
    if (!entry.naturals.empty())
        json["naturals"]["points"] = pointsJson(entry.naturals);
    if (!entry.sharps.empty())
        json["sharps"]["points"] = pointsJson(entry.sharps);
    putAmount(json, "step", entry.step);
    if (entry.expandedUncertainty.baseCount() != 0)
        putAmount(json, "expanded_uncertainty", entry.expandedUncertainty);
    if (entry.coverageFactor != 2.0)
        json["coverage_factor"] = entry.coverageFactor;
    if (entry.rule == tolerance::Rule::Guarded)
        json["rule"] = "guarded";
    putText(json, "source", entry.source);
    putText(json, "remark", entry.remark);
    return json;
}

void readParts(ObjectReader &reader, ToleranceSet &set)
{
    set.name = reader.text("name");
    set.action = readAction(reader);
    set.source = reader.text("source");
    set.remark = reader.text("remark");
    if (const Json *quantities = reader.require("quantities", "an object with one entry a quantity must stand here"))
        readEntries(*quantities, set, reader.faults());
}

} // namespace

outcome::Outcome<ToleranceSet> readToleranceSet(std::string_view json, const std::string &file)
{
    return readDocument<ToleranceSet>(json, file,
                                      {.format = formatName,
                                       .newestVersion = newestVersion,
                                       .read = readParts,
                                       .faultsOf = tolerance::faultsOf,
                                       .place = "quantities."});
}

OrderedJson toleranceSetTree(const ToleranceSet &set)
{
    OrderedJson json = documentHead(formatName, newestVersion);
    json["name"] = set.name;
    json["action"] = catalogue::idOf(set.action);
    putText(json, "source", set.source);
    putText(json, "remark", set.remark);
    json["quantities"] = OrderedJson::object();
    for (const auto &[quantity, entry] : set.entries)
        json["quantities"][std::string(catalogue::idOf(quantity))] = entryJson(entry);
    return json;
}

std::vector<outcome::Fault> toleranceSetFaults(const std::string &json, const std::string &file)
{
    const auto set = readToleranceSet(json, file);
    return set ? std::vector<outcome::Fault>() : set.faults();
}

std::string writeToleranceSet(const ToleranceSet &set)
{
    return documentText(toleranceSetTree(set));
}

} // namespace hammerline::exchange
