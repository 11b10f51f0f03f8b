// Contrast after WCAG 2.1: 4.5 for text (SC 1.4.3), 3 for what a graphic needs to be understood (SC 1.4.11).
#include "wording/palette.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QWidget>

namespace hammerline::wording {
namespace {

class EveryTheme : public testing::TestWithParam<Theme> {
protected:
    const Palette &roles = paletteOf(GetParam());
};

TEST_P(EveryTheme, TextReadsOnEveryGround)
{
    for (const QColor &ground : {roles.paper, roles.field, roles.sharp})
        for (const QColor &text : {roles.ink, roles.quiet})
            EXPECT_GE(contrastRatio(text, ground), 4.5) << text.name().toStdString() << ground.name().toStdString();
}

TEST_P(EveryTheme, VerdictColoursServeAsTextOnPaperAndField)
{
    for (const QColor &ground : {roles.paper, roles.field})
        for (const QColor &text : {roles.tooSmall, roles.tooLarge, roles.within, roles.doubt})
            EXPECT_GE(contrastRatio(text, ground), 4.5) << text.name().toStdString() << ground.name().toStdString();
}

TEST_P(EveryTheme, MarksReadOnPaperOnSharpsAndOnTheBand)
{
    for (const QColor &ground : {roles.paper, roles.sharp, roles.band})
        for (const QColor &mark : {roles.tooSmall, roles.tooLarge, roles.within, roles.doubt, roles.quiet, roles.ink})
            EXPECT_GE(contrastRatio(mark, ground), 3) << mark.name().toStdString() << ground.name().toStdString();
}

TEST_P(EveryTheme, OutlinesReadOnPaperAndOnSharps)
{
    EXPECT_GE(contrastRatio(roles.line, roles.paper), 3);
    EXPECT_GE(contrastRatio(roles.line, roles.sharp), 3);
}

TEST_P(EveryTheme, IsFoundAgainInTheWidgetsItDresses)
{
    auto *application = qobject_cast<QApplication *>(QCoreApplication::instance());
    ASSERT_TRUE(application);
    applyTheme(*application, GetParam());
    const QWidget widget;
    EXPECT_EQ(themeOf(widget.palette()), GetParam());
    EXPECT_EQ(paletteFor(widget).paper, roles.paper);
    EXPECT_EQ(widget.palette().color(QPalette::WindowText), roles.ink);
    applyTheme(*application, Theme::Light);
}

INSTANTIATE_TEST_SUITE_P(Palette, EveryTheme, testing::Values(Theme::Light, Theme::Dark));

TEST(Contrast, KnowsTheEndsOfItsScale)
{
    EXPECT_NEAR(contrastRatio(Qt::black, Qt::white), 21, 1e-9);
    EXPECT_NEAR(contrastRatio(Qt::white, Qt::white), 1, 1e-9);
    // WCAG's own borderline grey: #767676 on white is 4.54.
    EXPECT_NEAR(contrastRatio(QColor(0x76, 0x76, 0x76), Qt::white), 4.54, 0.005);
}

TEST(Print, IsBlackAloneWithGreysOnlyForFieldsAndLines)
{
    const Palette &print = printPalette();
    for (const QColor &mark : {print.ink, print.quiet, print.tooSmall, print.tooLarge, print.within, print.doubt})
        EXPECT_EQ(mark, QColor(Qt::black));
    for (const QColor &colour : {print.line, print.faintLine, print.sharp, print.band})
        EXPECT_EQ(colour.hsvSaturation(), 0);
}

TEST(Type, SizesComeFromOneScale)
{
    EXPECT_EQ(font(TextSize::Small).pointSize(), 9);
    EXPECT_EQ(font(TextSize::ReadOut).pointSize(), 72);
    EXPECT_TRUE(font(TextSize::Body, true).bold());
}

} // namespace
} // namespace hammerline::wording
