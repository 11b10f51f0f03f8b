#pragma once
// The regulation record on paper: page one for a family, the pages after it for the next technician, and the readings
// themselves embedded as files (record.json with its JSON Schema, readings.csv and, where the instrument was measured
// as it came, readings-as-found.csv; of a recheck of a part, readings-recheck.csv).
//
// Everything is vector, every font embedded, every word searchable. The same record with the same options gives the
// same bytes: the only moment on the pages and in the metadata is SaleRecord::issued. Needs a QApplication (the
// offscreen platform will do), but no window. Built to PDF/A-3b; a signature is put over the bytes by `seal`.

#include "sale_record/sale_record.h"
#include "seal/key_store.h"

#include <QByteArray>
#include <QLocale>
#include <QString>

#include <optional>

class QTranslator;

namespace hammerline::record_pdf {

enum class Paper { A4, Letter };

/// Who seals the bytes afterwards; printed, so that a reader can hold the certificate against the paper.
struct SealLine {
    QString name{};        ///< common name in the certificate
    QString fingerprint{}; ///< SHA-256 of the certificate, as `verify` prints it
};

struct RecordPdfOptions {
    Paper paper = Paper::A4;
    /// Dates, decimal mark and the document's language mark.
    QLocale locale = QLocale(QLocale::English, QLocale::UnitedKingdom);
    /// Words of the record's own language, apart from the program's; in force while the record is made. Not owned.
    /// Null: the program's language.
    QTranslator *words = nullptr;
    /// Present where the bytes will be sealed.
    std::optional<SealLine> seal{};
};

/// The whole file. Throws outcome::BrokenWorld where Qt gives no document.
[[nodiscard]] QByteArray makeRecordPdf(const sale_record::SaleRecord &record, const RecordPdfOptions &options);

/// The same, sealed at the moment of issue with the key, whose fingerprint then stands on page one (options.seal is set
/// from the key). Sealing draws a random number, so no two of these are the same.
[[nodiscard]] QByteArray makeSealedRecordPdf(const sale_record::SaleRecord &record, RecordPdfOptions options,
                                             const seal::SigningKey &key);

} // namespace hammerline::record_pdf
