#include "plan_sheet/plan_model.h"

#include "plan_sheet/plan_groups.h"
#include "wording/palette.h"
#include "wording/wording.h"

#include <QSize>

#include <algorithm>

namespace hammerline::plan_sheet {

PlanModel::PlanModel(QObject *parent) : QAbstractTableModel(parent) {}

void PlanModel::addHeading(const QString &text, double minutes)
{
    m_entries.push_back({.name = text, .minutes = minutes, .heading = true});
}

void PlanModel::addRails(const action::Plan &plan)
{
    double minutes = 0;
    for (const action::RailMove &rail : plan.rails)
        minutes += rail.minutes;
    if (!plan.rails.empty())
        addHeading(tr("Rails first: %1").arg(timeText(minutes)), minutes);
    for (const action::RailMove &rail : plan.rails)
        m_entries.push_back({.item = itemOf(rail),
                             .rail = rail.rail,
                             .adjust = rail.quantity,
                             .name = nameOf(rail),
                             .where = notesOf(rail),
                             .by = byText(rail, m_form),
                             .minutes = rail.minutes});
}

void PlanModel::addMoves(const action::Plan &plan, const keyboard::Sections &sections)
{
    for (const PlanGroup &group : groupsOf(plan.moves, sections)) {
        addHeading(headingOf(group), group.minutes);
        for (std::size_t i = group.first; i < group.last; ++i) {
            const action::Move &move = plan.moves[i];
            m_entries.push_back({.item = itemOf(move),
                                 .adjust = move.adjust,
                                 .note = move.note,
                                 .name = wording::nameOf(move.adjust),
                                 .where = wording::nameOf(move.note),
                                 .by = wording::changeText(move.by, m_form),
                                 .how = howText(move, m_form),
                                 .minutes = move.minutes});
        }
    }
}

void PlanModel::setPlan(const action::Plan &plan, const action::Forbidden &forbidden,
                        const keyboard::Sections &sections, const wording::NumberForm &form)
{
    beginResetModel();
    m_form = form;
    m_entries.clear();
    addRails(plan);
    addMoves(plan, sections);
    if (!forbidden.single.empty())
        addHeading(tr("Ruled out"), 0);
    for (const auto &[quantity, note] : forbidden.single)
        m_entries.push_back({.adjust = quantity,
                             .note = note,
                             .name = wording::nameOf(quantity),
                             .where = wording::nameOf(note),
                             .by = tr("ruled out"),
                             .allowed = false});
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
    return entry.rail.empty() && !entry.heading ? std::optional(std::pair{entry.adjust, entry.note}) : std::nullopt;
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
        return entry.where;
    case By:
        return entry.by;
    case How:
        return entry.how;
    case Minutes:
        return entry.allowed && !entry.heading ? wording::numberText(entry.minutes, 1, m_form) : QString();
    default:
        return {};
    }
}

bool PlanModel::ticks(int row, int column) const
{
    const Entry &entry = m_entries[static_cast<std::size_t>(row)];
    return (column == Use && !entry.heading) ||
           (column == Done && entry.allowed && !(entry.heading && under(row).empty()));
}

bool PlanModel::isDone(const Entry &entry) const
{
    return m_done.contains(std::string(action::workIn(entry.item)));
}

/// The moves of a heading; none of what was ruled out.
std::vector<const PlanModel::Entry *> PlanModel::under(int heading) const
{
    std::vector<const Entry *> moves;
    for (auto i = static_cast<std::size_t>(heading) + 1; i < m_entries.size() && !m_entries[i].heading; ++i)
        if (m_entries[i].allowed)
            moves.push_back(&m_entries[i]);
    return moves;
}

Qt::CheckState PlanModel::doneState(int row) const
{
    if (!isHeading(row))
        return isDone(m_entries[static_cast<std::size_t>(row)]) ? Qt::Checked : Qt::Unchecked;
    const auto moves = under(row);
    const auto done = std::ranges::count_if(moves, [this](const Entry *entry) { return isDone(*entry); });
    if (done == 0)
        return Qt::Unchecked;
    return static_cast<std::size_t>(done) == moves.size() ? Qt::Checked : Qt::PartiallyChecked;
}

void PlanModel::tickDone(int row, bool done)
{
    QStringList items;
    if (isHeading(row)) {
        for (const Entry *entry : under(row))
            if (isDone(*entry) != done)
                items << QString::fromStdString(entry->item);
    } else {
        items << QString::fromStdString(m_entries[static_cast<std::size_t>(row)].item);
    }
    emit workTicked(items, done);
}

QVariant PlanModel::data(const QModelIndex &index, int role) const
{
    const Entry &entry = m_entries[static_cast<std::size_t>(index.row())];
    if (role == Qt::DisplayRole)
        return textOf(entry, index.column());
    if (role == Qt::FontRole && entry.heading)
        return wording::font(wording::TextSize::Body, true);
    if (role == Qt::SizeHintRole && entry.heading && index.column() == Adjust)
        return QSize(0, 0); // it spans the row: the column need not be as wide
    if (role == Qt::AccessibleTextRole && index.column() <= Done)
        return index.column() == Use ? tr("may be used") : tr("done");
    if (role == Qt::TextAlignmentRole && (index.column() == By || index.column() == Minutes))
        return static_cast<int>(Qt::AlignRight | Qt::AlignVCenter);
    if (role != Qt::CheckStateRole || !ticks(index.row(), index.column()))
        return {};
    if (index.column() == Use)
        return static_cast<int>(entry.allowed ? Qt::Checked : Qt::Unchecked);
    return static_cast<int>(doneState(index.row()));
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
    if (role != Qt::CheckStateRole || !ticks(index.row(), index.column()))
        return false;
    const bool on = value.toInt() == Qt::Checked;
    const Entry entry = m_entries[static_cast<std::size_t>(index.row())];
    if (index.column() == Use)
        allow(entry, on);
    else
        tickDone(index.row(), on);
    return true;
}

Qt::ItemFlags PlanModel::flags(const QModelIndex &index) const
{
    const Qt::ItemFlags usual = Qt::ItemIsEnabled | Qt::ItemIsSelectable;
    return ticks(index.row(), index.column()) ? usual | Qt::ItemIsUserCheckable : usual;
}

QVariant PlanModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
        return {};
    const std::array heads{tr("Use"), tr("Done"), tr("Adjust"), tr("Note"), tr("By"), tr("How"), tr("Minutes")};
    return heads[static_cast<std::size_t>(section)];
}

} // namespace hammerline::plan_sheet
