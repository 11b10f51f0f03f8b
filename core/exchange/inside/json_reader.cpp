#include "exchange/inside/json_reader.h"

#include "exchange/inside/json_writer.h"

#include <cmath>

namespace hammerline::exchange {
namespace {

constexpr strict_json::Bounds bounds{.bytes = 16u << 20, .depth = 16};

std::string problemOf(const strict_json::Stop &stop)
{
    using strict_json::Why;
    if (stop.why == Why::TooLarge)
        return "is larger than 16 MiB; no document of this kind is";
    if (stop.why == Why::TooDeep)
        return "objects and lists are nested deeper than any document of ours";
    if (stop.why == Why::MemberTwice)
        return "the key \"" + stop.said + "\" stands twice in one object; once would be right";
    return "this is not valid JSON (" + stop.said + "); a JSON document after RFC 8259 would be right";
}

std::string joined(const std::set<std::string> &names)
{
    std::string all;
    for (const std::string &name : names)
        all += (all.empty() ? "" : ", ") + name;
    return all;
}

/// What a person would call the value, short enough for a message.
std::string shown(const Json &value)
{
    return strict_json::clipped(value.dump(-1, ' ', false, Json::error_handler_t::replace), 43);
}

} // namespace

void FaultList::add(const std::string &path, const std::string &problem)
{
    faults.push_back({file, 0, path.empty() ? problem : path + ": " + problem});
}

outcome::Outcome<Json> parseJson(std::string_view text, const std::string &file)
{
    return strict_json::read(text, bounds, [&](const strict_json::Stop &stop) {
        return outcome::Fault{file, stop.line, problemOf(stop)};
    });
}

ObjectReader::ObjectReader(const Json &value, std::string path, FaultList &list)
    : m_object(value.is_object() ? &value : nullptr), m_path(std::move(path)), m_list(list)
{
    if (m_object == nullptr)
        m_list.add(m_path, "must be an object in braces, not " + shown(value));
}

std::string ObjectReader::pathOf(const std::string &key) const
{
    return m_path.empty() ? key : m_path + "." + key;
}

const Json *ObjectReader::find(const std::string &key)
{
    m_asked.insert(key);
    if (m_object == nullptr)
        return nullptr;
    const auto place = m_object->find(key);
    return place == m_object->end() ? nullptr : &*place;
}

const Json *ObjectReader::require(const std::string &key, const std::string &right)
{
    const Json *value = find(key);
    if (value == nullptr && m_object != nullptr)
        m_list.add(pathOf(key), "is missing; " + right);
    return value;
}

std::string ObjectReader::text(const std::string &key)
{
    const Json *value = find(key);
    if (value == nullptr)
        return {};
    if (!value->is_string()) {
        m_list.add(pathOf(key), "must be text in quotation marks, not " + shown(*value));
        return {};
    }
    return value->get<std::string>();
}

std::optional<double> ObjectReader::number(const std::string &key)
{
    const Json *value = find(key);
    return value == nullptr ? std::nullopt : numberOf(*value, pathOf(key), m_list);
}

std::optional<double> ObjectReader::requiredNumber(const std::string &key, const std::string &right)
{
    const Json *value = require(key, right);
    return value == nullptr ? std::nullopt : numberOf(*value, pathOf(key), m_list);
}

std::optional<units::Amount> ObjectReader::amount(const std::string &key, units::Dimension dimension)
{
    const auto value = number(unitKey(key, dimension));
    if (!value)
        return std::nullopt;
    return units::Amount::fromDisplay(dimension, *value);
}

units::Amount ObjectReader::requiredAmount(const std::string &key, units::Dimension dimension)
{
    const std::string right = std::string("a number of ") + units::displaySymbol(dimension) + " must stand here";
    const auto value = requiredNumber(unitKey(key, dimension), right);
    return value ? units::Amount::fromDisplay(dimension, *value) : units::Amount(dimension, 0);
}

void ObjectReader::refuseOthers()
{
    if (m_object == nullptr)
        return;
    for (const auto &item : m_object->items()) {
        if (!m_asked.contains(item.key()))
            m_list.add(pathOf(item.key()), "is no key that may stand here; these may: " + joined(m_asked));
    }
}

std::optional<double> numberOf(const Json &value, const std::string &path, FaultList &list)
{
    if (!value.is_number()) {
        list.add(path, "must be a number, not " + shown(value));
        return std::nullopt;
    }
    const double number = value.get<double>();
    if (!std::isfinite(number) || std::abs(number) > largestNumber) {
        list.add(path, "must lie between -1000000 and 1000000, not " + shown(value));
        return std::nullopt;
    }
    return number;
}

std::optional<int> noteNumberOf(const Json &value, const std::string &path, FaultList &list)
{
    constexpr double widest = 10000;
    const bool whole = value.is_number() && std::floor(value.get<double>()) == value.get<double>();
    if (!whole || std::abs(value.get<double>()) > widest) {
        list.add(path, "must be the whole number of a note (A0 is 1, C8 is 88), not " + shown(value));
        return std::nullopt;
    }
    return static_cast<int>(value.get<double>());
}

std::optional<keyboard::Note> noteOf(const Json &value, const std::string &path, FaultList &list)
{
    const auto number = noteNumberOf(value, path, list);
    if (!number)
        return std::nullopt;
    if (*number < keyboard::Note::lowest || *number > keyboard::Note::highest) {
        list.add(path, "is a note that no keyboard has");
        return std::nullopt;
    }
    return keyboard::Note(*number);
}

bool readHead(ObjectReader &reader, const std::string &format, int newestVersion)
{
    if (!reader.isObject())
        return false;
    const std::string right = "\"" + format + "\" must stand here";
    const Json *name = reader.require("format", right);
    if (name != nullptr && *name != Json(format))
        reader.faults().add("format", "is " + shown(*name) + "; " + right);
    const Json *version = reader.require("version", "1 must stand here");
    const bool whole = version != nullptr && version->is_number() && version->get<double>() >= 1 &&
                       std::floor(version->get<double>()) == version->get<double>();
    if (version != nullptr && !whole)
        reader.faults().add("version", "must be a whole number from 1, not " + shown(*version));
    else if (version != nullptr && version->get<double>() > newestVersion)
        reader.faults().add("version", "is " + shown(*version) + ", written by a newer program; this one reads up to " +
                                           std::to_string(newestVersion));
    return reader.faults().faults.empty();
}

catalogue::ActionKind readAction(ObjectReader &reader)
{
    const std::string right = "\"vertical\" or \"grand\" must stand here";
    const Json *value = reader.require("action", right);
    if (value == nullptr)
        return catalogue::ActionKind::Vertical;
    const auto action = value->is_string() ? catalogue::findAction(value->get<std::string>()) : std::nullopt;
    if (!action)
        reader.faults().add("action", "is " + shown(*value) + "; " + right);
    return action.value_or(catalogue::ActionKind::Vertical);
}

} // namespace hammerline::exchange
