#include "main_window/chart_view.h"

#include "wording/wording.h"

#include <QBoxLayout>
#include <QButtonGroup>
#include <QCheckBox>
#include <QLabel>
#include <QPushButton>
#include <QRadioButton>
#include <QStackedLayout>

namespace hammerline::main_window {

ChartView::ChartView(Workshop &workshop, QWidget *parent)
    : QWidget(parent),
      m_workshop(workshop),
      m_pane(new charts::ChartPane),
      m_question(new QButtonGroup(this)),
      m_withBefore(new QCheckBox(tr("With as found"))),
      m_withPlan(new QCheckBox(tr("With the plan"))),
      m_empty(new QLabel),
      m_pages(new QStackedLayout)
{
    auto *along = new QRadioButton(tr("Along the keyboard"));
    along->setObjectName("chartAlong");
    along->setChecked(true);
    auto *spread = new QRadioButton(tr("How the values spread"));
    spread->setObjectName("chartSpread");
    m_question->addButton(along, static_cast<int>(charts::Question::WhereAlongTheKeyboard));
    m_question->addButton(spread, static_cast<int>(charts::Question::HowSpread));
    m_withBefore->setObjectName("chartBefore");
    m_withBefore->setChecked(true);
    m_withPlan->setObjectName("chartPlan");
    auto *save = new QPushButton(tr("Save the chart…"));
    save->setObjectName("chartSave");
    m_empty->setFont(wording::font(wording::TextSize::Heading));
    m_empty->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    m_empty->setText(tr("No readings yet. What is read at the bench shows here."));
    auto *head = new QHBoxLayout;
    for (QWidget *part : std::initializer_list<QWidget *>{along, spread, m_withBefore, m_withPlan})
        head->addWidget(part);
    head->setSpacing(4 * wording::gridStep);
    head->addStretch(1);
    head->addWidget(save);
    m_pages->addWidget(m_empty);
    m_pages->addWidget(m_pane);
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(24, 12, 24, 8);
    column->addLayout(head);
    column->addLayout(m_pages, 1);
    connect(save, &QPushButton::clicked, this, &ChartView::saveWanted);
    connect(m_question, &QButtonGroup::idClicked, this, &ChartView::rebuild);
    connect(m_withBefore, &QCheckBox::toggled, this, &ChartView::rebuild);
    connect(m_withPlan, &QCheckBox::toggled, this, &ChartView::rebuild);
    connect(m_pane, &charts::ChartPane::noteChosen, this, &ChartView::noteChosen);
    connect(&m_workshop, &Workshop::passChosen, this, &ChartView::rebuildIfSeen);
    connect(&m_workshop, &Workshop::readingsChanged, this, &ChartView::rebuildIfSeen);
    connect(&m_workshop, &Workshop::plannedChanged, this, &ChartView::rebuildIfSeen);
    connect(&m_workshop, &Workshop::selected, this, &ChartView::followSelection);
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
    data.question = static_cast<charts::Question>(m_question->checkedId());
    data.quantity = m_workshop.selection().quantity;
    data.compass = instrument->compass;
    data.sections = instrument->sections;
    data.now = pass->judgement;
    data.form = m_form;
    data.nowName = wording::nameOf(pass->pass.purpose);
    data.subject = QString::fromStdString(instrument->name);
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
    const auto *instrument = m_workshop.instrument();
    return tolerance::judge(values, *m_workshop.set(), instrument->compass, instrument->sections);
}

void ChartView::rebuild()
{
    auto chart = data();
    m_shown = m_workshop.selection().quantity;
    m_withPlan->setEnabled(!m_workshop.planned().empty());
    m_withBefore->setEnabled(m_workshop.before() != nullptr);
    m_pages->setCurrentIndex(chart ? 1 : 0);
    if (!chart)
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
