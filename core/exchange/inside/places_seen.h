#pragma once
// Which places the rows of a file have spoken of so far, and in which line: so that a second row about the same is
// found, however far apart the two stand.
//
// Of one note and quantity the takes mostly come in rising order; those cost two words each and no search. The rest, if
// any, goes into a table of its own, so that no order of rows makes it slow.

#include "readings/readings.h"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <unordered_map>
#include <vector>

namespace hammerline::exchange {

class PlacesSeen {
public:
    PlacesSeen();
    /// The line that spoke of the place before. Absent: none has, and now `line` does.
    [[nodiscard]] std::optional<std::size_t> before(const readings::Place &place, std::size_t line);

private:
    struct Spoken {
        int take;
        std::size_t line;
    };
    std::vector<std::vector<Spoken>> m_rising; ///< by quantity and note
    std::unordered_map<std::uint64_t, std::size_t> m_others{};
};

} // namespace hammerline::exchange
