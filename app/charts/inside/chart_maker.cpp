#include "charts/inside/chart_maker.h"

#include "charts/inside/fit_titles.h"
#include "charts/inside/mark_layer.h"
#include "wording/wording.h"

#include <QCategoryAxis>
#include <QChart>
#include <QCoreApplication>
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

void dress(QChart &chart, const ChartData &data, const ChartLook &look)
{
    chart.setAnimationOptions(QChart::NoAnimation);
    chart.setLocalizeNumbers(true);
    chart.setLocale(data.form.locale);
    chart.setBackgroundBrush(look.palette.paper);
    chart.setBackgroundPen(Qt::NoPen);
    chart.setBackgroundRoundness(0);
    chart.legend()->hide();
    chart.setTitleFont(look.titleFont());
    chart.setTitleBrush(look.palette.ink);
}

ChartHead headOf(const ChartData &data)
{
    const QString subject = data.subject.isEmpty() ? QString() : data.subject + QStringLiteral(": ");
    return {subject + titleOf(data), answerOf(data)};
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

void dressAxis(QAbstractAxis &axis, const AxisTitle &title, const ChartLook &look)
{
    setTitle(axis, title);
    axis.setTitleFont(look.smallFont());
    axis.setTitleBrush(look.palette.ink);
    axis.setLabelsFont(look.smallFont());
    axis.setLabelsBrush(look.palette.quiet);
    axis.setLinePen(QPen(look.palette.line, look.line()));
    axis.setGridLinePen(QPen(look.palette.faintLine, look.line() * 0.75));
    axis.setShadesVisible(false);
}

QValueAxis *addAxis(QChart &chart, Qt::Alignment side, const AxisTitle &title, const ChartLook &look)
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
    keepFirstName(*axis);
    chart.addAxis(axis, Qt::AlignBottom);
    dressAxis(*axis, {QCoreApplication::translate("charts", "Note")}, look);
    return axis;
}

MadeChart makeChart(const ChartData &data, const ChartLook &look)
{
    const ChartData shown = withShortNames(data, nameLetters);
    MadeChart made;
    made.chart = std::make_unique<QChart>();
    dress(*made.chart, shown, look);
    ChartData drawn = shown; // the title of an axis keeps people's names whole and shows what it has room for
    drawn.nowPerson = data.nowPerson, drawn.beforePerson = data.beforePerson;
    made.layer = fill(*made.chart, drawn, look);
    const ChartHead whole = headOf(data);
    if (whole.question != headOf(shown).question || whole.answer != headOf(shown).answer)
        made.chart->setToolTip(whole.question + '\n' + whole.answer);
    keepTitlesFitted(*made.chart, headOf(shown), headOf(withShortNames(data, fewNameLetters)), look);
    return made;
}

} // namespace hammerline::charts
