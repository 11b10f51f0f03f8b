#pragma once
// Reading a JSON document of ours strictly: every key must be asked for, every fault is collected with the path of the
// value that is to blame ("quantities.let_off.points[2].low_mm"). Hostile text costs little (strict_json.h).

#include "catalogue/catalogue.h"
#include "keyboard/keyboard.h"
#include "outcome/outcome.h"
#include "strict_json/strict_json.h"
#include "units/units.h"

#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

namespace hammerline::exchange {

using Json = strict_json::Json;

/// The tree, or one fault: no JSON, too large, too deep, a key twice.
[[nodiscard]] outcome::Outcome<Json> parseJson(std::string_view text, const std::string &file);

/// What is wrong so far, and the file to blame.
struct FaultList {
    std::string file{};
    std::vector<outcome::Fault> faults{};
    void add(const std::string &path, const std::string &problem);
};

/// The largest magnitude of a number that is taken for a length in mm, a mass in g or minutes.
inline constexpr double largestNumber = 1e6;

/// One JSON object, asked key by key. A value of the wrong type is a fault once and then counts as absent.
class ObjectReader {
public:
    /// `value` that is no object is a fault, and all its keys are absent.
    ObjectReader(const Json &value, std::string path, FaultList &list);

    /// The raw value; null where absent.
    [[nodiscard]] const Json *find(const std::string &key);
    /// As find, but absence is a fault: "is missing; " + `right`.
    [[nodiscard]] const Json *require(const std::string &key, const std::string &right);

    [[nodiscard]] std::string text(const std::string &key); ///< empty where absent
    [[nodiscard]] std::optional<double> number(const std::string &key);
    [[nodiscard]] std::optional<double> requiredNumber(const std::string &key, const std::string &right);
    /// `key` without its unit: "low" asks for "low_mm" or "low_g".
    [[nodiscard]] std::optional<units::Amount> amount(const std::string &key, units::Dimension dimension);
    [[nodiscard]] units::Amount requiredAmount(const std::string &key, units::Dimension dimension);

    /// Every key that was not asked for is a fault that lists those that may stand here.
    void refuseOthers();

    [[nodiscard]] std::string pathOf(const std::string &key) const;
    [[nodiscard]] bool isObject() const { return m_object != nullptr; }
    [[nodiscard]] FaultList &faults() { return m_list; }

private:
    const Json *m_object;
    std::string m_path;
    FaultList &m_list;
    std::set<std::string> m_asked{};
};

/// A JSON number as one; absent (and a fault) where it is none or beyond largestNumber.
[[nodiscard]] std::optional<double> numberOf(const Json &value, const std::string &path, FaultList &list);
/// A whole number from -10000 to 10000 (1.0 counts as one); absent (and a fault) otherwise.
[[nodiscard]] std::optional<int> noteNumberOf(const Json &value, const std::string &path, FaultList &list);

/// The number of a note that a keyboard may have; absent (and a fault) otherwise.
[[nodiscard]] std::optional<keyboard::Note> noteOf(const Json &value, const std::string &path, FaultList &list);

/// Checks "format" and "version". False, with the fault added, where the rest must not be looked at.
[[nodiscard]] bool readHead(ObjectReader &reader, const std::string &format, int newestVersion);
/// "action"; a fault where missing or neither of the two.
[[nodiscard]] catalogue::ActionKind readAction(ObjectReader &reader);

} // namespace hammerline::exchange
