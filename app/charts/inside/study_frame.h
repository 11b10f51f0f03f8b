#pragma once
// What the charts of a study share: a head with question and answer, a legend at the foot, and a plot between them with
// an axis of its own, all painted at once. The parts are taken off the rectangle in the order of the calls.

#include "charts/inside/chart_legend.h"
#include "charts/inside/chart_maker.h"
#include "charts/inside/nice_axis.h"
#include "charts/study_chart.h"

#include <QPainter>
#include <QRectF>

#include <optional>

namespace hammerline::charts {

class StudyFrame {
public:
    StudyFrame(QPainter &painter, const QRectF &rect, const StudyChartData &data, const ChartLook &look);

    void addHead();
    void addLegend(const std::vector<LegendEntry> &entries);
    /// Room for a line of names below the plot.
    void keepFoot(double lines) { m_plot.setBottom(m_plot.bottom() - lines * lineHeight()); }
    void keepLeft(double width) { m_plot.setLeft(m_plot.left() + width); }
    /// With its grid, its figures and its title, at the left; the title in as many lines as the axis is long for.
    void addVerticalAxis(const NiceRange &range, const QString &title);
    /// The same below.
    void addHorizontalAxis(const NiceRange &range, const QString &title);

    [[nodiscard]] const QRectF &plot() const { return m_plot; }
    /// A line of the tolerance across the plot at a height, or down it at a place; where that is beyond the scale, an
    /// arrow at its end. Their place in the legend is legendOfTolerance.
    void addToleranceAcross(double at);
    void addToleranceDown(double at);
    /// `beyond`: it is off the scale, and arrows stand for it.
    [[nodiscard]] LegendEntry legendOfTolerance(const QString &text, bool beyond) const;
    [[nodiscard]] double x(double value) const;
    [[nodiscard]] double y(double value) const;
    [[nodiscard]] double lineHeight() const;
    [[nodiscard]] double widthOf(const QString &text) const;
    /// In the small type, `ink` or quiet.
    void write(const QRectF &into, int flags, const QString &text, bool quiet = true);

    QPainter &painter;
    const StudyChartData &data;
    const ChartLook &look;
    std::vector<PlacedNote> placed{}; ///< so far

private:
    /// Centred, a line below the other, the first at the top of `into`.
    void writeLines(const QRectF &into, const QStringList &lines);
    QRectF m_plot;
    NiceRange m_across{}, m_up{};
};

void paintStudyValues(StudyFrame &frame);
void paintStudyRanges(StudyFrame &frame);
void paintStudyComponents(StudyFrame &frame);

/// Who took part, by name; what they read; which notes, rising.
[[nodiscard]] std::vector<std::string> peopleOf(const StudyChartData &data);
[[nodiscard]] std::vector<keyboard::Note> notesOf(const StudyChartData &data);
/// The narrowest tolerance of the notes, low to high, in mm or g; absent where no note has two limits apart.
[[nodiscard]] std::optional<double> narrowestTolerance(const StudyChartData &data);
/// How far a scale from 0 goes that shows `most`, and the tolerance where that is no more than twice as far.
[[nodiscard]] double heightFor(double most, const std::optional<double> &tolerance);
/// mm or g of the statistics as a text in the form's unit, with its digits.
[[nodiscard]] QString amountText(const StudyChartData &data, double amount);
/// A band as the tolerances of all charts are filled, for the legend.
[[nodiscard]] LegendEntry legendOfBand(const QString &text, const ChartLook &look);
/// In the unit of the form.
[[nodiscard]] std::vector<double> valuesOf(const StudyChartData &data, keyboard::Note note, const std::string &person);
[[nodiscard]] double rangeOf(const std::vector<double> &values);
/// A length or mass of the statistics in the unit of the form.
[[nodiscard]] double shown(double amount, const StudyChartData &data);
[[nodiscard]] QString unitOf(const StudyChartData &data);

/// One shape a person; after the eighth they begin again.
void drawPerson(QPainter &painter, std::size_t person, QPointF centre, double size, const ChartLook &look);
[[nodiscard]] std::vector<LegendEntry> legendOfPeople(const StudyChartData &data, const ChartLook &look);

} // namespace hammerline::charts
