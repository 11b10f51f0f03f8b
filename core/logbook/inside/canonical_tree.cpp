#include "logbook/inside/canonical_tree.h"

#include "logbook/inside/canonical_json.h"

namespace hammerline::logbook::inside {

namespace {

void appendObject(std::string &json, const nlohmann::json &object)
{
    char separator = '{';
    for (const auto &[name, value] : object.items()) { // sorted by name
        json += separator;
        separator = ',';
        appendCanonical(json, std::string_view(name));
        json += ':';
        appendCanonical(json, value);
    }
    json += object.empty() ? "{}" : "}";
}

void appendList(std::string &json, const nlohmann::json &list)
{
    char separator = '[';
    for (const nlohmann::json &value : list) {
        json += separator;
        separator = ',';
        appendCanonical(json, value);
    }
    json += list.empty() ? "[]" : "]";
}

} // namespace

void appendCanonical(std::string &json, const nlohmann::json &tree)
{
    if (tree.is_object())
        appendObject(json, tree);
    else if (tree.is_array())
        appendList(json, tree);
    else if (tree.is_string())
        appendCanonical(json, std::string_view(tree.get_ref<const std::string &>()));
    else
        appendCanonical(json, tree.get<std::int64_t>());
}

} // namespace hammerline::logbook::inside
