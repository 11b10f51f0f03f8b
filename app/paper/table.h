#pragma once
// A table that is set row by row onto a sheet. It breaks between rows, and its head stands again on every page; a row
// that is higher than a page goes on behind the break.

#include "paper/sheet.h"

#include <QString>
#include <QStringList>

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

    /// One cell a column; fewer cells leave the rest empty. `bold` marks single cells.
    void row(const QStringList &cells, const std::vector<bool> &bold = {});
    /// A thin line below the last row, to lead the eye; and one at the end of a table.
    void rule();
    void setRowPadding(double padding) { m_padding = padding; }

private:
    void head();
    void setRow(const std::vector<TextBlock> &blocks);
    [[nodiscard]] std::vector<TextBlock> laidOut(const QStringList &cells, const std::vector<bool> &bold) const;
    void place(const std::vector<TextBlock> &blocks);
    void line(double thickness, const QColor &colour);

    Sheet &m_sheet;
    std::vector<Column> m_columns;
    TextStyle m_style;
    double m_padding = 1.5;
};

} // namespace hammerline::paper
