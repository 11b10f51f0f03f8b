#include "plan_sheet/plan_sheet.h"

#include "plan_sheet/work_clock.h"
#include "wording/palette.h"
#include "wording/wording.h"
#include "wording/wrap_row.h"

#include <QBoxLayout>
#include <QCheckBox>
#include <QComboBox>
#include <QDoubleSpinBox>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QTableView>
#include <QTextBrowser>

#include <algorithm>
#include <set>

namespace hammerline::plan_sheet {

namespace {

constexpr int lettersOfSetup = 16;    ///< of a setup's name, that are seen at least
constexpr int lettersOfColumns = 100; ///< below this many of body text in the width all stands in one column
constexpr int leastRows = 5;          ///< of the moves, that are seen below their heads

QTableView *makeTable(PlanModel *model)
{
    auto *table = new QTableView;
    table->setObjectName("planTable");
    table->setAccessibleName(QObject::tr("Moves of the plan, in the order of the work"));
    table->setModel(model);
    table->setShowGrid(false);
    table->setSelectionBehavior(QAbstractItemView::SelectItems);
    table->setSelectionMode(QAbstractItemView::SingleSelection);
    table->setTabKeyNavigation(false);
    table->setFrameShape(QFrame::NoFrame);
    table->verticalHeader()->hide();
    table->horizontalHeader()->setHighlightSections(false);
    table->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    return table;
}

} // namespace

PlanSheet::PlanSheet(QWidget *parent)
    : QWidget(parent),
      m_model(new PlanModel(this)),
      m_table(makeTable(m_model)),
      m_headline(new QLabel),
      m_aside(new QTextBrowser),
      m_setup(new QComboBox),
      m_aim(new QComboBox),
      m_limitOf(new QComboBox),
      m_lower(new QDoubleSpinBox),
      m_target(new QDoubleSpinBox),
      m_upper(new QDoubleSpinBox),
      m_limitWords(new QLabel),
      m_clock(new WorkClock),
      m_tools(new QWidget),
      m_middle(new QHBoxLayout),
      m_adjustments(new wording::WrapRow(4 * wording::gridStep))
{
    build();
    connectParts();
    tell();
}

void PlanSheet::build()
{
    setFocusProxy(m_table);
    m_headline->setObjectName("planHeadline");
    m_headline->setWordWrap(true);
    m_aside->setObjectName("planAside");
    m_aside->setAccessibleName(tr("What stays outside, what to fetch, what to measure again"));
    m_aside->setFrameShape(QFrame::NoFrame);
    m_aside->viewport()->setAutoFillBackground(false);
    m_aside->setStyleSheet(QStringLiteral("background: transparent"));
    auto *tools = new QVBoxLayout(m_tools);
    tools->setContentsMargins(0, 0, 0, 0);
    tools->setSpacing(wording::gridStep);
    tools->addLayout(makeChoices());
    tools->addLayout(m_adjustments);
    tools->addLayout(makeLimits());
    tools->addWidget(m_clock);
    m_table->setMinimumHeight((leastRows + 1) * (fontMetrics().height() + 2 * wording::gridStep));
    m_middle->setSpacing(4 * wording::gridStep);
    m_middle->addWidget(m_table, 3);
    m_middle->addWidget(m_aside, 2);
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(24, 12, 24, 8);
    column->setSpacing(2 * wording::gridStep);
    column->addWidget(m_headline);
    column->addLayout(m_middle, 1);
    arrange(false);
}

/// One below the other, with the moves first; or the tools above them and what is said beside them.
void PlanSheet::arrange(bool oneColumn)
{
    m_headline->setFont(wording::font(oneColumn ? wording::TextSize::Heading : wording::TextSize::Title));
    auto *column = qobject_cast<QBoxLayout *>(layout());
    column->removeWidget(m_tools);
    m_middle->removeWidget(m_tools);
    m_middle->setDirection(oneColumn ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
    if (oneColumn)
        m_middle->insertWidget(1, m_tools);
    else
        column->insertWidget(1, m_tools);
    m_aside->setMinimumHeight(oneColumn ? m_table->minimumHeight() : 0);
}

void PlanSheet::resizeEvent(QResizeEvent *event)
{
    QWidget::resizeEvent(event);
    const bool oneColumn = width() < lettersOfColumns * fontMetrics().averageCharWidth();
    if (oneColumn != (m_middle->direction() == QBoxLayout::TopToBottom))
        arrange(oneColumn);
}

QLayout *PlanSheet::makeChoices()
{
    m_setup->setObjectName("planSetup");
    m_setup->setAccessibleName(tr("Action setup"));
    m_aim->setObjectName("planAim");
    m_aim->setAccessibleName(tr("Aim"));
    m_aim->addItem(tr("Least work"), static_cast<int>(action::Aim::In));
    m_aim->addItem(tr("Closest to target"), static_cast<int>(action::Aim::Target));
    m_aim->setToolTip(tr("Least work: everything inside its limits in the fewest minutes. Closest to target: for a "
                         "first regulation, where every screw is turned anyway."));
    m_setup->setMinimumWidth(lettersOfSetup * fontMetrics().averageCharWidth()); // a file may call it anything
    auto *row = new wording::WrapRow(2 * wording::gridStep);
    auto *edit = new QPushButton(tr("Set&up…"));
    edit->setObjectName("planEditSetup");
    edit->setToolTip(tr("Look at the setup and change it; a trial turn says what one turn does"));
    connect(edit, &QPushButton::clicked, this, &PlanSheet::setupWanted);
    row->addWidget(m_setup);
    row->addWidget(edit);
    row->addWidget(m_aim);
    addButtons(*row);
    return row;
}

void PlanSheet::addButtons(QLayout &row)
{
    const auto add = [&](const QString &text, const char *name, void (PlanSheet::*wanted)()) {
        auto *button = new QPushButton(text);
        button->setObjectName(name);
        connect(button, &QPushButton::clicked, this, wanted);
        row.addWidget(button);
    };
    add(tr("Keep t&his plan"), "planKeep", &PlanSheet::keepWanted);
    add(tr("&Print…"), "planPrint", &PlanSheet::printWanted);
    add(tr("&Order…"), "planOrder", &PlanSheet::orderWanted);
    add(tr("&Fit targets…"), "planFit", &PlanSheet::fitWanted);
}

void PlanSheet::connectParts()
{
    connect(m_setup, &QComboBox::currentIndexChanged, this, [this](int index) {
        if (m_filling || index < 0 || !m_task)
            return;
        m_task->setup = m_setups[static_cast<std::size_t>(index)].setup;
        m_task->forbidden = {};
        fillAdjustments();
        replan();
        emit setupChosen();
    });
    connect(m_aim, &QComboBox::currentIndexChanged, this, [this] {
        if (m_filling || !m_task)
            return;
        m_task->aim = static_cast<action::Aim>(m_aim->currentData().toInt());
        replan();
        emit setupChosen();
    });
    connect(m_limitOf, &QComboBox::currentIndexChanged, this, &PlanSheet::showShift);
    for (const QDoubleSpinBox *box : {m_lower, m_target, m_upper})
        connect(box, &QDoubleSpinBox::valueChanged, this, &PlanSheet::takeShift);
    connect(m_model, &PlanModel::moveAllowed, this,
            [this](catalogue::Quantity quantity, keyboard::Note note, bool may) {
                if (may)
                    m_task->forbidden.single.erase({quantity, note});
                else
                    m_task->forbidden.single.insert({quantity, note});
                replan();
            });
    connect(m_model, &PlanModel::railAllowed, this, [this](const QString &rail, bool may) {
        if (!may)
            m_task->forbidden.rails.insert(rail.toStdString());
        fillAdjustments();
        replan();
    });
    connect(m_model, &PlanModel::workTicked, this, &PlanSheet::tickOff);
    connect(m_table, &QTableView::activated, this, [this](const QModelIndex &index) {
        if (const auto pair = m_model->pairAt(index.row()))
            emit noteChosen(pair->first, pair->second);
    });
}

void PlanSheet::show(std::optional<action::PlanTask> task, std::vector<NamedSetup> setups,
                     const wording::NumberForm &form, const QString &why)
{
    m_task = std::move(task);
    m_form = form;
    m_why = why;
    m_shifts.clear();
    fillSetups(std::move(setups));
    fillAdjustments();
    fillLimits();
    replan();
}

void PlanSheet::setOrder(std::vector<catalogue::Quantity> order)
{
    m_order = std::move(order);
    replan();
}

void PlanSheet::putInOrder(action::Plan &plan) const
{
    const auto rank = [this](const action::Move &move) {
        return std::ranges::find(m_order, move.adjust) - m_order.begin();
    };
    std::ranges::stable_sort(plan.moves, {}, rank);
    int number = 0;
    for (action::Move &move : plan.moves)
        move.order = ++number;
}

void PlanSheet::setFindings(Findings findings)
{
    m_findings = std::move(findings);
    replan();
}

void PlanSheet::setDone(const std::vector<logbook::WorkDone> &done)
{
    m_done = done;
    std::set<std::string> items;
    for (const logbook::WorkDone &work : done)
        items.insert(work.item);
    m_model->setDone(items);
    tell();
}

std::optional<action::PlanTask> PlanSheet::task() const
{
    auto task = m_task;
    if (task)
        task->set = shifted(m_shifts);
    return task;
}

void PlanSheet::fillSetups(std::vector<NamedSetup> setups)
{
    m_filling = true;
    m_setups = std::move(setups);
    m_setup->clear();
    for (const NamedSetup &each : m_setups)
        m_setup->addItem(each.name);
    if (m_task && !m_setups.empty()) {
        const auto own = std::ranges::find(m_setups, m_task->setup, &NamedSetup::setup);
        const auto chosen = own == m_setups.end() ? m_setups.begin() : own;
        m_setup->setCurrentIndex(static_cast<int>(chosen - m_setups.begin()));
        m_task->setup = chosen->setup;
        m_aim->setCurrentIndex(m_aim->findData(static_cast<int>(m_task->aim)));
    }
    m_filling = false;
}

void PlanSheet::fillAdjustments()
{
    while (QLayoutItem *item = m_adjustments->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    if (!m_task)
        return;
    m_adjustments->addWidget(new QLabel(tr("May be used:")));
    const auto add = [&](const QString &text, const QString &name, bool on, auto ruleOut) {
        auto *box = new QCheckBox(text);
        box->setObjectName("planUse-" + name);
        box->setChecked(on);
        connect(box, &QCheckBox::toggled, this, [this, ruleOut](bool may) {
            ruleOut(m_task->forbidden, may);
            replan();
        });
        m_adjustments->addWidget(box);
    };
    for (const action::Rail &rail : m_task->setup.rails)
        add(QString::fromStdString(rail.id).replace('_', ' '), QString::fromStdString(rail.id),
            !m_task->forbidden.rails.contains(rail.id), [id = rail.id](action::Forbidden &forbidden, bool may) {
                if (may)
                    forbidden.rails.erase(id);
                else
                    forbidden.rails.insert(id);
            });
    for (const auto &[quantity, adjustment] : m_task->setup.adjustments)
        add(wording::shortNameOf(quantity), QString::fromUtf8(catalogue::idOf(quantity).data()),
            !m_task->forbidden.everywhere.contains(quantity),
            [which = quantity](action::Forbidden &forbidden, bool may) {
                if (may)
                    forbidden.everywhere.erase(which);
                else
                    forbidden.everywhere.insert(which);
            });
    orderTheTabs();
}

/// As one reads the sheet, from the moves on; the boxes are made anew and would come last.
void PlanSheet::orderTheTabs()
{
    std::vector<QWidget *> stops{m_table, m_aside, m_setup};
    const auto add = [&](std::initializer_list<const char *> names) {
        for (const char *name : names)
            stops.push_back(findChild<QWidget *>(name));
    };
    add({"planEditSetup", "planAim", "planKeep", "planPrint", "planOrder", "planFit"});
    for (int i = 0; i < m_adjustments->count(); ++i)
        if (auto *box = qobject_cast<QCheckBox *>(m_adjustments->itemAt(i)->widget()))
            stops.push_back(box);
    add({"planLimitOf", "planLower", "planTarget", "planUpper", "planClock", "planTook"});
    for (std::size_t i = 1; i < stops.size(); ++i)
        setTabOrder(stops[i - 1], stops[i]);
}

void PlanSheet::replan()
{
    const auto now = task();
    m_plan.reset();
    if (now && !m_setups.empty()) {
        m_plan = action::withLearnedAnswers(action::bestPlan(*now), m_findings.learned, *now);
        putInOrder(*m_plan);
    }
    fillTable();
    tell();
    emit planned();
}

void PlanSheet::fillTable()
{
    const int row = m_table->currentIndex().row(), column = m_table->currentIndex().column();
    m_table->clearSpans();
    m_model->setPlan(m_plan.value_or(action::Plan{}), m_task ? m_task->forbidden : action::Forbidden{},
                     m_task ? m_task->sections : keyboard::Sections{}, m_form);
    m_table->resizeColumnsToContents();
    for (int heading = 0; heading < m_model->rowCount(); ++heading)
        if (m_model->isHeading(heading))
            m_table->setSpan(heading, PlanModel::Adjust, 1, PlanModel::columnTotal - PlanModel::Adjust);
    if (row >= 0) // who goes by keys stays where they were
        m_table->setCurrentIndex(m_model->index(std::min(row, m_model->rowCount() - 1), column));
}

void PlanSheet::tickOff(const QStringList &items, bool done)
{
    const auto took = done ? m_clock->take() : std::chrono::seconds(0);
    std::vector<TickedWork> work;
    for (const QString &item : items) // what is left of a division goes to the last
        work.push_back({item.toStdString(), took / items.size()});
    if (!work.empty())
        work.back().took += took % items.size();
    emit workTicked(work, done);
}

void PlanSheet::chooseSetup(NamedSetup setup)
{
    const auto same = std::ranges::find(m_setups, setup.name, &NamedSetup::name);
    const int index = static_cast<int>(same - m_setups.begin());
    m_filling = true;
    if (same == m_setups.end()) {
        m_setup->addItem(setup.name);
        m_setups.push_back(std::move(setup));
    } else {
        same->setup = std::move(setup.setup);
    }
    m_setup->setCurrentIndex(-1);
    m_filling = false;
    m_setup->setCurrentIndex(index);
}

} // namespace hammerline::plan_sheet
