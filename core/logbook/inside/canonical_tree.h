#pragma once
// The canonical form (see canonical_json.h) of a whole tree of objects, lists, texts and whole numbers.

#include <nlohmann/json.hpp>

#include <string>

namespace hammerline::logbook::inside {

/// Appended. Names of members are ASCII; there is nothing else in the tree, and it is only a few levels deep.
void appendCanonical(std::string &json, const nlohmann::json &tree);

} // namespace hammerline::logbook::inside
