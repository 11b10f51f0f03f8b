// The strip as people see it. With HAMMERLINE_GALLERY set to a folder, the pictures are kept there for looking at.
#include "keyboard_strip/keyboard_strip.h"
#include "support/lively_pass.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QImage>
#include <QPainter>

namespace hammerline::keyboard_strip {
namespace {

StripModel lively(keyboard::Compass compass, bool withBefore)
{
    static const auto before = support::livelyJudgement(1, compass);
    const auto now = support::livelyJudgement(withBefore ? 0.45 : 1, compass);
    std::map<PairOf, units::Amount> planned;
    StripSource source;
    source.compass = compass;
    source.sections = support::livelySections();
    source.now = &now;
    source.quantity = catalogue::Quantity::LetOff;
    source.flags[keyboard::Note(17)].concession = true;
    source.flags[keyboard::Note(34)].confirmedSlip = true;
    source.flags[keyboard::Note(23)] = {.fault = true, .confirmedSlip = true};
    source.flags[keyboard::Note(26)] = {.fault = true, .concession = true};
    for (const auto &verdict : now.verdicts)
        if (verdict.status == tolerance::Status::Out)
            planned[{verdict.quantity, verdict.note}] = verdict.limits->target;
    source.planned = &planned;
    if (withBefore)
        source.before = &before;
    return modelOf(source);
}

void keep(const QImage &image, const QString &name)
{
    const QString folder = qEnvironmentVariable("HAMMERLINE_GALLERY");
    EXPECT_TRUE(folder.isEmpty() || image.save(folder + u'/' + name + QStringLiteral(".png")));
}

QImage shot(int width, wording::Theme theme, bool withBefore, keyboard::Compass compass)
{
    wording::applyTheme(*qobject_cast<QApplication *>(QCoreApplication::instance()), theme);
    KeyboardStrip strip;
    strip.setLegendShown(true);
    strip.setModel(lively(compass, withBefore));
    strip.select(keyboard::Note(40));
    strip.resize(width, strip.heightForWidth(width));
    return strip.grab().toImage();
}

TEST(StripGallery, EveryPictureIsDrawnOnItsThemesPaper)
{
    for (const auto theme : {wording::Theme::Light, wording::Theme::Dark})
        for (const int width : {1366, 2560})
            for (const bool before : {false, true}) {
                const QImage image = shot(width, theme, before, {});
                EXPECT_EQ(image.pixelColor(image.width() - 1, 0), wording::paletteOf(theme).paper);
                keep(image, QStringLiteral("strip-%1-%2-%3")
                                .arg(theme == wording::Theme::Light ? "light" : "dark")
                                .arg(width)
                                .arg(before ? "compared" : "alone"));
            }
    keep(shot(1366, wording::Theme::Light, false, {keyboard::Note(-8), keyboard::Note(88)}), "strip-97");
}

TEST(StripGallery, PrintUsesNoColour)
{
    QImage image(1600, 360, QImage::Format_RGB32);
    QPainter painter(&image);
    StripStyle style = printStyle(16);
    style.legend = true;
    paintStrip(painter, image.rect(), lively({}, true), style);
    painter.end();
    for (int y = 0; y < image.height(); y += 3)
        for (int x = 0; x < image.width(); ++x)
            ASSERT_EQ(image.pixelColor(x, y).hsvSaturation(), 0) << x << ',' << y;
    keep(image, "strip-print");
}

} // namespace
} // namespace hammerline::keyboard_strip
