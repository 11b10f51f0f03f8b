#include "charts/study_chart.h"

#include "charts/inside/study_frame.h"
#include "charts/study_pane.h"
#include "exchange/trials_csv.h"

#include <QFontInfo>
#include <QImage>
#include <QPainter>
#include <QTest>
#include <gtest/gtest.h>

#include <set>

namespace hammerline::charts {
namespace {

/// Two people, two notes, two takes; the second person reads 0.2 mm longer.
StudyChartData data(StudyQuestion question, const std::string &second = "Ben")
{
    StudyChartData of{.question = question};
    for (const int note : {10, 49})
        for (const int take : {1, 2})
            for (const std::string &person : {std::string("Ada"), second})
                of.trials.push_back({keyboard::Note(note), person, take,
                                     units::Length::millimetres(3 + note / 100.0 + 0.02 * take * (note == 49 ? 1 : 2) +
                                                                (person == "Ada" ? 0 : 0.2))});
    of.study = analysis::gaugeStudy(of.trials).value();
    of.intervals = analysis::intervalsOf(of.study);
    of.form.locale = QLocale::c();
    return of;
}

QImage painted(const StudyChartData &of, const wording::Palette &palette)
{
    QImage image(900, 500, QImage::Format_RGB32);
    image.fill(palette.paper);
    QPainter painter(&image);
    renderChart(painter, image.rect(), of, palette, 12);
    return image;
}

constexpr StudyQuestion everyQuestion[] = {StudyQuestion::ValuesByNoteAndPerson, StudyQuestion::RangeByPerson,
                                           StudyQuestion::Components};

TEST(StudyChart, EachIsTitledWithAQuestionAndAnswersIt)
{
    std::set<QString> titles;
    for (const StudyQuestion question : everyQuestion) {
        EXPECT_TRUE(titleOf(data(question)).endsWith('?'));
        titles.insert(titleOf(data(question)));
    }
    EXPECT_EQ(titles.size(), 3u);
    EXPECT_EQ(answerOf(data(StudyQuestion::ValuesByNoteAndPerson)),
              "Farthest apart are the values of F♯1: 0.24 mm from the lowest to the highest.");
    EXPECT_EQ(answerOf(data(StudyQuestion::RangeByPerson)), "Mean range: Ada 0.030 mm, Ben 0.030 mm.");
}

TEST(StudyChart, TheFiguresOfTheValuesAreTheTrialsTheCommandTakes)
{
    const auto of = data(StudyQuestion::ValuesByNoteAndPerson);
    const auto read = exchange::readTrialsCsv(chartCsv(of), {});
    ASSERT_TRUE(read.ok()) << read.fault().text();
    EXPECT_EQ(analysis::gaugeStudy(read.value()).value().expandedUncertainty, of.study.expandedUncertainty);
}

TEST(StudyChart, ANameThatASpreadsheetWouldRunIsWrittenWithAnApostrophe)
{
    for (const StudyQuestion question : {StudyQuestion::ValuesByNoteAndPerson, StudyQuestion::RangeByPerson}) {
        const auto csv = chartCsv(data(question, "=1+1, \"really\""));
        EXPECT_NE(csv.find("\"'=1+1, \"\"really\"\"\""), std::string::npos) << csv;
    }
    EXPECT_TRUE(
        exchange::readTrialsCsv(chartCsv(data(StudyQuestion::ValuesByNoteAndPerson, "=1+1, \"really\"")), {}).ok());
}

TEST(StudyChart, TheFiguresOfTheComponentsCarryTheirIntervals)
{
    const auto csv = chartCsv(data(StudyQuestion::Components));
    EXPECT_TRUE(csv.starts_with("component,unit,sd,low,high\nrepeatability,mm,"));
    EXPECT_EQ(std::ranges::count(csv, '\n'), 6);
}

TEST(StudyChart, InPrintThereIsNoColour)
{
    for (const StudyQuestion question : everyQuestion) {
        const QImage image = painted(data(question), wording::printPalette());
        int inked = 0;
        for (int y = 0; y < image.height(); ++y)
            for (int x = 0; x < image.width(); ++x) {
                const QColor pixel = image.pixelColor(x, y);
                ASSERT_TRUE(pixel.red() == pixel.green() && pixel.green() == pixel.blue());
                inked += pixel.red() < 128 ? 1 : 0;
            }
        EXPECT_GT(inked, 500);
    }
}

TEST(StudyChart, EveryTrialAndEveryRangeSaysWhatItIs)
{
    QImage image(900, 500, QImage::Format_RGB32);
    QPainter painter(&image);
    const auto render = [&](StudyQuestion question) {
        return renderChart(painter, image.rect(), data(question), wording::printPalette(), 12);
    };
    const auto values = render(StudyQuestion::ValuesByNoteAndPerson);
    ASSERT_EQ(values.size(), 8u);
    EXPECT_EQ(values[0].note, keyboard::Note(10));
    EXPECT_EQ(values[0].story, "F♯1, Ada: 3.14 mm");
    EXPECT_EQ(render(StudyQuestion::RangeByPerson).size(), 4u);
    EXPECT_TRUE(render(StudyQuestion::Components).empty());
}

TEST(StudyPane, AClickOnAMarkStandsOnItsNote)
{
    StudyPane pane;
    pane.resize(900, 500);
    pane.setData(data(StudyQuestion::ValuesByNoteAndPerson));
    const QPixmap shown = pane.grab();
    QImage image(900, 500, QImage::Format_RGB32);
    QPainter painter(&image);
    const int pixelSize = QFontInfo(wording::font(wording::TextSize::Small)).pixelSize();
    const auto placed = renderChart(painter, image.rect(), pane.data(), wording::printPalette(), pixelSize);
    std::vector<int> chosen;
    QObject::connect(&pane, &StudyPane::noteChosen, &pane,
                     [&](keyboard::Note note) { chosen.push_back(note.number()); });
    QTest::mouseClick(&pane, Qt::LeftButton, {}, placed.front().area.center().toPoint());
    QTest::mouseClick(&pane, Qt::LeftButton, {}, placed.back().area.center().toPoint());
    QTest::mouseClick(&pane, Qt::LeftButton, {}, QPoint(2, 2));
    EXPECT_EQ(chosen, (std::vector<int>{10, 49}));
}

TEST(StudyChart, EightPeopleHaveShapesOfTheirOwn)
{
    const ChartLook look{wording::printPalette(), 12};
    std::set<QByteArray> shapes;
    for (std::size_t person = 0; person < 8; ++person) {
        QImage image(40, 40, QImage::Format_Grayscale8);
        image.fill(Qt::white);
        QPainter painter(&image);
        drawPerson(painter, person, {20, 20}, 24, look);
        painter.end();
        shapes.insert(QByteArray(reinterpret_cast<const char *>(image.constBits()), image.sizeInBytes()));
    }
    EXPECT_EQ(shapes.size(), 8u);
}

StudyChartData within(StudyChartData of, double halfWidth)
{
    for (const int note : {10, 49})
        of.limits[keyboard::Note(note)] = {.low = units::Length::millimetres(3.2 + note / 100.0 - halfWidth),
                                           .target = units::Length::millimetres(3.2 + note / 100.0),
                                           .high = units::Length::millimetres(3.2 + note / 100.0 + halfWidth)};
    return of;
}

TEST(StudyChart, TellsWhatTheSpreadTakesOfTheTolerance)
{
    EXPECT_EQ(answerOf(within(data(StudyQuestion::ValuesByNoteAndPerson), 0.4)),
              "Farthest apart are the values of F♯1: 0.24 mm from the lowest to the highest. That is 30 % of its "
              "tolerance, 0.80 mm wide.");
    EXPECT_EQ(answerOf(within(data(StudyQuestion::RangeByPerson), 0.3)),
              "Mean range: Ada 0.030 mm, Ben 0.030 mm. The widest is 5 % of the narrowest tolerance, 0.60 mm.");
    const auto sources = within(data(StudyQuestion::Components), 0.4);
    const QString part = QString::number(100 * sources.study.expandedUncertainty / 0.4, 'f', 0);
    EXPECT_TRUE(answerOf(sources).endsWith("Twice the standard deviation of gauge and people is " + part +
                                           " % of half the narrowest tolerance, 0.40 mm."))
        << answerOf(sources).toStdString();
}

TEST(StudyChart, TheFiguresOfValuesWithinLimitsAreRefusedByTheCommandThatSaysWhatToLeaveOut)
{
    const auto csv = chartCsv(within(data(StudyQuestion::ValuesByNoteAndPerson), 0.4));
    EXPECT_TRUE(csv.starts_with("note,person,take,value (mm),low (mm),target (mm),high (mm)\n"
                                "F#1,Ada,1,3.14,2.9,3.3,3.7\n"))
        << csv;
    const auto read = exchange::readTrialsCsv(csv, {});
    ASSERT_FALSE(read.ok());
    EXPECT_NE(read.fault().text().find("leaving them out"), std::string::npos) << read.fault().text();
}

TEST(StudyChart, TheFiguresOfRangesAreTheRangesThatAreDrawn)
{
    const auto csv = chartCsv(within(data(StudyQuestion::RangeByPerson), 0.3));
    EXPECT_TRUE(csv.starts_with("note,person,takes,lowest (mm),highest (mm),range (mm),narrowest_tolerance (mm)\n"
                                "F#1,Ada,2,3.14,3.18,0.04,0.6\n"))
        << csv;
    EXPECT_EQ(std::ranges::count(csv, '\n'), 5);
}

TEST(StudyChart, ALimitOnOneSideIsToldInWords)
{
    auto of = data(StudyQuestion::ValuesByNoteAndPerson);
    of.limits[keyboard::Note(10)] = {.target = units::Length::millimetres(3.2), .high = units::Length::millimetres(4)};
    EXPECT_TRUE(answerOf(of).endsWith("Its set: at most 4.00 mm, target 3.20.")) << answerOf(of).toStdString();
    of.question = StudyQuestion::RangeByPerson;
    EXPECT_FALSE(answerOf(of).contains("tolerance")) << "nothing is between two limits";
}

TEST(StudyChart, ATrialSaysItsLimits)
{
    QImage image(900, 500, QImage::Format_RGB32);
    QPainter painter(&image);
    const auto placed = renderChart(painter, image.rect(), within(data(StudyQuestion::ValuesByNoteAndPerson), 0.4),
                                    wording::printPalette(), 12);
    EXPECT_EQ(placed[0].story, "F♯1, Ada: 3.14 mm. Set: 2.90 to 3.70 mm, target 3.30.");
}

TEST(StudyChart, AToleranceFarBeyondTheSpreadLeavesTheScaleWithoutSqueezingTheMarks)
{
    for (const StudyQuestion question : everyQuestion) {
        const QImage far = painted(within(data(question), 30), wording::printPalette());
        EXPECT_NE(painted(within(data(question), 0.04), wording::printPalette()), far);
        EXPECT_NE(painted(data(question), wording::printPalette()), far) << "it is told at the edge";
    }
}

TEST(StudyChart, AnIntervalFarOutLeavesTheScaleWithoutSqueezingTheBars)
{
    auto of = data(StudyQuestion::Components);
    const QImage usual = painted(of, wording::printPalette());
    of.intervals.reproducibility.high = 1000 * of.study.sd.total;
    const QImage far = painted(of, wording::printPalette());
    of.intervals.reproducibility.high = 2000 * of.study.sd.total;
    EXPECT_EQ(painted(of, wording::printPalette()), far);
    EXPECT_FALSE(usual.isNull());
}

} // namespace
} // namespace hammerline::charts
