#include "plan_sheet/inside/typed_cells.h"

#include "units/parse_amount.h"

#include <QRegularExpression>
#include <QTableWidget>

namespace hammerline::plan_sheet {

void putCell(QTableWidget &table, int row, int column, const QString &text)
{
    if (QTableWidgetItem *item = table.item(row, column))
        item->setText(text);
    else
        table.setItem(row, column, new QTableWidgetItem(text));
}

QString cellText(const QTableWidget &table, int row, int column)
{
    const QTableWidgetItem *item = table.item(row, column);
    return item == nullptr ? QString() : item->text().trimmed();
}

QString exactText(units::Amount amount)
{
    return QString::fromStdString(units::exactDecimal(amount));
}

CellReader::CellReader(const QTableWidget &table, int row, QString name, std::vector<outcome::Fault> &faults)
    : m_table(table), m_row(row), m_name(std::move(name)), m_faults(faults)
{
}

void CellReader::refuse(int column, const QString &problem) const
{
    const QString where = m_name + QStringLiteral(", ") + m_table.horizontalHeaderItem(column)->text().toLower();
    m_faults.push_back({{}, 0, (where + QStringLiteral(": ") + problem).toStdString()});
}

std::optional<units::Amount> CellReader::amount(int column, units::Dimension dimension, Sign sign) const
{
    const QString text = cellText(m_table, m_row, column);
    if (text.isEmpty())
        return std::nullopt;
    const auto parsed =
        units::parseAmount(text.toStdString(), {.dimension = dimension, .allowNegative = sign == Sign::Either});
    if (parsed)
        return parsed.value().value;
    refuse(column, QString::fromStdString(parsed.faults().front().problem));
    return std::nullopt;
}

double CellReader::number(int column) const
{
    QString text = cellText(m_table, m_row, column);
    bool ok = true;
    const double value = text.isEmpty() ? 0 : text.replace(',', '.').toDouble(&ok);
    if (!ok)
        refuse(column, QObject::tr("“%1” is no number").arg(text));
    return ok ? value : 0;
}

std::optional<keyboard::Note> CellReader::note(int column) const
{
    const QString text = cellText(m_table, m_row, column);
    if (text.isEmpty())
        return std::nullopt;
    const auto parsed = keyboard::parseNote(text.toStdString());
    if (parsed)
        return parsed.value();
    refuse(column, QString::fromStdString(parsed.faults().front().problem));
    return std::nullopt;
}

std::vector<units::Length> CellReader::lengths(int column) const
{
    static const QRegularExpression between(QStringLiteral("[;\\s]+"));
    std::vector<units::Length> found;
    for (const QString &part : cellText(m_table, m_row, column).split(between, Qt::SkipEmptyParts)) {
        const auto parsed = units::parseAmount(part.toStdString(), {});
        if (parsed)
            found.push_back(parsed.value().value.asLength());
        else
            refuse(column, QString::fromStdString(parsed.faults().front().problem));
    }
    return found;
}

} // namespace hammerline::plan_sheet
