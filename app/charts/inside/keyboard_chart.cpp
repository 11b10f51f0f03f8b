// Value against note: band, target, section breaks, marks.
#include "charts/inside/chart_maker.h"

#include "charts/inside/chart_marks.h"
#include "charts/inside/mark_layer.h"
#include "charts/inside/nice_axis.h"
#include "wording/wording.h"

#include <QAreaSeries>
#include <QCategoryAxis>
#include <QChart>
#include <QCoreApplication>
#include <QLineSeries>
#include <QPainter>
#include <QValueAxis>

#include <algorithm>
#include <limits>
#include <set>

namespace hammerline::charts {

namespace {

constexpr double mostBandHeights = 2.5; ///< beyond the band the axis follows readings no further than this
constexpr int yTicks = 7;

struct Extent {
    double low = std::numeric_limits<double>::max();
    double high = std::numeric_limits<double>::lowest();
    [[nodiscard]] bool any() const { return low <= high; }
    void take(double value)
    {
        low = std::min(low, value);
        high = std::max(high, value);
    }
    void take(const std::optional<double> &value)
    {
        if (value)
            take(*value);
    }
};

Extent bandExtent(const std::vector<Ladder> &ladders)
{
    Extent extent;
    for (const Ladder &ladder : ladders)
        for (const Rung &rung : ladder) {
            extent.take(rung.low);
            extent.take(rung.target);
            extent.take(rung.high);
        }
    return extent;
}

NiceRange valueRange(const std::vector<Plotted> &points, const std::vector<Ladder> &ladders)
{
    Extent readings;
    for (const Plotted &point : points) {
        readings.take(point.now);
        readings.take(point.before);
    }
    const Extent band = bandExtent(ladders);
    Extent shown = band.any() ? band : readings;
    if (band.any() && readings.any()) {
        const double most = std::max((band.high - band.low) * mostBandHeights, 0.1);
        shown.take(std::max(readings.low, band.low - most));
        shown.take(std::min(readings.high, band.high + most));
    }
    if (!shown.any())
        return niceRange(0, 1, yTicks);
    const double air = (shown.high - shown.low) * 0.08; // room for section names and for marks at the edge
    const double lowest = shown.low >= 0 ? std::max(shown.low - air, 0.0) : shown.low - air; // no distance is below 0
    return niceRange(lowest, shown.high + air, yTicks);
}

class KeyboardChart {
public:
    KeyboardChart(QChart &chart, const ChartData &data, const ChartLook &look)
        : m_chart(chart),
          m_data(data),
          m_look(look),
          m_points(plottedOf(data)),
          m_ladders(laddersOf(data)),
          m_range(valueRange(m_points, m_ladders))
    {
        m_y = addAxis(chart, Qt::AlignLeft, {axisTitle(data)}, look);
        apply(m_range, *m_y);
        m_x = addNoteAxis(chart, data.compass, look);
    }

    ChartLayer *fill()
    {
        for (std::size_t i = 0; i < m_ladders.size(); ++i)
            addBand(m_ladders[i], i > 0);
        addSectionBreaks();
        QLineSeries &frame = addLine({}, QPen(Qt::NoPen));
        return new MarkLayer(m_chart, frame, m_look, legend(), m_points, m_data.sections);
    }

private:
    void hang(QAbstractSeries &series)
    {
        m_chart.addSeries(&series);
        series.attachAxis(m_x);
        series.attachAxis(m_y);
    }

    QLineSeries &addLine(const QList<QPointF> &points, const QPen &pen)
    {
        auto *series = new QLineSeries;
        series->replace(points);
        series->setPen(pen);
        hang(*series);
        return *series;
    }

    /// The field between the limits, its edges, the target. A second ladder (sharps) is edges alone, dashed.
    void addBand(const Ladder &ladder, bool second)
    {
        QList<QPointF> lows, targets, highs;
        for (const Rung &rung : ladder) {
            lows << QPointF(rung.note, rung.low.value_or(m_range.from));
            targets << QPointF(rung.note, rung.target);
            highs << QPointF(rung.note, rung.high.value_or(m_range.to));
        }
        const bool bounded = ladder.front().low || ladder.front().high;
        if (bounded && !second)
            addField(lows, highs);
        const Qt::PenStyle style = second ? Qt::DashLine : Qt::SolidLine;
        const QPen edge(m_look.palette.line, m_look.line(), style);
        if (ladder.front().low)
            addLine(lows, edge);
        if (ladder.front().high)
            addLine(highs, edge);
        addLine(targets, QPen(m_look.palette.ink, m_look.line() * 0.75, style));
    }

