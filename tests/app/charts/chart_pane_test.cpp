#include "charts/chart_pane.h"

#include "charts/inside/mark_layer.h"
#include "support/lively_pass.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QChart>
#include <QChartView>
#include <QGraphicsItem>
#include <QLineSeries>
#include <QSignalSpy>
#include <QTest>

namespace hammerline::charts {
namespace {

using keyboard::Note;

class PaneTest : public testing::Test {
protected:
    PaneTest()
    {
        data.now = support::livelyJudgement(1);
        data.form.locale = QLocale::c();
        pane.resize(1200, 480);
        pane.setData(data);
        pane.show();
        EXPECT_TRUE(QTest::qWaitForWindowExposed(&pane));
        QCoreApplication::processEvents();
    }

    [[nodiscard]] QChartView *view() const { return pane.findChild<QChartView *>(); }
    /// Where the reading of a note stands on the view.
    [[nodiscard]] QPoint placeOf(Note note) const
    {
        const double value = data.now.find(data.quantity, note)->value->inDisplay();
        const QPointF place =
            view()->chart()->mapToPosition({double(note.number()), value}, view()->chart()->series().constLast());
        return view()->mapFromScene(view()->chart()->mapToScene(place));
    }

    ChartData data;
    ChartPane pane;
};

TEST_F(PaneTest, ClickingAMarkChoosesItsNote)
{
    QSignalSpy chosen(&pane, &ChartPane::noteChosen);
    QTest::mouseClick(view()->viewport(), Qt::LeftButton, {}, placeOf(Note(17)));
    ASSERT_EQ(chosen.size(), 1);
    EXPECT_EQ(chosen.at(0).at(0).value<Note>(), Note(17));
}

TEST_F(PaneTest, ClickingTheEmptyPaperChoosesNothing)
{
    QSignalSpy chosen(&pane, &ChartPane::noteChosen);
    QTest::mouseClick(view()->viewport(), Qt::LeftButton, {}, QPoint(3, 3));
    EXPECT_TRUE(chosen.isEmpty());
}

TEST_F(PaneTest, PointingAtAMarkTellsItsStory)
{
    QSignalSpy told(&pane, &ChartPane::noteTold);
    QTest::mouseMove(view()->viewport(), placeOf(Note(20)));
    QTest::mouseMove(view()->viewport(), placeOf(Note(17)));
    QCoreApplication::processEvents();
    ASSERT_FALSE(told.isEmpty());
    EXPECT_TRUE(told.last().at(0).toString().startsWith(QString::fromUtf8("C\u266f2, Let-off")));
}

TEST_F(PaneTest, TheSelectedNoteWearsARing)
{
    const QImage calm = view()->grab().toImage();
    pane.select(Note(17));
    QCoreApplication::processEvents();
    EXPECT_NE(calm, view()->grab().toImage());
    pane.setData(data);
    QCoreApplication::processEvents();
    EXPECT_NE(calm, view()->grab().toImage());
}

TEST_F(PaneTest, QuestionAndAnswerAreThereForTheScreenReader)
{
    EXPECT_EQ(view()->accessibleName(), titleOf(data));
    EXPECT_EQ(view()->accessibleDescription(), answerOf(data));
}

TEST_F(PaneTest, ANameThatItsAxisHasNoRoomForIsWholeInTheTooltip)
{
    data.before = data.now;
    data.question = Question::DoTheyAgree;
    data.nowPerson = QString("Ada Example ").repeated(20), data.beforePerson = "Ben";
    pane.setData(data);
    QCoreApplication::processEvents();
    const auto tells = [this](const QPoint &place, const QString &text) {
        QTest::mouseMove(view()->viewport(), place + QPoint(1, 1));
        QTest::mouseMove(view()->viewport(), place);
        QCoreApplication::processEvents();
        for (const QGraphicsItem *item : view()->scene()->items())
            if (item->toolTip().contains(text))
                return true;
        return false;
    };
    EXPECT_TRUE(tells({12, 260}, data.nowPerson + " less Ben (mm)"));
    EXPECT_TRUE(tells({600, 10}, "Do Ben and " + data.nowPerson + " agree on let-off?"));
}

TEST_F(PaneTest, AnotherThemeRedrawsTheChart)
{
    auto &application = *qobject_cast<QApplication *>(QCoreApplication::instance());
    wording::applyTheme(application, wording::Theme::Dark);
    QCoreApplication::processEvents();
    EXPECT_EQ(view()->chart()->backgroundBrush().color(), wording::paletteOf(wording::Theme::Dark).paper);
    wording::applyTheme(application, wording::Theme::Light);
}

} // namespace
} // namespace hammerline::charts
