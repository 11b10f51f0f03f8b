#include "main_window/chart_view.h"

#include "wording/wording.h"
#include "wording/wrap_row.h"

#include <QBoxLayout>
#include <QButtonGroup>
#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QPushButton>
#include <QRadioButton>
#include <QStackedLayout>

namespace hammerline::main_window {

namespace {

constexpr int leastLines = 16; ///< of body text, that a chart is high: lower, its axes lose their words

} // namespace

ChartView::ChartView(Workshop &workshop, QWidget *parent)
    : QWidget(parent),
      m_workshop(workshop),
      m_pane(new charts::ChartPane),
      m_question(new QButtonGroup(this)),
      m_withBefore(new QCheckBox(tr("With as found"))),
      m_withPlan(new QCheckBox(tr("With the plan"))),
      m_againstName(new QLabel(tr("Held against:"))),
      m_against(new QComboBox),
      m_empty(new QLabel),
      m_pages(new QStackedLayout)
{
    m_empty->setFont(wording::font(wording::TextSize::Heading));
    m_empty->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    m_empty->setWordWrap(true);
    m_empty->setObjectName("chartEmpty");
    m_pane->setMinimumHeight(leastLines * fontMetrics().height());
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(24, 12, 24, 8);
    column->addLayout(makeQuestions());
    column->addLayout(makeChoices());
    column->addLayout(m_pages, 1);
    m_pages->addWidget(m_empty); // without a parent of its own the layout would show it as a window
    m_pages->addWidget(m_pane);
    connect(m_question, &QButtonGroup::idClicked, this, &ChartView::rebuild);
    connect(m_withBefore, &QCheckBox::toggled, this, &ChartView::rebuild);
    connect(m_withPlan, &QCheckBox::toggled, this, &ChartView::rebuild);
    connect(m_against, &QComboBox::activated, this, &ChartView::rebuild);
    connect(m_pane, &charts::ChartPane::noteChosen, this, &ChartView::noteChosen);
    connect(&m_workshop, &Workshop::passChosen, this, &ChartView::rebuildIfSeen);
    connect(&m_workshop, &Workshop::readingsChanged, this, &ChartView::rebuildIfSeen);
    connect(&m_workshop, &Workshop::plannedChanged, this, &ChartView::rebuildIfSeen);
    connect(&m_workshop, &Workshop::selected, this, &ChartView::followSelection);
}

QLayout *ChartView::makeQuestions()
{
    auto *row = new wording::WrapRow(4 * wording::gridStep);
    const auto add = [&](const QString &text, const char *name, charts::Question question) {
        auto *button = new QRadioButton(text);
        button->setObjectName(name);
        button->setChecked(question == charts::Question::WhereAlongTheKeyboard);
        m_question->addButton(button, static_cast<int>(question));
        row->addWidget(button);
    };
    add(tr("Along the keyboard"), "chartAlong", charts::Question::WhereAlongTheKeyboard);
    add(tr("How spread"), "chartSpread", charts::Question::HowSpread);
    add(tr("Which moved"), "chartMoved", charts::Question::WhichNotesMoved);
    add(tr("Drifted"), "chartDrifted", charts::Question::HasItDrifted);
    add(tr("Who agrees"), "chartAgree", charts::Question::DoTheyAgree);
    auto *save = new QPushButton(tr("Save the chart…"));
    save->setObjectName("chartSave");
    connect(save, &QPushButton::clicked, this, &ChartView::saveWanted);
    row->addWidget(save);
    return row;
}

QLayout *ChartView::makeChoices()
{
    m_withBefore->setObjectName("chartBefore");
    m_withBefore->setChecked(true);
    m_withPlan->setObjectName("chartPlan");
    m_against->setObjectName("chartAgainst");
    m_against->setAccessibleName(tr("Held against"));
    auto *row = new wording::WrapRow(4 * wording::gridStep);
    row->addWidget(m_withBefore);
    row->addWidget(m_withPlan);
    row->addWidget(m_againstName);
    row->addWidget(m_against);
    return row;
}

charts::Question ChartView::question() const
{
    return static_cast<charts::Question>(m_question->checkedId());
}

void ChartView::setForm(const wording::NumberForm &form)
{
    m_form = form;
    rebuildIfSeen();
}

std::optional<charts::ChartData> ChartView::data() const
{
    const auto *instrument = m_workshop.instrument();
    const PassInView *pass = m_workshop.pass();
    if (!instrument || !pass || pass->values.empty())
        return std::nullopt;
    charts::ChartData data;
    data.question = question();
    data.quantity = m_workshop.selection().quantity;
    data.compass = instrument->compass;
    data.sections = instrument->sections;
    data.now = pass->judgement;
    data.form = m_form;
    data.nowName = nameOf(*pass);
    data.subject = QString::fromStdString(instrument->name);
    data.nowPerson = QString::fromStdString(pass->pass.person);
    if (data.question == charts::Question::HasItDrifted) {
        addTrends(data);
        return data;
    }
    if (data.question == charts::Question::WhichNotesMoved || data.question == charts::Question::DoTheyAgree) {
        addOther(data);
        return data;
    }
    const PassInView *before = m_workshop.before();
    if (m_withPlan->isChecked() && !m_workshop.planned().empty()) {
        data.before = std::move(data.now);
        data.beforeName = data.nowName;
        data.now = plannedJudgement();
        data.nowName = tr("Planned");
    } else if (before && m_withBefore->isChecked()) {
        data.before = before->judgement;
        data.beforeName = wording::nameOf(before->pass.purpose);
    }
    return data;
}

tolerance::Judgement ChartView::plannedJudgement() const
{
    readings::ValueTable values = m_workshop.pass()->values;
    for (const auto &[pair, value] : m_workshop.planned())
        values.set(pair.quantity, pair.note, {value, 1});
    return judged(values);
}

/// Why there is no chart; empty: there is one.
QString ChartView::emptyText(bool ofOnePass, const std::optional<charts::ChartData> &chart) const
{
    if (!chart)
        return tr("No readings yet. What is read at the bench shows here.");
    if (!ofOnePass && m_workshop.readsBlind())
        return tr("A spot check of this instrument is being read. What was read before is held against it here when "
                  "the last value of its sample is read.");
    if (chart->question == charts::Question::HasItDrifted && chart->trends.empty())
        return tr("Nothing to draw yet: two passes since the instrument was left, with the same notes, are needed.");
    return {};
}

void ChartView::rebuild()
{
    using charts::Question;
    const bool ofOnePass = question() == Question::WhereAlongTheKeyboard || question() == Question::HowSpread;
    if (!ofOnePass)
        fillAgainst();
    auto chart = data();
    m_shown = m_workshop.selection().quantity;
    m_withPlan->setEnabled(ofOnePass && !m_workshop.planned().empty());
    m_withBefore->setEnabled(ofOnePass && m_workshop.before() != nullptr);
    m_against->setEnabled(!ofOnePass && question() != Question::HasItDrifted && m_against->count() > 0);
    for (QWidget *part : std::initializer_list<QWidget *>{m_againstName, m_against})
        part->setVisible(m_against->count() > 0);
    const QString empty = emptyText(ofOnePass, chart);
    m_empty->setText(empty);
    m_pages->setCurrentIndex(empty.isEmpty() ? 1 : 0);
    if (!empty.isEmpty())
        return;
    m_pane->setData(std::move(*chart));
    m_pane->select(m_workshop.selection().note);
}

void ChartView::rebuildIfSeen()
{
    if (!isVisible())
        return;
    rebuild();
}

void ChartView::followSelection()
{
    if (isVisible() && m_shown == m_workshop.selection().quantity)
        m_pane->select(m_workshop.selection().note);
    else
        rebuildIfSeen();
}

void ChartView::showEvent(QShowEvent *event)
{
    QWidget::showEvent(event);
    rebuild();
}

} // namespace hammerline::main_window
