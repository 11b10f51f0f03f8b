// The charts that hold passes against each other. With HAMMERLINE_GALLERY set to a folder, the pictures are kept there.
#include "charts/chart_pane.h"

#include "app/charts/painted_chart.h"
#include "support/lively_pass.h"

#include <gtest/gtest.h>

#include <QChart>
#include <QChartView>
#include <QSignalSpy>
#include <QTest>

#include <algorithm>
#include <array>

namespace hammerline::charts {
namespace {

using catalogue::Quantity;
using keyboard::Note;
using support::mm;

constexpr std::array questions{Question::WhichNotesMoved, Question::HasItDrifted, Question::DoTheyAgree};

readings::Pass passOn(int month, double humidity)
{
    readings::Pass pass;
    pass.id = month;
    pass.purpose = month == 0 ? readings::Purpose::AsLeft : readings::Purpose::Recheck;
    pass.began = readings::Instant(std::chrono::hours(24 * (20'000 + 30 * month)));
    pass.person = "Ada";
    pass.climate = {20.5, humidity};
    pass.gauge.expandedUncertainty = units::Length::millimetres(0.05);
    return pass;
}

/// The lively pass with every let-off larger by so much.
readings::ValueTable shifted(double spread, double by)
{
    readings::ValueTable values;
    const auto lively = support::livelyValues(spread);
    for (const auto &[note, value] : lively.column(Quantity::LetOff))
        values.set(Quantity::LetOff, note, {value.value + mm(by + 0.02 * (note.number() % 5)), 1});
    return values;
}

ChartData compared(Question question)
{
    ChartData data;
    data.question = question;
    data.sections = support::livelySections();
    data.now = support::livelyJudgement(0.45);
    data.before = support::livelyJudgement(1);
    data.form.locale = QLocale::c();
    data.nowName = "As left";
    data.beforeName = "As found";
    data.subject = "Upright of the demo workshop";
    data.toldApart = 0.14;
    const auto set = support::livelySet();
    data.trends = analysis::trendsOf({{passOn(0, 48), shifted(0.3, 0)},
                                      {passOn(7, 62), shifted(0.3, 0.11)},
                                      {passOn(13, 41), shifted(0.3, 0.17)},
                                      {passOn(26, 44), shifted(0.3, 0.4)}},
                                     data.sections, &set);
    std::erase_if(data.trends, [](const auto &trend) { return trend.quantity != Quantity::LetOff; });
    return data;
}

void keep(const QImage &image, Question question, const char *way)
{
    const QString folder = qEnvironmentVariable("HAMMERLINE_GALLERY");
    EXPECT_TRUE(folder.isEmpty() ||
                image.save(QStringLiteral("%1/change-%2-%3.png").arg(folder).arg(static_cast<int>(question)).arg(way)));
}

TEST(ChangeCharts, FillTheirRectangleWithTheToleranceDrawn)
{
    for (const Question question : questions)
        for (const auto theme : {wording::Theme::Light, wording::Theme::Dark}) {
            const auto &palette = wording::paletteOf(theme);
            const QImage image = painted(compared(question), palette);
            EXPECT_EQ(count(image, Qt::magenta), 0);
            EXPECT_GT(count(image, palette.band), 500);
            keep(image, question, theme == wording::Theme::Light ? "light" : "dark");
        }
}

TEST(ChangeCharts, PrintUsesNoColour)
{
    for (const Question question : questions) {
        const QImage image = painted(compared(question), wording::printPalette());
        for (int y = 0; y < image.height(); ++y)
            for (int x = 0; x < image.width(); ++x)
                ASSERT_EQ(image.pixelColor(x, y).hsvSaturation(), 0) << x << ',' << y;
        keep(image, question, "print");
    }
}

TEST(ChangeCharts, ArePaintedWhereThereIsNothingToCompareAndSaySo)
{
    for (const Question question : questions) {
        ChartData data;
        data.question = question;
        EXPECT_EQ(count(painted(data, wording::paletteOf(wording::Theme::Light)), Qt::magenta), 0);
        EXPECT_FALSE(answerOf(data).isEmpty());
    }
    ChartData data;
    data.question = Question::HasItDrifted;
    EXPECT_EQ(answerOf(data), "Two passes since it was left, with the same notes, are needed");
    data.question = Question::DoTheyAgree;
    EXPECT_EQ(answerOf(data), "There are no readings of another person to hold against these");
}

TEST(ChangeCharts, TheTitleIsTheQuestionAndTheAnswerHasTheFiguresOfCompare)
{
    ChartData data = compared(Question::WhichNotesMoved);
    EXPECT_EQ(titleOf(data), "Which notes moved in let-off?");
    const auto before = support::livelyValues(1), after = support::livelyValues(0.45);
    const auto same = analysis::compare(before, after, nullptr).at(Quantity::LetOff);
    const QString mean = QString::number(std::abs(same.meanChange), 'f', 2);
    EXPECT_TRUE(answerOf(data).contains(mean + " mm on the mean")) << answerOf(data).toStdString();
    data.question = Question::DoTheyAgree;
    EXPECT_EQ(titleOf(data), "Do the two passes agree on let-off?");
    EXPECT_TRUE(answerOf(data).startsWith("As left less As found: "));
    data.beforePerson = "Ada";
    data.nowPerson = "Ben";
    EXPECT_EQ(titleOf(data), "Do Ada and Ben agree on let-off?");
    EXPECT_TRUE(answerOf(data).contains(QString::number(std::abs(*same.agreementLow), 'f', 2)));
}

TEST(ChangeCharts, AgreementOverALongTimeSaysThatDriftIsInIt)
{
    ChartData data = compared(Question::DoTheyAgree);
    EXPECT_FALSE(answerOf(data).contains("read on")) << "nobody said when";
    data.beforeBegan = passOn(0, 48).began;
    data.nowBegan = *data.beforeBegan + std::chrono::hours(50);
    EXPECT_TRUE(answerOf(data).endsWith("; read on 2024-10-04 and 2024-10-06")) << answerOf(data).toStdString();
    data.nowBegan = passOn(18, 48).began;
    EXPECT_TRUE(answerOf(data).endsWith("540 days lie between, so what drifted since is in it"))
        << answerOf(data).toStdString();
}

TEST(ChangeCharts, DriftIsClaimedOnlyWhereItsIntervalLeavesNoneOut)
{
    ChartData data = compared(Question::HasItDrifted);
    EXPECT_EQ(titleOf(data), "Has let-off drifted?");
    EXPECT_TRUE(answerOf(data).startsWith("Yes: +0.1")) << answerOf(data).toStdString();
    data.trends = analysis::trendsOf(
        {{passOn(0, 48), shifted(0.3, 0)}, {passOn(6, 48), shifted(0.3, 0.2)}, {passOn(12, 48), shifted(0.3, 0)}}, {},
        nullptr);
    EXPECT_TRUE(answerOf(data).startsWith("No drift can be claimed"));
    data.trends =
        analysis::trendsOf({{passOn(0, 48), shifted(0.3, 0)}, {passOn(6, 48), shifted(0.3, 0.2)}}, {}, nullptr);
    EXPECT_TRUE(answerOf(data).startsWith("Two passes tell a change, +0.20 mm"));
}

TEST(ChangeCharts, TheFiguresAreExportedExactlyAndNoNameStartsAFormula)
{
    ChartData data = compared(Question::DoTheyAgree);
    const std::string csv = chartCsv(data);
    EXPECT_TRUE(
        csv.starts_with("note,name,quantity,unit,before,after,change,mean,low,target,high,status\n1,A0,let_off,mm,"));
    EXPECT_EQ(std::count(csv.begin(), csv.end(), '\n'), 1 + 85);
    data.question = Question::HasItDrifted;
    data.trends.front().section = "=1+1,\"a\"";
    const std::string trends = chartCsv(data);
    EXPECT_NE(trends.find("\nlet_off,\"'=1+1,\"\"a\"\"\",0,as-left,2024-"), std::string::npos) << trends;
    EXPECT_NE(trends.find(",85,mm,"), std::string::npos) << trends;
    EXPECT_EQ(std::count(trends.begin(), trends.end(), '\n'), 1 + 4 * 4);
}

TEST(ChangeCharts, ClickingAMarkChoosesItsNote)
{
    ChartPane pane;
    pane.resize(1200, 480);
    pane.setData(compared(Question::WhichNotesMoved));
    pane.show();
    ASSERT_TRUE(QTest::qWaitForWindowExposed(&pane));
    QCoreApplication::processEvents();
    auto *view = pane.findChild<QChartView *>();
    const auto &data = pane.data();
    const auto after = data.now.find(Quantity::LetOff, Note(20)),
               before = data.before->find(Quantity::LetOff, Note(20));
    const double change = (*after->value - *before->value).inDisplay();
    const QPointF place = view->chart()->mapToPosition({20, change}, view->chart()->series().constLast());
    QSignalSpy chosen(&pane, &ChartPane::noteChosen);
    QTest::mouseClick(view->viewport(), Qt::LeftButton, {}, view->mapFromScene(view->chart()->mapToScene(place)));
    ASSERT_EQ(chosen.size(), 1);
    EXPECT_EQ(chosen.at(0).at(0).value<Note>(), Note(20));
}

} // namespace
} // namespace hammerline::charts
