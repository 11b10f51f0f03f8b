#pragma once
// What a spreadsheet would run of a CSV file: a reader of its own, so that it does not share a mistake with ours.

#include <string>
#include <vector>

namespace hammerline::test_support {

inline std::vector<std::string> cellsOf(const std::string &csv)
{
    std::vector<std::string> cells(1);
    bool quoted = false;
    for (std::size_t at = 0; at < csv.size(); ++at) {
        const char letter = csv[at];
        if (letter == '"' && quoted && at + 1 < csv.size() && csv[at + 1] == '"')
            cells.back() += csv[++at];
        else if (letter == '"')
            quoted = !quoted;
        else if (!quoted && (letter == ',' || letter == '\n' || letter == '\r'))
            cells.emplace_back();
        else
            cells.back() += letter;
    }
    return cells;
}

inline bool isNumber(const std::string &cell)
{
    const std::size_t first = cell.starts_with('-') ? 1 : 0;
    return cell.size() > first && cell.find_first_not_of("0123456789.", first) == std::string::npos;
}

/// The cells that begin with = + - @ tab or CR and are no plain number.
inline std::vector<std::string> formulaCellsOf(const std::string &csv)
{
    std::vector<std::string> found;
    for (const std::string &cell : cellsOf(csv))
        if (!cell.empty() && std::string("=+-@\t\r").find(cell.front()) != std::string::npos && !isNumber(cell))
            found.push_back(cell);
    return found;
}

} // namespace hammerline::test_support
