#pragma once
// Two charts of one quantity: along the keyboard with its tolerance band, and as a histogram over it. Both can show
// before and after together. Each is titled with the question it answers. Markers differ by shape and by colour; the
// print style is black alone.

#include "catalogue/catalogue.h"
#include "keyboard/keyboard.h"
#include "outcome/outcome.h"
#include "tolerance/judge.h"
#include "wording/number_form.h"
#include "wording/palette.h"

#include <QString>

#include <optional>
#include <string>

class QPainter;
class QRectF;

namespace hammerline::charts {

enum class Question {
    WhereAlongTheKeyboard, ///< value against note, band, section breaks
    HowSpread,             ///< histogram with the band
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
};

/// The question: "Where along the keyboard is let-off outside its limits?"
[[nodiscard]] QString titleOf(const ChartData &data);
/// The answer in figures: "3 of 88 notes out: 2 too large, 1 too small; 2 not read."
[[nodiscard]] QString answerOf(const ChartData &data);

/// The figures behind the chart: `note,name,quantity,unit,value,low,target,high,status,before` in exact mm or g, '.' as
/// the mark, LF, a header line; notes rising. Cells without a value are empty.
[[nodiscard]] std::string chartCsv(const ChartData &data);

/// Paints the chart as vectors; `pixelSize` is that of its small type in the painter's units. Needs a QApplication.
void renderChart(QPainter &painter, const QRectF &rect, const ChartData &data, const wording::Palette &palette,
                 int pixelSize);

/// Writes PNG, SVG, PDF or CSV by the file's suffix (case does not matter); an existing file is replaced. The fault
/// names a suffix that is none of the four. A disk that refuses is thrown as outcome::BrokenWorld, the old file
/// unharmed.
[[nodiscard]] outcome::Outcome<QString> exportChart(const ChartData &data, const QString &path,
                                                    const wording::Palette &palette);

} // namespace hammerline::charts
