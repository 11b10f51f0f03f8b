// Much text, odd letters and many photographs: nothing runs off a page or over another text, nothing points at a glyph
// that is not there.

#include "full_record.h"
#include "paper/table.h"
#include "record_file.h"

#include <gmock/gmock.h>

namespace hammerline::record_pdf {
namespace {

class CrowdedPages : public RecordFile {};

TEST_F(CrowdedPages, WhatNoFontHasIsReplacedAndEveryOtherLetterStays)
{
    const QString unassigned(QChar(0x0378));
    EXPECT_EQ(paper::drawable("Upright " + unassigned + " 1"), "Upright " + QString(QChar(0xfffd)) + " 1");
    for (const char *name : {"Plain upright", "Flügel Nº 7", "פסנתר", "пианино", "▲ → ▼"})
        EXPECT_EQ(paper::drawable(QString::fromUtf8(name)), QString::fromUtf8(name));
    auto input = fullInput();
    input.instrument.name = "Upright " + unassigned.toStdString();
    makeOf(sale_record::assemble(input).value(), {});
    for (const QString &page : text().split(QLatin1Char('\f'), Qt::SkipEmptyParts))
        EXPECT_TRUE(page.contains(QString(QChar(0xfffd)) + " stands for a letter that the type of this document"));
    const std::string json = fileInside(QStringLiteral("record.json"));
    EXPECT_NE(json.find(unassigned.toStdString()), std::string::npos) << "the data keep what was typed";
}

TEST_F(CrowdedPages, NothingIsSaidOfLettersWhereAllCanBeDrawn)
{
    make({});
    EXPECT_FALSE(text().contains(QStringLiteral("stands for a letter")));
    EXPECT_FALSE(text().contains(QChar(0xfffd)));
}

TEST_F(CrowdedPages, AReasonLongerThanAPageIsPrintedToItsLastWord)
{
    auto input = fullInput();
    std::string &reason = input.concessions.front().reason;
    for (int i = 1; i <= 600; ++i)
        reason += " w" + std::to_string(i);
    makeOf(sale_record::assemble(input).value(), {});
    const QString all = text();
    for (int i = 1; i <= 600; ++i)
        EXPECT_TRUE(all.contains(QStringLiteral("w%1").arg(i))) << i;
}

TEST_F(CrowdedPages, ALongListOfRenewedThingsEndsBehindAWord)
{
    auto input = fullInput();
    const auto withRenewed = [&](const std::vector<std::string> &things) {
        input.dossier.work.clear();
        for (const std::string &thing : things)
            input.dossier.work.push_back(inventedWork(dossier::WorkKind::PartsRenewed, thing));
        makeOf(sale_record::assemble(input).value(), {});
        return text().simplified();
    };
    const std::string long60(60, 'x');
    EXPECT_TRUE(withRenewed({"straps", long60 + "a", long60 + "b"})
                    .contains("Renewed: straps, " + QString::fromStdString(long60) + "a and more."));
    EXPECT_TRUE(withRenewed({"straps", "hammers"}).contains(" Renewed: straps, hammers."));
}

TEST(SplitText, KeepsEveryLineOnce)
{
    const paper::TextBlock block("one\ntwo\nthree", paper::bodyText, 200);
    const double line = block.height() / 3;
    const auto [first, rest] = block.split(2.5 * line);
    EXPECT_NEAR(first.height(), 2 * line, 1e-6);
    EXPECT_NEAR(rest.height(), line, 1e-6);
    EXPECT_NEAR(rest.firstBaseline(), block.firstBaseline(), 1e-6);
    EXPECT_NEAR(block.split(10 * line).second.height(), 0, 1e-6);
}

} // namespace
} // namespace hammerline::record_pdf
