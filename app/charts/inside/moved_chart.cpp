// How far each note moved. Over each note stands its own small gauge: the changes that would have brought it inside.
#include "charts/inside/changes.h"
#include "charts/inside/chart_marks.h"
#include "charts/inside/dot_layer.h"
#include "charts/inside/nice_axis.h"
#include "charts/inside/plot.h"

#include "wording/wording.h"

#include <QCategoryAxis>
#include <QChart>
#include <QCoreApplication>
#include <QLineSeries>
#include <QPainter>
#include <QValueAxis>

#include <algorithm>
#include <cmath>
#include <set>

namespace hammerline::charts {

namespace {

constexpr int yTicks = 7;
constexpr double gaugesSeen = 1.5; ///< of the largest change: gauges that reach further are cut there

QString tr(const char *text)
{
    return QCoreApplication::translate("charts", text);
}

NiceRange rangeOf(const std::vector<ChangedNote> &notes, std::optional<double> told)
{
    double most = told.value_or(0) * 1.2;
    for (const ChangedNote &note : notes)
        most = std::max(most, std::abs(note.change));
    const double seen = most > 0 ? most * gaugesSeen : 1;
    double low = -most, high = most;
    for (const ChangedNote &note : notes) {
        low = std::min(low, std::max(note.least.value_or(0), -seen));
        high = std::max(high, std::min(note.most.value_or(0), seen));
    }
    return niceRange(low * 1.05, high * 1.05, yTicks);
}

Dot dotOf(const ChangedNote &note, const NiceRange &range)
{
    Dot dot{.note = note.note, .kind = note.kind, .x = double(note.note.number()), .y = note.change};
    dot.story = note.story;
    if (note.least || note.most) {
        dot.low = note.least.value_or(range.from);
        dot.high = note.most.value_or(range.to);
    }
    dot.stemFrom = 0;
    dot.apart = note.apart;
    return dot;
}

std::vector<LegendEntry> legendOf(const std::vector<Dot> &dots, bool told, const ChartLook &look)
{
    std::vector<LegendEntry> entries;
    std::set<Kind> present;
    for (const Dot &dot : dots)
        present.insert(*dot.kind);
    const auto addKind = [&](Kind kind, const QString &text) {
        if (present.contains(kind))
            entries.push_back({text, [kind, look](QPainter &painter, const QRectF &box) {
                                   drawPoint(painter, kind, box.center(), look.markSize(), look.palette);
                               }});
    };
    addKind(Kind::Within, tr("now within"));
    addKind(Kind::Doubt, tr("now close to a limit"));
    addKind(Kind::TooLarge, tr("now too large"));
    addKind(Kind::TooSmall, tr("now too small"));
    addKind(Kind::Unjudged, tr("not judged"));
    if (std::ranges::any_of(dots, [](const Dot &dot) { return dot.low.has_value(); }))
        entries.push_back({tr("changes that bring the note inside"),
                           [look](QPainter &painter, const QRectF &box) { painter.fillRect(box, look.palette.band); }});
    if (std::ranges::any_of(dots, [](const Dot &dot) { return dot.apart; }))
        entries.push_back({tr("unlike the rest"), [look](QPainter &painter, const QRectF &box) {
                               painter.setPen(QPen(look.palette.ink, look.line()));
                               painter.setBrush(Qt::NoBrush);
                               painter.drawRect(box);
                           }});
    if (told)
        entries.push_back({tr("as far as the gauges may be off"), [look](QPainter &painter, const QRectF &box) {
                               painter.setPen(QPen(look.palette.ink, look.line(), Qt::DashLine));
                               painter.drawLine(QPointF(box.left(), box.center().y()),
                                                QPointF(box.right(), box.center().y()));
                           }});
    return entries;
}

} // namespace

ChartLayer *fillMovedChart(QChart &chart, const ChartData &data, const ChartLook &look)
{
    const auto notes = changedNotes(data);
    const auto told = data.toldApart ? std::optional(shownFigure(*data.toldApart, data)) : std::nullopt;
    const NiceRange range = rangeOf(notes, told);
    auto *y =
        addAxis(chart, Qt::AlignLeft, {axisTitle(tr("Change of %1").arg(wording::nameOf(data.quantity)), data)}, look);
    apply(range, *y);
    const Plot plot{chart, look, addNoteAxis(chart, data.compass, look), y};
    DotLayer::Content content;
    for (const ChangedNote &note : notes)
        content.dots.push_back(dotOf(note, range));
    const double first = data.compass.first.number() - 1, last = data.compass.last.number() + 1;
    if (told)
        for (const double edge : {-*told, *told})
            plot.line({{first, edge}, {last, edge}}, plot.pen(look.palette.ink, 1, Qt::DashLine));
    auto legend = legendOf(content.dots, told.has_value(), look);
    return new DotLayer(chart, plot.frame(), look, std::move(legend), std::move(content));
}

} // namespace hammerline::charts
