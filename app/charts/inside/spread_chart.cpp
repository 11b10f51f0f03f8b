// How many notes lie how far from their target. Where limits differ along the keyboard, the field shows what is inside
// for every note; the bars know the verdict of each.
#include "charts/inside/chart_maker.h"

#include "charts/inside/bar_layer.h"
#include "charts/inside/chart_marks.h"
#include "charts/inside/nice_axis.h"
#include "wording/wording.h"

#include <QAreaSeries>
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

constexpr int barsPerTick = 5;
constexpr double mostBands = 3; ///< a reading further off than this many bands falls into the last bar
constexpr int xTicks = 8;
constexpr int yTicks = 5;

/// What all notes have in common, measured from their targets.
struct CommonBand {
    double low = std::numeric_limits<double>::lowest();
    double high = std::numeric_limits<double>::max();
    bool bounded = false;
    [[nodiscard]] bool hasLow() const { return low > std::numeric_limits<double>::lowest(); }
    [[nodiscard]] bool hasHigh() const { return high < std::numeric_limits<double>::max(); }
    [[nodiscard]] bool closed() const { return hasLow() && hasHigh() && low < high; }
};

CommonBand commonBand(const std::vector<Ladder> &ladders)
{
    CommonBand band;
    for (const Ladder &ladder : ladders)
        for (const Rung &rung : ladder) {
            if (rung.low)
                band.low = std::max(band.low, *rung.low - rung.target);
            if (rung.high)
                band.high = std::min(band.high, *rung.high - rung.target);
            band.bounded |= rung.low || rung.high;
        }
    return band;
}

class SpreadChart {
public:
    SpreadChart(QChart &chart, const ChartData &data, const ChartLook &look)
        : m_chart(chart), m_data(data), m_look(look), m_points(plottedOf(data)), m_band(commonBand(laddersOf(data)))
    {
        m_judged = std::ranges::any_of(m_points, [](const Plotted &point) { return point.target.has_value(); });
        makeBars();
        const QString name = wording::nameOf(data.quantity);
        const QString measure = m_judged ? QCoreApplication::translate("charts", "%1, from target").arg(name) : name;
        m_x = addAxis(chart, Qt::AlignBottom, {axisTitle(measure, data)}, look);
        m_y = addAxis(chart, Qt::AlignLeft, {QCoreApplication::translate("charts", "Notes")}, look);
        apply(m_range, *m_x);
        m_counts = niceRange(0, std::max(highest(), 1) * 1.05, yTicks);
        m_counts.step = std::max(m_counts.step, 1.0);
        m_counts.to = std::ceil(m_counts.to);
        m_counts.decimals = 0;
        apply(m_counts, *m_y);
    }

    ChartLayer *fill()
    {
        if (m_judged && m_band.bounded)
            addField();
        QLineSeries &target = addLine(m_judged ? QList<QPointF>{{0, 0}, {0, m_counts.to}} : QList<QPointF>{});
        return new BarLayer(m_chart, target, m_look, legend(), m_bars, m_data.before.has_value(), edges());
    }

private:
    /// Distance from target, or the bare value where nothing is judged.
    [[nodiscard]] std::optional<double> distance(const std::optional<double> &value, const Plotted &point) const
    {
        if (!value || (m_judged && !point.target))
            return std::nullopt;
        return *value - (m_judged ? *point.target : 0);
    }

    [[nodiscard]] std::vector<double> edges() const
    {
        std::vector<double> found;
        if (m_judged && m_band.hasLow())
            found.push_back(m_band.low);
        if (m_judged && m_band.hasHigh())
            found.push_back(m_band.high);
        return found;
    }

    [[nodiscard]] NiceRange wholeRange() const
    {
        double low = std::numeric_limits<double>::max();
        double high = std::numeric_limits<double>::lowest();
        const auto take = [&](double value) {
            low = std::min(low, value);
            high = std::max(high, value);
        };
        for (const Plotted &point : m_points)
            for (const auto &value : {distance(point.now, point), distance(point.before, point)})
                if (value)
                    take(*value);
        if (m_judged && m_band.closed()) {
            const double most = mostBands * (m_band.high - m_band.low);
            low = std::max(low, m_band.low - most);
            high = std::min(high, m_band.high + most);
        }
        for (const double edge : edges())
            take(edge * 1.1);
        return low <= high ? niceRange(low, high, xTicks) : niceRange(0, 1, xTicks);
    }

