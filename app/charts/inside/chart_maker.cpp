#include "charts/inside/chart_maker.h"

#include "charts/inside/mark_layer.h"
#include "wording/wording.h"

#include <QCategoryAxis>
#include <QChart>
#include <QCoreApplication>
#include <QFontMetricsF>
#include <QLegend>
#include <QValueAxis>

#include <limits>

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

/// As HTML; a word that is wider than a line has it to itself.
QString inLines(const QString &text, const QFont &font, double width)
{
    const QFontMetricsF metrics(font);
    QStringList lines;
    for (const QString &word : text.split(' '))
        if (lines.isEmpty() || metrics.horizontalAdvance(lines.back() + ' ' + word) > width)
            lines << word;
        else
            lines.back() += ' ' + word;
    for (QString &line : lines)
        line = line.toHtmlEscaped();
    return lines.join(QStringLiteral("<br>"));
}

QString richTitle(const ChartData &data, const ChartLook &look, double width)
{
    QFont plain = look.titleFont();
    plain.setBold(false);
    const QString subject = data.subject.isEmpty() ? QString() : data.subject + QStringLiteral(": ");
    return QStringLiteral("%1<br><span style=\"font-weight:normal\">%2</span>")
        .arg(inLines(subject + titleOf(data), look.titleFont(), width), inLines(answerOf(data), plain, width));
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
    wrapTitle(chart, data, look, std::numeric_limits<double>::infinity());
    chart.setTitleFont(look.titleFont());
    chart.setTitleBrush(look.palette.ink);
}

ChartLayer *fill(QChart &chart, const ChartData &data, const ChartLook &look)
{
    switch (data.question) {
    case Question::WhereAlongTheKeyboard:
        break;
    case Question::HowSpread:
        return fillSpreadChart(chart, data, look);
    case Question::WhichNotesMoved:
        return fillMovedChart(chart, data, look);
    case Question::HasItDrifted:
        return fillTrendChart(chart, data, look);
    case Question::DoTheyAgree:
        return fillAgreementChart(chart, data, look);
    }
    return fillKeyboardChart(chart, data, look);
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

QCategoryAxis *addNoteAxis(QChart &chart, const keyboard::Compass &compass, const ChartLook &look)
{
    auto *axis = new QCategoryAxis;
    axis->setLabelsPosition(QCategoryAxis::AxisLabelsPositionOnValue);
    const int first = compass.first.number();
    const int last = compass.last.number();
    axis->setStartValue(first - 1);
    for (int number = first; number <= last; ++number)
        if (keyboard::Note(number).midi() % 12 == 0 || number == first)
            axis->append(wording::nameOf(keyboard::Note(number)), number);
    axis->setRange(first - 1, last + 1);
    chart.addAxis(axis, Qt::AlignBottom);
    dressAxis(*axis, QCoreApplication::translate("charts", "Note"), look);
    return axis;
}

void wrapTitle(QChart &chart, const ChartData &data, const ChartLook &look, double width)
{
    if (const QString title = richTitle(data, look, width); title != chart.title())
        chart.setTitle(title);
}

MadeChart makeChart(const ChartData &data, const ChartLook &look)
{
    MadeChart made;
    made.chart = std::make_unique<QChart>();
    dress(*made.chart, data, look);
    made.layer = fill(*made.chart, data, look);
    return made;
}

} // namespace hammerline::charts
