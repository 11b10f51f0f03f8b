#include "exchange/inside/record_reader.h"

#include "exchange/tolerance_json.h"

namespace hammerline::exchange {
namespace {

const Json noList = Json::array();

/// The list at `key`; a fault, and empty, where something else stands there.
const Json &listAt(ObjectReader &reader, const std::string &key)
{
    const Json *list = reader.find(key);
    if (list == nullptr)
        return noList;
    if (list->is_array())
        return *list;
    reader.faults().add(reader.pathOf(key), "a list must stand here");
    return noList;
}

keyboard::Note readNote(ObjectReader &reader, const std::string &key)
{
    const Json *value = reader.require(key, "a note number must stand here");
    return value ? noteOf(*value, reader.pathOf(key), reader.faults()).value_or(keyboard::Note()) : keyboard::Note();
}

readings::Instant readTime(ObjectReader &reader, const std::string &key)
{
    const auto time = readings::parseRfc3339(reader.text(key));
    if (time)
        return time.value();
    reader.faults().add(reader.pathOf(key), "a time as 2026-03-02T09:10:00Z must stand here");
    return {};
}

int readCount(ObjectReader &reader, const std::string &key, int otherwise)
{
    const Json *value = reader.find(key);
    return value ? noteNumberOf(*value, reader.pathOf(key), reader.faults()).value_or(otherwise) : otherwise;
}

readings::Reading readTake(const Json &json, const std::string &path, FaultList &list)
{
    ObjectReader reader(json, path, list);
    readings::Reading reading;
    const auto quantity = catalogue::findQuantity(reader.text("quantity"));
    if (!quantity) {
        list.add(reader.pathOf("quantity"), "a quantity's id must stand here");
        return reading;
    }
    reading.place = {*quantity, readNote(reader, "note"), readCount(reader, "take", 1)};
    reading.value = reader.requiredAmount("value", catalogue::infoOf(*quantity).dimension);
    return reading;
}

WrittenPart readPart(const Json &json, const std::string &path, FaultList &list)
{
    ObjectReader reader(json, path, list);
    WrittenPart part;
    std::size_t at = 0;
    for (const Json &take : listAt(reader, "takes"))
        part.takes.push_back(readTake(take, reader.pathOf("takes") + '[' + std::to_string(at++) + ']', list));
    part.verdicts = listAt(reader, "readings");
    return part;
}

keyboard::Sections readSections(ObjectReader &instrument)
{
    keyboard::Sections sections;
    for (const Json &json : listAt(instrument, "sections")) {
        ObjectReader reader(json, instrument.pathOf("sections"), instrument.faults());
        sections.push_back({reader.text("name"), {readNote(reader, "first_note"), readNote(reader, "last_note")}});
    }
    return sections;
}

void readInstrument(WrittenRecord &record, ObjectReader &top)
{
    const Json *json = top.require("instrument", "the instrument must stand here");
    if (json == nullptr)
        return;
    ObjectReader reader(*json, "instrument", top.faults());
    record.instrumentUid = reader.text("uid");
    record.instrumentName = reader.text("name");
    record.action = readAction(reader);
    record.compass = {readNote(reader, "first_note"), readNote(reader, "last_note")};
    if (record.compass.last < record.compass.first)
        top.faults().add("instrument.last_note", "lies below first_note");
    record.sections = readSections(reader);
}

void readSet(WrittenRecord &record, ObjectReader &top)
{
    const Json *json = top.require("tolerances", "the tolerance set must stand here");
    if (json == nullptr)
        return;
    auto set = readToleranceSet(json->dump(-1, ' ', false, Json::error_handler_t::replace), top.faults().file);
    if (set)
        record.set = std::move(set).value();
    else
        top.faults().faults.push_back(set.fault());
}

void readHistory(WrittenRecord &record, ObjectReader &top)
{
    const Json *json = top.find("history");
    if (json == nullptr)
        return;
    ObjectReader reader(*json, "history", top.faults());
    record.history.digest = reader.text("digest");
    const Json *deed = reader.require("deed", "the number of an entry of the history must stand here");
    if (deed && deed->is_number_integer())
        record.history.deed = deed->get<std::int64_t>();
    else if (deed)
        top.faults().add(reader.pathOf("deed"), "a whole number must stand here");
}

WrittenRecord readTop(ObjectReader &top)
{
    WrittenRecord record;
    record.issued = readTime(top, "issued");
    record.revision = readCount(top, "revision", 1);
    readHistory(record, top);
    readInstrument(record, top);
    readSet(record, top);
    if (const Json *part = top.find("as_found"))
        record.asFound = readPart(*part, "as_found", top.faults());
    if (const Json *part = top.require("as_left", "the readings as left must stand here"))
        record.asLeft = readPart(*part, "as_left", top.faults());
    if (const Json *part = top.find("recheck"))
        record.recheck = readPart(*part, "recheck", top.faults());
    record.exceptions = listAt(top, "exceptions");
    record.judgedPairs = top.number("judged_pairs");
    record.pairsInside = top.number("pairs_inside");
    return record;
}

} // namespace

outcome::Outcome<WrittenRecord> readRecord(std::string_view json, const std::string &file)
{
    const auto tree = parseJson(json, file);
    if (!tree)
        return tree.faults();
    FaultList list{file, {}};
    ObjectReader top(tree.value(), "", list);
    if (!readHead(top, "hammerline-record", 1))
        return list.faults;
    WrittenRecord record = readTop(top);
    if (!list.faults.empty())
        return list.faults;
    return record;
}

} // namespace hammerline::exchange