    void addField(const QList<QPointF> &lows, const QList<QPointF> &highs)
    {
        auto *lower = new QLineSeries(&m_chart);
        auto *upper = new QLineSeries(&m_chart);
        lower->replace(lows);
        upper->replace(highs);
        auto *field = new QAreaSeries(upper, lower);
        field->setPen(Qt::NoPen);
        field->setBrush(m_look.palette.band);
        hang(*field);
    }

    void addSectionBreaks()
    {
        std::set<int> breaks;
        for (const keyboard::Section &section : m_data.sections) {
            breaks.insert(section.notes.first.number());
            breaks.insert(section.notes.last.number() + 1);
        }
        for (const int number : breaks)
            if (number > m_data.compass.first.number() && number <= m_data.compass.last.number())
                addLine({QPointF(number - 0.5, m_range.from), QPointF(number - 0.5, m_range.to)},
                        QPen(m_look.palette.line, m_look.line(), Qt::DotLine));
    }

    [[nodiscard]] std::vector<LegendEntry> legend() const
    {
        std::vector<LegendEntry> entries;
        std::set<Kind> present;
        for (const Plotted &point : m_points)
            if (point.now)
                present.insert(point.kind);
        const auto addKind = [&](Kind kind, const QString &text) {
            if (present.contains(kind))
                entries.push_back({text, [kind, look = m_look](QPainter &painter, const QRectF &box) {
                                       drawPoint(painter, kind, box.center(), look.markSize(), look.palette);
                                   }});
        };
        addKind(Kind::Within, QCoreApplication::translate("charts", "%1, within").arg(nowName(m_data)));
        addKind(Kind::Doubt, QCoreApplication::translate("charts", "close to a limit"));
        addKind(Kind::TooLarge, QCoreApplication::translate("charts", "too large"));
        addKind(Kind::TooSmall, QCoreApplication::translate("charts", "too small"));
        addKind(Kind::Unjudged, QCoreApplication::translate("charts", "not judged"));
        if (m_data.before)
            entries.push_back({beforeName(m_data), [look = m_look](QPainter &painter, const QRectF &box) {
                                   drawRing(painter, box.center(), look.markSize(), look.palette);
                               }});
        addBandEntries(entries);
        return entries;
    }

    void addBandEntries(std::vector<LegendEntry> &entries) const
    {
        if (m_ladders.empty())
            return;
        const bool both = m_ladders.size() > 1;
        entries.push_back({both ? QCoreApplication::translate("charts", "limits and target of naturals")
                                : QCoreApplication::translate("charts", "limits and target"),
                           [look = m_look](QPainter &painter, const QRectF &box) {
                               painter.fillRect(box, look.palette.band);
                               painter.setPen(QPen(look.palette.ink, look.line() * 0.75));
                               painter.drawLine(QPointF(box.left(), box.center().y()),
                                                QPointF(box.right(), box.center().y()));
                           }});
        if (both)
            entries.push_back({QCoreApplication::translate("charts", "of sharps"),
                               [look = m_look](QPainter &painter, const QRectF &box) {
                                   painter.setPen(QPen(look.palette.ink, look.line(), Qt::DashLine));
                                   painter.drawLine(QPointF(box.left(), box.center().y()),
                                                    QPointF(box.right(), box.center().y()));
                               }});
    }

    QChart &m_chart;
    const ChartData &m_data;
    const ChartLook &m_look;
    std::vector<Plotted> m_points;
    std::vector<Ladder> m_ladders;
    NiceRange m_range;
    QCategoryAxis *m_x = nullptr;
    QValueAxis *m_y = nullptr;
};

} // namespace

ChartLayer *fillKeyboardChart(QChart &chart, const ChartData &data, const ChartLook &look)
{
    return KeyboardChart(chart, data, look).fill();
}

} // namespace hammerline::charts
