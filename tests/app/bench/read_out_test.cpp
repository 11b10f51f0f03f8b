#include "bench/big_text.h"

#include <QFontMetricsF>
#include <QScreen>

#include <cmath>
#include <gtest/gtest.h>

namespace hammerline::bench {
namespace {

TEST(ReadOut, CapitalsAreTwelveMillimetresHighOnABelievableScreen)
{
    const BigText text(wording::TextSize::ReadOut);
    const double dpi = text.screen()->physicalDotsPerInch();
    ASSERT_GE(dpi, 70);
    ASSERT_LE(dpi, 250);
    EXPECT_GE(QFontMetricsF(readOutFont(text)).capHeight() * 25.4 / dpi, 11.9);
}

TEST(ReadOut, TheScaleAloneGivesTwelveMillimetresOnAFourteenInchScreenOf1366Pixels)
{
    const double dpi = std::hypot(1366.0, 768.0) / 14;
    QFont font = wording::font(wording::TextSize::ReadOut);
    EXPECT_GE(QFontMetricsF(font).capHeight() * 25.4 / dpi, 12.0);
}

TEST(ReadOut, TextTooWideShrinksInsteadOfBeingCut)
{
    BigText text(wording::TextSize::ReadOut);
    text.setText("125.0000 mil");
    text.resize(200, text.sizeHint().height());
    EXPECT_GT(text.sizeHint().width(), 200);
    const QImage picture = text.grab().toImage();
    const QColor paper = picture.pixelColor(0, 0);
    int inked = 0;
    for (int y = 0; y < picture.height(); ++y)
        inked += picture.pixelColor(picture.width() - 1, y) == paper ? 0 : 1;
    EXPECT_EQ(inked, 0);
}

TEST(ReadOut, TheTextIsTheNameForAScreenReader)
{
    BigText text(wording::TextSize::Large);
    text.setText("C♯4");
    EXPECT_EQ(text.accessibleName(), "C♯4");
}

} // namespace
} // namespace hammerline::bench
