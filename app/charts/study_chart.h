#pragma once
// The charts of a gauge study: every value by note and person, how closely each person repeats, and where the spread
// comes from. People differ by shape, not by colour. Each is titled with the question it answers, like those of
// charts.h, and exported the same way.
//
// Where a set judges the notes, each draws its tolerance and tells what the spread takes of it: values stand in the
// limits of their note; ranges are held against the narrowest tolerance, lowest to highest; components against the
// standard deviation of which twice fills half of that tolerance, so that a guarded set could accept nothing. A line
// that would squeeze the rest leaves the scale and is told at its edge.

#include "analysis/study_intervals.h"
#include "catalogue/catalogue.h"
#include "outcome/outcome.h"
#include "tolerance/tolerance.h"
#include "wording/number_form.h"
#include "wording/palette.h"

#include <QRectF>
#include <QString>

#include <map>
#include <string>
#include <vector>

class QPainter;

namespace hammerline::charts {

enum class StudyQuestion { ValuesByNoteAndPerson, RangeByPerson, Components };

/// A value: copies what it shows.
struct StudyChartData {
    StudyQuestion question = StudyQuestion::Components;
    catalogue::Quantity quantity = catalogue::Quantity::LetOff;
    std::vector<analysis::Trial> trials{}; ///< as the study was computed from
    analysis::GaugeStudy study{};
    analysis::StudyIntervals intervals{};
    wording::NumberForm form{};
    QString subject{}; ///< name of the gauge
    /// What the set says of the notes of the study; empty: none is known.
    std::map<keyboard::Note, tolerance::Limits> limits{};
};

[[nodiscard]] QString titleOf(const StudyChartData &data);
/// The answer in figures.
[[nodiscard]] QString answerOf(const StudyChartData &data);

/// What is drawn, '.' as the mark, LF, a header line. Of values the trials, `note,person,take,value (mm)` (or g), and
/// where limits are known `low (mm),target (mm),high (mm)` besides: with these it is no file that `hammerline
/// gauge-study` takes, which is what exchange::writeTrialsCsv writes. Of ranges `note,person,takes,lowest (mm),highest
/// (mm),range (mm)`, and `narrowest_tolerance (mm)` where one is known. Of components `component,unit,sd,low,high`, sd
/// and its interval in mm or g, and a line `half_tolerance` with half of the narrowest tolerance in place of the sd. A
/// person's name that a spreadsheet would take for a formula has a leading apostrophe.
[[nodiscard]] std::string chartCsv(const StudyChartData &data);

/// A mark or a bar of one note, where it was painted, and what it says.
struct PlacedNote {
    QRectF area{};
    keyboard::Note note{};
    QString story{};
};

/// `pixelSize` is that of its small type in the painter's units. What it painted of single notes.
std::vector<PlacedNote> renderChart(QPainter &painter, const QRectF &rect, const StudyChartData &data,
                                    const wording::Palette &palette, int pixelSize);

/// As exportChart in charts.h.
[[nodiscard]] outcome::Outcome<QString> exportChart(const StudyChartData &data, const QString &path,
                                                    const wording::Palette &palette);

/// Standard deviation in the unit of the form, with a digit more than the readings have.
[[nodiscard]] QString sdText(double sd, units::Dimension dimension, const wording::NumberForm &form);

} // namespace hammerline::charts
