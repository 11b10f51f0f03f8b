// Faults that were felt and not measured stand in the record, as found and as left.
#include "record_pdf/record_pdf.h"

#include "support/sample_records.h"

#include <QFile>
#include <QProcess>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace hammerline::record_pdf {
namespace {

using keyboard::Note;

/// The words of the record, single blanks between them.
QString wordsOf(const sale_record::SaleRecord &record)
{
    const QTemporaryDir folder;
    const QString path = folder.filePath("record.pdf");
    QFile file(path);
    EXPECT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(makeRecordPdf(record, {}));
    file.close();
    if (const QString keep = qEnvironmentVariable("HAMMERLINE_KEEP_PAGES"); !keep.isEmpty())
        QFile(path).copy(keep + "/felt-faults.pdf"); // where somebody wants to look at the pages
    QProcess process;
    process.start("pdftotext", {"-layout", path, "-"});
    EXPECT_TRUE(process.waitForFinished()) << "pdftotext must be installed for this test";
    return QString::fromUtf8(process.readAllStandardOutput()).simplified();
}

TEST(FeltFaults, AreListedWithTheirNotesAsFoundAndAsLeft)
{
    sale_record::SaleRecord record = support::sampleRecord({});
    record.asFound->felt = {{Note(40), "blocking"}, {Note(41), "blocking"}, {Note(42), "blocking"}, {Note(60), "rub"}};
    record.asLeft.felt = {{Note(60), "rub"}};
    const QString words = wordsOf(record);
    EXPECT_TRUE(words.contains("Felt and not measured")) << words.toStdString();
    EXPECT_TRUE(words.contains("blocking C4 to D4 –")) << words.toStdString();
    EXPECT_TRUE(words.contains("rub G#5 G#5")) << words.toStdString();
}

TEST(FeltFaults, ARecordWithoutThemSaysNothingOfThem)
{
    EXPECT_FALSE(wordsOf(support::sampleRecord({})).contains("Felt and not measured"));
}

} // namespace
} // namespace hammerline::record_pdf