    void makeBars()
    {
        m_range = wholeRange();
        const double width = m_range.step / barsPerTick;
        const int count = std::max(1, static_cast<int>(std::lround((m_range.to - m_range.from) / width)));
        for (int i = 0; i < count; ++i)
            m_bars.push_back({.from = m_range.from + i * width, .to = m_range.from + (i + 1) * width});
        for (const Plotted &point : m_points) {
            if (const auto now = distance(point.now, point))
                barOf(*now, width).now[point.kind].push_back({point.note, point.story});
            if (const auto before = distance(point.before, point))
                ++barOf(*before, width).before;
        }
    }

    [[nodiscard]] Bar &barOf(double value, double width)
    {
        constexpr double slack = 1e-9;
        const auto index = static_cast<int>(std::floor((value - m_range.from) / width + slack));
        return m_bars[static_cast<std::size_t>(std::clamp(index, 0, static_cast<int>(m_bars.size()) - 1))];
    }

    [[nodiscard]] int highest() const
    {
        int most = 0;
        for (const Bar &bar : m_bars)
            most = std::max({most, bar.height(), bar.before});
        return most;
    }

    void hang(QAbstractSeries &series)
    {
        m_chart.addSeries(&series);
        series.attachAxis(m_x);
        series.attachAxis(m_y);
    }

    QLineSeries &addLine(const QList<QPointF> &points)
    {
        auto *series = new QLineSeries;
        series->replace(points);
        series->setPen(QPen(m_look.palette.ink, m_look.line()));
        hang(*series);
        return *series;
    }

    void addField()
    {
        const double low = std::max(m_band.low, m_range.from);
        const double high = std::min(m_band.high, m_range.to);
        auto *lower = new QLineSeries(&m_chart);
        auto *upper = new QLineSeries(&m_chart);
        lower->replace(QList<QPointF>{{low, 0}, {high, 0}});
        upper->replace(QList<QPointF>{{low, m_counts.to}, {high, m_counts.to}});
        auto *field = new QAreaSeries(upper, lower);
        field->setPen(Qt::NoPen);
        field->setBrush(m_look.palette.band);
        hang(*field);
    }

    [[nodiscard]] std::vector<LegendEntry> legend() const
    {
        std::vector<LegendEntry> entries;
        const auto addKind = [&](Kind kind, const QString &text) {
            const bool present = std::ranges::any_of(m_bars, [kind](const Bar &bar) { return bar.now.contains(kind); });
            if (present)
                entries.push_back({text, [kind, look = m_look](QPainter &painter, const QRectF &box) {
                                       drawFill(painter, kind, box, look.line(), look.palette);
                                   }});
        };
        addKind(Kind::Within, QCoreApplication::translate("charts", "%1, within").arg(nowName(m_data)));
        addKind(Kind::Doubt, QCoreApplication::translate("charts", "close to a limit"));
        addKind(Kind::TooLarge, QCoreApplication::translate("charts", "too large"));
        addKind(Kind::TooSmall, QCoreApplication::translate("charts", "too small"));
        addKind(Kind::Unjudged, QCoreApplication::translate("charts", "not judged"));
        if (m_data.before)
            entries.push_back({beforeName(m_data), [look = m_look](QPainter &painter, const QRectF &box) {
                                   painter.setPen(QPen(look.palette.ink, look.line() * 2));
                                   painter.drawLine(box.bottomLeft(), box.topLeft());
                                   painter.drawLine(box.topLeft(), box.topRight());
                               }});
        if (m_judged && m_band.bounded)
            entries.push_back(
                {QCoreApplication::translate("charts", "inside on every note"),
                 [look = m_look](QPainter &painter, const QRectF &box) { painter.fillRect(box, look.palette.band); }});
        return entries;
    }

    QChart &m_chart;
    const ChartData &m_data;
    const ChartLook &m_look;
    std::vector<Plotted> m_points;
    CommonBand m_band;
    bool m_judged = false;
    NiceRange m_range;
    NiceRange m_counts;
    std::vector<Bar> m_bars;
    QValueAxis *m_x = nullptr;
    QValueAxis *m_y = nullptr;
};

} // namespace

ChartLayer *fillSpreadChart(QChart &chart, const ChartData &data, const ChartLook &look)
{
    return SpreadChart(chart, data, look).fill();
}

} // namespace hammerline::charts
