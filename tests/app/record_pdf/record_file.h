#pragma once
// A record made into a file, for the tests of its pages.

#include "record_pdf/record_pdf.h"
#include "support/sample_records.h"

#include <QFile>
#include <QProcess>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace hammerline::record_pdf {

/// The record as a file, and what other people's programs say of it.
class RecordFile : public testing::Test {
protected:
    void make(const support::SampleWish &wish, const RecordPdfOptions &options = {})
    {
        makeOf(support::sampleRecord(wish), options);
    }

    void makeOf(const sale_record::SaleRecord &record, const RecordPdfOptions &options)
    {
        m_record = record;
        m_bytes = makeRecordPdf(m_record, options);
        writeFile(m_bytes);
        // Where somebody wants to look at the pages.
        if (const QString keep = qEnvironmentVariable("HAMMERLINE_KEEP_PAGES"); !keep.isEmpty())
            QFile(path()).copy(keep + QLatin1Char('/') +
                               QLatin1String(testing::UnitTest::GetInstance()->current_test_info()->name()) +
                               QStringLiteral(".pdf"));
    }

    void writeFile(const QByteArray &bytes) const
    {
        QFile file(path());
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(bytes);
    }

    [[nodiscard]] QString path() const { return m_folder.filePath(QStringLiteral("record.pdf")); }

    [[nodiscard]] QByteArray outputOf(const QString &program, const QStringList &arguments) const
    {
        QProcess process;
        process.setWorkingDirectory(m_folder.path());
        process.start(program, arguments);
        EXPECT_TRUE(process.waitForFinished()) << program.toStdString() << " must be installed for this test";
        EXPECT_EQ(process.exitCode(), 0) << process.readAllStandardError().toStdString();
        return process.readAllStandardOutput();
    }

    [[nodiscard]] QString text() const
    {
        return QString::fromUtf8(
            outputOf(QStringLiteral("pdftotext"), {QStringLiteral("-layout"), path(), QStringLiteral("-")}));
    }

    [[nodiscard]] std::string fileInside(const QString &name) const
    {
        const QString to = m_folder.filePath(QStringLiteral("out-") + name);
        (void)outputOf(QStringLiteral("pdfdetach"),
                       {QStringLiteral("-savefile"), name, QStringLiteral("-o"), to, path()});
        QFile file(to);
        EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << name.toStdString();
        return file.readAll().toStdString();
    }

    QTemporaryDir m_folder;
    sale_record::SaleRecord m_record;
    QByteArray m_bytes;
};

} // namespace hammerline::record_pdf
