#pragma once
// The chapters of the record, each a free function that sets itself onto the sheet. They share what is said of the
// record as a whole; every figure comes from the SaleRecord and none is computed on the way to the paper.

#include "paper/sheet.h"
#include "record_pdf/inside/record_words.h"
#include "record_pdf/record_pdf.h"
#include "wording/number_form.h"

#include <QImage>

namespace hammerline::record_pdf {

struct Context {
    const sale_record::SaleRecord &record;
    const RecordPdfOptions &options;
    wording::NumberForm form{};
    bool hasStandIns = false; ///< letters that no font at hand can draw: paper::drawable

    [[nodiscard]] bool hasBefore() const { return record.asFound.has_value(); }
    /// "As found" and "As left", or whatever the purpose of the pass was.
    [[nodiscard]] QString foundName() const;
    [[nodiscard]] QString leftName() const;
    /// "Let-off (mm)".
    [[nodiscard]] QString headOf(catalogue::Quantity quantity) const;
};

/// Quantities read in either pass or judged by the set, in the order of the catalogue.
[[nodiscard]] std::vector<catalogue::Quantity> quantitiesOf(const sale_record::SaleRecord &record);

void setFrontPage(Sheet &sheet, const Context &context);
/// How much was read again, and how much of it is in; only where there is a recheck of a part.
[[nodiscard]] QString recheckSentence(const Context &context);
void setSummary(Sheet &sheet, const Context &context);
/// What moved since it was left, on a record of a recheck; part of the summary.
void setDrift(Sheet &sheet, const Context &context);
/// Spot checks of the readings as left; part of the summary.
void setSecondReadings(Sheet &sheet, const Context &context);
void setCharts(Sheet &sheet, const Context &context);
void setExceptions(Sheet &sheet, const Context &context);
/// What was accepted, in this pass and before; part of the exceptions.
void setConcessions(Sheet &sheet, const Context &context);
void setTolerances(Sheet &sheet, const Context &context);
void setReadings(Sheet &sheet, const Context &context);
void setMethod(Sheet &sheet, const Context &context);
/// Work, departures, condition, photographs.
void setWorkDone(Sheet &sheet, const Context &context);
void setCautions(Sheet &sheet, const Context &context);

/// Null where its bytes are not there or are no picture.
[[nodiscard]] QImage pictureOf(const sale_record::SaleRecord &record, const dossier::Photograph &photograph);
/// As large as `place` lets it be, at its top left; nothing where it is null.
void paintPicture(QPainter &painter, const QRectF &place, const QImage &picture);

/// "20.5 °C, 48 % relative humidity", or that it is not stated.
[[nodiscard]] QString climateText(const readings::Pass &pass, const Context &context);

/// A chapter of tables starts where the one before it ended, if this much of the page is left.
constexpr double roomOfAStart = 240;
/// Of a chapter that may break behind a few lines.
constexpr double roomOfAShortStart = 160;

/// Names of chapters that other chapters point to.
[[nodiscard]] QString exceptionsChapter();
[[nodiscard]] QString readingsChapter();

} // namespace hammerline::record_pdf
