// The mean of the same notes in every pass, against time: the whole, with the interval of its change since the first
// pass, and each section; from their targets where they are judged, so that bass and treble share one band. The climate
// of each pass stands above it, and the humidity as a line of its own.
#include "charts/inside/changes.h"
#include "charts/inside/dot_layer.h"
#include "charts/inside/nice_axis.h"
#include "charts/inside/plot.h"

#include "wording/counted.h"
#include "wording/file_words.h"
#include "wording/wording.h"

#include <QChart>
#include <QCoreApplication>
#include <QDateTime>
#include <QDateTimeAxis>
#include <QLineSeries>
#include <QPainter>
#include <QValueAxis>

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

namespace hammerline::charts {

namespace {

constexpr int yTicks = 7;
/// Of the whole and its sections; dots alone are the humidity's.
constexpr std::array styles{Qt::SolidLine, Qt::DashLine, Qt::DashDotLine, Qt::DashDotDotLine};

QString tr(const char *text)
{
    return QCoreApplication::translate("charts", text);
}

double momentOf(const analysis::TrendPoint &point)
{
    return static_cast<double>(point.pass.began.time_since_epoch().count());
}

/// Means of what a set says of some notes, in the unit of the form.
struct MeanLimits {
    double target = 0;
    std::optional<double> low{}, high{}; ///< from the target
};

std::optional<MeanLimits> meanLimits(const std::vector<keyboard::Note> &notes, const ChartData &data)
{
    MeanLimits mean;
    double low = 0, high = 0;
    bool hasLow = true, hasHigh = true;
    for (const keyboard::Note note : notes) {
        const tolerance::Verdict *verdict = data.now.find(data.quantity, note);
        if (verdict == nullptr || !verdict->limits)
            return std::nullopt;
        const auto target = verdict->limits->target;
        mean.target += wording::inUnit(target, data.form);
        hasLow = hasLow && verdict->limits->low;
        hasHigh = hasHigh && verdict->limits->high;
        low += hasLow ? wording::inUnit(*verdict->limits->low - target, data.form) : 0;
        high += hasHigh ? wording::inUnit(*verdict->limits->high - target, data.form) : 0;
    }
    const auto count = static_cast<double>(notes.size());
    mean.target /= count;
    if (hasLow)
        mean.low = low / count;
    if (hasHigh)
        mean.high = high / count;
    return mean;
}

class TrendChart {
public:
    TrendChart(QChart &chart, const ChartData &data, const ChartLook &look) : m_chart(chart), m_data(data), m_look(look)
    {
        if (!data.trends.empty())
            m_limits = meanLimits(data.trends.front().notes, data);
        for (const analysis::Trend &trend : data.trends)
            m_targets.push_back(targetOf(trend));
        findRange();
    }

    ChartLayer *fill()
    {
        const QString mean =
            (m_limits ? tr("Mean of %1, from target") : tr("Mean of %1")).arg(wording::nameOf(m_data.quantity));
        auto *values = addAxis(m_chart, Qt::AlignLeft, {axisTitle(mean, m_data)}, m_look);
        apply(m_range, *values);
        const Plot plot{m_chart, m_look, addTimeAxis(), values};
        if (m_limits)
            addBand(plot);
        for (std::size_t i = 0; i < m_data.trends.size(); ++i)
            addTrend(plot, i);
        addHumidity(plot);
        m_content.reach = Reach::Whisker;
        return new DotLayer(m_chart, plot.frame(), m_look, std::move(m_legend), std::move(m_content));
    }

private:
    [[nodiscard]] double targetOf(const analysis::Trend &trend) const
    {
        const auto limits = m_limits ? meanLimits(trend.notes, m_data) : std::nullopt;
        return limits ? limits->target : 0;
    }

    [[nodiscard]] double valueOf(double mean, std::size_t trend) const
    {
        return shownFigure(mean, m_data) - m_targets[trend];
    }

    void findRange()
    {
        double low = std::numeric_limits<double>::max(), high = std::numeric_limits<double>::lowest();
        const auto take = [&](double value) {
            low = std::min(low, value);
            high = std::max(high, value);
        };
        for (std::size_t i = 0; i < m_data.trends.size(); ++i)
            for (const analysis::TrendPoint &point : m_data.trends[i].points) {
                take(valueOf(point.mean, i));
                m_from = std::min(m_from, momentOf(point));
                m_to = std::max(m_to, momentOf(point));
            }
        if (m_limits)
            for (const auto &edge : {m_limits->low, m_limits->high})
                take(edge.value_or(0) * 1.1);
        if (low > high)
            low = 0, high = 1;
        const double room = (high - low) * 0.25; // for what stands above the moments
        m_range = niceRange(low, high + room, yTicks);
        const double air = std::max((m_to - m_from) * 0.04, 43'200'000.0);
        m_from -= air;
        m_to += air;
    }

    QDateTimeAxis *addTimeAxis()
    {
        auto *axis = new QDateTimeAxis;
        m_chart.addAxis(axis, Qt::AlignBottom);
        dressAxis(*axis, {tr("Day of the pass")}, m_look);
        axis->setFormat(QStringLiteral("yyyy-MM-dd"));
        axis->setTickCount(7);
        if (!m_data.trends.empty())
            axis->setRange(QDateTime::fromMSecsSinceEpoch(static_cast<qint64>(m_from)),
                           QDateTime::fromMSecsSinceEpoch(static_cast<qint64>(m_to)));
        return axis;
    }

