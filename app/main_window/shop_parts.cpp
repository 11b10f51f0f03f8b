#include "main_window/shop_parts.h"

#include "wording/palette.h"

#include <QBoxLayout>
#include <QComboBox>
#include <QHeaderView>
#include <QLabel>
#include <QScrollBar>
#include <QTableView>

namespace hammerline::main_window {

QComboBox *addBox(QHBoxLayout *row, const QString &label, const char *name)
{
    auto *box = new QComboBox;
    box->setObjectName(name);
    box->setAccessibleName(label);
    auto *words = new QLabel(label + ':');
    words->setBuddy(box);
    row->addWidget(words);
    row->addWidget(box);
    return box;
}

void dressFigures(QTableView *table)
{
    table->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    table->horizontalHeader()->setHighlightSections(false);
    table->horizontalHeader()->setStretchLastSection(true);
    table->verticalHeader()->hide();
    table->setSelectionBehavior(QAbstractItemView::SelectRows);
    table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table->setTabKeyNavigation(false);
    table->setShowGrid(false);
    table->setFrameShape(QFrame::NoFrame);
    table->setFont(wording::font(wording::TextSize::Small)); // ten columns beside the workshop's panel
    table->horizontalHeader()->setFont(wording::font(wording::TextSize::Small));
    table->verticalHeader()->setDefaultSectionSize(2 * table->fontMetrics().height());
}

int heightOfRows(const QTableView &table)
{
    return table.verticalHeader()->length() + table.horizontalHeader()->sizeHint().height() +
           table.horizontalScrollBar()->sizeHint().height() + wording::gridStep;
}

} // namespace hammerline::main_window
