#include "charts/bars.h"

#include "charts/inside/axis_title.h"
#include "charts/inside/chart_legend.h"
#include "charts/inside/chart_maker.h"
#include "charts/inside/nice_axis.h"

#include <QCoreApplication>
#include <QFontInfo>
#include <QFontMetricsF>
#include <QLocale>
#include <QPainter>

#include <algorithm>
#include <cmath>
#include <span>

namespace hammerline::charts {

namespace {

constexpr int ticks = 6;
constexpr double labelPart = 0.3;   ///< of the width, at most, for the names of the rows
constexpr double leastRowEms = 2.2; ///< height of a row in heights of the type
constexpr double mostRowEms = 4;
constexpr double headEms = 3, footEms = 2.6, oneFootEms = 1.4;
constexpr std::size_t rowsOfPane = 12; ///< that a pane is always high enough for

class BarsPainting {
public:
    BarsPainting(QPainter &painter, const QRectF &rect, const BarsData &data, const ChartLook &look)
        : m_painter(painter),
          m_rect(rect),
          m_data(data),
          m_look(look),
          m_metrics(look.smallFont()),
          m_em(m_metrics.height())
    {
        m_titleMore = moreThanALine(look.titleFont(), data.title);
        m_answerMore = moreThanALine(look.smallFont(), data.answer + tellRows(data.rows.size()));
        double labels = 0, most = 0;
        for (const BarsData::Row &row : data.rows)
            labels = std::max(labels, m_metrics.horizontalAdvance(row.label));
        const double left = std::min(labels, rect.width() * labelPart) + 2 * m_em;
        m_plot.setRect(rect.left() + left, rect.top(), std::max(rect.width() - left - 6 * m_em, 1.0), 0);
        m_axis = axisLines({data.axis}, m_metrics, m_plot.width() / 2 - m_em);
        const double head = headEms * m_em + m_titleMore + m_answerMore;
        const double foot = footEms * m_em + std::max(0.0, footHeight() - oneFootEms * m_em);
        const double room = std::max(rect.height() - head - foot, 0.0);
        const auto fitting = static_cast<std::size_t>(std::max(1.0, std::floor(room / (leastRowEms * m_em))));
        const std::size_t shown = std::min(fitting, data.rows.size());
        const auto drawn = static_cast<double>(std::max<std::size_t>(shown, 1));
        m_rowHeight = std::clamp(room / drawn, leastRowEms * m_em, mostRowEms * m_em);
        m_rows = std::span(data.rows).subspan(data.keepLast ? data.rows.size() - shown : 0, shown);
        for (const BarsData::Row &row : m_rows)
            most = std::max({most, row.first.value_or(0), row.second.value_or(0)});
        m_range = niceRange(0, most > 0 ? most : 1, ticks);
        m_plot.setRect(m_plot.left(), rect.top() + head, m_plot.width(), m_rowHeight * drawn);
    }

    void paint()
    {
        paintTitle();
        paintAxis();
        for (std::size_t i = 0; i < m_rows.size(); ++i)
            paintRow(m_rows[i], m_plot.top() + m_rowHeight * static_cast<double>(i));
        // Beside the name of the axis, which stands at the right.
        const QRectF foot(m_plot.left(), m_plot.bottom() + 1.2 * m_em, m_plot.width() / 2, legendHeight());
        paintChartLegend(m_painter, foot, legend(), m_look.smallFont(), m_look.palette.quiet);
    }

private:
    [[nodiscard]] std::vector<LegendEntry> legend() const
    {
        const auto entry = [this](const QString &name, bool filled) {
            return LegendEntry{name, [filled, look = m_look](QPainter &painter, const QRectF &box) {
                                   painter.setPen(QPen(look.palette.ink, look.line()));
                                   painter.setBrush(filled ? look.palette.quiet : look.palette.paper);
                                   painter.drawRect(box);
                               }};
        };
        return {entry(m_data.firstName, false), entry(m_data.secondName, true)};
    }

    [[nodiscard]] double legendHeight() const
    {
        return chartLegendHeight(legend(), m_look.smallFont(), m_plot.width() / 2);
    }

    /// Of the name of the axis and the legend beside it.
    [[nodiscard]] double footHeight() const
    {
        return std::max(legendHeight(), (static_cast<double>(m_axis.size()) + 0.2) * m_em);
    }

    void paintTitle()
    {
        m_painter.setFont(m_look.titleFont());
        m_painter.setPen(m_look.palette.ink);
        constexpr int flags = Qt::AlignLeft | Qt::AlignVCenter | Qt::TextWordWrap;
        QRectF line(m_rect.left() + m_em, m_rect.top() + m_em * 0.3, lineWidth(), m_em * 1.4);
        m_painter.drawText(line.adjusted(0, 0, 0, m_titleMore), flags, m_data.title);
        m_painter.setFont(m_look.smallFont());
        const QString rows = m_rows.size() < m_data.rows.size() ? tellRows(m_rows.size()) : QString();
        line.translate(0, m_em * 1.3 + m_titleMore);
        m_painter.drawText(line.adjusted(0, 0, 0, m_answerMore), flags, m_data.answer + rows);
    }

    [[nodiscard]] QString tellRows(std::size_t drawn) const
    {
        return QCoreApplication::translate("desktop_charts", " (%1 of %2 rows are drawn; the table has all)")
            .arg(drawn)
            .arg(m_data.rows.size());
    }

