// Every kind of chart with long names, at the smallest sizes it is shown and saved in: no word of it is cut, only names
// that people gave may be elided, and the unit stands on its axis.
#include "app/charts/charts_of_two.h"
#include "charts/bars.h"
#include "charts/inside/axis_title.h"
#include "support/drawn_words.h"
#include "wording/wording.h"

#include <gtest/gtest.h>

#include <QFontInfo>
#include <QFontMetrics>
#include <QImage>

#include <algorithm>

namespace hammerline::charts {
namespace {

using support::DrawnWords;

const TwoNames longNames{"Ada Examplewright-Featherstonehaugh of the Upper Workshop",
                         "Ben Example-Other (the younger) & <Sons> 100 %1"};
const TwoNames endless{std::string(10'000, 'A'), std::string(10'000, 'B')};

struct Size {
    QSize room;
    int pixelSize = 12;
    const char *name = "";
};

/// The least a chart gets in a window of 1366 pixels at a text scale: 16 lines of its text (chart_view, study_pane).
Size leastAt(double scale, const char *name)
{
    wording::setTextScale(scale);
    const int line = QFontMetrics(wording::font(wording::TextSize::Body)).height();
    const int small = QFontInfo(wording::font(wording::TextSize::Small)).pixelSize();
    wording::setTextScale(1);
    return {{900, 16 * line}, small, name};
}

std::vector<Size> sizes()
{
    return {leastAt(1, "100 %"),
            leastAt(1.5, "150 %"),
            leastAt(2, "200 %"),
            {{1600, 900}, 18, "picture"},
            {{800, 550}, 9, "page"}};
}

using Render = std::function<void(QPainter &, const QRectF &, int)>;

struct Case {
    const char *name;
    std::function<Render(const TwoNames &)> of;
    QString unit = QStringLiteral("(mm)");
};

template <typename Data>
Render rendering(Data data)
{
    data.subject = QStringLiteral("The long grand of the demonstration workshop, number 12 345 of its maker's books");
    return [data = std::move(data)](QPainter &painter, const QRectF &rect, int pixelSize) {
        renderChart(painter, rect, data, wording::paletteOf(wording::Theme::Light), pixelSize);
    };
}

Case caseOf(const char *name, Question question)
{
    return {name, [=](const TwoNames &names) { return rendering(compared(question, names)); }};
}

Case caseOf(const char *name, StudyQuestion question)
{
    return {name, [=](const TwoNames &names) { return rendering(studied(question, names)); }};
}

Render bars(const TwoNames &names)
{
    BarsData data{.title = "Where was much out, and what became of it?", .answer = "12 of 100 out"};
    data.axis = QStringLiteral("Notes out of their limits, as found and as left (%)");
    data.firstName = QStringLiteral("as found"), data.secondName = QStringLiteral("as left");
    for (const std::string &name : {names.first, names.second})
        data.rows.push_back({QString::fromStdString(name), 12.5, 3.5, "12.5 %", "3.5 %"});
    return [data](QPainter &painter, const QRectF &rect, int pixelSize) {
        renderBars(painter, rect, data, wording::paletteOf(wording::Theme::Light), pixelSize);
    };
}

const std::vector<Case> &everyCase()
{
    static const std::vector<Case> cases{caseOf("along", Question::WhereAlongTheKeyboard),
                                         caseOf("spread", Question::HowSpread),
                                         caseOf("moved", Question::WhichNotesMoved),
                                         caseOf("drifted", Question::HasItDrifted),
                                         caseOf("agree", Question::DoTheyAgree),
                                         caseOf("study_values", StudyQuestion::ValuesByNoteAndPerson),
                                         caseOf("study_ranges", StudyQuestion::RangeByPerson),
                                         caseOf("study_sources", StudyQuestion::Components),
                                         {"bars", bars, QStringLiteral("(%)")}};
    return cases;
}

class ChartTitles : public testing::TestWithParam<std::size_t> {
protected:
    [[nodiscard]] static const Case &chart() { return everyCase()[GetParam()]; }
    [[nodiscard]] static std::vector<DrawnWords> drawn(const TwoNames &names, const Size &size)
    {
        const Render render = chart().of(names);
        return support::drawnWords(
            size.room, [&](QPainter &painter, const QRectF &rect) { render(painter, rect, size.pixelSize); });
    }
};

/// With HAMMERLINE_GALLERY=<folder>, to be looked at.
TEST_P(ChartTitles, OfLongNamesArePainted)
{
    for (const Size &size : sizes()) {
        QImage image(size.room, QImage::Format_RGB32);
        image.fill(Qt::white);
        QPainter painter(&image);
        chart().of(longNames)(painter, image.rect(), size.pixelSize);
        painter.end();
        const QString folder = qEnvironmentVariable("HAMMERLINE_GALLERY");
        EXPECT_TRUE(folder.isEmpty() || image.save(QStringLiteral("%1/titles-%2-%3.png")
                                                       .arg(folder, chart().name, QString(size.name).remove(' '))));
    }
}

TEST_P(ChartTitles, NothingItWritesIsCut)
{
    for (const TwoNames &names : {TwoNames{}, longNames, endless})
        for (const Size &size : sizes()) {
            const auto words = drawn(names, size);
            EXPECT_GT(words.size(), 8u);
            for (const DrawnWords &run : words)
                EXPECT_FALSE(run.cut || run.text.contains("..."))
                    << size.name << ": " << run.text.left(60).toStdString() << " at " << run.place.left() << ','
                    << run.place.top() << " to " << run.place.right() << ',' << run.place.bottom();
        }
}

TEST_P(ChartTitles, TheUnitStandsOnItsAxisWhole)
{
    for (const TwoNames &names : {TwoNames{}, longNames, endless})
        for (const Size &size : sizes()) {
            const auto words = drawn(names, size);
            EXPECT_TRUE(std::ranges::any_of(words, [](const DrawnWords &run) {
                return !run.cut && run.text.endsWith(chart().unit);
            })) << size.name;
        }
}

TEST_P(ChartTitles, OnlyNamesAreElided)
{
    for (const Size &size : sizes())
        for (const DrawnWords &run : drawn({}, size))
            EXPECT_TRUE(!run.text.contains(QChar(0x2026)) || run.text.startsWith("The long gr"))
                << size.name << ": " << run.text.toStdString();
}

TEST_P(ChartTitles, NoRunOfWordsCoversAnother)
{
    for (const TwoNames &names : {TwoNames{}, longNames, endless})
        for (const Size &size : sizes()) {
            const auto words = drawn(names, size);
            for (std::size_t i = 0; i < words.size(); ++i)
                for (std::size_t j = 0; j < i; ++j) {
                    const QRectF shared = words[i].place & words[j].place;
                    EXPECT_FALSE(shared.width() > 2 && shared.height() > size.pixelSize * 0.4)
                        << size.name << ": " << words[i].text.left(40).toStdString() << " over "
                        << words[j].text.left(40).toStdString();
                }
        }
}

INSTANTIATE_TEST_SUITE_P(EveryChart, ChartTitles, testing::Range<std::size_t>(0, 9),
                         [](const auto &chosen) { return std::string(everyCase()[chosen.param].name); });

TEST(AxisTitle, IsBrokenAtWordsWithItsUnitInTheLastLine)
{
    const QFontMetricsF metrics(wording::font(wording::TextSize::Small));
    const double length = metrics.horizontalAdvance("Range of one note's");
    EXPECT_EQ(axisLines({"Range of one note's takes (1/64 in)"}, metrics, length),
              QStringList({"Range of one note's", "takes (1/64 in)"}));
}

TEST(AxisTitle, LongNamesGiveWayAndNothingElse)
{
    const QFontMetricsF metrics(wording::font(wording::TextSize::Small));
    const AxisTitle title{"%1 less %2 (mm)", {QString(300, 'A'), QString("%1 ").repeated(100)}};
    for (const double ems : {8, 12, 30}) {
        const QStringList lines = axisLines(title, metrics, ems * metrics.height());
        EXPECT_LE(lines.size(), 3);
        EXPECT_TRUE(lines.last().endsWith("(mm)"));
        EXPECT_TRUE(lines.join(' ').contains(" less ")) << lines.join('|').toStdString();
        for (const QString &line : lines)
            EXPECT_LE(metrics.horizontalAdvance(line), ems * metrics.height()) << line.toStdString();
    }
    EXPECT_EQ(title.whole(), QString(300, 'A') + " less " + QString("%1 ").repeated(100) + " (mm)");
}

TEST(AxisTitle, AShortNameIsWhollyShown)
{
    EXPECT_EQ(shortName("Ben"), "Ben");
    EXPECT_EQ(shortName(QString(28, 'n')), QString(28, 'n'));
    EXPECT_EQ(shortName(QString(29, 'n')), QString(27, 'n') + QChar(0x2026));
    const QString family = QString::fromUtf8("\U0001F468\u200D\U0001F469\u200D\U0001F467"); // one letter of five parts
    EXPECT_EQ(shortName(family.repeated(10'000)), family.repeated(27) + QChar(0x2026));
}

} // namespace
} // namespace hammerline::charts
