#include "plan_sheet/plan_model.h"

#include "wording/wording.h"

namespace hammerline::plan_sheet {

PlanModel::PlanModel(QObject *parent) : QAbstractTableModel(parent) {}

void PlanModel::setPlan(const action::Plan &plan, const action::Forbidden &forbidden, const wording::NumberForm &form)
{
    beginResetModel();
    m_form = form;
    m_entries.clear();
    for (const action::RailMove &rail : plan.rails)
        m_entries.push_back({.item = itemOf(rail),
                             .rail = rail.rail,
                             .adjust = rail.quantity,
                             .name = nameOf(rail),
                             .by = byText(rail, form),
                             .minutes = rail.minutes});
    for (const action::Move &move : plan.moves)
        m_entries.push_back({.item = itemOf(move),
                             .adjust = move.adjust,
                             .note = move.note,
                             .name = wording::nameOf(move.adjust),
                             .by = wording::changeText(move.by, form),
                             .how = howText(move, form),
                             .minutes = move.minutes});
    for (const auto &[quantity, note] : forbidden.single)
        m_entries.push_back({.adjust = quantity, .note = note, .name = wording::nameOf(quantity), .allowed = false});
    endResetModel();
}

void PlanModel::setDone(const std::set<std::string> &items)
{
    m_done.clear();
    for (const std::string &item : items)
        m_done.emplace(action::workIn(item));
    if (!m_entries.empty())
        emit dataChanged(index(0, Done), index(rowCount() - 1, Done), {Qt::CheckStateRole});
}

std::optional<std::pair<catalogue::Quantity, keyboard::Note>> PlanModel::pairAt(int row) const
{
    const Entry &entry = m_entries[static_cast<std::size_t>(row)];
    return entry.rail.empty() ? std::optional(std::pair{entry.adjust, entry.note}) : std::nullopt;
}

int PlanModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_entries.size());
}

int PlanModel::columnCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : columnTotal;
}

QString PlanModel::textOf(const Entry &entry, int column) const
{
    switch (column) {
    case Adjust:
        return entry.name;
    case NoteColumn:
        return entry.rail.empty() ? wording::nameOf(entry.note) : tr("all");
    case By:
        return entry.allowed ? entry.by : tr("ruled out");
    case How:
        return entry.how;
    case Minutes:
        return entry.allowed ? wording::numberText(entry.minutes, 1, m_form) : QString();
    default:
        return {};
    }
}

QVariant PlanModel::data(const QModelIndex &index, int role) const
{
    const Entry &entry = m_entries[static_cast<std::size_t>(index.row())];
    if (role == Qt::DisplayRole)
        return textOf(entry, index.column());
    if (role == Qt::AccessibleTextRole && index.column() <= Done)
        return index.column() == Use ? tr("may be used") : tr("done");
    if (role == Qt::TextAlignmentRole && (index.column() == By || index.column() == Minutes))
        return static_cast<int>(Qt::AlignRight | Qt::AlignVCenter);
    if (role != Qt::CheckStateRole)
        return {};
    if (index.column() == Use)
        return static_cast<int>(entry.allowed ? Qt::Checked : Qt::Unchecked);
    if (index.column() == Done && entry.allowed)
        return static_cast<int>(m_done.contains(std::string(action::workIn(entry.item))) ? Qt::Checked : Qt::Unchecked);
    return {};
}

void PlanModel::allow(const Entry &entry, bool allowed)
{
    if (entry.rail.empty())
        emit moveAllowed(entry.adjust, entry.note, allowed);
    else
        emit railAllowed(QString::fromStdString(entry.rail), allowed);
}

bool PlanModel::setData(const QModelIndex &index, const QVariant &value, int role)
{
    if (role != Qt::CheckStateRole)
        return false;
    const Entry entry = m_entries[static_cast<std::size_t>(index.row())];
    const bool on = value.toInt() == Qt::Checked;
    if (index.column() == Use)
        allow(entry, on);
    else if (index.column() == Done && entry.allowed)
        emit workTicked(QString::fromStdString(entry.item), entry.minutes, on);
    else
        return false;
    return true;
}

Qt::ItemFlags PlanModel::flags(const QModelIndex &index) const
{
    const Qt::ItemFlags usual = Qt::ItemIsEnabled | Qt::ItemIsSelectable;
    const bool allowed = m_entries[static_cast<std::size_t>(index.row())].allowed;
    const bool ticks = index.column() == Use || (index.column() == Done && allowed);
    return ticks ? usual | Qt::ItemIsUserCheckable : usual;
}

QVariant PlanModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
        return {};
    const std::array heads{tr("Use"), tr("Done"), tr("Adjust"), tr("Note"), tr("By"), tr("How"), tr("Minutes")};
    return heads[static_cast<std::size_t>(section)];
}

} // namespace hammerline::plan_sheet
