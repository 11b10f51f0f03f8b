#include "exchange/plan_inputs_json.h"

#include "exchange/inside/json_reader.h"
#include "exchange/inside/json_writer.h"
#include "exchange/readings_csv.h"
#include "exchange/setup_json.h"
#include "exchange/tolerance_json.h"

namespace hammerline::exchange {
namespace {

constexpr const char *formatName = "hammerline-plan-inputs";
constexpr const char *blamed = "kept plan";

OrderedJson forbiddenJson(const action::Forbidden &forbidden)
{
    OrderedJson json = OrderedJson::object();
    for (const auto quantity : forbidden.everywhere)
        json["everywhere"].push_back(catalogue::idOf(quantity));
    for (const auto &[quantity, note] : forbidden.single)
        json["single"].push_back({catalogue::idOf(quantity), note.number()});
    for (const std::string &rail : forbidden.rails)
        json["rails"].push_back(rail);
    return json;
}

OrderedJson sectionsJson(const keyboard::Sections &sections)
{
    OrderedJson json = OrderedJson::array();
    for (const keyboard::Section &section : sections)
        json.push_back({section.name, section.notes.first.number(), section.notes.last.number()});
    return json;
}

std::string valuesCsv(const readings::ValueTable &values)
{
    std::vector<readings::Reading> means;
    for (const auto quantity : values.quantities())
        for (const auto &[note, value] : values.column(quantity))
            means.push_back({.place = {quantity, note, 1}, .value = value.value});
    return writeReadingsCsv(means);
}

// The document is one of ours, but may have come with an instrument handed over. A shape that is not ours is one fault,
// found by the library; notes are looked at one by one, since a plan walks from the first to the last.

keyboard::NoteRange readRange(const Json &first, const Json &last, FaultList &list)
{
    const auto lowest = noteOf(first, "note", list), highest = noteOf(last, "note", list);
    if (lowest && highest && *highest < *lowest)
        list.add("last note", "lies below the first");
    return {lowest.value_or(keyboard::Note()), highest.value_or(keyboard::Note())};
}

action::Forbidden readForbidden(const Json &json, FaultList &list)
{
    action::Forbidden forbidden;
    for (const Json &id : json.value("everywhere", Json::array()))
        if (const auto quantity = catalogue::findQuantity(id.get<std::string>()))
            forbidden.everywhere.insert(*quantity);
    for (const Json &pair : json.value("single", Json::array()))
        if (const auto quantity = catalogue::findQuantity(pair.at(0).get<std::string>()))
            forbidden.single.emplace(*quantity, noteOf(pair.at(1), "note", list).value_or(keyboard::Note()));
    for (const Json &rail : json.value("rails", Json::array()))
        forbidden.rails.insert(rail.get<std::string>());
    return forbidden;
}

keyboard::Sections readSections(const Json &json, FaultList &list)
{
    keyboard::Sections sections;
    for (const Json &section : json)
        sections.push_back({section.at(0).get<std::string>(), readRange(section.at(1), section.at(2), list)});
    return sections;
}

template <typename Value>
Value taken(outcome::Outcome<Value> outcome, FaultList &list)
{
    if (outcome)
        return std::move(outcome).value();
    list.faults.insert(list.faults.end(), outcome.faults().begin(), outcome.faults().end());
    return {};
}

outcome::Outcome<action::PlanTask> taskFrom(const Json &json)
{
    FaultList list{blamed, {}};
    action::PlanTask task;
    task.aim = action::findAim(json.at("aim").get<std::string>()).value_or(action::Aim::In);
    task.compass = readRange(json.at("first_note"), json.at("last_note"), list);
    task.sections = readSections(json.at("sections"), list);
    task.forbidden = readForbidden(json.at("forbidden"), list);
    task.setup = taken(readSetup(json.at("setup").dump(), blamed), list);
    task.set = taken(readToleranceSet(json.at("set").dump(), blamed), list);
    const CsvReadingOptions options{.file = blamed, .action = task.setup.action, .compass = task.compass};
    task.values = readings::meansOf(taken(readReadingsCsv(json.at("readings").get<std::string>(), options), list));
    if (!list.faults.empty())
        return list.faults;
    return task;
}

} // namespace

std::string planInputsJson(const action::PlanTask &task)
{
    OrderedJson json;
    json["format"] = formatName;
    json["version"] = 1;
    json["aim"] = action::idOf(task.aim);
    json["first_note"] = task.compass.first.number();
    json["last_note"] = task.compass.last.number();
    json["sections"] = sectionsJson(task.sections);
    json["forbidden"] = forbiddenJson(task.forbidden);
    json["setup"] = OrderedJson::parse(writeSetup(task.setup));
    json["set"] = OrderedJson::parse(writeToleranceSet(task.set));
    json["readings"] = valuesCsv(task.values);
    return json.dump();
}

outcome::Outcome<action::PlanTask> readPlanInputs(std::string_view text)
{
    auto json = parseJson(text, blamed);
    if (!json)
        return json.faults();
    try {
        if (json.value().at("format") != formatName || json.value().at("version") != 1)
            return outcome::Fault{.file = blamed, .problem = "is not a plan of this version of Hammerline"};
        return taskFrom(json.value());
    } catch (const Json::exception &wrong) {
        return outcome::Fault{.file = blamed, .problem = std::string("can't be read: ") + wrong.what()};
    }
}

} // namespace hammerline::exchange
