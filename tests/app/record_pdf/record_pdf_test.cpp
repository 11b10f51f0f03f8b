#include "record_file.h"

#include "exchange/answers_json.h"
#include "exchange/readings_csv.h"
#include "seal/seal.h"

#include <QCoreApplication>
#include <QRegularExpression>
#include <QTranslator>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace hammerline::record_pdf {
namespace {

using support::SampleWish;

class RecordPdf : public RecordFile {};

RecordPdfOptions onPaper(Paper paper)
{
    RecordPdfOptions options;
    options.paper = paper;
    return options;
}

TEST_F(RecordPdf, EveryNoteOfTheKeyboardCanBeFoundByItsName)
{
    make({});
    const QStringList words = text().split(QRegularExpression(QStringLiteral("\\s+")));
    for (int number = 1; number <= 88; ++number) {
        const QString name = QString::fromStdString(keyboard::Note(number).name());
        EXPECT_TRUE(words.contains(name)) << name.toStdString();
    }
}

TEST_F(RecordPdf, WordsAreSpeltInLettersThatASearchFinds)
{
    make({});
    EXPECT_FALSE(text().contains(QRegularExpression(QStringLiteral("[\\x{FB00}-\\x{FB06}]"))))
        << "ligatures hide a word from a search";
    EXPECT_TRUE(text().contains(QStringLiteral("Let-off (mm)")));
}

TEST_F(RecordPdf, AShorterKeyboardEndsWhereItEnds)
{
    SampleWish wish;
    wish.lastNote = 85;
    make(wish);
    const QString all = text().simplified();
    EXPECT_TRUE(all.contains(QStringLiteral("85 notes, A0 to A7")));
    EXPECT_TRUE(all.contains(QStringLiteral("85 A7")));
    EXPECT_FALSE(all.contains(QStringLiteral("86 A#7")));
}

TEST_F(RecordPdf, PagesAreNumberedOfTheirWhole)
{
    make({});
    const QByteArray info = outputOf(QStringLiteral("pdfinfo"), {path()});
    const auto match = QRegularExpression(QStringLiteral("Pages:\\s+(\\d+)")).match(QString::fromUtf8(info));
    ASSERT_TRUE(match.hasMatch());
    const int pages = match.captured(1).toInt();
    EXPECT_GE(pages, 6);
    const QString all = text();
    for (int page = 1; page <= pages; ++page)
        EXPECT_TRUE(all.contains(QStringLiteral("page %1 of %2").arg(page).arg(pages))) << page;
}

TEST_F(RecordPdf, TitleLanguageAndAuthorAreNamed)
{
    make({});
    const QString info = QString::fromUtf8(outputOf(QStringLiteral("pdfinfo"), {path()}));
    EXPECT_TRUE(info.contains(QStringLiteral("Regulation record: Schoolhouse upright")));
    EXPECT_TRUE(info.contains(QStringLiteral("Invented Workshop")));
    EXPECT_TRUE(m_bytes.contains("/Lang (en-GB)")) << "the document's language";
}

TEST_F(RecordPdf, QpdfFindsNothingWrong)
{
    make({});
    const QByteArray said = outputOf(QStringLiteral("qpdf"), {QStringLiteral("--check"), path()});
    EXPECT_TRUE(said.contains("No syntax or stream encoding errors found")) << said.toStdString();
}

TEST_F(RecordPdf, EveryFontIsEmbeddedAndCanBeCopiedFrom)
{
    make({});
    const QList<QByteArray> lines = outputOf(QStringLiteral("pdffonts"), {path()}).split('\n');
    int fonts = 0;
    for (qsizetype i = 2; i < lines.size(); ++i) {
        const auto match = QRegularExpression(QStringLiteral(" (yes|no) +(yes|no) +(yes|no) +\\d+ +\\d+$"))
                               .match(QString::fromUtf8(lines[i]));
        if (!match.hasMatch())
            continue;
        ++fonts;
        EXPECT_EQ(match.captured(1), QStringLiteral("yes")) << lines[i].toStdString();
        EXPECT_EQ(match.captured(3), QStringLiteral("yes")) << lines[i].toStdString();
    }
    EXPECT_GT(fonts, 0);
}

TEST_F(RecordPdf, NothingIsAPictureOfPixels)
{
    make({});
    const QByteArray images = outputOf(QStringLiteral("pdfimages"), {QStringLiteral("-list"), path()});
    EXPECT_EQ(images.trimmed().split('\n').size(), 2) << images.toStdString();
}

TEST_F(RecordPdf, TheReadingsComeOutOfTheFileByteForByte)
{
    make({});
    EXPECT_EQ(fileInside(QStringLiteral("record.json")), exchange::recordJson(m_record));
    EXPECT_EQ(fileInside(QStringLiteral("readings.csv")), exchange::writeReadingsCsv(m_record.asLeft.readings));
    EXPECT_EQ(fileInside(QStringLiteral("readings-as-found.csv")),
              exchange::writeReadingsCsv(m_record.asFound->readings));
}

TEST_F(RecordPdf, TheDataStandsBesideTheSchemaThatItKeepsTo)
{
    make({});
    QFile schema(QStringLiteral(HAMMERLINE_SOURCE_DIR "/resources/schemas/record.schema.json"));
    ASSERT_TRUE(schema.open(QIODevice::ReadOnly));
    EXPECT_EQ(fileInside(QStringLiteral("record.schema.json")), schema.readAll().toStdString());
}

TEST_F(RecordPdf, TheSameRecordGivesTheSameBytes)
{
    make({});
    EXPECT_EQ(makeRecordPdf(m_record, {}), m_bytes);
}

TEST_F(RecordPdf, LetterAndA4AreTheirOwnSizes)
{
    make({}, onPaper(Paper::Letter));
    EXPECT_TRUE(outputOf(QStringLiteral("pdfinfo"), {path()}).contains("612 x 792"));
    make({}, onPaper(Paper::A4));
    EXPECT_TRUE(outputOf(QStringLiteral("pdfinfo"), {path()}).contains("(A4)"));
}

TEST_F(RecordPdf, WithoutAnAsFoundPassNothingIsSaidToHaveChanged)
{
    SampleWish wish;
    wish.withAsFound = false;
    make(wish);
    const QString all = text();
    EXPECT_TRUE(all.contains(QStringLiteral("How it was before is not recorded")));
    EXPECT_FALSE(all.contains(QStringLiteral("mended")));
    EXPECT_FALSE(outputOf(QStringLiteral("pdfdetach"), {QStringLiteral("-list"), path()}).contains("as-found"));
}

TEST_F(RecordPdf, ReadingsOfUnfinishedWorkAreSaidToBeSuch)
{
    auto input = support::sampleInput({});
    input.passes.back().first.purpose = readings::Purpose::Setting;
    writeFile(makeRecordPdf(sale_record::assemble(input).value(), {}));
    EXPECT_TRUE(text().simplified().contains(QStringLiteral("The work was not finished")));
    input.passes.pop_back();
    writeFile(makeRecordPdf(sale_record::assemble(input).value(), {}));
    EXPECT_TRUE(text().simplified().contains(QStringLiteral("as it came; no work on it is recorded")));
}

TEST_F(RecordPdf, LimitsArePrintedExactlyWhateverTheGaugeCanRead)
{
    auto input = support::sampleInput({});
    input.passes.back().first.gauge.resolution = units::Length::millimetres(0.1);
    input.set.entries[catalogue::Quantity::LetOff].both.front().high = units::Length::nanometres(3'175'000);
    input.set.entries[catalogue::Quantity::LetOff].both.front().target = units::Length::nanometres(3'100'000);
    writeFile(makeRecordPdf(sale_record::assemble(input).value(), {}));
    EXPECT_TRUE(text().contains(QStringLiteral("3.175")));
}

TEST_F(RecordPdf, AGrandWithManyExceptionsNamesEachOfThem)
{
    SampleWish wish;
    wish.action = catalogue::ActionKind::Grand;
    wish.guarded = true;
    wish.spreadAsLeft = 0.9;
    make(wish, onPaper(Paper::Letter));
    EXPECT_GT(m_record.exceptions.size(), 60u);
    EXPECT_TRUE(text().contains(QStringLiteral("drop measured")));
    EXPECT_TRUE(text().contains(QStringLiteral("Guarded")));
}

TEST_F(RecordPdf, CautionsSpeakOfCautionAndLeaveTheLawToTheLaw)
{
    make({});
    const QString all = text().simplified();
    EXPECT_TRUE(all.contains(QStringLiteral("no legal advice")));
    EXPECT_TRUE(all.contains(QStringLiteral("ask the law of your country")));
    EXPECT_TRUE(all.contains(QStringLiteral("Nobody stands behind it")));
}

TEST_F(RecordPdf, EachNumberOfThePromiseHasASourceOrSaysThatItHasNone)
{
    SampleWish wish;
    auto input = support::sampleInput(wish);
    input.set.source.clear();
    m_record = sale_record::assemble(input).value();
    writeFile(makeRecordPdf(m_record, {}));
    EXPECT_EQ(text().count(QStringLiteral("common practice, no source")), 8);
    EXPECT_GE(text().count(QStringLiteral("no source")), 16);
}

TEST_F(RecordPdf, TheFrontPageStaysOnePageHoweverMuchThereIsToSay)
{
    SampleWish wish;
    wish.action = catalogue::ActionKind::Grand;
    auto input = support::sampleInput(wish);
    input.instrument.name = std::string(100, 'W') + ' ' + std::string(99, 'M');
    input.set.entries[catalogue::Quantity::KeyHeight] = input.set.entries[catalogue::Quantity::Dip];
    input.set.entries[catalogue::Quantity::DamperStart] = input.set.entries[catalogue::Quantity::Blow];
    RecordPdfOptions options = onPaper(Paper::Letter);
    options.seal = SealLine{QStringLiteral("Invented Workshop"), QString(79, QLatin1Char('a'))};
    writeFile(makeRecordPdf(sale_record::assemble(input).value(), options));
    const QByteArray second =
        outputOf(QStringLiteral("pdftotext"), {QStringLiteral("-f"), QStringLiteral("2"), QStringLiteral("-l"),
                                               QStringLiteral("2"), path(), QStringLiteral("-")});
    EXPECT_TRUE(second.contains("What was promised")) << second.toStdString();
}

/// Another language, as far as two words go.
class TwoGermanWords : public QTranslator {
public:
    QString translate(const char *context, const char *text, const char *, int) const override
    {
        if (qstrcmp(context, "Record") == 0 && qstrcmp(text, "Regulation record") == 0)
            return QStringLiteral("Regulierungsbericht");
        return {};
    }
    bool isEmpty() const override { return false; }
};

TEST_F(RecordPdf, SpeaksItsOwnLanguageAndLeavesTheProgramItsOwn)
{
    TwoGermanWords german;
    RecordPdfOptions options;
    options.words = &german;
    options.locale = QLocale(QLocale::German, QLocale::Germany);
    make({}, options);
    const QString all = text();
    EXPECT_TRUE(all.contains(QStringLiteral("Regulierungsbericht")));
    EXPECT_TRUE(all.contains(QStringLiteral("12. Februar 2026")) || all.contains(QStringLiteral("12 Februar 2026")));
    EXPECT_TRUE(m_bytes.contains("/Lang (de)"));
    EXPECT_EQ(QCoreApplication::translate("Record", "Regulation record"), QStringLiteral("Regulation record"));
}

TEST_F(RecordPdf, ASealedRecordHoldsAndPrintsTheFingerprintOfItsKey)
{
    m_record = support::sampleRecord({});
    const auto key = seal::makeSigningKey("Invented Workshop", m_record.issued).value();
    const QByteArray sealed = makeSealedRecordPdf(m_record, {}, key);
    writeFile(sealed);
    const auto report = seal::verifyRecord(sealed.toStdString(), {key.fingerprint()});
    EXPECT_EQ(report.verdict, seal::SealVerdict::Unaltered) << report.reason;
    EXPECT_EQ(report.files.size(), 4u);
    const QString printed = QString::fromStdString(seal::groupedFingerprint(key.fingerprint()));
    EXPECT_TRUE(text().simplified().contains(printed)) << text().toStdString();
    const QByteArray said = outputOf(QStringLiteral("pdfsig"), {path()});
    EXPECT_TRUE(said.contains("Signature is Valid")) << said.toStdString();
    EXPECT_TRUE(said.contains("Total document signed"));
    EXPECT_TRUE(outputOf(QStringLiteral("qpdf"), {QStringLiteral("--check"), path()}).contains("No syntax"));
}

} // namespace
} // namespace hammerline::record_pdf
