#pragma once
// A table that is set row by row onto a sheet. Its head stands again on every page and never alone: at least the first
// lines of a row stand below it. It breaks between rows, and inside a row that is higher than the room that is left, so
// that no page is left half empty. What closes a table (its last line and the notes below) takes the last rows along
// where it needs a new page.

#include "paper/sheet.h"

#include <QString>
#include <QStringList>

#include <deque>
#include <vector>

namespace hammerline::paper {

struct Column {
    QString head{}; ///< '\n' breaks it
    double width = 40;
    Qt::Alignment alignment = Qt::AlignLeft;
};

class Table {
public:
    /// The last column takes what is left of the sheet's width where its own width is 0.
    Table(Sheet &sheet, std::vector<Column> columns, TextStyle style = smallText);
    ~Table();
    Table(const Table &) = delete;
    Table &operator=(const Table &) = delete;

    /// One cell a column; fewer cells leave the rest empty. `bold` marks single cells.
    void row(const QStringList &cells, const std::vector<bool> &bold = {});
    /// A thin line below the last row, to lead the eye.
    void rule();
    /// To be called once, behind the last row: a thin line, and the notes below it in quiet text. Without a row there
    /// is no head and no line, and the notes stand alone.
    void end(const QStringList &notes = {});
    void setRowPadding(double padding) { m_padding = padding; }

private:
    struct Row {
        std::vector<TextBlock> blocks{};
        bool isRuled = false;
    };
    void head();
    bool turnPage();
    void setRow(Row row, double closing);
    void setLines(const std::vector<TextBlock> &blocks);
    [[nodiscard]] double heightOf(const Row &row) const;
    [[nodiscard]] double waitingHeight() const;
    [[nodiscard]] std::vector<TextBlock> laidOut(const QStringList &cells, const std::vector<bool> &bold) const;
    void place(const std::vector<TextBlock> &blocks);
    void line(double thickness, const QColor &colour);

    Sheet &m_sheet;
    std::vector<Column> m_columns;
    TextStyle m_style;
    double m_padding = 1.5;
    std::vector<TextBlock> m_head;
    bool m_hasHead = false;    ///< on the page that is being set
    std::deque<Row> m_waiting; ///< the last few rows: they go along with what closes the table
};

} // namespace hammerline::paper
