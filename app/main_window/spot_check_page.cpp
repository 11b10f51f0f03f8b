#include "main_window/spot_check_page.h"

#include "charts/chart_pane.h"
#include "wording/palette.h"
#include "wording/wording.h"

#include <QBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QTableWidget>

namespace hammerline::main_window {

namespace {

constexpr QSize usualSize{1240, 700};

QLabel *makeLabel(const char *name, wording::TextSize size)
{
    auto *label = new QLabel;
    label->setObjectName(name);
    label->setFont(wording::font(size));
    label->setWordWrap(true);
    label->setTextFormat(Qt::PlainText);
    label->setTextInteractionFlags(Qt::TextSelectableByMouse);
    return label;
}

void dress(QTableWidget &table)
{
    table.setObjectName("spotCheckTable");
    table.setAccessibleName(SpotCheckPage::tr("What was found of each quantity"));
    table.setColumnCount(SpotCheckPage::ColumnCount);
    table.setHorizontalHeaderLabels({SpotCheckPage::tr("Quantity"), SpotCheckPage::tr("Read again"),
                                     SpotCheckPage::tr("Out"), SpotCheckPage::tr("At most out"),
                                     SpotCheckPage::tr("Mean difference"),
                                     SpotCheckPage::tr("19 of 20 differences")});
    table.setSelectionBehavior(QAbstractItemView::SelectRows);
    table.setSelectionMode(QAbstractItemView::SingleSelection);
    table.setEditTriggers(QAbstractItemView::NoEditTriggers);
    table.setTabKeyNavigation(false);
    table.setShowGrid(false);
    table.setFrameShape(QFrame::NoFrame);
    table.verticalHeader()->hide();
    table.horizontalHeader()->setHighlightSections(false);
    table.horizontalHeader()->setStretchLastSection(true);
    table.horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
}

} // namespace

SpotCheckPage::SpotCheckPage(QWidget *parent)
    : QDialog(parent), m_heading(makeLabel("spotCheckHeading", wording::TextSize::Title)),
      m_origin(makeLabel("spotCheckOrigin", wording::TextSize::Body)), m_table(new QTableWidget),
      m_proof(makeLabel("spotCheckProof", wording::TextSize::Heading)),
      m_agreement(makeLabel("spotCheckAgreement", wording::TextSize::Body)), m_chart(new charts::ChartPane)
{
    setObjectName("spotCheckPage");
    setWindowTitle(tr("What the spot check shows"));
    setAttribute(Qt::WA_DeleteOnClose);
    dress(*m_table);
    connect(m_table, &QTableWidget::currentCellChanged, this, &SpotCheckPage::tellChosen);
    auto *below = new QHBoxLayout;
    below->setSpacing(6 * wording::gridStep);
    below->addWidget(makeText(), 2);
    below->addWidget(m_chart, 5);
    auto *column = new QVBoxLayout(this);
    column->setSpacing(2 * wording::gridStep);
    column->addWidget(m_heading);
    column->addWidget(m_origin);
    column->addWidget(m_table, 2);
    column->addLayout(below, 5);
    column->addWidget(makeFoot());
    resize(usualSize);
    m_table->setFocus();
}

QWidget *SpotCheckPage::makeText()
{
    auto *text = new QWidget;
    auto *column = new QVBoxLayout(text);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(3 * wording::gridStep);
    column->addWidget(m_proof);
    column->addWidget(m_agreement);
    column->addStretch(1);
    auto *area = new QScrollArea;
    area->setFrameShape(QFrame::NoFrame);
    area->setWidgetResizable(true);
    area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    area->setWidget(text);
    area->setObjectName("spotCheckText");
    area->setAccessibleName(tr("What was found of the chosen quantity, in words"));
    return area;
}

QWidget *SpotCheckPage::makeFoot()
{
    auto *save = new QPushButton(tr("&Save the chart…"));
    save->setObjectName("spotCheckSave");
    save->setAutoDefault(false);
    auto *close = new QPushButton(tr("&Close"));
    close->setObjectName("spotCheckClose");
    close->setAutoDefault(false);
    connect(save, &QPushButton::clicked, this, [this] { emit saveWanted(chart()); });
    connect(close, &QPushButton::clicked, this, &QDialog::close);
    auto *foot = new QWidget;
    auto *row = new QHBoxLayout(foot);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(save);
    row->addStretch(1);
    row->addWidget(close);
    return foot;
}

void SpotCheckPage::show(SpotCheckTold told)
{
    m_told = std::move(told);
    m_heading->setText(headingOf(m_told));
    m_origin->setText(originOf(m_told));
    fillTable();
    QDialog::show();
}

void SpotCheckPage::fillTable()
{
    const int chosen = std::max(0, m_table->currentRow());
    m_table->setRowCount(static_cast<int>(m_told.findings.size()));
    for (int row = 0; row < m_table->rowCount(); ++row)
        fillRow(row, m_told.findings[static_cast<std::size_t>(row)]);
    m_table->resizeColumnsToContents();
    m_table->setCurrentCell(std::min(chosen, m_table->rowCount() - 1), Quantity);
    tellChosen();
}

void SpotCheckPage::fillRow(int row, const review::SpotFinding &finding)
{
    const QString none = QStringLiteral("–");
    const charts::ChartData &chart = m_told.charts.at(finding.quantity);
    const auto &agreement = finding.agreement;
    QStringList texts{wording::nameOf(finding.quantity), none, none, none, none, none};
    if (finding.proof) {
        texts[ReadAgain] = tr("%1 of %2").arg(finding.sample).arg(finding.notes);
        texts[Out] = QString::number(finding.out.size());
        texts[MostOut] = tr("%1 of %2").arg(finding.proof->mostOut).arg(finding.notes);
    }
    if (agreement)
        texts[Mean] = charts::changeText(agreement->meanChange, chart);
    if (agreement && agreement->agreementLow && agreement->agreementHigh)
        texts[Limits] = tr("%1 to %2").arg(charts::changeText(*agreement->agreementLow, chart),
                                           charts::changeText(*agreement->agreementHigh, chart));
    for (int column = 0; column < ColumnCount; ++column)
        m_table->setItem(row, column, new QTableWidgetItem(texts[column]));
}

const charts::ChartData &SpotCheckPage::chart() const
{
    return m_chart->data();
}

void SpotCheckPage::tellChosen()
{
    const int row = m_table->currentRow();
    if (row < 0 || row >= static_cast<int>(m_told.findings.size()))
        return;
    const review::SpotFinding &finding = m_told.findings[static_cast<std::size_t>(row)];
    m_proof->setText(proofOf(finding).join(QStringLiteral("\n\n")));
    m_agreement->setText(agreementOf(finding, m_told).join(QStringLiteral("\n\n")));
    m_chart->setData(m_told.charts.at(finding.quantity));
}

} // namespace hammerline::main_window
