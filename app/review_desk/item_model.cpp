#include "review_desk/item_model.h"

#include "wording/palette.h"
#include "wording/probability.h"
#include "wording/wording.h"

#include <QGuiApplication>
#include <QPalette>

#include <algorithm>

namespace hammerline::review_desk {

namespace {

/// What was mended is listed by what it was, and is out no longer.
bool isOut(const review::Item &item)
{
    return item.kind == review::Kind::Out && item.verdict.status == tolerance::Status::Out && item.verdict.deviation;
}

QColor inkOf(const review::Item &item)
{
    const wording::Palette &colours = wording::paletteOf(wording::themeOf(QGuiApplication::palette()));
    if (item.verdict.status == tolerance::Status::Marginal ||
        (item.verdict.status == tolerance::Status::In && item.verdict.withinDoubt()))
        return colours.doubt;
    if (!isOut(item))
        return colours.ink;
    return item.verdict.deviation->baseCount() < 0 ? colours.tooSmall : colours.tooLarge;
}

QString offText(const review::Item &item, const wording::NumberForm &form)
{
    if (!item.verdict.deviation)
        return {};
    const bool below = item.verdict.deviation->baseCount() < 0;
    const QString mark = !isOut(item) ? QString() : below ? QStringLiteral("▼ ") : QStringLiteral("▲ ");
    return mark + wording::changeText(*item.verdict.deviation, form);
}

bool isFigure(int column)
{
    return column == ItemModel::Value || column == ItemModel::Off || column == ItemModel::Sure;
}

/// Where a doubt was weighed; without one, inside or not is no matter of probability.
QString sureText(const review::Item &item, const wording::NumberForm &form)
{
    const tolerance::Verdict &verdict = item.verdict;
    return verdict.doubt && verdict.conformanceProbability
               ? wording::probabilityText(*verdict.conformanceProbability, form)
               : QString();
}

} // namespace

ItemModel::ItemModel(QObject *parent) : QAbstractTableModel(parent) {}

void ItemModel::setDesk(Desk desk, const wording::NumberForm &form)
{
    beginResetModel();
    m_desk = std::move(desk);
    m_form = form;
    filter();
    endResetModel();
}

void ItemModel::setFilters(const Filters &filters)
{
    beginResetModel();
    m_filters = filters;
    filter();
    endResetModel();
}

void ItemModel::setList(List list)
{
    beginResetModel();
    m_list = list;
    filter();
    endResetModel();
}

int ItemModel::countOf(review::Kind kind) const
{
    return static_cast<int>(std::ranges::count(m_desk.items, kind, &review::Item::kind));
}

int ItemModel::countOf(List list) const
{
    const std::size_t count = list == List::Waiting    ? m_desk.items.size()
                              : list == List::Conceded ? m_desk.conceded.size()
                              : list == List::Mended   ? m_desk.mended.size()
                                                       : m_desk.inDoubt.size();
    return static_cast<int>(count);
}

bool ItemModel::anySure() const
{
    return std::ranges::any_of(m_rows, [this](const Row &row) { return !sureText(*row.item, m_form).isEmpty(); });
}

const review::Item &ItemModel::itemAt(int row) const
{
    return *m_rows[static_cast<std::size_t>(row)].item;
}

int ItemModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

int ItemModel::columnCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : columnTotal;
}

QVariant ItemModel::data(const QModelIndex &index, int role) const
{
    if (!index.isValid())
        return {};
    const Row &row = m_rows[static_cast<std::size_t>(index.row())];
    const review::Item &item = *row.item;
    switch (role) {
    case Qt::DisplayRole:
    case Qt::ToolTipRole:
        return textOf(row, index.column());
    case Qt::ForegroundRole:
        return index.column() == Off ? QVariant(inkOf(item)) : QVariant();
    case Qt::TextAlignmentRole:
        return isFigure(index.column()) ? QVariant(Qt::AlignRight | Qt::AlignVCenter) : QVariant();
    default:
        return {};
    }
}

QVariant ItemModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal)
        return {};
    if (role == Qt::TextAlignmentRole && isFigure(section))
        return QVariant(Qt::AlignRight | Qt::AlignVCenter);
    if (role == Qt::ToolTipRole && section == Sure)
        return tr("How probably the true value lies inside its limits, with the doubt of the gauge and of reading off");
    if (role != Qt::DisplayRole)
        return {};
    switch (section) {
    case Instrument:
        return tr("Instrument");
    case NoteColumn:
        return tr("Note");
    case QuantityColumn:
        return tr("Quantity");
    case Value:
        return tr("Value");
    case Off:
        return tr("Off target");
    case Sure:
        return tr("Truly inside");
    case Decided:
        return tr("Decided");
    case ReadBy:
        return tr("Read by");
    default:
        return tr("Finding");
    }
}

void ItemModel::filter()
{
    m_rows.clear();
    if (m_list == List::Waiting)
        for (const review::Item &item : m_desk.items)
            add(item, item.sentBack.get());
    else if (m_list == List::InDoubt)
        for (const review::Item &item : m_desk.inDoubt)
            add(item, nullptr);
    else
        for (const review::Settled &settled : m_list == List::Conceded ? m_desk.conceded : m_desk.mended)
            add(settled.item, &settled.decision);
}

void ItemModel::add(const review::Item &item, const decisions::Decision *decision)
{
    // What was decided about is shown of every kind: it is looked up, not worked off.
    const bool kind = m_list != List::Waiting || m_filters.kinds.contains(item.kind);
    const bool shown = kind && m_filters.instrument.value_or(item.instrument) == item.instrument &&
                       m_filters.person.value_or(item.person) == item.person &&
                       m_filters.quantity.value_or(item.verdict.quantity) == item.verdict.quantity &&
                       std::max(m_desk.now, item.at) - item.at >= m_filters.olderThan;
    if (shown)
        m_rows.push_back({&item, decision});
}

QString ItemModel::decisionText(const Row &row) const
{
    if (row.decision == nullptr)
        return {};
    const QString words = QString::fromStdString(row.decision->words);
    const QString person = QString::fromStdString(row.decision->person);
    if (m_list == List::Conceded)
        return tr("accepted by %1: %2").arg(person, words);
    if (m_list == List::Mended)
        return (row.item->kind == review::Kind::Missing ? tr("sent back by %1: %2; read since")
                                                        : tr("sent back by %1: %2; mended"))
            .arg(person, words);
    return row.item->course == review::Course::ReadAgain ? tr("read again since %1 sent it back: %2").arg(person, words)
                                                         : tr("sent back by %1: %2").arg(person, words);
}

QString ItemModel::textOf(const Row &row, int column) const
{
    const review::Item &item = *row.item;
    switch (column) {
    case Instrument: {
        const auto name = m_desk.names.find(item.instrument);
        return name == m_desk.names.end() ? QString() : name->second;
    }
    case NoteColumn:
        return wording::nameOf(item.verdict.note);
    case QuantityColumn:
        return wording::nameOf(item.verdict.quantity);
    case Value:
        return item.verdict.value ? wording::amountText(*item.verdict.value, m_form) : QString();
    case Off:
        return offText(item, m_form);
    case Sure:
        return sureText(item, m_form);
    case Decided:
        return decisionText(row);
    case ReadBy:
        if (!item.verdict.value)
            return {}; // nobody has
        return tr("%1, %2").arg(QString::fromStdString(item.person),
                                QString::fromStdString(readings::isoDate(item.at)));
    default:
        return wording::verdictSentence(item.verdict, m_form);
    }
}

} // namespace hammerline::review_desk
