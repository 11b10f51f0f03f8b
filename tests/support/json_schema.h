#pragma once
// Does a JSON document keep to one of the schemas of resources/schemas? Enough of JSON Schema (draft 2020-12) for
// these; a keyword that is not known here is reported too, so that no schema promises what nobody checks. Needs
// HAMMERLINE_SOURCE_DIR.

#include <algorithm>
#include <fstream>
#include <nlohmann/json.hpp>
#include <regex>
#include <set>
#include <string>
#include <vector>

namespace hammerline::support {

class JsonSchema {
public:
    using Json = nlohmann::json;

    /// `name` as in resources/schemas/<name>.schema.json.
    explicit JsonSchema(const std::string &name)
        : m_root(Json::parse(
              std::ifstream(std::string(HAMMERLINE_SOURCE_DIR) + "/resources/schemas/" + name + ".schema.json")))
    {
    }

    /// What breaks the schema, each with its place; empty: nothing.
    [[nodiscard]] std::vector<std::string> faultsOf(const std::string &text) const
    {
        const Json document = Json::parse(text, nullptr, false);
        if (document.is_discarded())
            return {"no JSON"};
        std::vector<std::string> faults;
        check(document, m_root, "", faults);
        return faults;
    }

private:
    using Faults = std::vector<std::string>;

    [[nodiscard]] bool keeps(const Json &value, const Json &schema) const
    {
        Faults faults;
        check(value, schema, "", faults);
        return faults.empty();
    }

    void check(const Json &value, const Json &schema, const std::string &at, Faults &faults) const
    {
        for (const auto &item : schema.items()) {
            if (!checkAny(value, item.key(), item.value(), at, faults) &&
                !checkNumber(value, item.key(), item.value(), at, faults) &&
                !checkText(value, item.key(), item.value(), at, faults) &&
                !checkList(value, item.key(), item.value(), at, faults) &&
                !checkObject(value, item.key(), schema, at, faults) && !isSaying(item.key()))
                faults.push_back(at + ": the schema has the unknown keyword " + item.key());
        }
    }

    static bool isSaying(const std::string &keyword)
    {
        static const std::set<std::string> sayings{"$schema", "$id", "title", "description", "default", "$defs"};
        return sayings.contains(keyword);
    }

    static bool hasType(const Json &value, const std::string &type)
    {
        const bool whole =
            value.is_number_integer() ||
            (value.is_number_float() && value.get<double>() == static_cast<double>(value.get<long long>()));
        return type == "object"    ? value.is_object()
               : type == "array"   ? value.is_array()
               : type == "string"  ? value.is_string()
               : type == "boolean" ? value.is_boolean()
               : type == "number"  ? value.is_number()
                                   : type == "integer" && whole;
    }

    static void fail(bool broken, const std::string &at, const std::string &what, Faults &faults)
    {
        if (broken)
            faults.push_back(at + ": " + what);
    }

    /// True where the keyword is of this kind.
    bool checkAny(const Json &value, const std::string &keyword, const Json &rule, const std::string &at,
                  Faults &faults) const
    {
        const auto fits = [&](const Json &schema) { return keeps(value, schema); };
        if (keyword == "$ref")
            check(value, m_root["$defs"][rule.get<std::string>().substr(std::string("#/$defs/").size())], at, faults);
        else if (keyword == "type")
            fail(!hasType(value, rule.get<std::string>()), at, "is no " + rule.get<std::string>(), faults);
        else if (keyword == "const")
            fail(value != rule, at, "is not " + rule.dump(), faults);
        else if (keyword == "enum")
            fail(std::find(rule.begin(), rule.end(), value) == rule.end(), at, "is none of " + rule.dump(), faults);
        else if (keyword == "oneOf")
            fail(std::count_if(rule.begin(), rule.end(), fits) != 1, at, "keeps not to exactly one of " + rule.dump(),
                 faults);
        else if (keyword == "anyOf")
            fail(std::none_of(rule.begin(), rule.end(), fits), at, "keeps to none of " + rule.dump(), faults);
        else if (keyword == "not")
            fail(fits(rule), at, "keeps to " + rule.dump(), faults);
        else
            return false;
        return true;
    }

    static bool checkNumber(const Json &value, const std::string &keyword, const Json &rule, const std::string &at,
                            Faults &faults)
    {
        const double number = value.is_number() ? value.get<double>() : 0;
        const bool applies = value.is_number();
        if (keyword == "minimum")
            fail(applies && number < rule.get<double>(), at, "is below " + rule.dump(), faults);
        else if (keyword == "maximum")
            fail(applies && number > rule.get<double>(), at, "is above " + rule.dump(), faults);
        else if (keyword == "exclusiveMinimum")
            fail(applies && number <= rule.get<double>(), at, "is not above " + rule.dump(), faults);
        else
            return false;
        return true;
    }

    static bool checkText(const Json &value, const std::string &keyword, const Json &rule, const std::string &at,
                          Faults &faults)
    {
        if (keyword != "pattern")
            return false;
        const bool broken =
            value.is_string() && !std::regex_search(value.get<std::string>(), std::regex(rule.get<std::string>()));
        fail(broken, at, "does not match " + rule.dump(), faults);
        return true;
    }

    bool checkList(const Json &value, const std::string &keyword, const Json &rule, const std::string &at,
                   Faults &faults) const
    {
        const bool applies = value.is_array();
        if (keyword == "minItems")
            fail(applies && value.size() < rule.get<std::size_t>(), at, "has too few items", faults);
        else if (keyword == "maxItems")
            fail(applies && value.size() > rule.get<std::size_t>(), at, "has too many items", faults);
        else if (keyword != "items")
            return false;
        else if (applies) {
            for (std::size_t index = 0; index < value.size(); ++index)
                check(value[index], rule, at + "[" + std::to_string(index) + "]", faults);
        }
        return true;
    }

    bool checkObject(const Json &value, const std::string &keyword, const Json &schema, const std::string &at,
                     Faults &faults) const
    {
        static const std::set<std::string> known{"required", "properties", "additionalProperties", "propertyNames"};
        if (!known.contains(keyword) || !value.is_object())
            return known.contains(keyword);
        const Json &rule = schema[keyword];
        if (keyword == "required") {
            for (const auto &key : rule)
                fail(!value.contains(key.get<std::string>()), at, "lacks " + key.dump(), faults);
            return true;
        }
        const Json properties = schema.value("properties", Json::object());
        for (const auto &item : value.items()) {
            const std::string below = at + "/" + item.key();
            if (keyword == "properties" && rule.contains(item.key()))
                check(item.value(), rule[item.key()], below, faults);
            else if (keyword == "propertyNames")
                check(Json(item.key()), rule, below, faults);
            else if (keyword == "additionalProperties" && !properties.contains(item.key())) {
                if (rule.is_boolean())
                    fail(!rule.get<bool>(), below, "may not stand here", faults);
                else
                    check(item.value(), rule, below, faults);
            }
        }
        return true;
    }

    Json m_root;
};

} // namespace hammerline::support
