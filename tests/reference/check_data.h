#pragma once
// Reads the small tables of tests/reference/data: lines that begin with # tell the source, then a header, then rows.

#include <gtest/gtest.h>

#include <fstream>
#include <sstream>
#include <string>
#include <vector>

namespace hammerline::reference {

using Row = std::vector<std::string>;

inline Row cellsOf(const std::string &line)
{
    Row cells;
    std::istringstream stream(line);
    for (std::string cell; std::getline(stream, cell, ',');)
        cells.push_back(cell);
    return cells;
}

/// Without the header.
inline std::vector<Row> rowsOf(const std::string &file)
{
    std::ifstream stream(HAMMERLINE_SOURCE_DIR "/tests/reference/data/" + file);
    EXPECT_TRUE(stream.good()) << file;
    std::vector<Row> rows;
    for (std::string line; std::getline(stream, line);)
        if (!line.empty() && line.front() != '#')
            rows.push_back(cellsOf(line));
    EXPECT_GT(rows.size(), 1U) << file;
    if (!rows.empty())
        rows.erase(rows.begin());
    return rows;
}

} // namespace hammerline::reference
