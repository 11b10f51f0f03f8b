#include "main_window/logbook_files.h"

#include "exchange/exchange.h"
#include "main_window/while_painting.h"
#include "record_pdf/record_input.h"
#include "record_pdf/record_pdf.h"
#include "seal/workshop_key.h"
#include "wording/plain_name.h"

#include <QCoreApplication>

namespace hammerline::main_window {

outcome::Outcome<std::vector<readings::Reading>>
readingsFromFile(const std::string &path, const instrument::Instrument &instrument, units::Unit bareUnit)
{
    const auto text = exchange::readFile(path);
    if (!text)
        return text.faults();
    return exchange::readReadingsCsv(text.value(), {path, instrument.action, instrument.compass, bareUnit});
}

outcome::Outcome<bool> exportPass(const logbook::Logbook &book, readings::PassId pass, const std::string &path)
{
    const std::string text = exchange::writeReadingsCsv(book.readings(pass));
    return exchange::writeFile(path, text, exchange::Overwrite::Yes);
}

outcome::Outcome<sale_record::SaleRecord> recordOf(const logbook::Logbook &book,
                                                   const instrument::Instrument &instrument,
                                                   const logbook::Stamp &stamp, bool tellSale)
{
    auto input = record_pdf::recordInputOf(
        book, instrument, {stamp.at, stamp.person, QCoreApplication::applicationVersion().toStdString()});
    if (!input)
        return input.faults();
    input.value().tellSale = tellSale;
    return sale_record::assemble(input.value());
}

outcome::Outcome<std::optional<record_pdf::ReplacedRecord>> writeRecord(sale_record::SaleRecord record,
                                                                        const RecordWishes &wishes,
                                                                        const std::string &path,
                                                                        const std::string &keyFile)
{
    std::optional<record_pdf::ReplacedRecord> earlier;
    if (wishes.replaces) {
        const auto replaced = record_pdf::replacedRecord(wishes.replaces->toStdString(), record.instrument);
        if (!replaced)
            return replaced.faults();
        earlier = replaced.value();
        record.replaces = earlier->named;
    }
    record.workshop = wishes.workshop.toStdString();
    const std::string name = seal::keyNameOf(record.workshop, record.issuedBy);
    const auto key = whilePainting([&] { return seal::workshopKey(keyFile, name, record.issued, wishes.passphrase); });
    if (!key)
        return key.faults();
    record_pdf::LanguageOfRecord language(wishes.language);
    record_pdf::RecordPdfOptions options{.paper = wishes.paper};
    language.speakIn(options);
    const QByteArray bytes = record_pdf::makeSealedRecordPdf(record, options, key.value());
    const auto written = exchange::writeFile(path, {bytes.constData(), static_cast<std::size_t>(bytes.size())},
                                             exchange::Overwrite::Yes);
    if (!written)
        return written.faults();
    return earlier;
}

QString proposedName(const instrument::Instrument &instrument, const QString &what)
{
    return wording::plainName(QString::fromStdString(instrument.name)) + '-' + what;
}

} // namespace hammerline::main_window
