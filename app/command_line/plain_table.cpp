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

/// Bytes of the control character that `text` begins with, 0 where it begins with none: the ASCII ones, the second
/// set of ISO 8859, line separators, and what turns the direction of all that follows (Unicode 15, 23.2).
std::size_t controlAt(std::string_view text)
{
    const auto byte = [text](std::size_t at) { return at < text.size() ? static_cast<unsigned char>(text[at]) : 0u; };
    if (byte(0) < 0x20 || byte(0) == 0x7f)
        return 1;
    if (byte(0) == 0xC2 && byte(1) >= 0x80 && byte(1) <= 0x9F)
        return 2;
    const bool turns = (byte(1) == 0x80 && byte(2) >= 0xA8 && byte(2) <= 0xAE) ||
                       (byte(1) == 0x81 && byte(2) >= 0xA6 && byte(2) <= 0xA9);
    return byte(0) == 0xE2 && turns ? 3 : 0;
}

} // namespace

std::string withoutControls(std::string_view text)
{
    std::string shown;
    while (!text.empty()) {
        const std::size_t length = controlAt(text);
        shown += length > 0 ? '?' : text.front();
        text.remove_prefix(std::max<std::size_t>(length, 1));
    }
    return shown;
}

std::string elided(std::string_view text, std::size_t most)
{
    if (charactersIn(text) <= most)
        return std::string(text);
    std::size_t end = 0;
    for (std::size_t kept = 0; end < text.size(); ++end)
        if ((static_cast<unsigned char>(text[end]) & 0xC0u) != 0x80u && ++kept == most)
            break;
    return std::string(text.substr(0, end)) + "\u2026";
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
