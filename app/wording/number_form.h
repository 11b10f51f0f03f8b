#pragma once
// How numbers are shown to people: in the unit in force, with as many digits as the gauge has, with the decimal mark of
// the locale. This is the only place where a locale touches a number; files and commands never see one.

#include "catalogue/catalogue.h"
#include "readings/readings.h"
#include "units/units.h"

#include <QLocale>
#include <QString>

namespace hammerline::wording {

struct NumberForm {
    units::Unit lengthUnit = units::Unit::Millimetre;
    int lengthDecimals = 2;
    int massDecimals = 1;
    QLocale locale{};

    [[nodiscard]] units::Unit unitFor(units::Dimension dimension) const;
    [[nodiscard]] int decimalsFor(units::Dimension dimension) const;
};

/// Unit of the pass; digits from the resolution of its gauge (0.05 mm: two; 0.1 mm: one; 0.001 in: three of an inch).
/// A gauge of unstated resolution gets 2 for mm, 3 for in, 1 for mil.
[[nodiscard]] NumberForm formOf(const readings::Pass &pass, const QLocale &locale = QLocale());
[[nodiscard]] NumberForm formOf(units::Unit unit, units::Length resolution, const QLocale &locale = QLocale());

/// "3.20 mm".
[[nodiscard]] QString amountText(units::Amount amount, const NumberForm &form);
/// "3.20": for a column whose head names the unit.
[[nodiscard]] QString bareText(units::Amount amount, const NumberForm &form);
/// "+0.30 mm" or "−0.30 mm", with a true minus sign; "0.00 mm" has none.
[[nodiscard]] QString changeText(units::Amount change, const NumberForm &form);
/// "mm", "in", "mil", "g" as they stand behind a number.
[[nodiscard]] QString unitText(units::Unit unit);
[[nodiscard]] QString unitText(units::Dimension dimension, const NumberForm &form);
/// A plain number (a probability, a count of half-widths, minutes) in the locale of the form.
[[nodiscard]] QString numberText(double value, int decimals, const NumberForm &form);
/// In the unit of the form, as a double: for axes and drawing.
[[nodiscard]] double inUnit(units::Amount amount, const NumberForm &form);

} // namespace hammerline::wording
