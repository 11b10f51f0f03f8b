// The tolerance in the charts of a study: the narrowest of the notes, and the line that stands for it.
#include "charts/inside/study_frame.h"

#include "wording/wording.h"

#include <QCoreApplication>
#include <QPolygonF>

#include <algorithm>

namespace hammerline::charts {

namespace {

QPen toleranceInk(const ChartLook &look)
{
    return {look.palette.ink, look.line() * 1.75, Qt::DashDotLine, Qt::FlatCap};
}

/// Towards what lies beyond the scale: three of them, so that none is taken for a grid line.
void drawArrows(StudyFrame &frame, QPointF from, QPointF to, QPointF towards)
{
    const double size = frame.look.pixelSize * 0.6;
    const QPointF aside(-towards.y(), towards.x());
    frame.painter.setPen(Qt::NoPen);
    frame.painter.setBrush(frame.look.palette.ink);
    for (const double part : {0.25, 0.5, 0.75}) {
        const QPointF tip = from + (to - from) * part;
        frame.painter.drawPolygon(
            QPolygonF({tip, tip - towards * size + aside * size * 0.6, tip - towards * size - aside * size * 0.6}));
    }
}

} // namespace

std::optional<double> narrowestTolerance(const StudyChartData &data)
{
    std::optional<double> narrowest;
    for (const auto &[note, limits] : data.limits)
        if (const auto half = limits.halfWidth(); half && (!narrowest || 2 * *half < *narrowest))
            narrowest = 2 * *half;
    return narrowest;
}

double heightFor(double most, const std::optional<double> &tolerance)
{
    constexpr double farthest = 2;
    if (most <= 0)
        return tolerance.value_or(1);
    return tolerance && *tolerance <= farthest * most ? std::max(most, *tolerance) : most;
}

QString amountText(const StudyChartData &data, double amount)
{
    return wording::amountText(units::Amount::fromDisplay(catalogue::infoOf(data.quantity).dimension, amount),
                               data.form);
}

void StudyFrame::addToleranceAcross(double at)
{
    if (y(at) < m_plot.top())
        return drawArrows(*this, m_plot.topLeft(), m_plot.topRight(), {0, -1});
    painter.setPen(toleranceInk(look));
    painter.drawLine(QPointF(m_plot.left(), y(at)), QPointF(m_plot.right(), y(at)));
}

void StudyFrame::addToleranceDown(double at)
{
    if (x(at) > m_plot.right())
        return drawArrows(*this, m_plot.topRight(), m_plot.bottomRight(), {1, 0});
    painter.setPen(toleranceInk(look));
    painter.drawLine(QPointF(x(at), m_plot.top()), QPointF(x(at), m_plot.bottom()));
}

LegendEntry StudyFrame::legendOfTolerance(const QString &text, bool beyond) const
{
    if (beyond)
        return {QCoreApplication::translate("desktop_charts", "%1 (arrows: beyond the scale)").arg(text),
                [look = look](QPainter &onto, const QRectF &box) {
                    onto.setPen(Qt::NoPen);
                    onto.setBrush(look.palette.ink);
                    onto.drawPolygon(
                        QPolygonF({QPointF(box.center().x(), box.top()), box.bottomRight(), box.bottomLeft()}));
                }};
    return {text, [look = look](QPainter &onto, const QRectF &box) {
                onto.setPen(toleranceInk(look));
                onto.drawLine(QPointF(box.left(), box.center().y()), QPointF(box.right(), box.center().y()));
            }};
}

LegendEntry legendOfBand(const QString &text, const ChartLook &look)
{
    return {text, [look](QPainter &painter, const QRectF &box) {
                painter.fillRect(box, look.palette.band);
                painter.setPen(QPen(look.palette.line, look.line()));
                painter.drawLine(box.topLeft(), box.topRight());
                painter.drawLine(box.bottomLeft(), box.bottomRight());
            }};
}

} // namespace hammerline::charts
