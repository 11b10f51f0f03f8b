#include "charts/inside/chart_maker.h"

#include "charts/inside/mark_layer.h"

#include <QChart>
#include <QLegend>
#include <QValueAxis>

namespace hammerline::charts {

QFont ChartLook::smallFont() const
{
    if (palette.onPaper)
        return wording::paperFont(pixelSize);
    QFont face = wording::font(wording::TextSize::Small);
    face.setPixelSize(pixelSize);
    return face;
}

QFont ChartLook::titleFont() const
{
    constexpr double titleOverSmall = 14.0 / 12;
    QFont face = smallFont();
    face.setPixelSize(static_cast<int>(pixelSize * titleOverSmall));
    face.setBold(true);
    return face;
}

namespace {

QString richTitle(const ChartData &data)
{
    const QString question = titleOf(data).toHtmlEscaped();
    const QString answer = answerOf(data).toHtmlEscaped();
    const QString subject = data.subject.isEmpty() ? QString() : data.subject.toHtmlEscaped() + QStringLiteral(": ");
    return QStringLiteral("%1%2<br><span style=\"font-weight:normal\">%3</span>").arg(subject, question, answer);
}

void dress(QChart &chart, const ChartData &data, const ChartLook &look)
{
    chart.setAnimationOptions(QChart::NoAnimation);
    chart.setLocalizeNumbers(true);
    chart.setLocale(data.form.locale);
    chart.setBackgroundBrush(look.palette.paper);
    chart.setBackgroundPen(Qt::NoPen);
    chart.setBackgroundRoundness(0);
    chart.legend()->hide();
    chart.setTitle(richTitle(data));
    chart.setTitleFont(look.titleFont());
    chart.setTitleBrush(look.palette.ink);
}

} // namespace

void dressAxis(QAbstractAxis &axis, const QString &title, const ChartLook &look)
{
    axis.setTitleText(title);
    axis.setTitleFont(look.smallFont());
    axis.setTitleBrush(look.palette.ink);
    axis.setLabelsFont(look.smallFont());
    axis.setLabelsBrush(look.palette.quiet);
    axis.setLinePen(QPen(look.palette.line, look.line()));
    axis.setGridLinePen(QPen(look.palette.faintLine, look.line() * 0.75));
    axis.setShadesVisible(false);
}

QValueAxis *addAxis(QChart &chart, Qt::Alignment side, const QString &title, const ChartLook &look)
{
    auto *axis = new QValueAxis;
    chart.addAxis(axis, side);
    dressAxis(*axis, title, look);
    return axis;
}

MadeChart makeChart(const ChartData &data, const ChartLook &look)
{
    MadeChart made;
    made.chart = std::make_unique<QChart>();
    dress(*made.chart, data, look);
    made.layer = data.question == Question::HowSpread ? fillSpreadChart(*made.chart, data, look)
                                                      : fillKeyboardChart(*made.chart, data, look);
    return made;
}

} // namespace hammerline::charts
