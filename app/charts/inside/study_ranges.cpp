// How far a person's own takes lie apart: a panel a person, in it a bar a note, a dashed line at the person's mean;
// across all of them the narrowest tolerance.
#include "charts/inside/study_frame.h"

#include "wording/wording.h"

#include <QCoreApplication>
#include <QFontMetricsF>

#include <algorithm>

namespace hammerline::charts {

namespace {

std::vector<double> rangesOf(const StudyChartData &data, const std::string &person)
{
    std::vector<double> ranges;
    for (const keyboard::Note note : notesOf(data))
        ranges.push_back(rangeOf(valuesOf(data, note, person)));
    return ranges;
}

double meanOf(const std::vector<double> &values)
{
    double sum = 0;
    for (const double value : values)
        sum += value;
    return sum / static_cast<double>(values.size());
}

void paintPanel(StudyFrame &frame, const std::string &person, const QRectF &panel)
{
    const auto ranges = rangesOf(frame.data, person);
    const auto notes = notesOf(frame.data);
    const double step = panel.width() * 0.9 / static_cast<double>(ranges.size());
    for (std::size_t note = 0; note < ranges.size(); ++note) {
        const double left = panel.left() + panel.width() * 0.05 + step * (static_cast<double>(note) + 0.2);
        const QRectF bar(QPointF(left, frame.y(ranges[note])), QPointF(left + step * 0.6, frame.y(0)));
        frame.painter.setPen(QPen(frame.look.palette.ink, frame.look.line()));
        frame.painter.setBrush(frame.look.palette.band);
        frame.painter.drawRect(bar);
        const QRectF whole(QPointF(left, panel.top()), QPointF(left + step * 0.6, panel.bottom()));
        frame.placed.push_back(
            {whole, notes[note],
             QCoreApplication::translate("desktop_charts", "%1, %2: %3 %4 from the lowest to the highest")
                 .arg(wording::nameOf(notes[note]), QString::fromStdString(person),
                      wording::numberText(ranges[note],
                                          frame.data.form.decimalsFor(catalogue::infoOf(frame.data.quantity).dimension),
                                          frame.data.form),
                      unitOf(frame.data))});
    }
    const double mean = meanOf(ranges);
    frame.painter.setPen(QPen(frame.look.palette.ink, frame.look.line() * 1.5, Qt::DashLine));
    frame.painter.drawLine(QPointF(panel.left(), frame.y(mean)), QPointF(panel.right(), frame.y(mean)));
    frame.painter.setPen(QPen(frame.look.palette.line, frame.look.line()));
    frame.painter.drawLine(panel.topRight(), panel.bottomRight());
    const QRectF foot(panel.left(), panel.bottom() + frame.lineHeight() * 0.2, panel.width(), frame.lineHeight());
    const QString name = QFontMetricsF(frame.look.smallFont())
                             .elidedText(shortName(QString::fromStdString(person)), Qt::ElideRight, foot.width());
    frame.write(foot, Qt::AlignCenter, name, false);
}

std::vector<LegendEntry> legendOf(const StudyFrame &frame, double height)
{
    const ChartLook look = frame.look;
    std::vector<LegendEntry> entries{
        {QCoreApplication::translate("desktop_charts", "one note, lowest to highest take; notes rising"),
         [look](QPainter &painter, const QRectF &box) {
             painter.setPen(QPen(look.palette.ink, look.line()));
             painter.setBrush(look.palette.band);
             painter.drawRect(box.adjusted(box.width() * 0.3, 0, -box.width() * 0.3, 0));
         }},
        {QCoreApplication::translate("desktop_charts", "mean of the person"),
         [look](QPainter &painter, const QRectF &box) {
             painter.setPen(QPen(look.palette.ink, look.line() * 1.5, Qt::DashLine));
             painter.drawLine(QPointF(box.left(), box.center().y()), QPointF(box.right(), box.center().y()));
         }}};
    if (const auto tolerance = narrowestTolerance(frame.data))
        entries.push_back(frame.legendOfTolerance(
            QCoreApplication::translate("desktop_charts", "the narrowest tolerance, lowest to highest: %1")
                .arg(amountText(frame.data, *tolerance)),
            shown(*tolerance, frame.data) > height));
    return entries;
}

} // namespace

void paintStudyRanges(StudyFrame &frame)
{
    constexpr int ticks = 5;
    const auto people = peopleOf(frame.data);
    double most = 0;
    for (const std::string &person : people)
        most = std::max(most, std::ranges::max(rangesOf(frame.data, person)));
    const auto tolerance = narrowestTolerance(frame.data);
    const double height = heightFor(most, tolerance ? std::optional(shown(*tolerance, frame.data)) : std::nullopt);
    const NiceRange range = niceRange(0, height, ticks);
    frame.addLegend(legendOf(frame, range.to));
    frame.keepFoot(1.4);
    frame.addVerticalAxis(
        range, QCoreApplication::translate("desktop_charts", "Range of one note's takes (%1)").arg(unitOf(frame.data)));
    const double width = frame.plot().width() / static_cast<double>(people.size());
    for (std::size_t person = 0; person < people.size(); ++person)
        paintPanel(frame, people[person],
                   QRectF(frame.plot().left() + width * static_cast<double>(person), frame.plot().top(), width,
                          frame.plot().height()));
    if (tolerance)
        frame.addToleranceAcross(shown(*tolerance, frame.data));
}

} // namespace hammerline::charts
