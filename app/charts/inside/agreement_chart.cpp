// Difference against mean (Bland and Altman 1986): does one person read more than the other, and how far apart are
// they? The band is what the tolerance leaves: differences within the narrowest half-width of the limits.
#include "charts/inside/changes.h"
#include "charts/inside/dot_layer.h"
#include "charts/inside/nice_axis.h"
#include "charts/inside/plot.h"

#include "wording/wording.h"

#include <QChart>
#include <QCoreApplication>
#include <QLineSeries>
#include <QPainter>
#include <QValueAxis>

#include <algorithm>
#include <cmath>
#include <limits>

namespace hammerline::charts {

namespace {

constexpr int ticks = 7;

QString tr(const char *text)
{
    return QCoreApplication::translate("charts", text);
}

/// Of the notes read both times; absent where none has limits on both sides.
std::optional<double> narrowestHalfWidth(const std::vector<ChangedNote> &notes)
{
    std::optional<double> narrowest;
    for (const ChangedNote &note : notes)
        if (note.least && note.most)
            narrowest =
                std::min(narrowest.value_or(std::numeric_limits<double>::max()), (*note.most - *note.least) / 2);
    return narrowest;
}

struct Ranges {
    NiceRange x;
    NiceRange y;
};

Ranges rangesOf(const std::vector<ChangedNote> &notes, const std::optional<analysis::Comparison> &comparison,
                std::optional<double> halfWidth)
{
    if (notes.empty())
        return {niceRange(0, 1, ticks), niceRange(-1, 1, ticks)};
    double low = std::numeric_limits<double>::max(), high = std::numeric_limits<double>::lowest(), most = 0;
    for (const ChangedNote &note : notes) {
        const double middle = (note.before + note.after) / 2;
        low = std::min(low, middle);
        high = std::max(high, middle);
        most = std::max(most, std::abs(note.change));
    }
    for (const auto &edge : {comparison->agreementLow, comparison->agreementHigh})
        most = std::max(most, std::abs(edge.value_or(0)));
    if (halfWidth)
        most = std::max(most, std::min(*halfWidth * 1.1, most * 2));
    const double air = (high - low) * 0.04;
    return {niceRange(low - air, high + air, ticks), niceRange(-most * 1.05, most * 1.05, ticks)};
}

LegendEntry lineEntry(const QString &text, Qt::PenStyle style, double width, const ChartLook &look)
{
    return {text, [style, width, look](QPainter &painter, const QRectF &box) {
                painter.setPen(QPen(look.palette.ink, look.line() * width, style));
                painter.drawLine(QPointF(box.left(), box.center().y()), QPointF(box.right(), box.center().y()));
            }};
}

std::vector<LegendEntry> legendOf(bool banded, const ChartLook &look)
{
    std::vector<LegendEntry> entries{lineEntry(tr("mean difference"), Qt::SolidLine, 2, look),
                                     lineEntry(tr("19 of 20 differences lie within"), Qt::DashLine, 1, look)};
    if (banded)
        entries.push_back({tr("less than half of the narrowest tolerance"),
                           [look](QPainter &painter, const QRectF &box) { painter.fillRect(box, look.palette.band); }});
    return entries;
}

/// A line through the whole chart with its figure at one end.
struct Figure {
    double value = 0;
    QPen pen{};
    ChartLabel::Side side = ChartLabel::Side::AboveRight;
};

void addFigure(const Plot &plot, const Ranges &ranges, const Figure &figure, const ChartData &data,
               DotLayer::Content &content)
{
    plot.line({{ranges.x.from, figure.value}, {ranges.x.to, figure.value}}, figure.pen);
    content.labels.push_back({ranges.x.to, figure.value, changeFigure(figure.value, data), figure.side});
}

void addFigures(const Plot &plot, const Ranges &ranges, const analysis::Comparison &comparison, const ChartData &data,
                DotLayer::Content &content)
{
    using Side = ChartLabel::Side;
    const QPen dashed = plot.pen(plot.look.palette.ink, 1, Qt::DashLine);
    addFigure(plot, ranges, {comparison.meanChange, plot.pen(plot.look.palette.ink, 2), Side::AboveLeft}, data,
              content);
    if (!comparison.agreementLow || !comparison.agreementHigh)
        return;
    addFigure(plot, ranges, {*comparison.agreementLow, dashed, Side::BelowRight}, data, content);
    addFigure(plot, ranges, {*comparison.agreementHigh, dashed, Side::AboveRight}, data, content);
}

} // namespace

ChartLayer *fillAgreementChart(QChart &chart, const ChartData &data, const ChartLook &look)
{
    const auto notes = changedNotes(data);
    const auto comparison = comparisonOf(notes);
    const auto halfWidth = narrowestHalfWidth(notes);
    const Ranges ranges = rangesOf(notes, comparison, halfWidth);
    const QString unit = wording::unitText(catalogue::infoOf(data.quantity).dimension, data.form);
    auto *x = addAxis(chart, Qt::AlignBottom, {tr("Mean of both, %1").arg(axisTitle(data))}, look);
    const AxisTitle less{tr("%1 less %2 (%3)").arg(QStringLiteral("%1"), QStringLiteral("%2"), unit),
                         {nowParty(data), beforeParty(data)}};
    auto *y = addAxis(chart, Qt::AlignLeft, less, look);
    apply(ranges.x, *x);
    apply(ranges.y, *y);
    const Plot plot{chart, look, x, y};
    if (halfWidth)
        plot.field({ranges.x.from, std::max(-*halfWidth, ranges.y.from)},
                   {ranges.x.to, std::min(*halfWidth, ranges.y.to)});
    plot.line({{ranges.x.from, 0}, {ranges.x.to, 0}}, plot.pen(look.palette.line, 1));
    DotLayer::Content content;
    if (comparison)
        addFigures(plot, ranges, *comparison, data, content);
    for (const ChangedNote &note : notes)
        content.dots.push_back({.note = note.note,
                                .kind = note.kind == Kind::Unjudged ? Kind::Unjudged : Kind::Within,
                                .x = (note.before + note.after) / 2,
                                .y = note.change,
                                .story = note.story,
                                .apart = note.apart});
    return new DotLayer(chart, plot.frame(), look, legendOf(halfWidth.has_value(), look), std::move(content));
}

} // namespace hammerline::charts
