#pragma once
// Building blocks of the JSON that we write: keys in the order they are put, absent instead of null, never a NaN.

#include "catalogue/catalogue.h"
#include "units/units.h"

#include <nlohmann/json.hpp>

#include <optional>
#include <string>

namespace hammerline::exchange {

using OrderedJson = nlohmann::ordered_json;

/// An object with "format" and "version".
[[nodiscard]] OrderedJson documentHead(const std::string &format, int version);
/// Two-space indented, a newline at the end. Bytes that are no UTF-8 become U+FFFD.
[[nodiscard]] std::string documentText(const OrderedJson &json);

/// "low" -> "low_mm" or "low_g".
[[nodiscard]] std::string unitKey(const std::string &key, units::Dimension dimension);

/// `key` with the unit of the amount's dimension ("low" -> "low_mm"); absent puts nothing. The number written is the
/// exact decimal: the shortest that reads back as the double nearest to it, which 15 digits always hold.
void putAmount(OrderedJson &json, const std::string &key, const std::optional<units::Amount> &amount);
/// A number in mm or g; absent or not finite puts nothing.
void putMeasure(OrderedJson &json, const std::string &key, units::Dimension dimension,
                const std::optional<double> &value);
/// A number without a unit; absent or not finite puts nothing.
void putNumber(OrderedJson &json, const std::string &key, const std::optional<double> &value);
void putCount(OrderedJson &json, const std::string &key, const std::optional<int> &value);
/// Empty puts nothing.
void putText(OrderedJson &json, const std::string &key, const std::string &text);

} // namespace hammerline::exchange
