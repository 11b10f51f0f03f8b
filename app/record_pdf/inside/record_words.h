#pragma once
// The words of the paper that no window needs: what a family is told of a quantity, the decision rule, the cautions,
// and the many labels. Translatable in the context "Record".

#include "catalogue/catalogue.h"
#include "keyboard/keyboard.h"
#include "paper/paper.h"
#include "sale_record/sale_record.h"
#include "tolerance/tolerance.h"

#include <QCoreApplication>
#include <QLocale>
#include <QString>

#include <vector>

namespace hammerline::record_pdf {

using paper::bodyText;
using paper::chapterText;
using paper::Column;
using paper::fontOf;
using paper::headingText;
using paper::quietText;
using paper::Sheet;
using paper::smallText;
using paper::Table;
using paper::TextBlock;
using paper::TextStyle;
using paper::widthOf;

/// Record::tr("…") translates in the context "Record".
struct Record {
    Q_DECLARE_TR_FUNCTIONS(Record)
};

/// "Keys go down equally deep": what a family is told of a quantity.
[[nodiscard]] QString plainMeaningOf(catalogue::Quantity quantity);
/// "Upright piano" or "Grand piano".
[[nodiscard]] QString pianoKind(catalogue::ActionKind action);
/// One line: kind, maker, model, serial, year, size, compass; what is not known is left out.
[[nodiscard]] QString describe(const instrument::Instrument &instrument, const QLocale &locale);
[[nodiscard]] QString cautionText(sale_record::Caution caution);
[[nodiscard]] QString ruleText(tolerance::Rule rule);
/// "A0 to D1", or "A0" where both are one.
[[nodiscard]] QString runText(keyboard::Note first, keyboard::Note last);
/// "A0 to D1, F#1, C8": runs of neighbours joined.
[[nodiscard]] QString noteRuns(const std::vector<keyboard::Note> &rising);
/// "3 March 2026" in the locale's long form, of the day in UTC.
[[nodiscard]] QString dayText(readings::Instant instant, const QLocale &locale);
[[nodiscard]] QString fromCore(const std::string &text);

} // namespace hammerline::record_pdf
