#include "app/main_window/window_desk.h"
#include "exchange/exchange.h"
#include "main_window/logbook_files.h"
#include "seal/seal.h"
#include "seal/workshop_key.h"

#include <QFile>

#include <algorithm>

namespace hammerline::main_window {
namespace {

TEST_F(WindowDesk, WhatIsExportedCanBeImportedAsAPass)
{
    const auto window = openWindow();
    type(*window, "46.2");
    type(*window, "1 13/16");
    const QString path = folder.filePath("readings.csv");
    prompts.willPick(path);
    trigger(*window, "exportReadings");
    ASSERT_TRUE(QFile::exists(path));
    prompts.willPick(path);
    trigger(*window, "importReadings");
    QTest::mouseClick(part(*window, "formAccept"), Qt::LeftButton);
    ASSERT_NE(window->workshop().pass(), nullptr);
    EXPECT_NE(window->workshop().pass()->pass.id, shop.pass.id);
    EXPECT_EQ(window->workshop().pass()->values, readings::meansOf(shop.book.readings(shop.pass.id)));
}

TEST_F(WindowDesk, AFaultyFileIsRefusedWholeWithEveryFault)
{
    const QString path = folder.filePath("faulty.csv");
    ASSERT_TRUE(
        exchange::writeFile(path.toStdString(), "note,let_off (mm)\nA0,3.2\nH9,3.1\nB0,x\n", exchange::Overwrite::No));
    const auto window = openWindow();
    prompts.willPick(path);
    trigger(*window, "importReadings");
    ASSERT_EQ(prompts.notices().size(), 1u);
    EXPECT_EQ(prompts.notices().front().detail.count('\n'), 1);
    EXPECT_EQ(shop.book.passes(shop.grand.id).size(), 1u);
}

seal::SealReport reportOn(const QString &path)
{
    QFile pdf(path);
    EXPECT_TRUE(pdf.open(QIODevice::ReadOnly));
    return seal::verifyRecord(pdf.readAll().toStdString());
}

std::string dataIn(const seal::SealReport &report)
{
    const auto found = std::ranges::find(report.files, "record.json", &seal::EmbeddedFile::name);
    return found == report.files.end() ? std::string() : found->content;
}

TEST_F(WindowDesk, TheRecordIsMadeAndSealedFromTheWindow)
{
    const auto window = openWindow();
    for (int i = 0; i < 5; ++i)
        type(*window, "46");
    const QString path = folder.filePath("record.pdf");
    for (const char *choice : {"English, A4", "It is the first", "Without a passphrase"})
        prompts.willChoose(choice);
    prompts.willPick(path);
    trigger(*window, "makeRecord");
    EXPECT_TRUE(prompts.allUsed());
    const auto report = reportOn(path);
    EXPECT_EQ(report.verdict, seal::SealVerdict::Unaltered) << report.reason;
    EXPECT_TRUE(QFile::exists(folder.filePath("keys/key.p12")));
}

TEST_F(WindowDesk, AReissueInGermanUnderAPassphraseNamesTheRecordBefore)
{
    const auto window = openWindow();
    type(*window, "46");
    const QString first = folder.filePath("first.pdf");
    const QString second = folder.filePath("second.pdf");
    for (const char *choice : {"English, A4", "It is the first", "With a passphrase…"})
        prompts.willChoose(QString::fromUtf8(choice));
    prompts.willType("open sesame");
    prompts.willPick(first);
    trigger(*window, "makeRecord");
    for (const char *choice : {"Deutsch, Letter", "Choose the earlier one…"})
        prompts.willChoose(QString::fromUtf8(choice));
    prompts.willPick(first);
    prompts.willType("open sesame");
    prompts.willPick(second);
    trigger(*window, "makeRecord");
    EXPECT_TRUE(prompts.allUsed());
    EXPECT_TRUE(prompts.textWishes().back().hidden);
    EXPECT_NE(dataIn(reportOn(second)).find("\"revision\": 2"), std::string::npos);
    EXPECT_EQ(reportOn(first).fingerprint, reportOn(second).fingerprint);
}

TEST_F(WindowDesk, AReissueOfARecordFromAnotherHistoryIsMadeAndSaidToBe)
{
    const QString first = folder.filePath("first.pdf");
    auto record = recordOf(shop.book, shop.grand, shop.stamp());
    if (!record) {
        shop.book.enter(shop.pass.id,
                        {.place = {catalogue::Quantity::Blow, keyboard::Note(1), 1},
                         .value = units::Length::millimetres(46),
                         .typed = "46"},
                        shop.stamp());
        record = recordOf(shop.book, shop.grand, shop.stamp());
    }
    ASSERT_TRUE(record);
    sale_record::SaleRecord elsewhere = record.value();
    elsewhere.history.digest = std::string(64, 'a');
    ASSERT_TRUE(writeRecord(elsewhere, {}, first.toStdString(), folder.filePath("keys/theirs.p12").toStdString()));
    const auto window = openWindow();
    for (const char *choice : {"English, A4", "Choose the earlier one…", "Without a passphrase"})
        prompts.willChoose(QString::fromUtf8(choice));
    prompts.willPick(first);
    prompts.willPick(folder.filePath("second.pdf"));
    trigger(*window, "makeRecord");
    ASSERT_EQ(prompts.notices().size(), 1u);
    EXPECT_EQ(prompts.notices().front().title, "The record is made");
    EXPECT_EQ(prompts.notices().front().weight, prompts::Weight::Warning);
    EXPECT_TRUE(prompts.notices().front().detail.contains("out of another logbook"));
}

TEST_F(WindowDesk, PaperLanguageAndWorkshopOfTheRecordAreRemembered)
{
    const auto window = openWindow();
    type(*window, "46");
    const auto make = [&](const std::vector<const char *> &choices, const QString &path) {
        for (const char *choice : choices)
            prompts.willChoose(QString::fromUtf8(choice));
        prompts.willPick(path);
        trigger(*window, "makeRecord");
    };
    prompts.willType("Invented Workshop,  Sampleton");
    make({"Name the workshop…", "Deutsch, Letter", "It is the first", "Without a passphrase"},
         folder.filePath("first.pdf"));
    EXPECT_NE(dataIn(reportOn(folder.filePath("first.pdf"))).find("Invented Workshop, Sampleton"), std::string::npos);
    QFile first(folder.filePath("first.pdf"));
    ASSERT_TRUE(first.open(QIODevice::ReadOnly));
    const QByteArray pages = first.readAll();
    EXPECT_TRUE(pages.contains("/Lang (de)"));
    EXPECT_TRUE(pages.contains("612")) << "points of Letter's width";
    prompts.willChoose("Cancel");
    trigger(*window, "makeRecord");
    const auto asked = prompts.questions().back();
    EXPECT_EQ(asked.choices.at(asked.preferred), "Deutsch, Letter");
    EXPECT_TRUE(asked.detail.contains("Invented Workshop, Sampleton"));
}

TEST_F(WindowDesk, AWrongPassphraseMakesNoRecordAndSaysWhy)
{
    const auto window = openWindow();
    type(*window, "46");
    ASSERT_TRUE(seal::workshopKey(folder.filePath("keys/key.p12").toStdString(), "Invented Workshop", {}, "open").ok());
    for (const char *choice : {"English, A4", "It is the first"})
        prompts.willChoose(choice);
    prompts.willType("shut");
    prompts.willPick(folder.filePath("none.pdf"));
    trigger(*window, "makeRecord");
    ASSERT_EQ(prompts.notices().size(), 1u);
    EXPECT_TRUE(prompts.notices().front().detail.contains("passphrase"));
    EXPECT_FALSE(QFile::exists(folder.filePath("none.pdf")));
}

TEST_F(WindowDesk, WhoThinksBetterOfARecordMakesNeitherItNorAKey)
{
    const auto window = openWindow();
    type(*window, "46");
    prompts.willChoose("Cancel");
    trigger(*window, "makeRecord");
    for (const char *choice : {"English, A4", "It is the first", "Cancel"})
        prompts.willChoose(choice);
    trigger(*window, "makeRecord");
    EXPECT_TRUE(prompts.allUsed());
    EXPECT_FALSE(QFile::exists(folder.filePath("keys/key.p12")));
}

TEST_F(WindowDesk, ARecordWithoutReadingsIsRefusedWithTheReason)
{
    const auto window = openWindow();
    trigger(*window, "makeRecord");
    ASSERT_EQ(prompts.notices().size(), 1u);
    EXPECT_FALSE(prompts.notices().front().detail.isEmpty());
}

TEST_F(WindowDesk, TheChartIsSavedAsADrawing)
{
    const auto window = openWindow();
    type(*window, "46");
    const QString path = folder.filePath("chart.svg");
    prompts.willPick(path);
    trigger(*window, "saveChart");
    EXPECT_GT(QFile(path).size(), 500);
}

TEST(ProposedName, IsPlainEnoughForAnyDisk)
{
    instrument::Instrument instrument;
    instrument.name = "Flügel / No. 3: \"blue\"";
    EXPECT_EQ(proposedName(instrument, "record"), "flügel-no-3-blue--record");
}

} // namespace
} // namespace hammerline::main_window
