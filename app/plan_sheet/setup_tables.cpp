#include "plan_sheet/setup_tables.h"

#include "plan_sheet/inside/typed_cells.h"
#include "wording/wording.h"

#include <QComboBox>
#include <QHeaderView>

#include <algorithm>

namespace hammerline::plan_sheet {

namespace {

using action::Adjustment;
using action::Rail;
using action::RailShape;
using action::Setup;
using catalogue::Quantity;

constexpr const char *ownFigures = "the shop's own figures";

std::vector<Quantity> adjustableOf(catalogue::ActionKind kind)
{
    std::vector<Quantity> quantities;
    for (const catalogue::QuantityInfo &info : catalogue::all()) {
        const bool byRailOnly = info.quantity == Quantity::Blow && kind == catalogue::ActionKind::Vertical;
        if (catalogue::has(kind, info.quantity) && info.quantity != Quantity::Aftertouch && !byRailOnly)
            quantities.push_back(info.quantity);
    }
    return quantities;
}

void dress(QTableWidget &table, const QStringList &heads)
{
    table.setColumnCount(static_cast<int>(heads.size()));
    table.setHorizontalHeaderLabels(heads);
    table.setTabKeyNavigation(false); // Tab leaves the table; arrows walk it, typing enters
    table.setEditTriggers(QAbstractItemView::AllEditTriggers);
    table.setSelectionMode(QAbstractItemView::SingleSelection);
    table.horizontalHeader()->setHighlightSections(false);
    table.horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    table.horizontalHeader()->setStretchLastSection(true);
}

QComboBox *putChoice(QTableWidget &table, int row, int column, const QString &name)
{
    auto *choice = new QComboBox;
    choice->setAccessibleName(name);
    table.setCellWidget(row, column, choice);
    return choice;
}

const QComboBox &choiceAt(const QTableWidget &table, int row, int column)
{
    return *qobject_cast<QComboBox *>(table.cellWidget(row, column));
}

/// Equal but for where the figures come from.
template <typename Mover>
bool sameFigures(Mover a, Mover b)
{
    a.source = b.source;
    a.remark = b.remark;
    return a == b;
}

} // namespace

AdjustmentTable::AdjustmentTable(QWidget *parent) : QTableWidget(parent)
{
    setObjectName("setupAdjustments");
    setAccessibleName(tr("Adjustments of single notes"));
    dress(*this, {tr("Step"), tr("At most"), tr("Minutes a note"), tr("One turn does"), tr("Punchings on the shelf")});
}

void AdjustmentTable::show(const Setup &setup)
{
    m_known = setup;
    m_quantities = adjustableOf(setup.action);
    setRowCount(static_cast<int>(m_quantities.size()));
    QStringList names;
    for (int row = 0; row < rowCount(); ++row) {
        const Quantity quantity = m_quantities[static_cast<std::size_t>(row)];
        names << wording::nameOf(quantity);
        const auto found = setup.adjustments.find(quantity);
        const bool known = found != setup.adjustments.end();
        const Adjustment adjustment = known ? found->second : Adjustment{};
        putCell(*this, row, Step, known ? exactText(adjustment.step) : QString());
        putCell(*this, row, Most, known ? exactText(adjustment.most) : QString());
        putCell(*this, row, Minutes, known ? QString::number(adjustment.minutes) : QString());
        putCell(*this, row, PerTurn, adjustment.perTurn ? exactText(*adjustment.perTurn) : QString());
        QStringList punchings;
        for (const units::Length thickness : adjustment.punchings)
            punchings << exactText(thickness);
        putCell(*this, row, Punchings, punchings.join(QStringLiteral("  ")));
    }
    setVerticalHeaderLabels(names);
}

Adjustment AdjustmentTable::adjustmentAt(int row, Faults &faults) const
{
    const Quantity quantity = m_quantities[static_cast<std::size_t>(row)];
    const auto dimension = catalogue::infoOf(quantity).dimension;
    const CellReader reader(*this, row, wording::nameOf(quantity), faults);
    Adjustment made;
    const auto found = m_known.adjustments.find(quantity);
    if (found != m_known.adjustments.end())
        made = found->second;
    const Adjustment before = made;
    made.step = reader.amount(Step, dimension).value_or(units::Amount(dimension, 0));
    made.most = reader.amount(Most, dimension).value_or(units::Amount(dimension, 0));
    made.minutes = reader.number(Minutes);
    made.perTurn = reader.amount(PerTurn, dimension, Sign::Either);
    made.punchings = reader.lengths(Punchings);
    if (!sameFigures(made, before))
        made.source = ownFigures;
    return made;
}

std::map<Quantity, Adjustment> AdjustmentTable::entered(Faults &faults) const
{
    std::map<Quantity, Adjustment> made;
    for (int row = 0; row < rowCount(); ++row)
        if (!cellText(*this, row, Step).isEmpty())
            made.emplace(m_quantities[static_cast<std::size_t>(row)], adjustmentAt(row, faults));
    return made;
}

void AdjustmentTable::setPerTurn(Quantity quantity, units::Amount perTurn)
{
    const auto row = std::ranges::find(m_quantities, quantity) - m_quantities.begin();
    putCell(*this, static_cast<int>(row), PerTurn, exactText(perTurn));
}

RailTable::RailTable(QWidget *parent) : QTableWidget(parent)
{
    setObjectName("setupRails");
    setAccessibleName(tr("Rails"));
    dress(*this, {tr("Name"), tr("Moves"), tr("Moved"), tr("Step"), tr("At most"), tr("Minutes"), tr("First note"),
                  tr("Last note")});
    verticalHeader()->hide();
}

void RailTable::show(const Setup &setup)
{
    m_known = setup;
    setRowCount(0);
    for (const Rail &rail : setup.rails)
        append(rail);
}

void RailTable::append(const Rail &rail)
{
    const int row = rowCount();
    insertRow(row);
    putCell(*this, row, Name, QString::fromStdString(rail.id));
    QComboBox *moves = putChoice(*this, row, Moves, tr("What the rail moves"));
    for (const Quantity quantity : {Quantity::Blow, Quantity::LetOff, Quantity::Checking})
        if (quantity != Quantity::Blow || m_known.action == catalogue::ActionKind::Vertical)
            moves->addItem(wording::nameOf(quantity), static_cast<int>(quantity));
    moves->setCurrentIndex(std::max(0, moves->findData(static_cast<int>(rail.quantity))));
    QComboBox *shape = putChoice(*this, row, Shape, tr("How the rail is moved"));
    shape->addItem(tr("all alike"), static_cast<int>(RailShape::Uniform));
    shape->addItem(tr("each end by itself"), static_cast<int>(RailShape::Linear));
    shape->setCurrentIndex(shape->findData(static_cast<int>(rail.shape)));
    const bool isNew = rail.step.baseCount() == 0;
    putCell(*this, row, Step, isNew ? QString() : exactText(rail.step));
    putCell(*this, row, Most, isNew ? QString() : exactText(rail.most));
    putCell(*this, row, Minutes, isNew ? QString() : QString::number(rail.minutes));
    putCell(*this, row, First, rail.notes ? QString::fromStdString(rail.notes->first.name()) : QString());
    putCell(*this, row, Last, rail.notes ? QString::fromStdString(rail.notes->last.name()) : QString());
}

Rail RailTable::railAt(int row, Faults &faults) const
{
    const QString id = cellText(*this, row, Name);
    const CellReader reader(*this, row, id.isEmpty() ? tr("rail %1").arg(row + 1) : id, faults);
    const auto known = std::ranges::find(m_known.rails, id.toStdString(), &Rail::id);
    Rail made = known == m_known.rails.end() ? Rail{} : *known;
    const Rail before = made;
    made.id = id.toStdString();
    made.quantity = static_cast<Quantity>(choiceAt(*this, row, Moves).currentData().toInt());
    made.shape = static_cast<RailShape>(choiceAt(*this, row, Shape).currentData().toInt());
    made.step = reader.amount(Step, units::Dimension::Length).value_or(units::Length());
    made.most = reader.amount(Most, units::Dimension::Length).value_or(units::Length());
    made.minutes = reader.number(Minutes);
    const auto first = reader.note(First), last = reader.note(Last);
    made.notes = first && last ? std::optional(keyboard::NoteRange{*first, *last}) : std::nullopt;
    if (first.has_value() != last.has_value())
        reader.refuse(First, tr("a rail has both a first and a last note, or neither: all notes"));
    if (!sameFigures(made, before))
        made.source = ownFigures;
    return made;
}

std::vector<Rail> RailTable::entered(Faults &faults) const
{
    std::vector<Rail> made;
    for (int row = 0; row < rowCount(); ++row)
        made.push_back(railAt(row, faults));
    std::ranges::stable_sort(made, {}, &Rail::id);
    return made;
}

void RailTable::addRail()
{
    Rail fresh;
    fresh.quantity = Quantity::LetOff;
    fresh.id = tr("rail_%1").arg(rowCount() + 1).toStdString();
    append(fresh);
    setCurrentCell(rowCount() - 1, Name);
    setFocus();
}

void RailTable::removeRail()
{
    if (currentRow() >= 0)
        removeRow(currentRow());
}

} // namespace hammerline::plan_sheet
