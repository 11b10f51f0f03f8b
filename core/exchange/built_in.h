#pragma once
// The built-in tolerance sets and setups. They are files of resources/tolerances and resources/setups, in the same form
// as a user's, compiled in as text; a maker's manual outranks them, and each says so.

#include "action/action.h"
#include "outcome/outcome.h"
#include "tolerance/tolerance.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace hammerline::exchange {

struct BuiltIn {
    std::string id{};   ///< the file's name without its ending: "full-upright"
    std::string text{}; ///< the JSON itself
};
/// Sorted by id.
[[nodiscard]] const std::vector<BuiltIn> &builtInToleranceSets();
[[nodiscard]] const std::vector<BuiltIn> &builtInSetups();

/// What `--tolerances SET` means: a built-in id, else a JSON file. `text` is what was read.
struct NamedSet {
    std::string id{}; ///< built-in id, or the set's name
    std::string text{};
    tolerance::ToleranceSet set{};
};
[[nodiscard]] outcome::Outcome<NamedSet> findToleranceSet(const std::string &idOrFile);
[[nodiscard]] outcome::Outcome<action::Setup> findSetup(const std::string &idOrFile);

} // namespace hammerline::exchange
