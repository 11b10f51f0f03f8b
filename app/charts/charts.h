#pragma once
// Charts of one quantity, each titled with the question it answers: along the keyboard with its tolerance band, as a
// histogram over it, how far each note moved between two passes, how the means went over many, and how far two passes
// of two people agree. The first two can show before and after together. Markers differ by shape and by colour; the
// print style is black alone.

#include "analysis/trend.h"
#include "catalogue/catalogue.h"
#include "keyboard/keyboard.h"
#include "outcome/outcome.h"
#include "tolerance/judge.h"
#include "wording/number_form.h"
#include "wording/palette.h"

#include <QString>

#include <optional>
#include <string>
#include <vector>

class QPainter;
class QRectF;

namespace hammerline::charts {

enum class Question {
    WhereAlongTheKeyboard, ///< value against note, band, section breaks
    HowSpread,             ///< histogram with the band
    WhichNotesMoved, ///< change against note, each over the changes that would have brought it inside; needs `before`
    HasItDrifted,    ///< means of the passes against time, with the climate of each; needs `trends`
    DoTheyAgree,     ///< difference against mean of two passes (Bland and Altman 1986); needs `before`
};

/// A value: copies what it shows.
struct ChartData {
    Question question = Question::WhereAlongTheKeyboard;
    catalogue::Quantity quantity = catalogue::Quantity::LetOff;
    keyboard::Compass compass{};
    keyboard::Sections sections{};
    tolerance::Judgement now{};
    std::optional<tolerance::Judgement> before{};
    wording::NumberForm form{};
    QString nowName{};    ///< "As left"; empty: "Now"
    QString beforeName{}; ///< "As found"; empty: "Before"
    QString subject{};    ///< name of the instrument, for the title of an exported chart; may be empty
    QString nowPerson{};  ///< who read each; may be empty
    QString beforePerson{};
    /// When the two passes were begun, where the answer is to say it; absent: it is not told.
    std::optional<readings::Instant> nowBegan{}, beforeBegan{};
    /// Expanded uncertainty of a difference of two readings, mm or g (analysis/drift.h); absent: not known.
    std::optional<double> toldApart{};
    /// Of `quantity`: the whole, then its sections.
    std::vector<analysis::Trend> trends{};
};

/// The question: "Where along the keyboard is let-off outside its limits?"
[[nodiscard]] QString titleOf(const ChartData &data);
/// The answer in figures: "3 of 88 notes out: 2 too large, 1 too small; 2 not read."
[[nodiscard]] QString answerOf(const ChartData &data);
/// A change in mm or g for people: "+0.30 mm", signed, in the unit of the form.
[[nodiscard]] QString changeText(double change, const ChartData &data);

/// The figures behind the chart, in mm or g, '.' as the mark, LF, a header line; cells without a value are empty.
/// Along and spread: `note,name,quantity,unit,value,low,target,high,status,before`, exact, notes rising. Moved and
/// agree: `note,name,quantity,unit,before,after,change,mean,low,target,high,status`. Drifted:
/// `quantity,section,pass,purpose,began,person,celsius,humidity,notes,unit,mean,change,change_low,change_high`. Words
/// that a spreadsheet would take for a formula have an apostrophe before them.
[[nodiscard]] std::string chartCsv(const ChartData &data);

/// Paints the chart as vectors; `pixelSize` is that of its small type in the painter's units. Needs a QApplication.
void renderChart(QPainter &painter, const QRectF &rect, const ChartData &data, const wording::Palette &palette,
                 int pixelSize);

/// Writes PNG, SVG, PDF or CSV by the file's suffix (case does not matter); an existing file is replaced. The fault
/// names a suffix that is none of the four. What is saved ends on paper: a page is drawn in the print style, a picture
/// or drawing in `palette`, or in the light one where that is dark. A disk that refuses is thrown as
/// outcome::BrokenWorld, the old file unharmed.
[[nodiscard]] outcome::Outcome<QString> exportChart(const ChartData &data, const QString &path,
                                                    const wording::Palette &palette);

} // namespace hammerline::charts
