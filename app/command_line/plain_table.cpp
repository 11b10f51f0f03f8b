#include "command_line/inside/plain_table.h"

#include <algorithm>
#include <cassert>

namespace hammerline::command_line {
namespace {

std::size_t charactersIn(std::string_view text)
{
    const auto continues = [](char byte) { return (static_cast<unsigned char>(byte) & 0xC0u) == 0x80u; };
    return text.size() - static_cast<std::size_t>(std::ranges::count_if(text, continues));
}

void appendCell(std::string &line, const std::string &cell, std::size_t width, Align align)
{
    const std::string padding(width - charactersIn(cell), ' ');
    if (!line.empty())
        line += "  ";
    line += align == Align::Right ? padding + cell : cell + padding;
}

} // namespace

std::string withoutControls(std::string_view text)
{
    std::string shown(text);
    std::ranges::replace_if(
        shown, [](char byte) { return static_cast<unsigned char>(byte) < 0x20 || byte == 0x7f; }, '?');
    return shown;
}

PlainTable::PlainTable(std::vector<Column> columns) : m_columns(std::move(columns)) {}

void PlainTable::add(std::vector<std::string> cells)
{
    assert(cells.size() == m_columns.size());
    std::ranges::transform(cells, cells.begin(), [](const std::string &cell) { return withoutControls(cell); });
    m_rows.push_back(std::move(cells));
}

std::string PlainTable::text() const
{
    std::vector<std::vector<std::string>> rows = m_rows;
    const bool headed = std::ranges::any_of(m_columns, [](const Column &column) { return !column.head.empty(); });
    if (headed && !rows.empty()) {
        std::vector<std::string> heads;
        for (const Column &column : m_columns)
            heads.push_back(column.head);
        rows.insert(rows.begin(), std::move(heads));
    }
    std::string text;
    std::vector<std::size_t> widths(m_columns.size(), 0);
    for (const auto &row : rows)
        for (std::size_t i = 0; i < row.size(); ++i)
            widths[i] = std::max(widths[i], charactersIn(row[i]));
    for (const auto &row : rows) {
        std::string line;
        for (std::size_t i = 0; i < row.size(); ++i)
            appendCell(line, row[i], widths[i], m_columns[i].align);
        line.erase(line.find_last_not_of(' ') + 1);
        text += line + '\n';
    }
    return text;
}

} // namespace hammerline::command_line
