// What every chart promises, asked of every chart: a question as its title and figures as its answer, a unit on an
// axis, the tolerance drawn where there is one, print without colour, four ways out, and a click that stands on a note.
#include "app/charts/charts_of_two.h"
#include "charts/chart_pane.h"
#include "charts/study_pane.h"

#include <gtest/gtest.h>

#include <QChartView>
#include <QFile>
#include <QImage>
#include <QPainter>
#include <QRegularExpression>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>

#include <functional>

namespace hammerline::charts {
namespace {

/// Sharing nothing with the tolerance: the same without it.
StudyChartData unlimited(StudyChartData of)
{
    of.limits.clear();
    return of;
}

/// One chart, whatever it is made of.
struct AnyChart {
    const char *name;
    bool shows = true;  ///< single notes
    bool banded = true; ///< its tolerance is a band, not a line
    std::function<QString()> title{};
    std::function<QString()> answer{};
    std::function<void(QPainter &, const QRectF &, const wording::Palette &)> render{};
    std::function<bool(const QString &, const wording::Palette &)> save{};
    std::function<std::unique_ptr<QWidget>()> pane{};
    std::function<void(QPainter &, const QRectF &, const wording::Palette &)> renderUnlimited{}; ///< where it is a line
};

AnyChart chartOf(const char *name, Question question)
{
    const ChartData data = compared(question);
    AnyChart chart{.name = name};
    chart.title = [=] { return titleOf(data); };
    chart.answer = [=] { return answerOf(data); };
    chart.render = [=](QPainter &painter, const QRectF &rect, const wording::Palette &ink) {
        renderChart(painter, rect, data, ink, 12);
    };
    chart.save = [=](const QString &path, const wording::Palette &ink) { return exportChart(data, path, ink).ok(); };
    chart.pane = [=] {
        auto pane = std::make_unique<ChartPane>();
        pane->setData(data);
        return pane;
    };
    return chart;
}

AnyChart chartOf(const char *name, StudyQuestion question)
{
    const StudyChartData data = studied(question);
    AnyChart chart{.name = name,
                   .shows = question != StudyQuestion::Components,
                   .banded = question == StudyQuestion::ValuesByNoteAndPerson};
    chart.renderUnlimited = [=](QPainter &painter, const QRectF &rect, const wording::Palette &ink) {
        renderChart(painter, rect, unlimited(data), ink, 12);
    };
    chart.title = [=] { return titleOf(data); };
    chart.answer = [=] { return answerOf(data); };
    chart.render = [=](QPainter &painter, const QRectF &rect, const wording::Palette &ink) {
        renderChart(painter, rect, data, ink, 12);
    };
    chart.save = [=](const QString &path, const wording::Palette &ink) { return exportChart(data, path, ink).ok(); };
    chart.pane = [=] {
        auto pane = std::make_unique<StudyPane>();
        pane->setData(data);
        return pane;
    };
    return chart;
}

const std::vector<AnyChart> &everyChart()
{
    static const std::vector<AnyChart> charts{chartOf("along", Question::WhereAlongTheKeyboard),
                                              chartOf("spread", Question::HowSpread),
                                              chartOf("moved", Question::WhichNotesMoved),
                                              chartOf("drifted", Question::HasItDrifted),
                                              chartOf("agree", Question::DoTheyAgree),
                                              chartOf("study-values", StudyQuestion::ValuesByNoteAndPerson),
                                              chartOf("study-ranges", StudyQuestion::RangeByPerson),
                                              chartOf("study-sources", StudyQuestion::Components)};
    return charts;
}

class ChartPromises : public testing::TestWithParam<std::size_t> {
protected:
    [[nodiscard]] const AnyChart &chart() const { return everyChart()[GetParam()]; }
    using Render = std::function<void(QPainter &, const QRectF &, const wording::Palette &)>;
    [[nodiscard]] static QImage painted(const Render &render, const wording::Palette &ink)
    {
        QImage image(1200, 500, QImage::Format_RGB32);
        image.fill(ink.paper);
        QPainter painter(&image);
        render(painter, image.rect(), ink);
        return image;
    }
    [[nodiscard]] QImage painted(const wording::Palette &ink) const { return painted(chart().render, ink); }
    [[nodiscard]] QByteArray saved(const char *suffix, wording::Theme theme = wording::Theme::Light) const
    {
        const QString path = folder.filePath(QString("chart.%1").arg(suffix));
        EXPECT_TRUE(chart().save(path, wording::paletteOf(theme)));
        QFile file(path);
        EXPECT_TRUE(file.open(QIODevice::ReadOnly));
        return file.readAll();
    }
    QTemporaryDir folder;
};

TEST_P(ChartPromises, ItsTitleIsAQuestionAndTheAnswerHasAFigure)
{
    EXPECT_TRUE(chart().title().endsWith('?')) << chart().title().toStdString();
    EXPECT_TRUE(chart().answer().contains(QRegularExpression("\\d"))) << chart().answer().toStdString();
}

TEST_P(ChartPromises, TheUnitStandsOnAnAxis)
{
    const QString svg = QString::fromUtf8(saved("svg"));
    EXPECT_TRUE(svg.contains("(mm)")) << "no axis names its unit";
}

int countOf(const QColor &colour, const QImage &image)
{
    int count = 0;
    for (int y = 0; y < image.height(); ++y)
        for (int x = 0; x < image.width(); ++x)
            count += image.pixelColor(x, y) == colour ? 1 : 0;
    return count;
}

TEST_P(ChartPromises, TheToleranceIsDrawn)
{
    const wording::Palette &ink = wording::paletteOf(wording::Theme::Light);
    if (chart().banded) {
        EXPECT_GT(countOf(ink.band, painted(ink)), 200);
    }
    if (chart().renderUnlimited) {
        EXPECT_NE(painted(ink), painted(chart().renderUnlimited, ink));
    }
}

TEST_P(ChartPromises, TheToleranceIsNamedInTheLegendAndStandsInTheFigures)
{
    const QByteArray svg = saved("svg"), csv = saved("csv");
    const QString words = QString::fromUtf8(svg);
    EXPECT_TRUE(words.contains("limits") || words.contains("tolerance") || words.contains("inside")) << chart().name;
    if (QByteArray(chart().name) == "study-values") {
        EXPECT_TRUE(csv.startsWith("note,person,take,value (mm),low (mm),target (mm),high (mm)\n"))
            << csv.toStdString();
        EXPECT_TRUE(csv.contains(",2.7,3.1,3.5\n")) << csv.toStdString();
    }
    if (QByteArray(chart().name) == "study-sources") {
        EXPECT_TRUE(csv.contains("half_tolerance,mm,0.4,,\n")) << csv.toStdString();
    }
}

TEST_P(ChartPromises, TheAnswerOfAStudyIsHeldAgainstTheTolerance)
{
    if (chart().renderUnlimited) {
        EXPECT_TRUE(chart().answer().contains("tolerance") && chart().answer().contains('%'))
            << chart().answer().toStdString();
    }
}

TEST_P(ChartPromises, InPrintNothingIsToldByColour)
{
    const QImage image = painted(wording::printPalette());
    for (int y = 0; y < image.height(); ++y)
        for (int x = 0; x < image.width(); ++x)
            ASSERT_EQ(image.pixelColor(x, y).hsvSaturation(), 0) << x << ',' << y;
}

/// Without what tells one run from another.
QByteArray undated(QByteArray pdf)
{
    return QString::fromLatin1(pdf)
        .remove(QRegularExpression("/CreationDate \\([^)]*\\)"))
        .remove(QRegularExpression("/ID \\[[^\\]]*\\]"))
        .toLatin1();
}

TEST_P(ChartPromises, APageIsBlackAloneWhateverTheScreenShows)
{
    const QByteArray light = undated(saved("pdf")), dark = undated(saved("pdf", wording::Theme::Dark));
    EXPECT_TRUE(light.startsWith("%PDF-"));
    EXPECT_EQ(light, dark);
}

TEST_P(ChartPromises, APictureIsNeverDarkPaper)
{
    const QImage image = QImage::fromData(saved("png", wording::Theme::Dark), "PNG");
    ASSERT_FALSE(image.isNull());
    EXPECT_EQ(image.pixelColor(1, 1), wording::paletteOf(wording::Theme::Light).paper);
    EXPECT_EQ(saved("svg"), saved("svg", wording::Theme::Dark));
}

TEST_P(ChartPromises, ADrawingIsVectorsAndItsWordsAreText)
{
    const QByteArray svg = saved("svg");
    EXPECT_TRUE(svg.contains("<title>" + chart().title().toHtmlEscaped().toUtf8())) << chart().title().toStdString();
    EXPECT_TRUE(svg.contains("<text"));
    EXPECT_FALSE(svg.contains("<image"));
}

TEST_P(ChartPromises, TheFiguresHaveAHeadAndALineForEachMark)
{
    const QList<QByteArray> lines = saved("csv").split('\n');
    ASSERT_GT(lines.size(), 4);
    const auto columns = lines.front().count(',');
    EXPECT_GE(columns, 3);
    EXPECT_EQ(lines[1].count(','), columns);
}

TEST_P(ChartPromises, AClickOnAMarkStandsOnItsNote)
{
    if (!chart().shows)
        return;
    const auto pane = chart().pane();
    pane->resize(900, 480);
    pane->show();
    EXPECT_TRUE(QTest::qWaitForWindowExposed(pane.get()));
    QCoreApplication::processEvents();
    QSignalSpy chosen(pane.get(), SIGNAL(noteChosen(hammerline::keyboard::Note)));
    ASSERT_TRUE(chosen.isValid());
    auto *view = pane->findChild<QChartView *>();
    QWidget *target = view ? view->viewport() : pane.get();
    for (int y = 4; y < target->height() && chosen.isEmpty(); y += 5)
        for (int x = 4; x < target->width() && chosen.isEmpty(); x += 5)
            QTest::mouseClick(target, Qt::LeftButton, {}, {x, y});
    EXPECT_FALSE(chosen.isEmpty());
}

TEST_P(ChartPromises, AScreenReaderIsToldTheQuestionAndTheAnswer)
{
    const auto pane = chart().pane();
    auto *view = pane->findChild<QChartView *>();
    const QWidget *told = view ? static_cast<QWidget *>(view) : pane.get();
    EXPECT_EQ(told->accessibleName(), chart().title());
    EXPECT_EQ(told->accessibleDescription(), chart().answer());
}

INSTANTIATE_TEST_SUITE_P(EveryChart, ChartPromises, testing::Range<std::size_t>(0, 8), [](const auto &chosen) {
    return QString(everyChart()[chosen.param].name).replace('-', '_').toStdString();
});

} // namespace
} // namespace hammerline::charts
