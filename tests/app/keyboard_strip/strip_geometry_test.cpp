#include "keyboard_strip/strip_geometry.h"

#include <gtest/gtest.h>

namespace hammerline::keyboard_strip {
namespace {

using keyboard::Colour;
using keyboard::Compass;
using keyboard::Note;

const QRectF area(10, 20, 1040, 150);

class EveryCompass : public testing::TestWithParam<Compass> {
protected:
    Compass compass = GetParam();
    StripGeometry geometry{compass, area};
};

TEST_P(EveryCompass, NaturalsAreOfOneWidthSideBySideAndFillTheArea)
{
    double right = area.left();
    for (int number = compass.first.number(); number <= compass.last.number(); ++number) {
        const Note note(number);
        if (note.colour() == Colour::Sharp)
            continue;
        const QRectF key = geometry.keyRect(note);
        EXPECT_NEAR(key.left(), right, 1e-6);
        EXPECT_NEAR(key.width(), geometry.naturalWidth(), 1e-9);
        EXPECT_DOUBLE_EQ(key.height(), area.height());
        right = key.right();
    }
    EXPECT_NEAR(right, area.right(), 1e-6);
}

TEST_P(EveryCompass, SharpsAreNarrowerAndShorterAndLieOverTheGapBetweenTheirNaturals)
{
    for (int number = compass.first.number() + 1; number < compass.last.number(); ++number) {
        const Note note(number);
        if (note.colour() == Colour::Natural)
            continue;
        const QRectF sharp = geometry.keyRect(note);
        const QRectF below = geometry.keyRect(Note(number - 1));
        EXPECT_LT(sharp.width(), below.width() * 0.7);
        EXPECT_LT(sharp.height(), below.height() * 0.7);
        EXPECT_LT(sharp.left(), below.right());
        EXPECT_GT(sharp.right(), below.right());
        EXPECT_GT(sharp.left(), below.left());
        EXPECT_LT(sharp.right(), geometry.keyRect(Note(number + 1)).right());
    }
}

TEST_P(EveryCompass, GaugesAreOfOneHeightAndInsideTheirKeys)
{
    const double height = geometry.gaugeRect(compass.first).height();
    for (int number = compass.first.number(); number <= compass.last.number(); ++number) {
        const QRectF gauge = geometry.gaugeRect(Note(number));
        EXPECT_DOUBLE_EQ(gauge.height(), height);
        EXPECT_TRUE(geometry.keyRect(Note(number)).contains(gauge));
        const bool natural = Note(number).colour() == Colour::Natural;
        EXPECT_EQ(natural, gauge.top() > area.top() + geometry.sharpLength());
    }
}

TEST_P(EveryCompass, TheMiddleOfEveryGaugeIsOnItsKey)
{
    for (int number = compass.first.number(); number <= compass.last.number(); ++number)
        EXPECT_EQ(geometry.noteAt(geometry.gaugeRect(Note(number)).center()), Note(number));
}

INSTANTIATE_TEST_SUITE_P(StripGeometry, EveryCompass,
                         testing::Values(Compass{Note(1), Note(88)}, Compass{Note(1), Note(85)},
                                         Compass{Note(-8), Note(88)}, Compass{Note(40), Note(40)}));

TEST(StripGeometryTest, EightyEightNotesHaveFiftyTwoNaturals)
{
    const StripGeometry geometry({Note(1), Note(88)}, area);
    EXPECT_NEAR(geometry.naturalWidth(), area.width() / 52, 1e-9);
}

TEST(StripGeometryTest, SharpsLeanAsOnARealKeyboard)
{
    const StripGeometry geometry({}, area);
    const auto lean = [&](int number) {
        return geometry.keyRect(Note(number)).center().x() - geometry.keyRect(Note(number - 1)).right();
    };
    EXPECT_LT(lean(41), -0.5);      // C#4 to the left
    EXPECT_GT(lean(43), 0.5);       // D#4 to the right
    EXPECT_LT(lean(46), -0.5);      // F#4 to the left
    EXPECT_NEAR(lean(48), 0, 1e-9); // G#4 in the middle
    EXPECT_GT(lean(50), 0.5);       // A#4 to the right
    EXPECT_NEAR(lean(41), -lean(43), 1e-9);
    EXPECT_NEAR(lean(46), -lean(50), 1e-9);
}

TEST(StripGeometryTest, ANaturalsOutlineHasTheCutOutsOfItsSharps)
{
    const StripGeometry geometry({}, area);
    const Note d4(42);
    const QPolygonF outline = geometry.outline(d4);
    EXPECT_FALSE(outline.containsPoint(geometry.keyRect(Note(41)).center(), Qt::OddEvenFill));
    EXPECT_TRUE(outline.containsPoint(geometry.gaugeRect(d4).center(), Qt::OddEvenFill));
    EXPECT_EQ(outline.boundingRect(), geometry.keyRect(d4));
    EXPECT_EQ(geometry.outline(Note(88)).boundingRect(), geometry.keyRect(Note(88)));
}

TEST(StripGeometryTest, ASharpLiesOnTopOfItsNaturals)
{
    const StripGeometry geometry({}, area);
    const QRectF sharp = geometry.keyRect(Note(41));
    EXPECT_EQ(geometry.noteAt({sharp.left() + 0.5, sharp.bottom() - 1}), Note(41));
    EXPECT_EQ(geometry.noteAt({sharp.left() + 0.5, sharp.bottom() + 1}), Note(40));
    EXPECT_FALSE(geometry.noteAt({area.left() - 1, area.center().y()}));
    EXPECT_FALSE(geometry.noteAt({area.center().x(), area.bottom() + 1}));
}

TEST(StripGeometryTest, BoundariesLieBetweenTheTails)
{
    const StripGeometry geometry({}, area);
    EXPECT_NEAR(geometry.boundaryAbove(Note(44)), geometry.keyRect(Note(44)).right(), 1e-9); // E4 to F4
    const double eToSharp = geometry.boundaryAbove(Note(40));
    EXPECT_NEAR(eToSharp, geometry.keyRect(Note(41)).left(), geometry.naturalWidth() * 0.05);
}

TEST(StripGeometryTest, AKeyboardMayBeginAndEndWithASharp)
{
    const StripGeometry geometry({Note(2), Note(5)}, area); // A#0 to C#1
    EXPECT_NEAR(geometry.keyRect(Note(2)).left(), area.left(), 1e-9);
    EXPECT_NEAR(geometry.keyRect(Note(5)).right(), area.right(), 1e-9);
}

} // namespace
} // namespace hammerline::keyboard_strip
