#include "main_window/summary_model.h"

#include "wording/wording.h"

namespace hammerline::main_window {

namespace {

enum Column { Name, Read, In, Marginal, Out, Uneven, Missing, Mean, Spread, Least, Most, Step, columnTotal };

QString countText(bool judged, int count)
{
    return judged ? QString::number(count) : QString();
}

QString amountOf(std::optional<double> value, catalogue::Quantity quantity, const wording::NumberForm &form)
{
    if (!value)
        return {};
    const auto dimension = catalogue::infoOf(quantity).dimension;
    return wording::bareText(units::Amount::fromDisplay(dimension, *value), form);
}

QString textOf(int column, catalogue::Quantity quantity, const analysis::QuantitySummary &row,
               const wording::NumberForm &form)
{
    switch (column) {
    case Name:
        return SummaryModel::tr("%1, %2").arg(wording::nameOf(quantity),
                                              wording::unitText(catalogue::infoOf(quantity).dimension, form));
    case Read:
        return QString::number(row.count);
    case In:
        return countText(row.judged, row.in);
    case Marginal:
        return countText(row.judged, row.marginal);
    case Out:
        return countText(row.judged, row.out);
    case Uneven:
        return countText(row.judged, row.uneven);
    case Missing:
        return countText(row.judged, row.missing);
    case Mean:
        return amountOf(row.mean, quantity, form);
    case Spread:
        return amountOf(row.sd, quantity, form);
    case Least:
        return amountOf(row.min, quantity, form);
    case Most:
        return amountOf(row.max, quantity, form);
    default:
        return amountOf(row.largestStep, quantity, form);
    }
}

} // namespace

SummaryModel::SummaryModel(QObject *parent) : QAbstractTableModel(parent) {}

void SummaryModel::show(const analysis::Summaries &summaries, const wording::NumberForm &form)
{
    beginResetModel();
    m_rows.clear();
    for (const auto &[quantity, summary] : summaries)
        if (summary.count > 0)
            m_rows.emplace_back(quantity, summary);
    m_form = form;
    endResetModel();
}

int SummaryModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

int SummaryModel::columnCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : columnTotal;
}

QVariant SummaryModel::data(const QModelIndex &index, int role) const
{
    if (!index.isValid())
        return {};
    const auto &[quantity, summary] = m_rows[static_cast<std::size_t>(index.row())];
    if (role == Qt::DisplayRole)
        return textOf(index.column(), quantity, summary, m_form);
    if (role == Qt::TextAlignmentRole && index.column() != Name)
        return QVariant(Qt::AlignRight | Qt::AlignVCenter);
    return {};
}

QVariant SummaryModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation == Qt::Horizontal && role == Qt::TextAlignmentRole && section != Name)
        return QVariant(Qt::AlignRight | Qt::AlignVCenter);
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
        return {};
    static const QStringList heads{tr("Quantity"), tr("Read"),   tr("In"),   tr("Close"), tr("Out"),  tr("Uneven"),
                                   tr("Missing"),  tr("Mean"),   tr("Sd"),   tr("Least"), tr("Most"), tr("Largest step")};
    return heads.value(section);
}

} // namespace hammerline::main_window
