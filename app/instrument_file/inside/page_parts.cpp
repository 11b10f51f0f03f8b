#include "instrument_file/inside/page_parts.h"

#include "wording/palette.h"

#include <QBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QTableWidget>

namespace hammerline::instrument_file {

QTableWidget *makeTable(const char *name, const QString &accessibleName, const QStringList &heads)
{
    auto *table = new QTableWidget(0, static_cast<int>(heads.size()));
    table->setObjectName(name);
    table->setAccessibleName(accessibleName);
    table->setHorizontalHeaderLabels(heads);
    table->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
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
