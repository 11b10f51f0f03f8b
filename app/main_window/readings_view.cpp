#include "main_window/readings_view.h"

#include "wording/palette.h"

#include <QBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QScrollBar>
#include <QSignalBlocker>
#include <QTableView>

#include <algorithm>

namespace hammerline::main_window {

namespace {

QTableView *makeTable(QAbstractItemModel *model, const char *name, const QString &accessibleName)
{
    auto *table = new QTableView;
    table->setObjectName(name);
    table->setAccessibleName(accessibleName);
    table->setModel(model);
    table->setShowGrid(false);
    table->setFrameShape(QFrame::NoFrame);
    table->setTabKeyNavigation(false);
    table->horizontalHeader()->setHighlightSections(false);
    return table;
}

constexpr int leastRows = 5;        ///< of the readings, that are seen below their heads
constexpr int leastSummaryRows = 2; ///< of the summary

/// What a table takes beside its rows: its heads, and the bar where they are wider than the window.
int heightAround(const QTableView &table)
{
    const bool barred = table.horizontalHeader()->length() > table.viewport()->width();
    return table.horizontalHeader()->sizeHint().height() + 2 +
           (barred ? table.horizontalScrollBar()->sizeHint().height() : 0);
}

int heightOfRows(const QTableView &table, int most)
{
    const QHeaderView &rows = *table.verticalHeader();
    return heightAround(table) + std::min(rows.length(), most * rows.defaultSectionSize());
}

} // namespace

ReadingsView::ReadingsView(Workshop &workshop, QWidget *parent)
    : QWidget(parent),
      m_workshop(workshop),
      m_readings(new ReadingModel(this)),
      m_summary(new SummaryModel(this)),
      m_table(makeTable(m_readings, "readingsTable", tr("Readings by note and quantity"))),
      m_summaryTable(makeTable(m_summary, "summaryTable", tr("Summary by quantity"))),
      m_empty(new QLabel)
{
    m_summaryTable->verticalHeader()->hide();
    m_summaryTable->setSelectionMode(QAbstractItemView::NoSelection);
    m_summaryTable->verticalHeader()->setDefaultSectionSize(fontMetrics().lineSpacing() + 2 * wording::gridStep);
    m_table->setSelectionMode(QAbstractItemView::SingleSelection);
    m_table->verticalHeader()->setDefaultSectionSize(fontMetrics().lineSpacing() + wording::gridStep);
    m_empty->setFont(wording::font(wording::TextSize::Heading));
    m_empty->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    m_empty->setWordWrap(true);
    m_empty->setText(tr("No readings yet. What is read at the bench is listed here."));
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(24, 12, 24, 8);
    column->setSpacing(3 * wording::gridStep);
    column->addWidget(m_summaryTable);
    column->addWidget(m_table, 1);
    column->addWidget(m_empty, 1);
    connect(m_table->selectionModel(), &QItemSelectionModel::currentChanged, this, [this](const QModelIndex &at) {
        if (at.isValid())
            emit pairChosen(m_readings->quantityAt(at.column()), m_readings->noteAt(at.row()));
    });
    connect(&m_workshop, &Workshop::passChosen, this, &ReadingsView::fillIfSeen);
    connect(&m_workshop, &Workshop::readingsChanged, this, &ReadingsView::fillIfSeen);
    connect(&m_workshop, &Workshop::selected, this, &ReadingsView::followSelection);
    fill();
}

void ReadingsView::setForm(const wording::NumberForm &form)
{
    m_form = form;
    fillIfSeen();
}

void ReadingsView::fill()
{
    m_readings->show(m_workshop.instrument(), m_workshop.pass(), m_workshop.set(), m_form);
    m_summary->show(m_workshop.summaries(), m_form);
    const bool empty = m_readings->rowCount() == 0;
    m_empty->setVisible(empty);
    m_table->setVisible(!empty);
    m_summaryTable->setVisible(!empty && m_summary->rowCount() > 0);
    m_summaryTable->resizeColumnsToContents();
    m_table->resizeColumnsToContents();
    fitHeights();
    followSelection();
}

void ReadingsView::fillIfSeen()
{
    if (isVisible())
        fill();
}

void ReadingsView::followSelection()
{
    const QModelIndex at = m_readings->indexOf(m_workshop.selection());
    if (!at.isValid() || at == m_table->currentIndex())
        return;
    const QSignalBlocker quiet(m_table->selectionModel());
    m_table->setCurrentIndex(at);
    m_table->scrollTo(at);
    m_table->viewport()->update();
}

/// The summary is as tall as its rows, but leaves room for some of the readings and is scrolled then.
void ReadingsView::fitHeights()
{
    m_table->setMinimumHeight(heightOfRows(*m_table, leastRows));
    const int whole = heightOfRows(*m_summaryTable, m_summary->rowCount());
    const QMargins margins = layout()->contentsMargins();
    const int room = height() - margins.top() - margins.bottom() - layout()->spacing() - m_table->minimumHeight();
    const int shown = std::min(whole, std::max(room, heightOfRows(*m_summaryTable, leastSummaryRows)));
    m_summaryTable->setVerticalScrollBarPolicy(shown < whole ? Qt::ScrollBarAsNeeded : Qt::ScrollBarAlwaysOff);
    m_summaryTable->setFixedHeight(shown);
}

void ReadingsView::resizeEvent(QResizeEvent *event)
{
    QWidget::resizeEvent(event);
    fitHeights();
}

void ReadingsView::showEvent(QShowEvent *event)
{
    QWidget::showEvent(event);
    fill();
}

} // namespace hammerline::main_window
