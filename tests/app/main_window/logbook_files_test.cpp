#include "app/main_window/window_desk.h"
#include "exchange/exchange.h"
#include "main_window/logbook_files.h"
#include "seal/seal.h"

#include <QFile>

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
    ASSERT_TRUE(exchange::writeFile(path.toStdString(), "note,let_off (mm)\nA0,3.2\nH9,3.1\nB0,x\n",
                                    exchange::Overwrite::No));
    const auto window = openWindow();
    prompts.willPick(path);
    trigger(*window, "importReadings");
    ASSERT_EQ(prompts.notices().size(), 1u);
    EXPECT_EQ(prompts.notices().front().detail.count('\n'), 1);
    EXPECT_EQ(shop.book.passes(shop.grand.id).size(), 1u);
}

TEST_F(WindowDesk, TheRecordIsMadeAndSealedFromTheWindow)
{
    const auto window = openWindow();
    for (int i = 0; i < 5; ++i)
        type(*window, "46");
    const QString path = folder.filePath("record.pdf");
    prompts.willPick(path);
    trigger(*window, "makeRecord");
    QFile pdf(path);
    ASSERT_TRUE(pdf.open(QIODevice::ReadOnly));
    const auto report = seal::verifyRecord(pdf.readAll().toStdString());
    EXPECT_EQ(report.verdict, seal::SealVerdict::Unaltered) << report.reason;
    EXPECT_TRUE(QFile::exists(folder.filePath("keys/key.p12")));
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