    [[nodiscard]] double lineWidth() const { return m_rect.width() - 2 * m_em; }

    /// What a text needs beside its first line where the width does not hold it.
    [[nodiscard]] double moreThanALine(const QFont &font, const QString &text) const
    {
        const QFontMetricsF metrics(font);
        const QRectF room(0, 0, std::max(lineWidth(), 1.0), 100 * m_em);
        return std::max(metrics.boundingRect(room, Qt::TextWordWrap, text).height() - metrics.height(), 0.0);
    }

    [[nodiscard]] double xOf(double value) const
    {
        return m_plot.left() + m_plot.width() * (value - m_range.from) / (m_range.to - m_range.from);
    }

    void paintAxis()
    {
        m_painter.setFont(m_look.smallFont());
        for (double value = m_range.from; value <= m_range.to + m_range.step / 2; value += m_range.step) {
            const double x = xOf(value);
            m_painter.setPen(QPen(m_look.palette.faintLine, m_look.line()));
            m_painter.drawLine(QPointF(x, m_plot.top()), QPointF(x, m_plot.bottom()));
            m_painter.setPen(m_look.palette.quiet);
            m_painter.drawText(QRectF(x - 4 * m_em, m_plot.bottom(), 8 * m_em, m_em * 1.2), Qt::AlignCenter,
                               QLocale().toString(value, 'f', m_range.decimals));
        }
        m_painter.setPen(m_look.palette.ink);
        QRectF line(m_plot.left(), m_plot.bottom() + m_em * 1.1, m_plot.width(), m_em * 1.2);
        for (const QString &words : m_axis) {
            m_painter.drawText(line, Qt::AlignRight | Qt::AlignVCenter, words);
            line.translate(0, m_em);
        }
        m_painter.setPen(QPen(m_look.palette.line, m_look.line()));
        m_painter.drawLine(m_plot.topLeft(), m_plot.bottomLeft());
    }

    void paintBar(double top, const std::optional<double> &value, const QString &text, bool filled)
    {
        const double height = m_rowHeight * 0.38;
        if (value && *value > 0) {
            m_painter.setPen(QPen(m_look.palette.ink, m_look.line()));
            m_painter.setBrush(filled ? m_look.palette.quiet : m_look.palette.paper);
            m_painter.drawRect(QRectF(QPointF(m_plot.left(), top), QPointF(xOf(*value), top + height)));
        }
        m_painter.setPen(m_look.palette.ink);
        m_painter.drawText(QRectF(xOf(value.value_or(0)) + m_em * 0.4, top, 8 * m_em, height),
                           Qt::AlignLeft | Qt::AlignVCenter, text);
    }

    void paintRow(const BarsData::Row &row, double top)
    {
        m_painter.setFont(m_look.smallFont());
        m_painter.setPen(m_look.palette.ink);
        const QRectF label(m_rect.left() + m_em, top, m_plot.left() - m_rect.left() - 1.6 * m_em, m_rowHeight);
        m_painter.drawText(label, Qt::AlignRight | Qt::AlignVCenter,
                           m_metrics.elidedText(row.label, Qt::ElideRight, label.width()));
        paintBar(top + m_rowHeight * 0.1, row.first, row.firstText, false);
        paintBar(top + m_rowHeight * 0.5, row.second, row.secondText, true);
    }

    QPainter &m_painter;
    QRectF m_rect;
    const BarsData &m_data;
    const ChartLook &m_look;
    QFontMetricsF m_metrics;
    double m_em;
    double m_titleMore = 0, m_answerMore = 0; ///< heights of further lines
    QStringList m_axis{};                     ///< its name, in lines
    std::span<const BarsData::Row> m_rows{};
    NiceRange m_range{};
    double m_rowHeight = 0;
    QRectF m_plot{};
};

/// Room for the rows of a pane, up to a year of months, under a head of a line more.
int leastHeight(const BarsData &data)
{
    const double em = QFontMetricsF(wording::font(wording::TextSize::Small)).height();
    const auto rows = static_cast<double>(std::clamp<std::size_t>(data.rows.size(), 2, rowsOfPane));
    return static_cast<int>(std::ceil((headEms + 1 + footEms + leastRowEms * rows) * em));
}

} // namespace

void renderBars(QPainter &painter, const QRectF &rect, const BarsData &data, const wording::Palette &palette,
                int pixelSize)
{
    const ChartLook look{palette, pixelSize};
    painter.save();
    painter.fillRect(rect, palette.paper);
    BarsPainting(painter, rect, data, look).paint();
    painter.restore();
}

BarsPane::BarsPane(QWidget *parent) : QWidget(parent)
{
    setMinimumHeight(leastHeight(m_data));
}

void BarsPane::setData(BarsData data)
{
    m_data = std::move(data);
    setAccessibleName(m_data.title);
    setAccessibleDescription(m_data.answer);
    setMinimumHeight(leastHeight(m_data));
    update();
}

void BarsPane::paintEvent(QPaintEvent *)
{
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    renderBars(painter, rect(), m_data, wording::paletteFor(*this),
               QFontInfo(wording::font(wording::TextSize::Small)).pixelSize());
}

} // namespace hammerline::charts
