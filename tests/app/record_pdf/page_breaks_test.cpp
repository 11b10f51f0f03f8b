// Where tables and paragraphs break: no head without a row, no note without rows, no half-empty page before a tall row.

#include "demo_record.h"
#include "full_record.h"
#include "paper/paper.h"
#include "record_pdf/record_language.h"

#include <QCoreApplication>
#include <QRegularExpression>

#include <gmock/gmock.h>

namespace hammerline::record_pdf {
namespace {

class PageBreaks : public RecordFile {
protected:
    /// The words of every page.
    [[nodiscard]] std::vector<QStringList> pages() const
    {
        std::vector<QStringList> found;
        for (const QString &page : text().split(QLatin1Char('\f')))
            found.push_back(page.simplified().split(QLatin1Char(' '), Qt::SkipEmptyParts));
        found.pop_back(); // behind the last page
        return found;
    }

    /// The words of a page of one table that begins `down` points below the top.
    std::vector<QStringList> pagesOf(double down, const std::vector<QString> &rows, const QStringList &notes)
    {
        paper::Sheet sheet(paper::pointsOf(paper::Size::A4));
        sheet.skip(down);
        paper::Table table(sheet, {{"HEAD", 60}, {"text", 0}});
        for (const QString &row : rows)
            table.row({"ROW", row});
        table.end(notes);
        writeFile(paper::paintedPages(sheet, paper::Size::A4, [](QPainter &, int) {}));
        return pages();
    }
};

QString tallText(int lines)
{
    QStringList text;
    for (int line = 1; line <= lines; ++line)
        text << QStringLiteral("w%1").arg(line);
    return text.join(QLatin1Char('\n'));
}

double heightOfLines(int count)
{
    return count * paper::smallText.size * paper::smallText.leading;
}

TEST_F(PageBreaks, AHeadStandsOverRowsAndANoteBelowSomeWhereverTheTableBegins)
{
    for (double down = 400; down < 720; down += 11) {
        const auto all = pagesOf(down, std::vector<QString>(20, "text"), {"NOTE"});
        int rows = 0;
        for (const QStringList &page : all) {
            EXPECT_EQ(page.contains("HEAD"), page.contains("ROW")) << down;
            rows += static_cast<int>(page.count("ROW"));
        }
        EXPECT_EQ(rows, 20) << down;
        EXPECT_GE(all.back().count("ROW"), 3) << down << ": the note stands below rows";
        EXPECT_TRUE(all.back().contains("NOTE")) << down;
    }
}

TEST_F(PageBreaks, ATallRowBeginsBelowItsHeadAndGoesOnBehindTheBreak)
{
    for (double down = 300; down < 720; down += 29) {
        const auto all = pagesOf(down, {tallText(60)}, {});
        QStringList lines;
        for (const QStringList &page : all) {
            const auto count = page.filter(QRegularExpression("^w[0-9]+$"));
            EXPECT_EQ(page.contains("HEAD"), !count.isEmpty()) << down;
            EXPECT_NE(count.size(), 1) << down << ": no line stands alone";
            lines += count;
        }
        EXPECT_EQ(lines.join(QLatin1Char('\n')), tallText(60)) << down << ": each line once";
    }
}

TEST_F(PageBreaks, NoMoreThanAFewLinesStayEmptyBeforeATallRow)
{
    const double room = paper::Sheet(paper::pointsOf(paper::Size::A4)).fullRoom();
    for (int lines = 4; lines < 30; ++lines) { // of room below the head and the first row
        const double down = room - heightOfLines(lines + 2) - 10;
        const auto all = pagesOf(down, {"text", tallText(40)}, {});
        ASSERT_EQ(all.size(), 2u);
        EXPECT_GE(all.front().filter(QRegularExpression("^w")).size(), lines - 2) << lines;
    }
}

TEST_F(PageBreaks, ARowHigherThanManyPagesEndsWithItsNote)
{
    const auto all = pagesOf(100, {tallText(200)}, {"NOTE"});
    EXPECT_GT(all.size(), 2u);
    EXPECT_TRUE(all.back().contains("NOTE"));
    EXPECT_GE(all.back().filter(QRegularExpression("^w")).size(), 2);
}

TEST_F(PageBreaks, ATableWithoutRowsHasNoHead)
{
    const auto all = pagesOf(0, {}, {"NOTE"});
    EXPECT_FALSE(all.front().contains("HEAD"));
    EXPECT_TRUE(all.front().contains("NOTE"));
}

TEST_F(PageBreaks, ALongParagraphGoesOnBehindTheBreak)
{
    paper::Sheet sheet(paper::pointsOf(paper::Size::A4));
    sheet.skip(500);
    sheet.paragraph(tallText(150));
    writeFile(paper::paintedPages(sheet, paper::Size::A4, [](QPainter &, int) {}));
    QStringList lines;
    for (const QStringList &page : pages())
        lines += page;
    EXPECT_EQ(lines.join(QLatin1Char('\n')), tallText(150));
}

TEST_F(PageBreaks, CaptionsAreToldToTheLastWordHoweverLong)
{
    auto input = fullInput();
    QStringList words;
    for (int i = 1; i <= 380; ++i)
        words << QStringLiteral("c%1").arg(i);
    for (dossier::Photograph &photograph : input.dossier.photographs)
        photograph.caption = photograph.view = words.join(QLatin1Char(' ')).toStdString();
    makeOf(sale_record::assemble(input).value(), {});
    QStringList all;
    for (const QStringList &page : pages())
        all += page.filter(QRegularExpression("^c[0-9]+,?$"));
    EXPECT_EQ(all.size(), 4 * words.size());
}

TEST_F(PageBreaks, OneReasonForManyNotesLeavesNoHoleInTheList)
{
    auto input = fullInput();
    auto concession = input.concessions.front();
    input.concessions.clear();
    for (int note = 1; note <= 88; ++note) {
        concession.note = keyboard::Note(note);
        concession.reason = tallText(12).replace('\n', ' ').toStdString();
        input.concessions.push_back(concession);
    }
    makeOf(sale_record::assemble(input).value(), {});
    const QRegularExpression one("[A-G]#?[0-9] 2\\.10");
    int told = 0;
    for (const QString &page : text().split(QLatin1Char('\f'))) {
        const qsizetype head = page.indexOf("notes and values");
        if (head < 0)
            continue;
        const QStringList lines = page.mid(head).split(QLatin1Char('\n'));
        const auto isOne = [&](const QString &line) { return line.contains(one); };
        const auto first = std::ranges::find_if(lines, isOne);
        const auto last = std::find_if(lines.rbegin(), lines.rend(), isOne).base();
        EXPECT_EQ(std::count_if(first, last, isOne), last - first) << page.toStdString();
        told += static_cast<int>(page.mid(head).count(one));
    }
    EXPECT_EQ(told, 88);
}

class FullPages : public DemoRecord {};

/// Half a page of photographs or charts has few words.
TEST_F(FullPages, NoPageHoldsAHandfulOfWordsAlone)
{
    constexpr int fewWords = 50;
    for (const Language language : {Language::English, Language::German}) {
        LanguageOfRecord words(language);
        RecordPdfOptions options;
        words.speakIn(options);
        for (const char *name : {"Quillerby 131", "Ondelmark 108", "Zirrow 188", "Hethlyn 275 with extended bass"}) {
            makeOf(recordOf(name), options);
            const QStringList pages = text().split(QLatin1Char('\f'), Qt::SkipEmptyParts);
            for (int page = 1; page <= pages.size(); ++page)
                EXPECT_GT(pages[page - 1].simplified().count(QLatin1Char(' ')), fewWords)
                    << name << ", page " << page << '\n'
                    << pages[page - 1].simplified().toStdString();
        }
        QCoreApplication::removeTranslator(options.words);
    }
}

} // namespace
} // namespace hammerline::record_pdf
