// Held against other people's PDF tools. HAMMERLINE_KEEP_PAGES names a folder for whoever wants to look at the pages.
#include "bench_sheet/bench_sheet.h"

#include "support/sample_records.h"
#include "wording/wording.h"

#include <QDir>
#include <QFile>
#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace hammerline::bench_sheet {
namespace {

using catalogue::Quantity;
using route::Order;
using route::Sweep;

BenchSheetInput inputFor(const route::Choice &choice, bool withSet = true)
{
    const sale_record::SaleRecord record = support::sampleRecord({});
    BenchSheetInput input;
    input.instrument = QString::fromStdString(record.instrument.name);
    input.pass = QStringLiteral("As left, 2 March 2026");
    input.details = record.asLeft.pass;
    input.choice = choice;
    input.sections = record.instrument.sections;
    input.stops = route::stopsOf(choice, {.compass = record.instrument.compass, .sections = input.sections});
    input.form = wording::formOf(input.details, QLocale(QLocale::English));
    if (withSet)
        input.set = record.set;
    return input;
}

class BenchSheet : public testing::Test {
protected:
    void make(const BenchSheetInput &input, paper::Size size = paper::Size::A4)
    {
        QFile file(m_path);
        ASSERT_TRUE(file.open(QIODevice::WriteOnly | QIODevice::Truncate));
        file.write(makeBenchSheet(input, {.size = size}));
        file.close();
        const QString letter = size == paper::Size::Letter ? QStringLiteral("-letter.pdf") : QStringLiteral(".pdf");
        if (const QString keep = qEnvironmentVariable("HAMMERLINE_KEEP_PAGES"); !keep.isEmpty())
            QFile::copy(m_path,
                        QDir(keep).filePath(
                            QLatin1String(testing::UnitTest::GetInstance()->current_test_info()->name()) + letter));
    }

    [[nodiscard]] static QString outputOf(const QString &program, const QStringList &arguments)
    {
        QProcess process;
        process.start(program, arguments);
        EXPECT_TRUE(process.waitForFinished()) << program.toStdString() << " must be installed for this test";
        EXPECT_EQ(process.exitCode(), 0) << process.readAllStandardError().toStdString();
        return QString::fromUtf8(process.readAllStandardOutput());
    }

    /// In the order in which it was painted.
    [[nodiscard]] QString text() const
    {
        return outputOf(QStringLiteral("pdftotext"), {QStringLiteral("-raw"), m_path, QStringLiteral("-")});
    }

    [[nodiscard]] QString plainText() const { return text().simplified(); }

    /// Every word of the file that is a note's name.
    [[nodiscard]] QStringList notesInFile() const
    {
        const QRegularExpression note(QStringLiteral("^[A-G]\u266f?\\d$"));
        return text().split(QRegularExpression(QStringLiteral("\\s+"))).filter(note);
    }

    [[nodiscard]] int pages() const
    {
        const QString info = outputOf(QStringLiteral("pdfinfo"), {m_path});
        return QRegularExpression(QStringLiteral("Pages:\\s+(\\d+)")).match(info).captured(1).toInt();
    }

