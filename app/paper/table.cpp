#include "paper/table.h"

#include <QPainter>

#include <algorithm>

namespace hammerline::paper {

namespace {

constexpr double gap = 8;       ///< between columns
constexpr double headRoom = 60; ///< what a head takes at most, and some air

double heightOf(const std::vector<TextBlock> &blocks)
{
    double height = 0;
    for (const TextBlock &block : blocks)
        height = std::max(height, block.height());
    return height;
}

} // namespace

Table::Table(Sheet &sheet, std::vector<Column> columns, TextStyle style)
    : m_sheet(sheet), m_columns(std::move(columns)), m_style(style)
{
    if (m_columns.back().width <= 0) {
        double left = m_sheet.body().width();
        for (const Column &column : m_columns)
            left -= column.width;
        m_columns.back().width = left;
    }
    // A head without a row below it says nothing.
    m_sheet.needRoom(60);
    head();
}

void Table::head()
{
    QStringList heads;
    for (const Column &column : m_columns)
        heads << column.head;
    const auto blocks = laidOut(heads, std::vector<bool>(m_columns.size(), true));
    place(blocks);
    m_sheet.skip(heightOf(blocks) + 2);
    line(0.8, Qt::black);
    m_sheet.skip(2);
}

void Table::row(const QStringList &cells, const std::vector<bool> &bold)
{
    std::vector<TextBlock> blocks = laidOut(cells, bold);
    const double most = m_sheet.fullRoom() - headRoom;
    while (heightOf(blocks) > most) {
        std::vector<TextBlock> first;
        for (TextBlock &block : blocks) {
            auto [fits, rest] = block.split(most);
            first.push_back(std::move(fits));
            block = std::move(rest);
        }
        setRow(first);
    }
    setRow(blocks);
}

void Table::setRow(const std::vector<TextBlock> &blocks)
{
    const double height = heightOf(blocks) + 2 * m_padding;
    if (m_sheet.needRoom(height))
        head();
    m_sheet.skip(m_padding);
    place(blocks);
    m_sheet.skip(height - m_padding);
}

void Table::rule()
{
    line(0.3, QColor(0xaa, 0xaa, 0xaa));
}

std::vector<TextBlock> Table::laidOut(const QStringList &cells, const std::vector<bool> &bold) const
{
    std::vector<TextBlock> blocks;
    for (std::size_t i = 0; i < m_columns.size() && i < static_cast<std::size_t>(cells.size()); ++i) {
        TextStyle style = m_style;
        style.bold = i < bold.size() && bold[i];
        blocks.emplace_back(cells[static_cast<qsizetype>(i)], style, m_columns[i].width - gap, m_columns[i].alignment);
    }
    return blocks;
}

void Table::place(const std::vector<TextBlock> &blocks)
{
    double x = m_sheet.body().left();
    for (std::size_t i = 0; i < blocks.size(); ++i) {
        m_sheet.later(
            [block = blocks[i], at = QPointF(x, m_sheet.y())](QPainter &painter) { block.paint(painter, at); });
        x += m_columns[i].width;
    }
}

void Table::line(double thickness, const QColor &colour)
{
    m_sheet.later([y = m_sheet.y(), area = m_sheet.body(), pen = QPen(colour, thickness)](QPainter &painter) {
        painter.setPen(pen);
        painter.drawLine(QPointF(area.left(), y), QPointF(area.right(), y));
    });
}

} // namespace hammerline::paper