    void addBand(const Plot &plot)
    {
        plot.field({m_from, std::max(m_limits->low.value_or(m_range.from), m_range.from)},
                   {m_to, std::min(m_limits->high.value_or(m_range.to), m_range.to)});
        plot.line({{m_from, 0}, {m_to, 0}}, plot.pen(m_look.palette.line, 1));
        m_legend.push_back({tr("limits, mean of the notes"), [look = m_look](QPainter &painter, const QRectF &box) {
                                painter.fillRect(box, look.palette.band);
                            }});
    }

    void addTrend(const Plot &plot, std::size_t index)
    {
        const analysis::Trend &trend = m_data.trends[index];
        const bool whole = trend.section.empty();
        const QString name = whole ? tr("whole, with the interval of its change since the first pass")
                                   : shortName(QString::fromStdString(trend.section));
        const QPen pen = plot.pen(whole ? m_look.palette.ink : m_look.palette.quiet, whole ? 2.5 : 1.5,
                                  styles[index % styles.size()]);
        QList<QPointF> line;
        for (const analysis::TrendPoint &point : trend.points) {
            line << QPointF(momentOf(point), valueOf(point.mean, index));
            m_content.dots.push_back(dotOf(point, trend, index));
            if (whole)
                m_content.labels.push_back(
                    {momentOf(point),
                     {},
                     tr("%1, %2").arg(wording::nameOf(point.pass.purpose), wording::climateText(point.pass.climate))});
        }
        plot.line(line, pen);
        m_legend.push_back({name, [pen](QPainter &painter, const QRectF &box) {
                                painter.setPen(pen);
                                const double wide = box.width() * 0.2;
                                painter.drawLine(QPointF(box.left() - wide, box.center().y()),
                                                 QPointF(box.right() + wide, box.center().y()));
                            }});
    }

    [[nodiscard]] Dot dotOf(const analysis::TrendPoint &point, const analysis::Trend &trend, std::size_t index) const
    {
        const bool whole = trend.section.empty();
        Dot dot{.note = point.most, .x = momentOf(point), .y = valueOf(point.mean, index)};
        if (whole)
            dot.kind = Kind::Within;
        if (whole && point.sinceFirst && point.sinceFirst->ci95Low) {
            const double first = trend.points.front().mean;
            dot.low = valueOf(first + *point.sinceFirst->ci95Low, index);
            dot.high = valueOf(first + *point.sinceFirst->ci95High, index);
        }
        dot.story =
            tr("%1, %2 (%3), %4: %5 on the mean of %6; most changed: %7 by %8")
                .arg(wording::nameOf(point.pass.purpose), QString::fromStdString(readings::isoDate(point.pass.began)),
                     wording::climateText(point.pass.climate),
                     whole ? tr("whole") : QString::fromStdString(trend.section),
                     wording::numberText(shownFigure(point.mean, m_data),
                                         m_data.form.decimalsFor(catalogue::infoOf(m_data.quantity).dimension),
                                         m_data.form))
                .arg(wording::counted(std::ssize(trend.notes), tr("1 note"), tr("%1 notes")),
                     wording::nameOf(point.most), changeFigure(shownFigure(point.mostChange, m_data), m_data));
        return dot;
    }

    /// On an axis of its own, at the right.
    void addHumidity(const Plot &plot)
    {
        QList<QPointF> line;
        if (!m_data.trends.empty())
            for (const analysis::TrendPoint &point : m_data.trends.front().points)
                if (const auto humidity = point.pass.climate.relativeHumidityPercent)
                    line << QPointF(momentOf(point), *humidity);
        if (line.size() < 2)
            return;
        auto *axis = addAxis(m_chart, Qt::AlignRight, {tr("Relative humidity (%)")}, m_look);
        axis->setRange(0, 100);
        axis->setTickCount(6);
        axis->setLabelFormat(QStringLiteral("%.0f"));
        axis->setGridLineVisible(false);
        const QPen pen = plot.pen(m_look.palette.quiet, 1.5, Qt::DotLine);
        Plot{m_chart, m_look, plot.x, axis}.line(line, pen);
        m_legend.push_back({tr("relative humidity (right)"), [pen](QPainter &painter, const QRectF &box) {
                                painter.setPen(pen);
                                painter.drawLine(box.bottomLeft(), box.topRight());
                            }});
    }

    QChart &m_chart;
    const ChartData &m_data;
    const ChartLook &m_look;
    std::optional<MeanLimits> m_limits{};
    std::vector<double> m_targets{};
    NiceRange m_range{};
    double m_from = std::numeric_limits<double>::max();
    double m_to = std::numeric_limits<double>::lowest();
    DotLayer::Content m_content{};
    std::vector<LegendEntry> m_legend{};
};

} // namespace

ChartLayer *fillTrendChart(QChart &chart, const ChartData &data, const ChartLook &look)
{
    return TrendChart(chart, data, look).fill();
}

} // namespace hammerline::charts
