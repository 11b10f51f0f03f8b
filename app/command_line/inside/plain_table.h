#pragma once
// Columns of text for a terminal: as wide as their widest cell, two blanks apart, nothing drawn. Widths count
// characters (UTF-8), not bytes; control characters in a cell (a name somebody gave) are written as `?`, those that
// turn the direction of writing among them, so that no file can steer the terminal.

#include <string>
#include <string_view>
#include <vector>

namespace hammerline::command_line {

enum class Align { Left, Right };

class PlainTable {
public:
    struct Column {
        std::string head{}; ///< a table whose heads are all empty has no head line
        Align align = Align::Left;
    };
    explicit PlainTable(std::vector<Column> columns);
    /// As many cells as there are columns.
    void add(std::vector<std::string> cells);
    [[nodiscard]] bool empty() const { return m_rows.empty(); }
    /// A newline after each row; nothing for a table without rows.
    [[nodiscard]] std::string text() const;

private:
    std::vector<Column> m_columns;
    std::vector<std::vector<std::string>> m_rows;
};

[[nodiscard]] std::string withoutControls(std::string_view text);
/// For the cell of a name: what is longer than `most` characters ends in "…", so that one name does not push the other
/// columns out of sight.
[[nodiscard]] std::string elided(std::string_view text, std::size_t most = 40);

} // namespace hammerline::command_line
