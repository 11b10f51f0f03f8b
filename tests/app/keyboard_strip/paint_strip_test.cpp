// The strip painted small and looked at key by key: what colour stands where.
#include "keyboard_strip/paint_strip.h"

#include <gtest/gtest.h>

#include <QImage>
#include <QPainter>

#include <algorithm>

namespace hammerline::keyboard_strip {
namespace {

using keyboard::Note;
using tolerance::Status;

const Note naturalKey(40);
const Note sharpKey(41);

class Picture {
public:
    explicit Picture(const StripModel &model, StripStyle style = screen()) : m_style(style), m_compass(model.compass)
    {
        QPainter painter(&m_image);
        paintStrip(painter, m_image.rect(), model, style);
    }

    static StripStyle screen()
    {
        StripStyle style = printStyle(12);
        style.palette = wording::paletteOf(wording::Theme::Light);
        return style;
    }

    [[nodiscard]] StripGeometry geometry() const { return geometryOf(m_style, m_image.rect(), m_compass); }
    [[nodiscard]] int count(const QRectF &area, const QColor &colour) const
    {
        int found = 0;
        const QRect pixels = area.toAlignedRect();
        for (int y = pixels.top(); y <= pixels.bottom(); ++y)
            for (int x = pixels.left(); x <= pixels.right(); ++x)
                found += m_image.pixelColor(x, y) == colour ? 1 : 0;
        return found;
    }
    [[nodiscard]] QRectF upper(Note note) const
    {
        const QRectF gauge = geometry().gaugeRect(note);
        return {gauge.topLeft(), QSizeF(gauge.width(), gauge.height() / 2 - 4)};
    }
    [[nodiscard]] QRectF lower(Note note) const
    {
        return upper(note).translated(0, geometry().gaugeRect(note).height() / 2 + 4);
    }
    /// Lowest and highest y of a colour inside a key.
    [[nodiscard]] std::pair<int, int> reach(Note note, const QColor &colour) const
    {
        const QRect pixels = geometry().keyRect(note).adjusted(2, 2, -2, -2).toAlignedRect();
        std::pair<int, int> reached{m_image.height(), -1};
        for (int y = pixels.top(); y <= pixels.bottom(); ++y)
            for (int x = pixels.left(); x <= pixels.right(); ++x)
                if (m_image.pixelColor(x, y) == colour)
                    reached = {std::min(reached.first, y), std::max(reached.second, y)};
        return reached;
    }
    [[nodiscard]] const QImage &image() const { return m_image; }
    [[nodiscard]] const wording::Palette &roles() const { return m_style.palette; }

private:
    StripStyle m_style;
    keyboard::Compass m_compass;
    QImage m_image{1560, 220, QImage::Format_RGB32};
};

StripModel modelWith(const StripKey &shown)
{
    StripModel model = emptyModel({}, {});
    for (StripKey &key : model.keys)
        if (key.note == shown.note)
            key = shown;
    return model;
}

StripKey keyAt(Note note, Status status, std::optional<double> height)
{
    StripKey key;
    key.note = note;
    key.used = true;
    key.status = status;
    key.now = height;
    return key;
}

class BothColours : public testing::TestWithParam<Note> {};

TEST_P(BothColours, TooLargeStandsAboveTheBandInItsColour)
{
    const Picture picture(modelWith(keyAt(GetParam(), Status::Out, 1.7)));
    EXPECT_GT(picture.count(picture.upper(GetParam()), picture.roles().tooLarge), 8);
    EXPECT_EQ(picture.count(picture.lower(GetParam()), picture.roles().tooLarge), 0);
    EXPECT_EQ(picture.count(picture.geometry().keyRect(GetParam()), picture.roles().tooSmall), 0);
}

TEST_P(BothColours, TooSmallStandsBelowTheBandInItsColour)
{
    const Picture picture(modelWith(keyAt(GetParam(), Status::Out, -1.7)));
    EXPECT_GT(picture.count(picture.lower(GetParam()), picture.roles().tooSmall), 8);
    EXPECT_EQ(picture.count(picture.upper(GetParam()), picture.roles().tooSmall), 0);
}

TEST_P(BothColours, WithinLiesOnTheBandAndInDoubtHasItsOwnColour)
{
    const Picture within(modelWith(keyAt(GetParam(), Status::In, 0.3)));
    const QRectF key = within.geometry().keyRect(GetParam());
    EXPECT_GT(within.count(key, within.roles().within), 8);
    EXPECT_GT(within.count(key, within.roles().band), 50);
    const Picture doubt(modelWith(keyAt(GetParam(), Status::Marginal, 0.9)));
    EXPECT_GT(doubt.count(key, doubt.roles().doubt), 8);
    EXPECT_EQ(doubt.count(key, doubt.roles().within), 0);
}

TEST_P(BothColours, MissingHasNeitherBandNorMarkButAnOutline)
{
    const Picture picture(modelWith(keyAt(GetParam(), Status::Missing, std::nullopt)));
    const Picture empty(emptyModel({}, {}));
    const QRectF key = picture.geometry().keyRect(GetParam());
    for (const QColor &colour : {picture.roles().band, picture.roles().within, picture.roles().doubt,
                                 picture.roles().tooSmall, picture.roles().tooLarge})
        EXPECT_EQ(picture.count(key, colour), 0);
    EXPECT_NE(picture.image(), empty.image());
}

TEST_P(BothColours, AReadingFarOffStaysOnItsKeyAndLooksDifferent)
{
    const Picture far(modelWith(keyAt(GetParam(), Status::Out, 40)));
    const Picture near(modelWith(keyAt(GetParam(), Status::Out, 2.3)));
    const QRectF gauge = far.geometry().gaugeRect(GetParam());
    const auto [top, bottom] = far.reach(GetParam(), far.roles().tooLarge);
    EXPECT_GE(top, gauge.top() - 2);
    EXPECT_LT(bottom, gauge.center().y());
    EXPECT_NE(far.image(), near.image());
    EXPECT_EQ(far.image(), Picture(modelWith(keyAt(GetParam(), Status::Out, 400))).image());
}

TEST_P(BothColours, EveryFlagChangesThePictureInItsOwnWay)
{
    std::vector<QImage> pictures{Picture(modelWith(keyAt(GetParam(), Status::In, 0))).image()};
    for (const Flags flags :
         {Flags{.fault = true}, Flags{.confirmedSlip = true}, Flags{.concession = true}, Flags{.uneven = true}}) {
        StripKey key = keyAt(GetParam(), Status::In, 0);
        key.flags = flags;
        pictures.push_back(Picture(modelWith(key)).image());
    }
    for (std::size_t a = 0; a < pictures.size(); ++a)
        for (std::size_t b = a + 1; b < pictures.size(); ++b)
            EXPECT_NE(pictures[a], pictures[b]) << a << ' ' << b;
}

INSTANTIATE_TEST_SUITE_P(PaintStrip, BothColours, testing::Values(naturalKey, sharpKey));

TEST(PaintStrip, AHigherReadingStandsHigher)
{
    int last = 10000;
    for (const double height : {-0.9, -0.4, 0.0, 0.5, 0.9}) {
        const Picture picture(modelWith(keyAt(naturalKey, Status::In, height)));
        const int top = picture.reach(naturalKey, picture.roles().within).first;
        EXPECT_LT(top, last);
        last = top;
    }
}

TEST(PaintStrip, AnOpenBandReachesTheEndOfTheGauge)
{
    StripKey key = keyAt(naturalKey, Status::In, 0.3);
    const Picture closed(modelWith(key));
    key.openAbove = true;
    const Picture open(modelWith(key));
    EXPECT_LT(open.reach(naturalKey, open.roles().band).first, closed.reach(naturalKey, open.roles().band).first);
    EXPECT_EQ(open.reach(naturalKey, open.roles().band).second, closed.reach(naturalKey, open.roles().band).second);
}

TEST(PaintStrip, BeforeAndPlannedAreMarksOfTheirOwn)
{
    StripKey key = keyAt(naturalKey, Status::In, 0);
    const QImage alone = Picture(modelWith(key)).image();
    key.before = 1.8;
    const QImage compared = Picture(modelWith(key)).image();
    key.before.reset();
    key.planned = 1.8;
    const QImage planned = Picture(modelWith(key)).image();
    EXPECT_NE(alone, compared);
    EXPECT_NE(alone, planned);
    EXPECT_NE(compared, planned);
}

TEST(PaintStrip, TheSelectedKeyIsOutlinedHeavilyAndItsNameIsOnAPlate)
{
    StripStyle style = Picture::screen();
    const StripModel model = emptyModel({}, {});
    const Picture calm(model, style);
    style.selected = naturalKey;
    const Picture picture(model, style);
    const QRectF key = picture.geometry().keyRect(naturalKey);
    const QRectF leftEdge(key.left() - 1, key.top() + 5, 2, 60);
    EXPECT_EQ(calm.count(leftEdge, calm.roles().ink), 0);
    EXPECT_GT(picture.count(leftEdge, picture.roles().ink), 60);
    const QRectF plate(key.left(), key.bottom() + 3, key.width(), 14);
    EXPECT_GT(picture.count(plate, picture.roles().ink), 150);
}

TEST(PaintStrip, ASectionBreakStandsBetweenItsNotes)
{
    const keyboard::Sections sections{{"bass", {Note(1), Note(44)}}, {"treble", {Note(45), Note(88)}}};
    const Picture picture(emptyModel({}, sections));
    const Picture without(emptyModel({}, {}));
    const double x = picture.geometry().boundaryAbove(Note(44));
    const QRectF line(x - 2, 0, 4, picture.geometry().keysRect().top());
    EXPECT_GT(picture.count(line, picture.roles().ink), 10);
    EXPECT_EQ(without.count(line, picture.roles().ink), 0);
}

TEST(PaintStrip, OnlyTheExposedPartIsTouched)
{
    QImage image(1560, 220, QImage::Format_RGB32);
    image.fill(Qt::magenta);
    const StripStyle style = Picture::screen();
    const StripModel model = modelWith(keyAt(naturalKey, Status::Out, 1.5));
    const QRectF key = geometryOf(style, image.rect(), model.compass).keyRect(naturalKey);
    QPainter painter(&image);
    painter.setClipRect(key);
    paintStrip(painter, image.rect(), model, style, key);
    painter.end();
    EXPECT_EQ(image.pixelColor(5, 100), QColor(Qt::magenta));
    EXPECT_NE(image.pixelColor(key.center().toPoint()), QColor(Qt::magenta));
}

TEST(PaintStrip, AnExposedKeyLooksAsItDoesInTheWhole)
{
    const StripModel model = modelWith(keyAt(naturalKey, Status::Out, 1.5));
    const Picture whole(model);
    QImage part = Picture(emptyModel({}, {})).image();
    const QRect key = whole.geometry().keyRect(naturalKey).adjusted(-1, -1, 1, 1).toAlignedRect();
    QPainter painter(&part);
    painter.setClipRect(key);
    paintStrip(painter, part.rect(), model, Picture::screen(), key);
    painter.end();
    EXPECT_EQ(part, whole.image());
}

} // namespace
} // namespace hammerline::keyboard_strip
