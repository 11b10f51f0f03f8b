#include "plan_sheet/plan_sheet.h"

#include "wording/palette.h"
#include "wording/wording.h"

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

constexpr double widestShift = 5; // mm or g, either way

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

QDoubleSpinBox *makeShiftBox(const char *name, const QString &accessible)
{
    auto *box = new QDoubleSpinBox;
    box->setObjectName(name);
    box->setAccessibleName(accessible);
    box->setRange(-widestShift, widestShift);
    box->setSingleStep(0.05);
    box->setDecimals(2);
    box->setKeyboardTracking(false);
    return box;
}

/// Both limits of every point, never beyond the target.
void shiftPoints(tolerance::Points &points, units::Amount low, units::Amount high)
{
    for (tolerance::Point &point : points) {
        if (point.low)
            point.low = std::min(*point.low + low, point.target);
        if (point.high)
            point.high = std::max(*point.high + high, point.target);
    }
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
      m_lower(makeShiftBox("planLower", tr("Move the lower limit by"))),
      m_upper(makeShiftBox("planUpper", tr("Move the upper limit by"))),
      m_tools(new QWidget),
      m_adjustments(new QHBoxLayout)
{
    build();
    connectParts();
    tell();
}

void PlanSheet::build()
{
    m_headline->setObjectName("planHeadline");
    m_headline->setFont(wording::font(wording::TextSize::Title));
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
    auto *middle = new QHBoxLayout;
    middle->setSpacing(4 * wording::gridStep);
    middle->addWidget(m_table, 3);
    middle->addWidget(m_aside, 2);
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(24, 12, 24, 8);
    column->setSpacing(2 * wording::gridStep);
    column->addWidget(m_headline);
    column->addWidget(m_tools);
    column->addLayout(middle, 1);
}

QBoxLayout *PlanSheet::makeChoices()
{
    m_setup->setObjectName("planSetup");
    m_setup->setAccessibleName(tr("Action setup"));
    m_aim->setObjectName("planAim");
    m_aim->setAccessibleName(tr("Aim"));
    m_aim->addItem(tr("Least work"), static_cast<int>(action::Aim::In));
    m_aim->addItem(tr("Closest to target"), static_cast<int>(action::Aim::Target));
    m_aim->setToolTip(tr("Least work: everything inside its limits in the fewest minutes. Closest to target: for a "
                         "first regulation, where every screw is turned anyway."));
    auto *row = new QHBoxLayout;
    row->setSpacing(2 * wording::gridStep);
    row->addWidget(m_setup);
    row->addWidget(m_aim);
    row->addStretch(1);
    row->addLayout(makeButtons());
    return row;
}

QBoxLayout *PlanSheet::makeLimits()
{
    m_limitOf->setObjectName("planLimitOf");
    m_limitOf->setAccessibleName(tr("Quantity whose limits are tried"));
    auto *row = new QHBoxLayout;
    row->setSpacing(2 * wording::gridStep);
    row->addWidget(new QLabel(tr("Try other limits:")));
    row->addWidget(m_limitOf);
    row->addWidget(new QLabel(tr("lower by")));
    row->addWidget(m_lower);
    row->addWidget(new QLabel(tr("upper by")));
    row->addWidget(m_upper);
    row->addStretch(1);
    return row;
}

QBoxLayout *PlanSheet::makeButtons()
{
    auto *row = new QHBoxLayout;
    row->setSpacing(2 * wording::gridStep);
    const auto add = [&](const QString &text, const char *name, void (PlanSheet::*wanted)()) {
        auto *button = new QPushButton(text);
        button->setObjectName(name);
        connect(button, &QPushButton::clicked, this, wanted);
        row->addWidget(button);
    };
    add(tr("&Keep this plan"), "planKeep", &PlanSheet::keepWanted);
    add(tr("&Print…"), "planPrint", &PlanSheet::printWanted);
    add(tr("&Order…"), "planOrder", &PlanSheet::orderWanted);
    add(tr("&Fit targets…"), "planFit", &PlanSheet::fitWanted);
    return row;
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
    });
    connect(m_aim, &QComboBox::currentIndexChanged, this, [this] {
        if (m_filling || !m_task)
            return;
        m_task->aim = static_cast<action::Aim>(m_aim->currentData().toInt());
        replan();
    });
    connect(m_limitOf, &QComboBox::currentIndexChanged, this, &PlanSheet::showShift);
    connect(m_lower, &QDoubleSpinBox::valueChanged, this, &PlanSheet::takeShift);
    connect(m_upper, &QDoubleSpinBox::valueChanged, this, &PlanSheet::takeShift);
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
    connect(m_model, &PlanModel::workTicked, this, &PlanSheet::workTicked);
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
        task->set = shiftedSet();
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
    m_adjustments->setSpacing(4 * wording::gridStep);
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
    m_adjustments->addStretch(1);
}

void PlanSheet::fillLimits()
{
    m_limitOf->clear();
    if (!m_task)
        return;
    for (const auto &[quantity, entry] : m_task->set.entries)
        m_limitOf->addItem(wording::nameOf(quantity), static_cast<int>(quantity));
    showShift();
}

void PlanSheet::showShift()
{
    m_filling = true;
    const auto quantity = static_cast<catalogue::Quantity>(m_limitOf->currentData().toInt());
    const auto found = m_shifts.find(quantity);
    m_lower->setValue(found == m_shifts.end() ? 0 : found->second.low.inDisplay());
    m_upper->setValue(found == m_shifts.end() ? 0 : found->second.high.inDisplay());
    m_filling = false;
}

void PlanSheet::takeShift()
{
    if (m_filling || !m_task || m_limitOf->currentIndex() < 0)
        return;
    const auto quantity = static_cast<catalogue::Quantity>(m_limitOf->currentData().toInt());
    const auto dimension = catalogue::infoOf(quantity).dimension;
    m_shifts[quantity] = {units::Amount::fromDisplay(dimension, m_lower->value()),
                          units::Amount::fromDisplay(dimension, m_upper->value())};
    replan();
}

tolerance::ToleranceSet PlanSheet::shiftedSet() const
{
    tolerance::ToleranceSet set = m_task->set;
    for (const auto &[quantity, shift] : m_shifts) {
        tolerance::Entry &entry = set.entries[quantity];
        for (tolerance::Points *points : {&entry.both, &entry.naturals, &entry.sharps})
            shiftPoints(*points, shift.low, shift.high);
    }
    return set;
}

void PlanSheet::replan()
{
    const auto now = task();
    m_plan.reset();
    if (now && !m_setups.empty()) {
        m_plan = action::withLearnedTurns(action::bestPlan(*now), m_findings.learned, now->sections);
        putInOrder(*m_plan);
    }
    m_model->setPlan(m_plan.value_or(action::Plan{}), m_task ? m_task->forbidden : action::Forbidden{}, m_form);
    m_table->resizeColumnsToContents();
    tell();
    emit planned();
}

} // namespace hammerline::plan_sheet
