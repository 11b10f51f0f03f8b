#include "main_window/reading_model.h"

#include "wording/palette.h"
#include "wording/wording.h"

#include <QGuiApplication>

#include <algorithm>

namespace hammerline::main_window {

namespace {

bool isBelow(const tolerance::Verdict &verdict)
{
    return verdict.deviation && verdict.deviation->baseCount() < 0;
}

QVariant inkOf(const tolerance::Verdict &verdict)
{
    const wording::Palette &colours = wording::paletteOf(wording::themeOf(QGuiApplication::palette()));
    if (verdict.status == tolerance::Status::Out)
        return isBelow(verdict) ? colours.tooSmall : colours.tooLarge;
    if (verdict.status == tolerance::Status::Marginal)
        return colours.doubt;
    return {};
}

QString markOf(const tolerance::Verdict &verdict)
{
    if (verdict.status == tolerance::Status::Out)
        return isBelow(verdict) ? QStringLiteral("▼ ") : QStringLiteral("▲ ");
    if (verdict.status == tolerance::Status::Marginal)
        return QStringLiteral("◆ ");
    return verdict.uneven ? QStringLiteral("⌁ ") : QString();
}

} // namespace

ReadingModel::ReadingModel(QObject *parent) : QAbstractTableModel(parent) {}

void ReadingModel::show(const instrument::Instrument *instrument, const PassInView *pass,
                        const std::optional<tolerance::ToleranceSet> &set, const wording::NumberForm &form)
{
    beginResetModel();
    const bool any = instrument && pass && !pass->values.empty();
    m_form = form;
    m_compass = any ? instrument->compass : keyboard::Compass{};
    m_rows = any ? m_compass.count() : 0;
    m_quantities = any ? pass->values.quantities() : std::vector<catalogue::Quantity>{};
    m_judgement = any ? pass->judgement : tolerance::Judgement{};
    m_apart = any ? tolerance::takesApart(pass->readings, pass->pass.gauge, set ? &*set : nullptr)
                  : tolerance::PairsApart{};
    endResetModel();
}

keyboard::Note ReadingModel::noteAt(int row) const
{
    return keyboard::Note(m_compass.first.number() + row);
}

QModelIndex ReadingModel::indexOf(const Selection &selection) const
{
    const auto column = std::ranges::find(m_quantities, selection.quantity);
    const int row = selection.note.number() - m_compass.first.number();
    if (column == m_quantities.end() || row < 0 || row >= m_rows)
        return {};
    return index(row, static_cast<int>(column - m_quantities.begin()));
}

int ReadingModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : m_rows;
}

int ReadingModel::columnCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_quantities.size());
}

const tolerance::Verdict *ReadingModel::verdictAt(const QModelIndex &index) const
{
    return index.isValid() ? m_judgement.find(quantityAt(index.column()), noteAt(index.row())) : nullptr;
}

const tolerance::TakesApart *ReadingModel::apartAt(const QModelIndex &index) const
{
    const auto found = m_apart.find({quantityAt(index.column()), noteAt(index.row())});
    return found == m_apart.end() ? nullptr : &found->second;
}

QString ReadingModel::apartText(const QModelIndex &index) const
{
    const tolerance::TakesApart *apart = apartAt(index);
    return apart ? tr("\nIts takes differ by %1, more than the gauge's uncertainty of %2.")
                       .arg(wording::amountText(apart->spread, m_form), wording::amountText(apart->uncertainty, m_form))
                 : QString();
}

QVariant ReadingModel::data(const QModelIndex &index, int role) const
{
    const tolerance::Verdict *verdict = verdictAt(index);
    if (!verdict)
        return {};
    switch (role) {
    case Qt::DisplayRole:
        return verdict->value ? (apartAt(index) ? "↕ " : "") + markOf(*verdict) + wording::bareText(*verdict->value, m_form) : QStringLiteral("–");
    case Qt::ToolTipRole:
    case Qt::AccessibleTextRole:
        return wording::keyStory(*verdict, m_form) + apartText(index);
    case Qt::ForegroundRole:
        return inkOf(*verdict);
    case Qt::TextAlignmentRole:
        return QVariant(Qt::AlignRight | Qt::AlignVCenter);
    default:
        return {};
    }
}

QVariant ReadingModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (role != Qt::DisplayRole)
        return {};
    if (orientation == Qt::Vertical)
        return wording::nameOf(noteAt(section));
    const catalogue::Quantity quantity = quantityAt(section);
    return tr("%1, %2").arg(wording::shortNameOf(quantity),
                            wording::unitText(catalogue::infoOf(quantity).dimension, m_form));
}

} // namespace hammerline::main_window
