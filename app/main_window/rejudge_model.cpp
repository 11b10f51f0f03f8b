#include "main_window/rejudge_model.h"

#include "main_window/shop_parts.h"

#include <algorithm>

namespace hammerline::main_window {

namespace {

using tolerance::Status;

int figureOf(const shop::TwoSets &counts, int column)
{
    switch (column) {
    case RejudgeModel::InNow:
        return counts.now.of(Status::In);
    case RejudgeModel::InThen:
        return counts.then.of(Status::In);
    case RejudgeModel::MarginalNow:
        return counts.now.of(Status::Marginal);
    case RejudgeModel::MarginalThen:
        return counts.then.of(Status::Marginal);
    case RejudgeModel::OutNow:
        return counts.now.of(Status::Out);
    case RejudgeModel::OutThen:
        return counts.then.of(Status::Out);
    default:
        return counts.moreOut();
    }
}

/// A change says which way it goes, and there is none where one of the two sets judges nothing.
QString figureText(const QLocale &locale, int column, const shop::TwoSets &counts)
{
    const int figure = figureOf(counts, column);
    if (column == RejudgeModel::MoreOut && !counts.bothJudge())
        return QStringLiteral("\u2013");
    const QString text = locale.toString(std::abs(figure));
    if (column != RejudgeModel::MoreOut || figure == 0)
        return text;
    return (figure > 0 ? QStringLiteral("+") : QStringLiteral("\u2212")) + text;
}

} // namespace

void RejudgeModel::show(QString nameHead, std::vector<Row> rows)
{
    beginResetModel();
    m_nameHead = std::move(nameHead);
    m_rows = std::move(rows);
    endResetModel();
}

int RejudgeModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

int RejudgeModel::columnCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : columnTotal;
}

QVariant RejudgeModel::data(const QModelIndex &index, int role) const
{
    const Row &row = m_rows[static_cast<std::size_t>(index.row())];
    if (role == Qt::TextAlignmentRole && index.column() != Name)
        return int(Qt::AlignRight | Qt::AlignVCenter);
    if (role == Qt::ToolTipRole && index.column() == Name)
        return wrapped(row.name);
    if (role != Qt::DisplayRole)
        return {};
    return index.column() == Name ? row.name : figureText(m_locale, index.column(), row.counts);
}

QVariant RejudgeModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
        return {};
    const QString now = '\n' + tr("as it stands"), then = '\n' + tr("by the other set");
    const QString heads[] = {m_nameHead,           tr("In") + now,        tr("In") + then,
                             tr("Marginal") + now, tr("Marginal") + then, tr("Out") + now,
                             tr("Out") + then,     tr("More out") + then};
    return heads[section];
}

void RejudgeModel::sort(int column, Qt::SortOrder order)
{
    if (column < 0)
        return;
    const auto before = [column](const Row &a, const Row &b) {
        return column == Name ? QString::localeAwareCompare(a.name, b.name) < 0
                              : figureOf(a.counts, column) < figureOf(b.counts, column);
    };
    emit layoutAboutToBeChanged();
    std::ranges::stable_sort(
        m_rows, [&](const Row &a, const Row &b) { return order == Qt::AscendingOrder ? before(a, b) : before(b, a); });
    emit layoutChanged();
}

} // namespace hammerline::main_window