    QTemporaryDir m_folder;
    QString m_path = m_folder.filePath(QStringLiteral("sheet.pdf"));
};

QStringList notesOf(const std::vector<route::Stop> &stops)
{
    QStringList names;
    for (const route::Stop &stop : stops)
        names << wording::nameOf(stop.note);
    return names;
}

TEST_F(BenchSheet, HoldsEveryStopInTheOrderOfEveryRoute)
{
    const std::vector<Quantity> two{Quantity::LetOff, Quantity::Dip};
    for (const Order order : {Order::Chromatic, Order::NaturalsThenSharps, Order::SamplesFirst})
        for (const Sweep sweep : {Sweep::AlongTheNotes, Sweep::NoteByNote}) {
            const auto input = inputFor({.order = order, .sweep = sweep, .quantities = two});
            make(input);
            ASSERT_EQ(input.stops.size(), 176U);
            EXPECT_EQ(notesInFile(), notesOf(input.stops)) << route::textOf(input.choice);
        }
}

TEST_F(BenchSheet, HoldsTheNotesOfAnOwnRouteOnly)
{
    const auto listed = route::parseNoteList("C4 A0 C#5 88").value();
    make(inputFor({.order = Order::Own, .listed = listed, .quantities = {Quantity::Blow}}));
    EXPECT_EQ(notesInFile(), (QStringList{QStringLiteral("C4"), QStringLiteral("A0"), QStringLiteral("C\u266f5"),
                                          QStringLiteral("C8")}));
}

TEST_F(BenchSheet, OfOneQuantityIsOnePageOnEitherPaper)
{
    const auto input = inputFor({.quantities = {Quantity::LetOff}});
    for (const paper::Size size : {paper::Size::A4, paper::Size::Letter}) {
        make(input, size);
        EXPECT_EQ(pages(), 1);
        EXPECT_TRUE(plainText().contains(QStringLiteral("page 1 of 1")));
        EXPECT_TRUE(plainText().contains(QStringLiteral("Remarks, felt faults")));
    }
}

TEST_F(BenchSheet, GivesEveryFurtherQuantityAPageThatSaysWhoseItIs)
{
    make(inputFor({.quantities = {Quantity::Blow, Quantity::LetOff, Quantity::Dip}}));
    EXPECT_EQ(pages(), 3);
    const QString all = plainText();
    for (const char *expected : {"page 1 of 3", "page 3 of 3", "Blow (mm)", "Let-off (mm)", "Dip (mm)"})
        EXPECT_TRUE(all.contains(QLatin1String(expected))) << expected;
    EXPECT_GE(all.count(QStringLiteral("Schoolhouse upright, As left, 2 March 2026")), 2);
}

TEST_F(BenchSheet, NoteByNoteKeepsAllQuantitiesOfANoteTogether)
{
    std::vector<Quantity> all;
    for (const catalogue::QuantityInfo &info : catalogue::all())
        if (info.onVerticals)
            all.push_back(info.quantity);
    const auto input = inputFor({.sweep = Sweep::NoteByNote, .quantities = all});
    make(input);
    EXPECT_EQ(notesInFile(), notesOf(input.stops));
    EXPECT_LE(pages(), 12);
}

TEST_F(BenchSheet, SaysWhichRouteItFollows)
{
    make(inputFor({.order = Order::SamplesFirst, .quantities = {Quantity::LetOff, Quantity::Dip}}));
    const QString expected = QStringLiteral(
        "Route: samples of each section, then the rest (samples are the ends of each section); one quantity along all "
        "notes: let-off, dip. Type the sheet in on this route: its 176 boxes");
    // Lines break at hyphens too.
    EXPECT_TRUE(plainText().remove(QLatin1Char(' ')).contains(QString(expected).remove(QLatin1Char(' '))));
}

TEST_F(BenchSheet, NamesTheSectionsAndThePlacesToFillIn)
{
    const auto input = inputFor({.quantities = {Quantity::LetOff}});
    make(input);
    const QString all = plainText();
    ASSERT_FALSE(input.sections.empty());
    for (const keyboard::Section &section : input.sections)
        EXPECT_TRUE(all.contains(QString::fromStdString(section.name))) << section.name;
    for (const char *expected : {"Date", "Person", "Gauge", "Temperature", "Humidity", "Remarks"})
        EXPECT_TRUE(all.contains(QLatin1String(expected))) << expected;
}

TEST_F(BenchSheet, PrintsLimitsBelowTheBoxesOnlyWhereThereIsASet)
{
    make(inputFor({.quantities = {Quantity::LetOff}}));
    EXPECT_TRUE(plainText().contains(QStringLiteral("2.7 \u00b7 3.2 \u00b7 3.7"))) << "A0 of the sample set";
    make(inputFor({.quantities = {Quantity::LetOff}}, false));
    EXPECT_FALSE(plainText().contains(QChar(0x00b7)));
}

TEST_F(BenchSheet, WithoutStopsSaysSoOnOnePage)
{
    auto input = inputFor({.order = Order::OnlyOut, .quantities = {Quantity::LetOff}});
    ASSERT_TRUE(input.stops.empty()) << "nothing is judged";
    make(input);
    EXPECT_EQ(pages(), 1);
    EXPECT_TRUE(plainText().contains(QStringLiteral("there is nothing to measure: only what is out")));
}

TEST_F(BenchSheet, IsASoundFileOfVectorsWithItsFontsInIt)
{
    auto input = inputFor({.sweep = Sweep::NoteByNote, .quantities = {Quantity::LetOff, Quantity::Dip}});
    input.instrument = QString(200, QLatin1Char('W'));
    make(input, paper::Size::Letter);
    EXPECT_TRUE(outputOf(QStringLiteral("qpdf"), {QStringLiteral("--check"), m_path})
                    .contains(QStringLiteral("No syntax or stream encoding errors")));
    EXPECT_TRUE(outputOf(QStringLiteral("pdfinfo"), {m_path}).contains(QStringLiteral("612 x 792")));
    EXPECT_EQ(outputOf(QStringLiteral("pdfimages"), {QStringLiteral("-list"), m_path}).count(QLatin1Char('\n')), 2);
    const auto fonts = outputOf(QStringLiteral("pdffonts"), {m_path}).split(QLatin1Char('\n'), Qt::SkipEmptyParts);
    ASSERT_GT(fonts.size(), 2);
    for (const QString &font : fonts.mid(2))
        EXPECT_TRUE(font.contains(QStringLiteral(" yes "))) << font.toStdString();
}

TEST_F(BenchSheet, UsesNoColourAndNoGrey)
{
    make(inputFor({.quantities = {Quantity::LetOff}}));
    const QString plain = m_folder.filePath(QStringLiteral("plain.pdf"));
    (void)outputOf(QStringLiteral("qpdf"),
                   {QStringLiteral("--qdf"), QStringLiteral("--object-streams=disable"), m_path, plain});
    QFile file(plain);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    const QString content = QString::fromLatin1(file.readAll());
    const QRegularExpression colour(QStringLiteral("([\\d.]+) ([\\d.]+) ([\\d.]+) (rg|RG|scn|SCN)\\b"));
    int found = 0;
    for (auto each = colour.globalMatch(content); each.hasNext(); ++found) {
        const auto match = each.next();
        const double red = match.captured(1).toDouble();
        EXPECT_TRUE(red < 0.001 || red > 0.999) << match.captured(0).toStdString();
        EXPECT_EQ(match.captured(1), match.captured(2));
        EXPECT_EQ(match.captured(1), match.captured(3));
    }
    EXPECT_GT(found, 0);
}

} // namespace
} // namespace hammerline::bench_sheet
