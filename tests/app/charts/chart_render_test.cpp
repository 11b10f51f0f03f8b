// Charts painted and looked at. With HAMMERLINE_GALLERY set to a folder, the pictures are kept there.
#include "charts/charts.h"

#include "app/charts/painted_chart.h"
#include "support/lively_pass.h"

#include <gtest/gtest.h>

namespace hammerline::charts {
namespace {

using catalogue::Quantity;
using keyboard::Note;
using support::mm;
using wording::Theme;

ChartData lively(Question question, bool withBefore, Quantity quantity = Quantity::LetOff)
{
    ChartData data;
    data.question = question;
    data.quantity = quantity;
    data.sections = support::livelySections();
    data.now = support::livelyJudgement(withBefore ? 0.45 : 1);
    data.form.locale = QLocale::c();
    data.nowName = "As left";
    data.subject = "Upright of the demo workshop";
    if (withBefore)
        data.before = support::livelyJudgement(1);
    data.beforeName = "As found";
    return data;
}

void keep(const QImage &image, const QString &name)
{
    const QString folder = qEnvironmentVariable("HAMMERLINE_GALLERY");
    EXPECT_TRUE(folder.isEmpty() || image.save(folder + u'/' + name + QStringLiteral(".png")));
}

TEST(ChartRender, EveryChartFillsItsRectangleInBothThemes)
{
    for (const Theme theme : {Theme::Light, Theme::Dark})
        for (const Question question : {Question::WhereAlongTheKeyboard, Question::HowSpread})
            for (const bool before : {false, true})
                for (const QSize size : {QSize(1366, 500), QSize(2560, 900)}) {
                    const QImage image = painted(lively(question, before), wording::paletteOf(theme), size);
                    EXPECT_EQ(count(image, Qt::magenta), 0);
                    keep(image, QStringLiteral("chart-%1-%2-%3-%4")
                                    .arg(question == Question::HowSpread ? "spread" : "along",
                                         theme == Theme::Light ? "light" : "dark", before ? "compared" : "alone")
                                    .arg(size.width()));
                }
}

TEST(ChartRender, VerdictsAreToldByColourOnTheScreen)
{
    for (const Question question : {Question::WhereAlongTheKeyboard, Question::HowSpread}) {
        const auto &roles = wording::paletteOf(Theme::Light);
        const QImage image = painted(lively(question, false), roles);
        for (const QColor &colour : {roles.band, roles.within, roles.doubt, roles.tooSmall, roles.tooLarge})
            EXPECT_GT(count(image, colour), 10) << colour.name().toStdString();
    }
}

TEST(ChartRender, PrintUsesNoColour)
{
    for (const Question question : {Question::WhereAlongTheKeyboard, Question::HowSpread}) {
        const QImage image = painted(lively(question, true), wording::printPalette());
        for (int y = 0; y < image.height(); ++y)
            for (int x = 0; x < image.width(); ++x)
                ASSERT_EQ(image.pixelColor(x, y).hsvSaturation(), 0) << x << ',' << y;
        keep(image, question == Question::HowSpread ? "chart-print-spread" : "chart-print-along");
    }
}

TEST(ChartRender, BeforeIsShownBesideNow)
{
    for (const Question question : {Question::WhereAlongTheKeyboard, Question::HowSpread}) {
        ChartData data = lively(question, true);
        const QImage compared = painted(data, wording::paletteOf(Theme::Light));
        data.before.reset();
        EXPECT_NE(compared, painted(data, wording::paletteOf(Theme::Light)));
    }
}

TEST(ChartRender, OneReadingFarOffDoesNotFlattenTheOthers)
{
    auto values = support::livelyValues(0.4);
    ChartData data = lively(Question::WhereAlongTheKeyboard, false);
    data.now = tolerance::judge(values, support::livelySet(), {}, {});
    values.set(Quantity::LetOff, Note(40), {mm(300), 1});
    ChartData wild = data;
    wild.now = tolerance::judge(values, support::livelySet(), {}, {});
    const auto &roles = wording::paletteOf(Theme::Light);
    EXPECT_GT(count(painted(wild, roles), roles.band), count(painted(data, roles), roles.band) / 4);
    EXPECT_GT(count(painted(wild, roles), roles.tooLarge), 10);
}

TEST(ChartRender, LimitsByColourWithoutReadingsAndOtherUnitsArePainted)
{
    ChartData dip = lively(Question::WhereAlongTheKeyboard, false, Quantity::Dip);
    auto set = support::livelySet();
    set.entries[Quantity::Dip].sharps = {{.note = Note(1), .low = mm(9.4), .target = mm(9.6), .high = mm(9.9)}};
    dip.now = tolerance::judge(support::livelyValues(1), set, {}, {});
    dip.form.lengthUnit = units::Unit::Inch;
    keep(painted(dip, wording::paletteOf(Theme::Light)), "chart-dip-inch");
    ChartData empty = lively(Question::HowSpread, false, Quantity::Blow);
    EXPECT_EQ(count(painted(empty, wording::paletteOf(Theme::Light)), Qt::magenta), 0);
    empty.question = Question::WhereAlongTheKeyboard;
    keep(painted(empty, wording::paletteOf(Theme::Light)), "chart-empty");
}

} // namespace
} // namespace hammerline::charts
