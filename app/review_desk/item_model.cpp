#include "review_desk/item_model.h"

#include "wording/palette.h"
#include "wording/wording.h"

#include <QGuiApplication>
#include <QPalette>

#include <algorithm>

namespace hammerline::review_desk {

namespace {

QColor inkOf(const review::Item &item)
{
    const wording::Palette &colours = wording::paletteOf(wording::themeOf(QGuiApplication::palette()));
    if (item.kind == review::Kind::Marginal)
        return colours.doubt;
    if (item.kind != review::Kind::Out || !item.verdict.deviation)
        return colours.ink;
    return item.verdict.deviation->baseCount() < 0 ? colours.tooSmall : colours.tooLarge;
}

QString offText(const review::Item &item, const wording::NumberForm &form)
{
    if (!item.verdict.deviation)
        return {};
    const bool below = item.verdict.deviation->baseCount() < 0;
    const QString mark = item.kind != review::Kind::Out ? QString() : below ? QStringLiteral("▼ ") : QStringLiteral("▲ ");
    return mark + wording::changeText(*item.verdict.deviation, form);
}

QString findingText(const review::Item &item, const wording::NumberForm &form)
{
    QString text = wording::verdictSentence(item.verdict, form);
    if (item.verdict.uneven && item.verdict.stepFromBelow)
        text += QObject::tr("; steps by %1 from its neighbour below")
                    .arg(wording::changeText(*item.verdict.stepFromBelow, form));
    return text;
}

} // namespace

ItemModel::ItemModel(QObject *parent) : QAbstractTableModel(parent) {}

void ItemModel::setItems(std::vector<review::Item> items, InstrumentNames names, const wording::NumberForm &form)
{
    beginResetModel();
    m_items = std::move(items);
    m_names = std::move(names);
    m_form = form;
    filter();
    endResetModel();
}

void ItemModel::setShown(review::Kind kind, bool shown)
{
    beginResetModel();
    if (shown)
        m_kinds.insert(kind);
    else
        m_kinds.erase(kind);
    filter();
    endResetModel();
}

int ItemModel::countOf(review::Kind kind) const
{
    const auto isKind = [kind](const review::Item &item) { return item.kind == kind; };
    return static_cast<int>(std::ranges::count_if(m_items, isKind));
}

const review::Item &ItemModel::itemAt(int row) const
{
    return m_items[m_rows[static_cast<std::size_t>(row)]];
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
    const review::Item &item = itemAt(index.row());
    switch (role) {
    case Qt::DisplayRole:
    case Qt::ToolTipRole:
        return textOf(item, index.column());
    case Qt::ForegroundRole:
        return index.column() == Off ? QVariant(inkOf(item)) : QVariant();
    case Qt::TextAlignmentRole:
        return index.column() == Value || index.column() == Off ? QVariant(Qt::AlignRight | Qt::AlignVCenter)
                                                                : QVariant();
    default:
        return {};
    }
}

QVariant ItemModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal)
        return {};
    if (role == Qt::TextAlignmentRole && (section == Value || section == Off))
        return QVariant(Qt::AlignRight | Qt::AlignVCenter);
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
        return tr("Read");
    case Off:
        return tr("Off target");
    default:
        return tr("Finding");
    }
}

void ItemModel::filter()
{
    m_rows.clear();
    for (std::size_t i = 0; i < m_items.size(); ++i)
        if (m_kinds.contains(m_items[i].kind))
            m_rows.push_back(i);
}

QString ItemModel::textOf(const review::Item &item, int column) const
{
    switch (column) {
    case Instrument: {
        const auto name = m_names.find(item.instrument);
        return name == m_names.end() ? QString() : name->second;
    }
    case NoteColumn:
        return wording::nameOf(item.verdict.note);
    case QuantityColumn:
        return wording::nameOf(item.verdict.quantity);
    case Value:
        return item.verdict.value ? wording::amountText(*item.verdict.value, m_form) : QString();
    case Off:
        return offText(item, m_form);
    default:
        return findingText(item, m_form);
    }
}

} // namespace hammerline::review_desk
