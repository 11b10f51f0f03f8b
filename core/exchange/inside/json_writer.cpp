#include "exchange/inside/json_writer.h"

#include <cmath>

namespace hammerline::exchange {

std::string unitKey(const std::string &key, units::Dimension dimension)
{
    return key + "_" + units::displaySymbol(dimension);
}

OrderedJson documentHead(const std::string &format, int version)
{
    OrderedJson json;
    json["format"] = format;
    json["version"] = version;
    return json;
}

std::string documentText(const OrderedJson &json)
{
    return json.dump(2, ' ', false, OrderedJson::error_handler_t::replace) + "\n";
}

void putAmount(OrderedJson &json, const std::string &key, const std::optional<units::Amount> &amount)
{
    if (amount)
        json[unitKey(key, amount->dimension())] = amount->inDisplay();
}

void putMeasure(OrderedJson &json, const std::string &key, units::Dimension dimension,
                const std::optional<double> &value)
{
    putNumber(json, unitKey(key, dimension), value);
}

void putNumber(OrderedJson &json, const std::string &key, const std::optional<double> &value)
{
    if (value && std::isfinite(*value))
        json[key] = *value + 0.0; // -0 becomes 0
}

void putCount(OrderedJson &json, const std::string &key, const std::optional<int> &value)
{
    if (value)
        json[key] = *value;
}

void putText(OrderedJson &json, const std::string &key, const std::string &text)
{
    if (!text.empty())
        json[key] = text;
}

} // namespace hammerline::exchange
