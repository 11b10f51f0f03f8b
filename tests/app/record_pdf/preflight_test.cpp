// Held against Apache Preflight, which knows PDF/A-1b. What it may say of a record built to PDF/A-3b is listed here,
// and nothing else: that files are embedded (allowed since part 3) and that the part is not 1. Fonts, colours, metadata
// and structure pass.

#include "full_record.h"
#include "record_pdf/record_language.h"
#include "record_pdf/record_pdf.h"
#include "seal/seal.h"

#include <QCoreApplication>
#include <QFile>
#include <QProcess>
#include <QStringList>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace hammerline::record_pdf {
namespace {

const QStringList allowed{
    QStringLiteral("1.4.7 : Trailer Syntax error, EmbeddedFile entry is present in the Names dictionary"),
    QStringLiteral("1.2.9 : Body Syntax error, EmbeddedFile entry is present in a FileSpecification dictionary"),
    QStringLiteral("7.11.2 : Error on MetaData, part must be 1")};

QStringList findingsIn(const QString &path)
{
    QStringList jars;
    for (const char *name : {"preflight", "pdfbox2", "fontbox2", "xmpbox", "commons-logging", "commons-io",
                             "javax.activation", "jaxb-api"})
        jars << QStringLiteral("/usr/share/java/%1.jar").arg(QLatin1String(name));
    QProcess java;
    java.setProcessChannelMode(QProcess::MergedChannels);
    java.start(QStringLiteral("java"), {QStringLiteral("-cp"), jars.join(QLatin1Char(':')),
                                        QStringLiteral("org.apache.pdfbox.preflight.Validator_A1b"), path});
    EXPECT_TRUE(java.waitForFinished(120'000)) << "java and libpdfbox2-java must be installed for this test";
    QStringList lines = QString::fromUtf8(java.readAll()).split(QLatin1Char('\n'), Qt::SkipEmptyParts);
    if (lines.isEmpty())
        return {QStringLiteral("nothing was said")};
    EXPECT_TRUE(lines.takeFirst().contains(QStringLiteral("is not a valid PDF/A-1b file"))) << "it is part 3";
    return lines;
}

void expectOnlyAllowed(const sale_record::SaleRecord &record, const RecordPdfOptions &options)
{
    const auto key = seal::makeSigningKey("Invented Workshop", record.issued).value();
    const QTemporaryDir folder;
    QFile file(folder.filePath(QStringLiteral("record.pdf")));
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(makeSealedRecordPdf(record, options, key));
    file.close();
    for (const QString &finding : findingsIn(file.fileName()))
        EXPECT_TRUE(allowed.contains(finding.trimmed())) << finding.toStdString();
}

TEST(Preflight, FindsNothingInASealedRecordButThatItIsPartThree)
{
    expectOnlyAllowed(support::sampleRecord({}), {});
}

TEST(Preflight, FindsNoMoreWhereALetterIsInNoFont)
{
    auto input = fullInput();
    for (std::string *text : {&input.instrument.name, &input.instrument.maker, &input.concessions.front().reason})
        *text += " \u0378\U000e0fff";
    input.instrument.sections.front().name += " \u0378";
    expectOnlyAllowed(sale_record::assemble(input).value(), {});
}

TEST(Preflight, FindsNoMoreInARecordThatReplacesOneAndHasPhotographs)
{
    expectOnlyAllowed(sale_record::assemble(fullInput()).value(), {});
}

TEST(Preflight, FindsNoMoreInAGrandsRecord)
{
    for (const Language language : {Language::English, Language::German}) {
        LanguageOfRecord words(language);
        RecordPdfOptions options;
        words.speakIn(options);
        options.paper = language == Language::English ? Paper::Letter : Paper::A4;
        expectOnlyAllowed(support::sampleRecord({.action = catalogue::ActionKind::Grand, .guarded = true}), options);
        QCoreApplication::removeTranslator(options.words);
    }
}

TEST(Preflight, FindsNoMoreInAGermanRecordWithPhotographs)
{
    LanguageOfRecord german(Language::German);
    RecordPdfOptions options;
    german.speakIn(options);
    expectOnlyAllowed(sale_record::assemble(fullInput()).value(), options);
}

} // namespace
} // namespace hammerline::record_pdf
