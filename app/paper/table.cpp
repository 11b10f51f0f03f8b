#include "paper/table.h"

#include <QPainter>

#include <algorithm>

namespace hammerline::paper {

namespace {

constexpr double gap = 8; ///< between columns
constexpr double belowHead = 4;
constexpr double aboveNotes = 6;
constexpr std::size_t rowsKept = 3; ///< with what closes the table,
constexpr double mostKept = 120;    ///< as long as they are no higher than this
constexpr TextStyle noteText = quietText;

double highest(const std::vector<TextBlock> &blocks)
{
    double height = 0;
    for (const TextBlock &block : blocks)
        height = std::max(height, block.height());
    return height;
}

/// The lines that fit into `height`; the rest stays in `blocks`.
std::vector<TextBlock> splitOff(std::vector<TextBlock> &blocks, double height)
{
    std::vector<TextBlock> first;
    for (TextBlock &block : blocks) {
        auto [fits, rest] = block.split(height);
        first.push_back(std::move(fits));
        block = std::move(rest);
    }
    return first;
}

/// As Sheet::paragraph sets them, and the room above them.
double heightOfNotes(const QStringList &notes, double width)
{
    double height = notes.isEmpty() ? 0 : aboveNotes;
    for (const QString &note : notes)
        height += TextBlock(note, noteText, width).height() + noteText.size * 0.5;
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
    QStringList heads;
    for (const Column &column : m_columns)
        heads << column.head;
    m_head = laidOut(heads, std::vector<bool>(m_columns.size(), true));
}

Table::~Table()
{
    Q_ASSERT_X(m_waiting.empty(), "Table", "end() was not called: its last rows are not on the paper");
}

void Table::row(const QStringList &cells, const std::vector<bool> &bold)
{
    m_waiting.push_back({laidOut(cells, bold)});
    while (m_waiting.size() > 1 && (m_waiting.size() > rowsKept || waitingHeight() > mostKept)) {
        setRow(std::move(m_waiting.front()), 0);
        m_waiting.pop_front();
    }
}

void Table::rule()
{
    if (!m_waiting.empty())
        m_waiting.back().isRuled = true;
}

void Table::end(const QStringList &notes)
{
    rule();
    const double closing = heightOfNotes(notes, m_sheet.body().width());
    const double together = waitingHeight() + closing + (m_hasHead ? 0 : highest(m_head) + belowHead);
    if (waitingHeight() <= mostKept && together > m_sheet.room())
        (void)turnPage();
    for (Row &row : m_waiting)
        setRow(std::move(row), &row == &m_waiting.back() ? closing : 0);
    m_waiting.clear();
    if (!notes.isEmpty())
        m_sheet.skip(aboveNotes);
    for (const QString &note : notes)
        m_sheet.paragraph(note, noteText);
}

void Table::head()
{
    place(m_head);
    m_sheet.skip(highest(m_head) + 2);
    line(0.8, Qt::black);
    m_sheet.skip(belowHead - 2);
    m_hasHead = true;
}

/// True, always.
bool Table::turnPage()
{
    m_sheet.newPage();
    m_hasHead = false;
    return true;
}

/// `closing`: height of what must stand on the page of the row's end.
void Table::setRow(Row row, double closing)
{
    const double step = m_style.size * m_style.leading;
    const double above = m_hasHead ? 0 : highest(m_head) + belowHead;
    bool isFresh = false;
    if (above + leastBeforeBreak(highest(row.blocks), step) + 2 * m_padding > m_sheet.room())
        isFresh = turnPage();
    if (!m_hasHead)
        head();
    while (heightOf(row) + closing > m_sheet.room()) {
        const double here = heightBeforeBreak(highest(row.blocks), step, m_sheet.room() - 2 * m_padding);
        if (here > 0)
            setLines(splitOff(row.blocks, here));
        else if (isFresh)
            break; // no page is high enough for what closes the table
        isFresh = turnPage();
        head();
    }
    setLines(row.blocks);
    if (row.isRuled)
        line(0.3, QColor(0xaa, 0xaa, 0xaa));
}

void Table::setLines(const std::vector<TextBlock> &blocks)
{
    m_sheet.skip(m_padding);
    place(blocks);
    m_sheet.skip(highest(blocks) + m_padding);
}

double Table::heightOf(const Row &row) const
{
    return highest(row.blocks) + 2 * m_padding;
}

double Table::waitingHeight() const
{
    double height = 0;
    for (const Row &row : m_waiting)
        height += heightOf(row);
    return height;
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
