#include "main_window/shop_parts.h"

#include "wording/palette.h"
#include "wording/wrap_row.h"

#include <QComboBox>
#include <QHeaderView>
#include <QLabel>
#include <QScrollBar>
#include <QTableView>
#include <QTextDocument>

#include <algorithm>

namespace hammerline::main_window {

QComboBox *addBox(wording::WrapRow *row, const QString &label, const char *name)
{
    auto *box = new QComboBox;
    box->setObjectName(name);
    box->setAccessibleName(label);
    row->addPair(new QLabel(label + ':'), box);
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
    table->verticalHeader()->setDefaultSectionSize(table->fontMetrics().height() + 2 * wording::gridStep);
}

void fitNames(QTableView *table)
{
    constexpr int letters = 36;
    table->setColumnWidth(0, std::min(table->columnWidth(0), letters * table->fontMetrics().averageCharWidth()));
}

QString wrapped(const QString &text)
{
    constexpr int lettersOfLine = 80;
    return text.size() > lettersOfLine ? Qt::convertFromPlainText(text, Qt::WhiteSpaceNormal) : text;
}

void fitHeight(QTableView *table)
{
    constexpr int leastRows = 7;
    const QHeaderView &rows = *table->verticalHeader();
    const int around = table->horizontalHeader()->sizeHint().height() +
                       table->horizontalScrollBar()->sizeHint().height() + wording::gridStep;
    table->setMaximumHeight(rows.length() + around);
    table->setMinimumHeight(std::min(rows.length(), leastRows * rows.defaultSectionSize()) + around);
}

} // namespace hammerline::main_window
