#include "main_window/spot_check_page.h"

#include "charts/chart_pane.h"
#include "wording/counted.h"
#include "wording/palette.h"
#include "wording/wording.h"

#include <QBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QScreen>
#include <QScrollArea>
#include <QTableWidget>

#include <algorithm>

namespace hammerline::main_window {

namespace {

constexpr QSize usualSize{1240, 720};
constexpr int chartHeight = 17; ///< lines of body text
constexpr int mostRows = 6;     ///< of the table before it scrolls

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
                                     SpotCheckPage::tr("Mean difference"), SpotCheckPage::tr("19 of 20 differences")});
    table.setSelectionBehavior(QAbstractItemView::SelectRows);
    table.setSelectionMode(QAbstractItemView::SingleSelection);
    table.setEditTriggers(QAbstractItemView::NoEditTriggers);
    table.setTabKeyNavigation(false);
    table.setShowGrid(false);
    table.setFrameShape(QFrame::NoFrame);
    table.verticalHeader()->hide();
    table.horizontalHeader()->setHighlightSections(false);
    table.setStyleSheet(QStringLiteral("QTableView { outline: 0; }")); // a whole row is chosen, not a cell
    table.setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    table.setWordWrap(true); // at twice the text size a small screen does not hold it in one line
    table.verticalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    table.horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    table.horizontalHeader()->setSectionResizeMode(SpotCheckPage::Limits, QHeaderView::Stretch);
    table.horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter |
                                                  static_cast<Qt::Alignment>(Qt::TextWordWrap));
}

} // namespace

SpotCheckPage::SpotCheckPage(QWidget *parent)
    : QDialog(parent),
      m_heading(makeLabel("spotCheckHeading", wording::TextSize::Title)),
      m_origin(makeLabel("spotCheckOrigin", wording::TextSize::Body)),
      m_table(new QTableWidget),
      m_proof(makeLabel("spotCheckProof", wording::TextSize::Body)),
      m_agreement(makeLabel("spotCheckAgreement", wording::TextSize::Body)),
      m_samples(makeLabel("spotCheckSamples", wording::TextSize::Small)),
      m_chart(new charts::ChartPane)
{
    setObjectName("spotCheckPage");
    setWindowTitle(tr("What the spot check shows"));
    setAttribute(Qt::WA_DeleteOnClose);
    dress(*m_table);
    connect(m_table, &QTableWidget::currentCellChanged, this, &SpotCheckPage::tellChosen);
    connect(m_table->verticalHeader(), &QHeaderView::sectionResized, this, &SpotCheckPage::fitTable);
    connect(m_chart, &charts::ChartPane::noteChosen, this,
            [this](keyboard::Note note) { emit noteChosen(chart().quantity, note); });
    auto *area = new QScrollArea; // at twice the text size a small screen does not hold all of it
    area->setObjectName("spotCheckArea");
    area->setAccessibleName(windowTitle());
    area->setFrameShape(QFrame::NoFrame);
    area->setWidgetResizable(true);
    area->setWidget(makeContent());
    auto *column = new QVBoxLayout(this);
    column->addWidget(area, 1);
    column->addWidget(makeFoot());
    resize((usualSize * wording::textScale()).boundedTo(screen()->availableSize()));
    m_table->setFocus();
}

QWidget *SpotCheckPage::makeContent()
{
    auto *content = new QWidget;
    auto *column = new QVBoxLayout(content);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(3 * wording::gridStep);
    column->addWidget(m_heading);
    column->addWidget(m_origin);
    column->addWidget(m_table);
    column->addLayout(makeText());
    column->addWidget(m_samples);
    column->addWidget(m_chart, 1);
    const int em = m_origin->fontMetrics().height();
    m_chart->setMinimumHeight(chartHeight * em);
    return content;
}

QLayout *SpotCheckPage::makeText()
{
    auto *row = new QHBoxLayout;
    row->setSpacing(8 * wording::gridStep);
    const auto add = [row](const QString &title, QLabel *text) {
        auto *heading = new QLabel(title);
        heading->setFont(wording::font(wording::TextSize::Body, true));
        auto *column = new QVBoxLayout;
        column->setSpacing(wording::gridStep);
        column->addWidget(heading);
        column->addWidget(text);
        column->addStretch(1);
        row->addLayout(column, 1);
    };
    add(tr("What it proves of the rest"), m_proof);
    add(tr("How far the two agree"), m_agreement);
    return row;
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
    fitTable();
    m_table->setCurrentCell(std::min(chosen, m_table->rowCount() - 1), Quantity);
    tellChosen();
}

void SpotCheckPage::fitTable()
{
    int height = m_table->horizontalHeader()->sizeHint().height() + 2 * wording::gridStep;
    for (int row = 0; row < std::min(m_table->rowCount(), mostRows); ++row)
        height += m_table->rowHeight(row);
    m_table->setFixedHeight(height);
}

void SpotCheckPage::fillRow(int row, const decisions::SpotFinding &finding)
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
        texts[Limits] = tr("%1 to %2")
                            .arg(charts::changeText(*agreement->agreementLow, chart),
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
    const decisions::SpotFinding &finding = m_told.findings[static_cast<std::size_t>(row)];
    m_proof->setText(proofOf(finding).join(' '));
    m_agreement->setText(agreementOf(finding, m_told).join(' '));
    m_samples->setText(
        tr("Of %1, a sample with none out: %2.")
            .arg(wording::counted(finding.notes, tr("1 note"), tr("%1 notes")), worthOfSamples(finding.notes)));
    m_samples->setVisible(finding.notes > 0);
    m_chart->setData(m_told.charts.at(finding.quantity));
}

} // namespace hammerline::main_window
