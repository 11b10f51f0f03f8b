#include "record_pdf/record_pdf.h"

#include "exchange/answers_json.h"
#include "exchange/readings_csv.h"
#include "paper/paper.h"
#include "record_pdf/inside/pages.h"
#include "record_pdf/inside/trade_words.h"
#include "sale_record/record_number.h"
#include "seal/seal.h"

#include <QColorSpace>
#include <QFile>
#include <QPainter>
#include <QTranslator>

namespace hammerline::record_pdf {

namespace {

/// Puts the record's own language in force while its pages are set.
class LanguageInForce {
public:
    explicit LanguageInForce(QTranslator *words) : m_words(words)
    {
        if (m_words)
            QCoreApplication::installTranslator(m_words);
    }
    ~LanguageInForce()
    {
        if (m_words)
            QCoreApplication::removeTranslator(m_words);
    }
    LanguageInForce(const LanguageInForce &) = delete;
    LanguageInForce &operator=(const LanguageInForce &) = delete;

private:
    QTranslator *m_words;
};

paper::Size sizeOf(Paper size)
{
    return size == Paper::Letter ? paper::Size::Letter : paper::Size::A4;
}

void setPages(Sheet &sheet, const Context &context)
{
    setFrontPage(sheet, context);
    setTolerances(sheet, context);
    setSummary(sheet, context);
    setCharts(sheet, context);
    setExceptions(sheet, context);
    setReadings(sheet, context);
    setMethod(sheet, context);
    setWorkDone(sheet, context);
    setCautions(sheet, context);
}

QString titleOf(const Context &context)
{
    return Record::tr("Regulation record: %1").arg(fromCore(context.record.instrument.name));
}

/// The head of every page but the first, and the foot of all.
void paintFrame(QPainter &painter, const Sheet &sheet, int page, const Context &context)
{
    const QRectF body = sheet.body();
    const QString issued = Record::tr("Issued %1").arg(dayText(context.record.issued, context.options.locale)) +
                           QStringLiteral(" \u00b7 ") +
                           Record::tr("number %1").arg(fromCore(sale_record::numberOf(context.record)));
    const TextBlock number(Record::tr("page %1 of %2").arg(page).arg(sheet.pageCount()), quietText, body.width(),
                           Qt::AlignRight);
    number.paint(painter, {body.left(), body.bottom() + 20});
    TextBlock(issued, quietText, body.width()).paint(painter, {body.left(), body.bottom() + 20});
    if (context.hasStandIns)
        TextBlock(
            Record::tr("\ufffd stands for a letter that the type of this document does not have. The files inside "
                       "it hold what was typed."),
            smallText, body.width())
            .paint(painter, {body.left(), body.bottom() + 33});
    if (page > 1)
        TextBlock(titleOf(context), quietText, body.width()).paint(painter, {body.left(), body.top() - 30});
}

/// What the keys of record.json mean, so that the file stands alone.
std::string schemaText()
{
    QFile file(QStringLiteral(":/record/record.schema.json"));
    if (!file.open(QIODevice::ReadOnly))
        throw outcome::BrokenWorld("The schema of the record is not in this program. Nothing was written; install it "
                                   "anew.");
    return file.readAll().toStdString();
}

std::vector<seal::Attachment> attachmentsOf(const sale_record::SaleRecord &record)
{
    std::vector<seal::Attachment> files{
        {"record.json", "application/json", "The whole record for machines", exchange::recordJson(record)},
        {"record.schema.json", "application/schema+json", "What the keys of record.json mean (JSON Schema)",
         schemaText()},
        {"readings.csv", "text/csv", "The readings as left, every take",
         exchange::writeReadingsCsv(record.asLeft.readings)}};
    if (record.asFound)
        files.push_back({"readings-as-found.csv", "text/csv", "The readings as found, every take",
                         exchange::writeReadingsCsv(record.asFound->readings)});
    if (record.recheck)
        files.push_back({"readings-recheck.csv", "text/csv", "The readings of the recheck, every take",
                         exchange::writeReadingsCsv(record.recheck->readings)});
    return files;
}

seal::Dressing dressingOf(const Context &context, const sale_record::SaleRecord &data)
{
    seal::Dressing dressing;
    dressing.title = titleOf(context).toStdString();
    dressing.author = context.record.issuedBy;
    dressing.creator = "Hammerline " + context.record.programVersion;
    dressing.language = context.options.locale.bcp47Name().toStdString();
    dressing.made = context.record.issued;
    dressing.iccProfile = QColorSpace(QColorSpace::SRgb).iccProfile().toStdString();
    dressing.attachments = attachmentsOf(data);
    return dressing;
}

} // namespace

QByteArray makeRecordPdf(const sale_record::SaleRecord &record, const RecordPdfOptions &options)
{
    const LanguageInForce language(options.words);
    const auto shown = inTradeWords(record);
    const QString said = fromCore(exchange::recordJson(record));
    const Context context{shown, options, wording::formOf(record.asLeft.pass, options.locale),
                          paper::drawable(said) != said};
    Sheet sheet(paper::pointsOf(sizeOf(options.paper)));
    setPages(sheet, context);
    const auto frame = [&](QPainter &painter, int page) { paintFrame(painter, sheet, page, context); };
    const QByteArray pages = paper::paintedPages(sheet, sizeOf(options.paper), frame);
    const std::string dressed = seal::dress(std::string_view(pages.constData(), static_cast<std::size_t>(pages.size())),
                                            dressingOf(context, record));
    return QByteArray::fromStdString(dressed);
}

QByteArray makeSealedRecordPdf(const sale_record::SaleRecord &record, RecordPdfOptions options,
                               const seal::SigningKey &key)
{
    options.seal = SealLine{fromCore(key.name()), fromCore(seal::groupedFingerprint(key.fingerprint()))};
    const QByteArray pdf = makeRecordPdf(record, options);
    const std::string_view bytes(pdf.constData(), static_cast<std::size_t>(pdf.size()));
    return QByteArray::fromStdString(seal::sealRecord(bytes, key, record.issued));
}

} // namespace hammerline::record_pdf
