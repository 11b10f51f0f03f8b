#include "keyboard_strip/keyboard_strip.h"

#include "support/lively_pass.h"

#include <gtest/gtest.h>

#include <QHelpEvent>
#include <QPaintEvent>
#include <QSignalSpy>
#include <QTest>
#include <QToolTip>

namespace hammerline::keyboard_strip {
namespace {

using keyboard::Note;

/// Keeps the regions it was asked to paint.
class WatchedStrip : public KeyboardStrip {
public:
    QRegion painted;

protected:
    void paintEvent(QPaintEvent *event) override
    {
        painted += event->region();
        KeyboardStrip::paintEvent(event);
    }
};

class StripTest : public testing::Test {
protected:
    StripTest()
    {
        StripSource source;
        source.now = &judgement;
        source.quantity = catalogue::Quantity::LetOff;
        source.form.locale = QLocale::c();
        strip.setModel(modelOf(source));
        strip.resize(1366, strip.heightForWidth(1366));
        strip.select(Note(40));
        strip.show();
        EXPECT_TRUE(QTest::qWaitForWindowExposed(&strip));
        QCoreApplication::processEvents();
        strip.painted = {};
    }

    [[nodiscard]] QPoint gaugeOf(Note note) const
    {
        const QRect key = strip.keyRect(note);
        return {key.center().x(), key.bottom() - key.height() / 5};
    }

    tolerance::Judgement judgement = support::livelyJudgement(1);
    WatchedStrip strip;
    QSignalSpy chosen{&strip, &KeyboardStrip::noteChosen};
    QSignalSpy told{&strip, &KeyboardStrip::noteTold};
};

TEST_F(StripTest, ArrowsGoByNoteAndOctaveHomeAndEndToTheEnds)
{
    const std::vector<std::pair<Qt::Key, int>> walk{{Qt::Key_Right, 41}, {Qt::Key_Left, 40}, {Qt::Key_Up, 52},
                                                    {Qt::Key_Down, 40},  {Qt::Key_Home, 1},  {Qt::Key_End, 88}};
    for (const auto &[key, number] : walk) {
        QTest::keyClick(&strip, key);
        EXPECT_EQ(strip.selected(), Note(number));
        EXPECT_EQ(chosen.takeLast().at(0).value<Note>(), Note(number));
    }
}

TEST_F(StripTest, BeyondTheEndsNothingHappens)
{
    strip.select(Note(1));
    QTest::keyClick(&strip, Qt::Key_Left);
    QTest::keyClick(&strip, Qt::Key_Down);
    QTest::keyClick(&strip, Qt::Key_Home);
    EXPECT_EQ(strip.selected(), Note(1));
    EXPECT_TRUE(chosen.isEmpty());
}

TEST_F(StripTest, AKeyOfTheComputerTellsTheStoryOfTheNoteItLeadsTo)
{
    QTest::keyClick(&strip, Qt::Key_Right);
    ASSERT_EQ(told.size(), 1);
    EXPECT_EQ(told.at(0).at(0).toString(), strip.model().find(Note(41))->story);
}

TEST_F(StripTest, AClickChoosesTheKeyUnderIt)
{
    QTest::mouseClick(&strip, Qt::LeftButton, {}, gaugeOf(Note(49)));
    EXPECT_EQ(strip.selected(), Note(49));
    QTest::mouseClick(&strip, Qt::LeftButton, {}, gaugeOf(Note(50)));
    EXPECT_EQ(chosen.size(), 2);
    EXPECT_EQ(chosen.at(1).at(0).value<Note>(), Note(50));
}

TEST_F(StripTest, SelectingFromOutsideTellsNobody)
{
    strip.select(Note(60));
    EXPECT_EQ(strip.selected(), Note(60));
    strip.select(Note(120));
    EXPECT_EQ(strip.selected(), Note(60));
    EXPECT_TRUE(chosen.isEmpty());
    EXPECT_TRUE(told.isEmpty());
}

TEST_F(StripTest, PointingTellsAndLeavingFallsSilent)
{
    QTest::mouseMove(&strip, gaugeOf(Note(49)));
    ASSERT_FALSE(told.isEmpty());
    EXPECT_EQ(told.last().at(0).toString(), strip.model().find(Note(49))->story);
    QEvent leave(QEvent::Leave);
    QCoreApplication::sendEvent(&strip, &leave);
    EXPECT_TRUE(told.last().at(0).toString().isEmpty());
    EXPECT_EQ(strip.selected(), Note(40));
}

TEST_F(StripTest, TheToolTipIsTheStoryOfTheKey)
{
    const QPoint place = gaugeOf(Note(17));
    QHelpEvent help(QEvent::ToolTip, place, strip.mapToGlobal(place));
    QCoreApplication::sendEvent(&strip, &help);
    EXPECT_EQ(QToolTip::text(), strip.model().find(Note(17))->story);
    QToolTip::hideText();
}

TEST_F(StripTest, AChangedKeyRepaintsOnlyItself)
{
    StripKey key = *strip.model().find(Note(60));
    key.now = 1.9;
    strip.setKey(key);
    QCoreApplication::processEvents();
    ASSERT_FALSE(strip.painted.isEmpty());
    EXPECT_TRUE(strip.keyRect(Note(60)).contains(strip.painted.boundingRect()));
    EXPECT_EQ(strip.model().find(Note(60))->now, 1.9);
}

TEST_F(StripTest, AKeyThatIsNotOnTheKeyboardIsIgnored)
{
    StripKey key;
    key.note = Note(100);
    strip.setKey(key);
    EXPECT_EQ(strip.model().keys.size(), 88U);
}

TEST_F(StripTest, AMovedSelectionLeavesNoTrace)
{
    strip.select(Note(61));
    QCoreApplication::processEvents();
    const QImage moved = strip.grab().toImage();
    KeyboardStrip fresh;
    fresh.setModel(strip.model());
    fresh.resize(strip.size());
    fresh.select(Note(61));
    EXPECT_EQ(moved.copy(strip.keyRect(Note(40))), fresh.grab().toImage().copy(strip.keyRect(Note(40))));
}

TEST_F(StripTest, AShorterKeyboardMovesASelectionItHasNotGot)
{
    strip.select(Note(88));
    strip.setModel(emptyModel({Note(1), Note(85)}, {}));
    EXPECT_EQ(strip.selected(), Note(1));
    strip.select(Note(20));
    strip.setModel(emptyModel({}, {}));
    EXPECT_EQ(strip.selected(), Note(20));
}

TEST_F(StripTest, ControlAndArrowBelongToSomebodyElse)
{
    QTest::keyClick(&strip, Qt::Key_Right, Qt::ControlModifier);
    EXPECT_EQ(strip.selected(), Note(40));
}

TEST_F(StripTest, TheLegendAddsHeight)
{
    const int without = strip.heightForWidth(1366);
    strip.setLegendShown(true);
    EXPECT_GT(strip.heightForWidth(1366), without);
    EXPECT_GT(strip.heightForWidth(700), strip.minimumSizeHint().height() / 2);
}

} // namespace
} // namespace hammerline::keyboard_strip
