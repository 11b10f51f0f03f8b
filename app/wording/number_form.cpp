#include "wording/number_form.h"

#include <QRegularExpression>

#include <cmath>

namespace hammerline::wording {

namespace {

constexpr int mostDecimals = 4;
constexpr QChar minusSign(0x2212);

double perUnit(units::Unit unit)
{
    switch (unit) {
    case units::Unit::Inch:
        return 25.4;
    case units::Unit::Mil:
        return 0.0254;
    case units::Unit::Millimetre:
    case units::Unit::Gram:
        break;
    }
    return 1;
}

int usualDecimals(units::Unit unit)
{
    switch (unit) {
    case units::Unit::Inch:
        return 3;
    case units::Unit::Mil:
        return 1;
    case units::Unit::Millimetre:
    case units::Unit::Gram:
        break;
    }
    return 2;
}

/// The fewest decimals whose last place is no coarser than the gauge's step.
int decimalsOf(units::Length resolution, units::Unit unit)
{
    const double step = resolution.inMillimetres() / perUnit(unit);
    int decimals = 0;
    for (double place = 1; place > step * (1 + 1e-9) && decimals < mostDecimals; place /= 10)
        ++decimals;
    return decimals;
}

/// The core writes '.', '-' and ASCII digits; here they become the locale's mark and a true minus sign.
QString localised(const std::string &plain, const NumberForm &form)
{
    QString text = QString::fromStdString(plain);
    text.replace(u'.', form.locale.decimalPoint());
    if (text.startsWith(u'-'))
        text.replace(0, 1, minusSign);
    return text;
}

} // namespace

units::Unit NumberForm::unitFor(units::Dimension dimension) const
{
    return dimension == units::Dimension::Length ? lengthUnit : units::Unit::Gram;
}

int NumberForm::decimalsFor(units::Dimension dimension) const
{
    return dimension == units::Dimension::Length ? lengthDecimals : massDecimals;
}

NumberForm formOf(const readings::Pass &pass, const QLocale &locale)
{
    return formOf(pass.unit, pass.gauge.resolution, locale);
}

NumberForm formOf(units::Unit unit, units::Length resolution, const QLocale &locale)
{
    NumberForm form;
    form.locale = locale;
    form.lengthUnit = units::dimensionOf(unit) == units::Dimension::Length ? unit : units::Unit::Millimetre;
    form.lengthDecimals =
        resolution.inNanometres() > 0 ? decimalsOf(resolution, form.lengthUnit) : usualDecimals(form.lengthUnit);
    return form;
}

QString amountText(units::Amount amount, const NumberForm &form)
{
    return QStringLiteral("%1 %2").arg(bareText(amount, form), unitText(amount.dimension(), form));
}

QString bareText(units::Amount amount, const NumberForm &form)
{
    const auto dimension = amount.dimension();
    const std::string plain = units::fixedDecimal(amount, form.unitFor(dimension), form.decimalsFor(dimension));
    const bool zero = plain.find_first_of("123456789") == std::string::npos;
    return localised(zero && plain.front() == '-' ? plain.substr(1) : plain, form);
}

QString changeText(units::Amount change, const NumberForm &form)
{
    const QString text = amountText(change, form);
    const bool shown = text.contains(QRegularExpression(QStringLiteral("[1-9]")));
    return change.baseCount() > 0 && shown ? u'+' + text : text;
}

QString unitText(units::Unit unit)
{
    return QString::fromLatin1(units::symbolOf(unit));
}

QString unitText(units::Dimension dimension, const NumberForm &form)
{
    return unitText(form.unitFor(dimension));
}

QString numberText(double value, int decimals, const NumberForm &form)
{
    QString text = QString::number(value, 'f', decimals);
    if (!text.contains(QRegularExpression(QStringLiteral("[1-9]"))) && text.startsWith(u'-'))
        text.remove(0, 1);
    return localised(text.toStdString(), form);
}

double inUnit(units::Amount amount, const NumberForm &form)
{
    return amount.inDisplay() / perUnit(form.unitFor(amount.dimension()));
}

} // namespace hammerline::wording
