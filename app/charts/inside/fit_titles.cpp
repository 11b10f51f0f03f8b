#include "charts/inside/fit_titles.h"

#include <QAbstractAxis>
#include <QCategoryAxis>
#include <QChart>
#include <QDateTime>
#include <QDateTimeAxis>
#include <QFontMetricsF>
#include <QGraphicsLayout>

#include <algorithm>

Q_DECLARE_METATYPE(hammerline::charts::AxisTitle)

namespace hammerline::charts {

namespace {

/// Properties of an axis.
constexpr const char *wholeTitle = "hammerlineTitle", *firstNote = "hammerlineFirstNote";

QString asHtml(QStringList lines)
{
    for (QString &line : lines)
        line = line.toHtmlEscaped();
    return lines.join(QStringLiteral("<br>"));
}

AxisTitle titleOf(const QAbstractAxis &axis)
{
    return axis.property(wholeTitle).value<AxisTitle>();
}

struct HeadLines {
    QStringList question{}, answer{};
    [[nodiscard]] double height(const ChartLook &look) const
    {
        return static_cast<double>(question.size() + answer.size()) * QFontMetricsF(look.titleFont()).height();
    }
};

HeadLines linesOf(const ChartHead &head, double width, const ChartLook &look)
{
    QFont plain = look.titleFont();
    plain.setBold(false);
    return {wordLines(head.question.split(' '), QFontMetricsF(look.titleFont()), width),
            wordLines(head.answer.split(' '), QFontMetricsF(plain), width)};
}

void wrapHead(QChart &chart, const ChartHead &head, const ChartHead &shorter, const ChartLook &look)
{
    constexpr double most = 0.25;                                   // of the height of the chart
    const double width = chart.size().width() - 4 * look.pixelSize; // what the chart keeps free at its sides
    HeadLines lines = linesOf(head, width, look);
    if (lines.height(look) > most * chart.size().height())
        lines = linesOf(shorter, width, look);
    const QString title = QStringLiteral("%1<br><span style=\"font-weight:normal\">%2</span>")
                              .arg(asHtml(lines.question), asHtml(lines.answer));
    if (title != chart.title())
        chart.setTitle(title);
}

// Each tells whether the chart is to be laid out anew.

bool wrap(QAbstractAxis &axis, double length, const ChartLook &look)
{
    const QStringList lines = axisLines(titleOf(axis), QFontMetricsF(look.smallFont()), length);
    const QString html =
        lines.size() > 1 ? QStringLiteral("<div align=\"center\">%1</div>").arg(asHtml(lines)) : asHtml(lines);
    if (html == axis.titleText())
        return false;
    axis.setTitleText(html);
    return true;
}

/// So many days along it as stand beside each other.
bool fitDays(QDateTimeAxis &axis, double length, const ChartLook &look)
{
    constexpr double apart = 1.25;
    constexpr int most = 7;
    const double day = QFontMetricsF(look.smallFont()).horizontalAdvance(axis.min().toString(axis.format()));
    const int count = std::clamp(static_cast<int>(length / (day * apart)), 2, most);
    if (count == axis.tickCount())
        return false;
    axis.setTickCount(count);
    return true;
}

/// The first note of the compass is named besides each C; where it would cover the first of those, it is not.
bool fitNotes(QCategoryAxis &axis, double length, const ChartLook &look)
{
    const QStringList names = axis.categoriesLabels();
    if (names.size() < 2)
        return false;
    const QString first = axis.property(firstNote).toString();
    const QFontMetricsF metrics(look.smallFont());
    const double apart =
        (axis.endValue(names[1]) - axis.endValue(names[0])) * length / std::max(axis.max() - axis.min(), 1.0);
    const bool fits = (metrics.horizontalAdvance(first) + metrics.horizontalAdvance(names[1])) / 2 + 4 < apart;
    const QString shown = fits ? first : QStringLiteral(" ");
    if (shown == names[0])
        return false;
    axis.replaceLabel(names[0], shown);
    return true;
}

void fitTitles(QChart &chart, const ChartLook &look)
{
    QSizeF plot = chart.size();
    bool other = true;
    while (other) { // a title of more lines leaves the other axis less room, so that lengths only ever fall
        chart.layout()->activate();
        const QSizeF shown = chart.plotArea().size() - QSizeF(look.pixelSize, look.pixelSize) * 0.5;
        if (shown.isEmpty())
            return;
        plot = plot.boundedTo(shown);
        other = false;
        for (QAbstractAxis *axis : chart.axes()) {
            if (auto *days = qobject_cast<QDateTimeAxis *>(axis))
                other |= fitDays(*days, plot.width(), look);
            if (auto *notes = qobject_cast<QCategoryAxis *>(axis))
                other |= fitNotes(*notes, plot.width(), look);
            other |= wrap(*axis, axis->orientation() == Qt::Vertical ? plot.height() : plot.width(), look);
        }
    }
}

} // namespace

void keepTitlesFitted(QChart &chart, const ChartHead &head, const ChartHead &shorter, const ChartLook &look)
{
    QObject::connect(&chart, &QGraphicsWidget::geometryChanged, &chart, [&chart, head, shorter, look] {
        wrapHead(chart, head, shorter, look);
        fitTitles(chart, look);
    });
}

void setTitle(QAbstractAxis &axis, const AxisTitle &title)
{
    axis.setProperty(wholeTitle, QVariant::fromValue(title));
    axis.setTitleText(title.whole().toHtmlEscaped());
}

void keepFirstName(QCategoryAxis &axis)
{
    axis.setProperty(firstNote, axis.categoriesLabels().value(0));
}

QString axisTitleAt(const QChart &chart, QPointF place)
{
    const QRectF plot = chart.plotArea();
    const auto sideOf = [&] {
        if (place.y() > plot.bottom())
            return Qt::AlignBottom;
        return place.x() < plot.left() ? Qt::AlignLeft : Qt::AlignRight;
    };
    if (plot.contains(place) || place.y() < plot.top())
        return {};
    const auto axes = chart.axes();
    const auto axis = std::ranges::find(axes, sideOf(), [](const QAbstractAxis *one) { return one->alignment(); });
    return axis == axes.end() ? QString() : titleOf(**axis).whole();
}

} // namespace hammerline::charts
