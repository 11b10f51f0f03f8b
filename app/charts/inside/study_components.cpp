// A bar a component, as a standard deviation, with the interval in which it lies. An interval that leaves the scale
// ends in an arrow. Down across them the standard deviation of which twice fills half of the narrowest tolerance.
#include "charts/inside/study_frame.h"

#include "wording/wording.h"

#include <QCoreApplication>

#include <algorithm>
#include <array>

namespace hammerline::charts {

namespace {

struct Component {
    QString name;
    double sd = 0;
    analysis::SdInterval interval{};
};

std::array<Component, 5> componentsOf(const StudyChartData &data)
{
    const auto &sd = data.study.sd;
    const auto &known = data.intervals;
    const auto tr = [](const char *text) { return QCoreApplication::translate("desktop_charts", text); };
    return {{{tr("the same person again"), sd.repeatability, known.repeatability},
             {tr("another person"), sd.reproducibility, known.reproducibility},
             {tr("gauge and people together"), sd.gauge, known.gauge},
             {tr("the notes themselves"), sd.note, known.note},
             {tr("all"), sd.total, known.total}}};
}

void paintWhisker(StudyFrame &frame, const Component &component, double y, double cap)
{
    const double low = frame.x(shown(component.interval.low, frame.data));
    const double end = frame.x(shown(component.interval.high, frame.data));
    const double high = std::min(end, frame.plot().right());
    frame.painter.setPen(QPen(frame.look.palette.ink, frame.look.line() * 1.75));
    frame.painter.drawLine(QPointF(low, y), QPointF(high, y));
    frame.painter.drawLine(QPointF(low, y - cap), QPointF(low, y + cap));
    if (end <= frame.plot().right()) {
        frame.painter.drawLine(QPointF(high, y - cap), QPointF(high, y + cap));
    } else {
        frame.painter.drawLine(QPointF(high, y), QPointF(high - cap, y - cap));
        frame.painter.drawLine(QPointF(high, y), QPointF(high - cap, y + cap));
    }
}

QString figureOf(const Component &component, const StudyChartData &data)
{
    return sdText(component.sd, catalogue::infoOf(data.quantity).dimension, data.form);
}

/// Where the rows are too low for two lines.
QString besideName(const QString &name, const QString &figure)
{
    return QCoreApplication::translate("desktop_charts", "%1: %2").arg(name, figure);
}

void paintComponent(StudyFrame &frame, const Component &component, const QRectF &row, double names)
{
    const double end = frame.x(shown(component.sd, frame.data));
    frame.painter.setPen(QPen(frame.look.palette.ink, frame.look.line()));
    frame.painter.setBrush(frame.look.palette.band);
    frame.painter.drawRect(QRectF(QPointF(frame.plot().left(), row.top() + row.height() * 0.2),
                                  QPointF(end, row.bottom() - row.height() * 0.2)));
    paintWhisker(frame, component, row.center().y(), std::min(row.height() * 0.15, frame.look.pixelSize * 0.6));
    const QRectF name(frame.plot().left() - names, row.center().y() - frame.lineHeight(), names - frame.look.pixelSize,
                      frame.lineHeight());
    const QString figure = figureOf(component, frame.data);
    if (row.height() < 2 * frame.lineHeight())
        return frame.write(name.translated(0, frame.lineHeight() / 2), Qt::AlignRight | Qt::AlignVCenter,
                           besideName(component.name, figure), false);
    frame.write(name, Qt::AlignRight | Qt::AlignVCenter, component.name, false);
    frame.write(name.translated(0, frame.lineHeight()), Qt::AlignRight | Qt::AlignVCenter, figure);
}

std::vector<LegendEntry> legendOf(const StudyFrame &frame, double width)
{
    const ChartLook look = frame.look;
    std::vector<LegendEntry> entries{
        {QCoreApplication::translate("desktop_charts", "where it lies with a confidence of %1 %")
             .arg(100 * frame.data.intervals.confidence),
         [look](QPainter &painter, const QRectF &box) {
             painter.setPen(QPen(look.palette.ink, look.line() * 1.75));
             painter.drawLine(QPointF(box.left(), box.center().y()), QPointF(box.right(), box.center().y()));
             painter.drawLine(QPointF(box.left(), box.top()), QPointF(box.left(), box.bottom()));
             painter.drawLine(QPointF(box.right(), box.top()), QPointF(box.right(), box.bottom()));
         }}};
    if (const auto tolerance = narrowestTolerance(frame.data))
        entries.push_back(frame.legendOfTolerance(
            QCoreApplication::translate("desktop_charts", "where twice that fills half of the narrowest tolerance, %1")
                .arg(amountText(frame.data, *tolerance / 2)),
            shown(*tolerance / 4, frame.data) > width));
    return entries;
}

} // namespace

void paintStudyComponents(StudyFrame &frame)
{
    constexpr int ticks = 6;
    constexpr double farthest = 2; ///< an interval beyond so many times the largest component leaves the scale
    const auto components = componentsOf(frame.data);
    double names = 0, largest = 0, highest = 0;
    for (const Component &component : components) {
        largest = std::max(largest, shown(component.sd, frame.data));
        highest = std::max(highest, shown(component.interval.high, frame.data));
    }
    const auto tolerance = narrowestTolerance(frame.data);
    const auto fills = tolerance ? std::optional(shown(*tolerance / 4, frame.data)) : std::nullopt;
    const double width = std::min(highest, farthest * largest);
    const NiceRange range = niceRange(0, heightFor(width, fills), ticks);
    frame.addLegend(legendOf(frame, range.to));
    const bool low = frame.plot().height() / components.size() < (2 + 0.6) * frame.lineHeight(); // with the axis below
    for (const Component &component : components) {
        const QString figure = figureOf(component, frame.data);
        const double name = frame.widthOf(low ? besideName(component.name, figure) : component.name);
        names =
            std::max({names, name + frame.look.pixelSize * 1.5, frame.widthOf(figure) + frame.look.pixelSize * 1.5});
    }
    frame.keepLeft(names);
    frame.addHorizontalAxis(
        range, QCoreApplication::translate("desktop_charts", "Standard deviation (%1)").arg(unitOf(frame.data)));
    const double height = frame.plot().height() / static_cast<double>(components.size());
    for (std::size_t row = 0; row < components.size(); ++row)
        paintComponent(frame, components[row],
                       QRectF(frame.plot().left(), frame.plot().top() + height * static_cast<double>(row),
                              frame.plot().width(), height),
                       names);
    if (fills)
        frame.addToleranceDown(*fills);
}

} // namespace hammerline::charts
