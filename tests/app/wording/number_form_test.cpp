#include "wording/number_form.h"

#include <gtest/gtest.h>

namespace hammerline::wording {
namespace {

using units::Amount;
using units::Length;
using units::Mass;
using units::Unit;

Amount mm(double value)
{
    return Amount::fromDisplay(units::Dimension::Length, value);
}

TEST(NumberFormTest, DigitsFollowTheGauge)
{
    EXPECT_EQ(formOf(Unit::Millimetre, Length::millimetres(0.05), QLocale::c()).lengthDecimals, 2);
    EXPECT_EQ(formOf(Unit::Millimetre, Length::millimetres(0.1), QLocale::c()).lengthDecimals, 1);
    EXPECT_EQ(formOf(Unit::Millimetre, Length::millimetres(1), QLocale::c()).lengthDecimals, 0);
    EXPECT_EQ(formOf(Unit::Inch, Length::nanometres(25400), QLocale::c()).lengthDecimals, 3);
    EXPECT_EQ(formOf(Unit::Mil, Length::nanometres(25400), QLocale::c()).lengthDecimals, 0);
    EXPECT_EQ(formOf(Unit::Millimetre, Length::nanometres(1), QLocale::c()).lengthDecimals, 4);
}

TEST(NumberFormTest, AGaugeOfUnstatedResolutionGetsTheUsualDigits)
{
    EXPECT_EQ(formOf(Unit::Millimetre, {}, QLocale::c()).lengthDecimals, 2);
    EXPECT_EQ(formOf(Unit::Inch, {}, QLocale::c()).lengthDecimals, 3);
    EXPECT_EQ(formOf(Unit::Mil, {}, QLocale::c()).lengthDecimals, 1);
}

TEST(NumberFormTest, APassCountedInGramsStillShowsLengthsInMillimetres)
{
    readings::Pass pass;
    pass.unit = Unit::Gram;
    EXPECT_EQ(amountText(mm(3.2), formOf(pass, QLocale::c())), "3.20 mm");
}

TEST(NumberFormTest, TheDecimalMarkIsTheLocales)
{
    NumberForm form = formOf(Unit::Millimetre, {}, QLocale(QLocale::German));
    EXPECT_EQ(amountText(mm(3.2), form), "3,20 mm");
    EXPECT_EQ(numberText(0.5, 1, form), "0,5");
    form.locale = QLocale(QLocale::English);
    EXPECT_EQ(amountText(mm(3.2), form), "3.20 mm");
}

TEST(NumberFormTest, InchesMilsAndGramsCarryTheirOwnDigits)
{
    EXPECT_EQ(amountText(mm(25.4), formOf(Unit::Inch, {}, QLocale::c())), "1.000 in");
    EXPECT_EQ(amountText(mm(3.175), formOf(Unit::Mil, {}, QLocale::c())), "125.0 mil");
    EXPECT_EQ(amountText(Mass::milligrams(52500), formOf(Unit::Inch, {}, QLocale::c())), "52.5 g");
    EXPECT_DOUBLE_EQ(inUnit(mm(12.7), formOf(Unit::Inch, {}, QLocale::c())), 0.5);
}

TEST(NumberFormTest, ChangesCarryATrueSignAndNothingHasNone)
{
    const NumberForm form = formOf(Unit::Millimetre, Length::millimetres(0.1), QLocale::c());
    EXPECT_EQ(changeText(mm(0.3), form), "+0.3 mm");
    EXPECT_EQ(changeText(mm(-0.3), form), QStringLiteral("\u22120.3 mm"));
    EXPECT_EQ(changeText(mm(-0.01), form), "0.0 mm");
    EXPECT_EQ(changeText(mm(0.01), form), "0.0 mm");
    EXPECT_EQ(numberText(-0.01, 1, form), "0.0");
}

} // namespace
} // namespace hammerline::wording
