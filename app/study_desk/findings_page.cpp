#include "study_desk/findings_page.h"

#include "wording/palette.h"
#include "wording/wording.h"
#include "wording/wrap_row.h"

#include <QBoxLayout>
#include <QButtonGroup>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QRadioButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QStackedWidget>
#include <QTableWidget>

#include <array>

namespace hammerline::study_desk {

namespace {

QTableWidget *makeTable()
{
    auto *table = new QTableWidget(5, 4);
    table->setObjectName("studyComponents");
    table->setAccessibleName(FindingsPage::tr("Where the spread comes from"));
    table->setHorizontalHeaderLabels({FindingsPage::tr("Spread of"), FindingsPage::tr("Standard deviation"),
                                      FindingsPage::tr("Lies within (95 %)"), FindingsPage::tr("Share")});
    table->horizontalHeaderItem(3)->setToolTip(FindingsPage::tr("Of the variance of all"));
    table->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    table->horizontalHeader()->setHighlightSections(false);
    table->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents); // whenever it is dressed anew
    table->verticalHeader()->hide();
    table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table->setSelectionBehavior(QAbstractItemView::SelectRows);
    table->setTabKeyNavigation(false);
    table->setShowGrid(false);
    table->setFrameShape(QFrame::NoFrame);
    table->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    return table;
}

} // namespace

FindingsPage::FindingsPage(QWidget *parent)
    : QWidget(parent),
      m_heading(new QLabel),
      m_story(new QLabel),
      m_table(makeTable()),
      m_choice(new QButtonGroup(this)),
      m_pages(new QStackedWidget),
      m_save(new QPushButton(tr("Save the chart…"))),
      m_saveTrials(new QPushButton(tr("Save the trials…"))),
      m_pane(new charts::StudyPane)
{
    m_heading->setObjectName("studyHeading");
    m_heading->setFont(wording::font(wording::TextSize::Heading, true));
    m_heading->setWordWrap(true);
    m_story->setObjectName("studyStory");
    m_story->setWordWrap(true);
    m_story->setTextFormat(Qt::PlainText);
    m_pane->setObjectName("studyChart");
    m_save->setObjectName("studySaveChart");
    m_saveTrials->setObjectName("studySaveTrials");
    m_saveTrials->setToolTip(tr("Every value as it was read, in the form that hammerline gauge-study takes"));
    auto *words = new QWidget;
    auto *lines = new QVBoxLayout(words);
    lines->setContentsMargins({});
    lines->setSpacing(4 * wording::gridStep);
    lines->addWidget(m_story);
    lines->addWidget(m_table);
    lines->addStretch(1);
    auto *area = new QScrollArea; // the charts are not to be as high as the words
    area->setFrameShape(QFrame::NoFrame);
    area->setAccessibleName(tr("What the study says"));
    area->setWidgetResizable(true);
    area->setWidget(words);
    m_pages->addWidget(area);
    m_pages->addWidget(m_pane);
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(24, 12, 24, 8);
    column->setSpacing(2 * wording::gridStep);
    column->addWidget(m_heading);
    column->addLayout(makeChoices());
    column->addWidget(m_pages, 1);
    connect(m_save, &QPushButton::clicked, this, &FindingsPage::saveWanted);
    connect(m_saveTrials, &QPushButton::clicked, this, &FindingsPage::trialsWanted);
    connect(m_pane, &charts::StudyPane::noteChosen, this, &FindingsPage::noteChosen);
    connect(m_choice, &QButtonGroup::idClicked, this, &FindingsPage::choose);
    choose(0);
}

QLayout *FindingsPage::makeChoices()
{
    auto *choices = new wording::WrapRow(4 * wording::gridStep);
    const std::array texts{tr("In words"), tr("Every value"), tr("By person"), tr("By source")};
    const std::array names{"studyWords", "studyValues", "studyRanges", "studySources"};
    for (std::size_t i = 0; i < texts.size(); ++i) {
        auto *choice = new QRadioButton(texts[i]);
        choice->setObjectName(names[i]);
        choice->setChecked(i == 0);
        m_choice->addButton(choice, static_cast<int>(i));
        choices->addWidget(choice);
    }
    choices->addWidget(m_save);
    choices->addWidget(m_saveTrials);
    return choices;
}

void FindingsPage::show(const Findings &findings)
{
    m_heading->setText(tr("%1, %2").arg(nameOf(findings.study), dayOf(findings.study)));
    m_story->setText(sentencesOf(findings).join('\n'));
    fillTable(findings);
    m_pane->setData({.question = m_pane->data().question,
                     .quantity = findings.study.quantity,
                     .trials = findings.trials,
                     .study = findings.figures,
                     .intervals = findings.intervals,
                     .form = formOf(findings.study),
                     .subject = QString::fromStdString(findings.study.gauge.name),
                     .limits = findings.limits});
}

void FindingsPage::choose(int page)
{
    m_pages->setCurrentIndex(page == 0 ? 0 : 1);
    m_save->setEnabled(page != 0);
    if (page == 0)
        return;
    charts::StudyChartData asked = m_pane->data();
    asked.question = static_cast<charts::StudyQuestion>(page - 1);
    m_pane->setData(std::move(asked));
}

void FindingsPage::fillTable(const Findings &findings)
{
    const auto form = formOf(findings.study);
    const auto dimension = catalogue::infoOf(findings.study.quantity).dimension;
    const auto &figures = findings.figures;
    const auto bare = [&](double sd) { return charts::sdText(sd, dimension, form).section(' ', 0, -2); };
    const auto row = [&](int at, const QString &name, double analysis::Components::*part,
                         const analysis::SdInterval &interval) {
        const QString share =
            figures.variance.total > 0
                ? wording::numberText(100 * figures.variance.*part / figures.variance.total, 1, form) + " %"
                : QString("–");
        const QStringList texts{name, charts::sdText(figures.sd.*part, dimension, form),
                                tr("%1 to %2").arg(bare(interval.low), charts::sdText(interval.high, dimension, form)),
                                share};
        for (int column = 0; column < texts.size(); ++column)
            m_table->setItem(at, column, new QTableWidgetItem(texts[column]));
    };
    row(0, tr("the same person again"), &analysis::Components::repeatability, findings.intervals.repeatability);
    row(1, tr("another person"), &analysis::Components::reproducibility, findings.intervals.reproducibility);
    row(2, tr("gauge and people together"), &analysis::Components::gauge, findings.intervals.gauge);
    row(3, tr("the notes themselves"), &analysis::Components::note, findings.intervals.note);
    row(4, tr("all"), &analysis::Components::total, findings.intervals.total);
    m_table->resizeRowsToContents();
    int height = m_table->horizontalHeader()->sizeHint().height();
    for (int at = 0; at < m_table->rowCount(); ++at)
        height += m_table->rowHeight(at);
    height += m_table->horizontalScrollBar()->sizeHint().height(); // for a window that is too narrow
    m_table->setFixedHeight(height + wording::gridStep);
}

} // namespace hammerline::study_desk
