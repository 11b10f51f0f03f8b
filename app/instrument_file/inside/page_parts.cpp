#include "instrument_file/inside/page_parts.h"

#include "wording/palette.h"

#include <QBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QResizeEvent>
#include <QTableWidget>

#include <algorithm>

namespace hammerline::instrument_file {

namespace {

/// Fits its columns anew whenever its width changes.
class FittedTable : public QTableWidget {
public:
    using QTableWidget::QTableWidget;

protected:
    void resizeEvent(QResizeEvent *event) override
    {
        QTableWidget::resizeEvent(event);
        if (event->size().width() != event->oldSize().width())
            fitColumns(this);
    }
};

constexpr int roomOfCell = 6 * wording::gridStep; ///< what the stylesheet and the style keep free beside a text

/// What a column needs at least: its longest word, or so much of a long text that it is still read.
int leastWidth(const QTableWidget &table, int column)
{
    constexpr int fewestLetters = 12;
    const int room = roomOfCell;
    int least = 0;
    for (const QString &word : table.horizontalHeaderItem(column)->text().split(' '))
        least = std::max(least, table.horizontalHeader()->fontMetrics().horizontalAdvance(word) + room);
    for (int row = 0; row < table.rowCount(); ++row)
        for (const QString &word : table.model()->index(row, column).data().toString().split(' '))
            least = std::max(least, std::min(table.fontMetrics().horizontalAdvance(word),
                                             fewestLetters * table.fontMetrics().averageCharWidth()) +
                                        room);
    return least;
}

/// As high as the heads need that go on in further lines.
void fitHeads(QTableWidget &table)
{
    QHeaderView &heads = *table.horizontalHeader();
    int height = 0;
    for (int column = 0; column < table.columnCount(); ++column) {
        const QTableWidgetItem &head = *table.horizontalHeaderItem(column);
        const QFontMetrics metrics(head.data(Qt::FontRole).isValid() ? head.font() : heads.font());
        const QRect room(0, 0, table.columnWidth(column) - roomOfCell, 1 << 16);
        height = std::max(height, metrics.boundingRect(room, Qt::TextWordWrap, head.text()).height());
    }
    heads.setMinimumHeight(height + 2 * wording::gridStep);
}

/// Qt reckons with the room of the cell, of which the stylesheet keeps a part free: a line would be missing.
void fitRows(QTableWidget &table)
{
    table.resizeRowsToContents();
    for (int row = 0; row < table.rowCount(); ++row)
        for (int column = 0; column < table.columnCount(); ++column) {
            const QRect room(0, 0, table.columnWidth(column) - roomOfCell, 1 << 16);
            const QString text = table.model()->index(row, column).data().toString();
            const int height = table.fontMetrics().boundingRect(room, Qt::TextWordWrap, text).height();
            if (table.wordWrap() && height + wording::gridStep > table.rowHeight(row))
                table.setRowHeight(row, height + wording::gridStep);
        }
}

} // namespace

void fitColumns(QTableWidget *table)
{
    table->horizontalHeader()->setStretchLastSection(false); // else its width is not that of its contents
    table->resizeColumnsToContents();
    std::vector<int> spare;
    for (int column = 0; column < table->columnCount(); ++column)
        spare.push_back(table->columnWidth(column) - leastWidth(*table, column));
    int over = table->horizontalHeader()->length() - table->viewport()->width();
    while (over > 0) { // the column that has most to spare gives way, as long as its words stay whole
        const auto most = std::ranges::max_element(spare);
        const int gives = std::min({*most, over, table->fontMetrics().averageCharWidth() * 2});
        if (gives <= 0)
            break;
        const auto column = static_cast<int>(most - spare.begin());
        table->setColumnWidth(column, table->columnWidth(column) - gives);
        *most -= gives;
        over -= gives;
    }
    table->horizontalHeader()->setStretchLastSection(true);
    fitHeads(*table);
    fitRows(*table);
}

QTableWidget *makeTable(const char *name, const QString &accessibleName, const QStringList &heads)
{
    auto *table = new FittedTable(0, static_cast<int>(heads.size()));
    table->setObjectName(name);
    table->setAccessibleName(accessibleName);
    table->setHorizontalHeaderLabels(heads);
    table->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter |
                                                   static_cast<Qt::Alignment>(Qt::TextWordWrap));
    table->horizontalHeader()->setHighlightSections(false);
    table->horizontalHeader()->setStretchLastSection(true);
    table->verticalHeader()->hide();
    table->setSelectionBehavior(QAbstractItemView::SelectRows);
    table->setSelectionMode(QAbstractItemView::SingleSelection);
    table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table->setTabKeyNavigation(false);
    table->setShowGrid(false);
    table->setFrameShape(QFrame::NoFrame);
    return table;
}

void addRow(QTableWidget *table, const QStringList &texts, const QString &key)
{
    const int row = table->rowCount();
    table->insertRow(row);
    for (int column = 0; column < texts.size(); ++column) {
        auto *item = new QTableWidgetItem(texts[column]);
        item->setData(Qt::UserRole, key);
        item->setToolTip(texts[column]);
        table->setItem(row, column, item);
    }
}

QString keyOfCurrent(const QTableWidget *table)
{
    const QTableWidgetItem *item = table->item(table->currentRow(), 0);
    return item == nullptr ? QString() : item->data(Qt::UserRole).toString();
}

void makeCurrent(QTableWidget *table, const QString &key)
{
    int chosen = 0;
    for (int row = 0; row < table->rowCount(); ++row)
        if (table->item(row, 0)->data(Qt::UserRole).toString() == key)
            chosen = row;
    if (table->rowCount() > 0)
        table->setCurrentCell(chosen, 0);
}

QPushButton *addButton(QHBoxLayout *row, const QString &text, const char *name)
{
    auto *button = new QPushButton(text);
    button->setObjectName(name);
    button->setAutoDefault(false);
    row->addWidget(button);
    return button;
}

QLabel *makeHint(const QString &text)
{
    auto *label = new QLabel(text);
    label->setWordWrap(true);
    return label;
}

int widestLine(const QWidget &field)
{
    return widestLetters * field.fontMetrics().averageCharWidth();
}

QVBoxLayout *columnOf(QWidget *page)
{
    auto *column = new QVBoxLayout(page);
    column->setContentsMargins(24, 12, 24, 8);
    column->setSpacing(3 * wording::gridStep);
    return column;
}

} // namespace hammerline::instrument_file
