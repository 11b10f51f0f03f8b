// What the pages say beyond readings, and that nothing on them is clipped or lies over something else.

#include "full_record.h"
#include "record_file.h"

#include "exchange/answers_json.h"
#include "record_pdf/record_language.h"
#include "support/json_schema.h"

#include <QRegularExpression>

#include <gmock/gmock.h>

namespace hammerline::record_pdf {
namespace {

using support::SampleWish;

class RecordPages : public RecordFile {
protected:
    void makeFull(const RecordPdfOptions &options = {}, bool tellSale = false)
    {
        auto input = fullInput();
        input.tellSale = tellSale;
        makeOf(sale_record::assemble(input).value(), options);
    }
};

TEST_F(RecordPages, WorkDeparturesConditionAndConcessionsAreTold)
{
    makeFull();
    const QString all = text().simplified();
    for (const char *said : {"renewed: hammers", "felt, medium", "2 h 30 min", "acrylic laid over", "poor (2 of 5)",
                             "cracks shimmed", "the rail is bent here", "Signed by Lead One", "revision 2 of the pass",
                             "let-off read again", "Renewed: hammers, bridle straps.", "not as its maker built them"})
        EXPECT_TRUE(all.contains(QLatin1String(said))) << said;
}

TEST_F(RecordPages, ARecordThatSaysNothingOfWorkOrSignatureSaysThat)
{
    make({});
    const QString all = text().simplified();
    EXPECT_TRUE(all.contains(QStringLiteral("The log of work holds no entry.")));
    EXPECT_TRUE(all.contains(QStringLiteral("Nobody has signed the newest pass")));
    EXPECT_FALSE(all.contains(QStringLiteral("It takes the place of")));
}

TEST_F(RecordPages, BuyerAndPriceStayOutUnlessAskedFor)
{
    makeFull();
    EXPECT_FALSE(text().contains(QStringLiteral("private buyer")));
    EXPECT_EQ(fileInside(QStringLiteral("record.json")).find("3400 EUR"), std::string::npos);
    makeFull({}, true);
    EXPECT_TRUE(text().contains(QStringLiteral("Buyer: A private buyer")));
    EXPECT_NE(fileInside(QStringLiteral("record.json")).find("3400 EUR"), std::string::npos);
}

TEST_F(RecordPages, TheDataInsideKeepsToItsSchema)
{
    makeFull({}, true);
    EXPECT_THAT(support::JsonSchema("record").faultsOf(fileInside(QStringLiteral("record.json"))), testing::IsEmpty());
}

TEST_F(RecordPages, TheDigestOfTheHistoryAndTheRecordReplacedArePrinted)
{
    makeFull();
    const QString all = text().simplified();
    EXPECT_TRUE(all.contains(QStringLiteral("entry 512 of its history")));
    EXPECT_TRUE(all.contains(QStringLiteral("7777 7777")));
    EXPECT_TRUE(all.contains(QStringLiteral("Revision 2. It takes the place of revision 1, issued on 3 March 2026.")));
    EXPECT_TRUE(all.contains(QStringLiteral("dddd dddd")));
}

TEST_F(RecordPages, PhotographsStandOnPageOneAndSideBySide)
{
    makeFull();
    const QString list = QString::fromUtf8(outputOf(QStringLiteral("pdfimages"), {QStringLiteral("-list"), path()}));
    EXPECT_EQ(list.count(QStringLiteral(" image ")), 3) << list.toStdString();
    EXPECT_FALSE(list.contains(QStringLiteral("smask"))) << "transparency is no part of what we build to";
}

struct Word {
    QRectF box;
    QString text;
};

/// The words of every page as another program finds them, page by page.
std::vector<std::vector<Word>> wordsIn(const QString &pages, QSizeF &size)
{
    static const QRegularExpression pageForm(QStringLiteral("<page width=\"([\\d.]+)\" height=\"([\\d.]+)\""));
    static const QRegularExpression form(
        QStringLiteral("xMin=\"([\\d.-]+)\" yMin=\"([\\d.-]+)\" xMax=\"([\\d.-]+)\" yMax=\"([\\d.-]+)\">([^<]*)<"));
    std::vector<std::vector<Word>> found;
    for (const QString &line : pages.split('\n')) {
        if (const auto page = pageForm.match(line); page.hasMatch()) {
            size = {page.captured(1).toDouble(), page.captured(2).toDouble()};
            found.emplace_back();
        } else if (const auto word = form.match(line); word.hasMatch() && !found.empty()) {
            const QPointF from(word.captured(1).toDouble(), word.captured(2).toDouble());
            const QPointF to(word.captured(3).toDouble(), word.captured(4).toDouble());
            found.back().push_back({QRectF(from, to), word.captured(5)});
        }
    }
    return found;
}

/// Lines are set closer than their boxes are high: only words that share much of their height lie over each other.
bool collide(const Word &a, const Word &b)
{
    const QRectF shared = a.box & b.box;
    return shared.width() > 0.5 && shared.height() > 0.45 * std::min(a.box.height(), b.box.height());
}

void expectTidy(const std::vector<Word> &words, QSizeF size)
{
    const QRectF inside = QRectF(QPointF(), size).adjusted(40, 20, -40, -20);
    for (std::size_t i = 0; i < words.size(); ++i) {
        EXPECT_TRUE(inside.contains(words[i].box)) << words[i].text.toStdString() << " leaves the page";
        for (std::size_t j = i + 1; j < words.size(); ++j)
            EXPECT_FALSE(collide(words[i], words[j]))
                << words[i].text.toStdString() << " and " << words[j].text.toStdString();
    }
}

TEST_F(RecordPages, NoWordIsClippedOrLiesOverAnother)
{
    for (const auto &[paper, language] : {std::pair(Paper::A4, Language::English),
                                          {Paper::Letter, Language::English},
                                          {Paper::A4, Language::German},
                                          {Paper::Letter, Language::German}}) {
        LanguageOfRecord words(language);
        RecordPdfOptions options;
        words.speakIn(options);
        options.paper = paper;
        options.seal = SealLine{QStringLiteral("Invented Workshop"), QString(79, QLatin1Char('a'))};
        makeFull(options, true);
        QSizeF size;
        const auto pages = wordsIn(QString::fromUtf8(outputOf(QStringLiteral("pdftotext"),
                                                              {QStringLiteral("-bbox"), path(), QStringLiteral("-")})),
                                   size);
        EXPECT_GT(pages.size(), 8u);
        for (const auto &page : pages)
            expectTidy(page, size);
    }
}

} // namespace
} // namespace hammerline::record_pdf
