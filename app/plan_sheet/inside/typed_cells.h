#pragma once
// Cells of a table as people type them, read with the place of what cannot be read.

#include "keyboard/keyboard.h"
#include "outcome/outcome.h"
#include "units/units.h"

#include <QString>

#include <optional>
#include <vector>

class QTableWidget;

namespace hammerline::plan_sheet {

void putCell(QTableWidget &table, int row, int column, const QString &text);
[[nodiscard]] QString cellText(const QTableWidget &table, int row, int column);
/// All digits that the amount has, with a point: what is typed comes back as it was.
[[nodiscard]] QString exactText(units::Amount amount);

enum class Sign { Positive, Either };

/// Reads one row; faults are named "<row>, <column>: …". Blank cells are absent.
class CellReader {
public:
    CellReader(const QTableWidget &table, int row, QString name, std::vector<outcome::Fault> &faults);
    [[nodiscard]] std::optional<units::Amount> amount(int column, units::Dimension dimension,
                                                      Sign sign = Sign::Positive) const;
    /// Blank: 0.
    [[nodiscard]] double number(int column) const;
    [[nodiscard]] std::optional<keyboard::Note> note(int column) const;
    /// Thicknesses with blanks or semicolons between.
    [[nodiscard]] std::vector<units::Length> lengths(int column) const;
    void refuse(int column, const QString &problem) const;

private:
    const QTableWidget &m_table;
    int m_row;
    QString m_name;
    std::vector<outcome::Fault> &m_faults;
};

} // namespace hammerline::plan_sheet
