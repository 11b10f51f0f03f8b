#pragma once
// Which box stands where: the stops of a route cut into blocks and rows, before anything is painted.
//
// Along the notes, a block is one quantity, eight boxes a row. Note by note there is one block; the boxes of a note
// stay together and as many notes as fit share a row. A section with at least a row of its own starts on a new row
// below its name; where sections alternate more quickly, a bar before the box marks the break.

#include "keyboard/keyboard.h"
#include "route/route.h"

#include <QString>

#include <optional>
#include <vector>

namespace hammerline::bench_sheet {

struct Box {
    route::Stop stop{};
    int number = 0;      ///< on the route, from 1
    QString barBefore{}; ///< the section that a bar before the box begins; may be empty with `bar` set
    bool bar = false;
};
struct Row {
    std::optional<QString> caption{}; ///< of the section that begins with this row
    std::vector<Box> boxes{};
};
struct Block {
    std::optional<catalogue::Quantity> quantity{}; ///< absent: each box names its own
    int columns = 8;
    std::vector<Row> rows{};
};

[[nodiscard]] std::vector<Block> blocksOf(const route::Choice &choice, const std::vector<route::Stop> &stops,
                                          const keyboard::Sections &sections);

} // namespace hammerline::bench_sheet
