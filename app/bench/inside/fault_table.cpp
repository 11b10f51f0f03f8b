#include "bench/inside/fault_table.h"

#include <QHeaderView>

namespace hammerline::bench {

FaultTable::FaultTable(QWidget *parent) : QTableWidget(0, 2, parent)
{
    setObjectName("faultTable");
    setAccessibleName(tr("Felt faults and their letters"));
    setHorizontalHeaderLabels({tr("Letter"), tr("Fault")});
    horizontalHeader()->setStretchLastSection(true);
    verticalHeader()->hide();
    setTabKeyNavigation(false);
    setSelectionMode(QAbstractItemView::SingleSelection);
    setEditTriggers(QAbstractItemView::AnyKeyPressed | QAbstractItemView::DoubleClicked |
                    QAbstractItemView::EditKeyPressed);
}

void FaultTable::show(const std::vector<FaultWord> &words)
{
    setRowCount(0);
    for (const FaultWord &word : words)
        addRow(QString(word.key), word.word);
    setCurrentCell(0, 0);
}

std::vector<FaultWord> FaultTable::words() const
{
    std::vector<FaultWord> words;
    for (int row = 0; row < rowCount(); ++row) {
        const QString letter = item(row, 0)->text().trimmed().toLower();
        const QString word = item(row, 1)->text().simplified();
        if (!letter.isEmpty() || !word.isEmpty())
            words.push_back({letter.size() == 1 ? letter.at(0) : QChar(), word});
    }
    return words;
}

void FaultTable::add()
{
    addRow({}, {});
    setFocus();
    setCurrentCell(rowCount() - 1, 0);
}

void FaultTable::removeCurrent()
{
    removeRow(currentRow());
}

void FaultTable::addRow(const QString &letter, const QString &word)
{
    const int row = rowCount();
    insertRow(row);
    setItem(row, 0, new QTableWidgetItem(letter));
    setItem(row, 1, new QTableWidgetItem(word));
}

} // namespace hammerline::bench
