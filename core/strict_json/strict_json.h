#pragma once
// Reading a text from outside as a tree of JSON (RFC 8259), strictly; what the tree means is the caller's.
//
// A hostile text costs no more than a sound one: nothing recurses, size, depth and the number of values are bounded,
// and the first thing that may not stand ends the reading. So does a member that stands twice in one object, because
// nobody knows which one is meant, and a number beyond a double.
//
// Where the reading ended is told as a `Stop`, without words: the caller knows what its documents are called.

#include "outcome/outcome.h"

#include <nlohmann/json.hpp>

#include <cstddef>
#include <functional>
#include <limits>
#include <string>
#include <string_view>
#include <vector>

namespace hammerline::strict_json {

using Json = nlohmann::json;

/// What may stand beside objects and lists.
enum class Kinds {
    All,                  ///< whole numbers are signed in the tree where 64 bits hold them
    TextsAndWholeNumbers, ///< written without fraction and exponent, from -2^53 to 2^53; signed in the tree
};

struct Bounds {
    std::size_t bytes = std::numeric_limits<std::size_t>::max();
    std::size_t depth = 16;                                       ///< objects and lists inside one another
    std::size_t values = std::numeric_limits<std::size_t>::max(); ///< objects and lists among them
    Kinds kinds = Kinds::All;
};

enum class Why {
    TooLarge, ///< more bytes; nothing was read
    NotJson,
    TooDeep,
    TooManyValues,
    MemberTwice,
    Null,          ///< these where the kinds do not let them stand
    Boolean,       ///< true or false
    NoWholeNumber, ///< written with a fraction or an exponent, or beyond 64 bits
    BeyondExact,   ///< a whole number beyond 2^53
};

/// A step from an object or a list to what stands in it.
struct Step {
    std::string member{};    ///< of an object; empty for a list
    std::size_t element = 0; ///< of a list, from 1; 0 for an object
};

/// What ended a reading.
struct Stop {
    Why why = Why::NotJson;
    std::size_t line = 0;     ///< from 1, of a text that is not JSON; else 0
    std::string said{};       ///< not JSON: what the parser expected; a member's name; a number as written. Clipped
    std::vector<Step> path{}; ///< from the root to what may not stand; of a text that is not JSON: to where it broke
};

/// The tree, or the one fault that `words` makes of the stop.
[[nodiscard]] outcome::Outcome<Json> read(std::string_view text, const Bounds &bounds,
                                          const std::function<outcome::Fault(const Stop &)> &words);

/// A name or a value out of a document, fit for a message: not over `most` bytes, which are no fewer than 3, and no
/// letter of UTF-8 cut in two.
[[nodiscard]] std::string clipped(std::string text, std::size_t most = 80);

} // namespace hammerline::strict_json
