#include "charts/study_chart.h"

#include "charts/inside/picture_export.h"
#include "charts/inside/study_frame.h"
#include "exchange/csv_text.h"
#include "exchange/trials_csv.h"
#include "wording/wording.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace hammerline::charts {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("desktop_charts", text);
}

QString shownText(double value, const StudyChartData &data, int more)
{
    const auto dimension = catalogue::infoOf(data.quantity).dimension;
    return wording::numberText(value, data.form.decimalsFor(dimension) + more, data.form) + ' ' + unitOf(data);
}

/// "3 %", "less than 1 %".
QString partText(double part, const StudyChartData &data)
{
    constexpr double least = 0.01;
    return part > 0 && part < least ? tr("less than 1 %")
                                    : tr("%1 %").arg(wording::numberText(100 * part, 0, data.form));
}

QString valuesAnswer(const StudyChartData &data)
{
    keyboard::Note widest = data.trials.front().note;
    double most = -1;
    for (const keyboard::Note note : notesOf(data)) {
        std::vector<double> all;
        for (const std::string &person : peopleOf(data))
            std::ranges::copy(valuesOf(data, note, person), std::back_inserter(all));
        if (rangeOf(all) > most) {
            most = rangeOf(all);
            widest = note;
        }
    }
    const QString answer = tr("Farthest apart are the values of %1: %2 from the lowest to the highest.")
                               .arg(wording::nameOf(widest), shownText(most, data, 0));
    const auto limits = data.limits.find(widest);
    if (limits == data.limits.end())
        return answer;
    const auto half = limits->second.halfWidth();
    if (!half)
        return tr("%1 Its set: %2.").arg(answer, wording::limitsText(limits->second, data.form));
    return tr("%1 That is %2 of its tolerance, %3 wide.")
        .arg(answer, partText(most / shown(2 * *half, data), data), amountText(data, 2 * *half));
}

QString rangesAnswer(const StudyChartData &data)
{
    QStringList means;
    double widest = 0;
    const auto notes = notesOf(data);
    for (const std::string &person : peopleOf(data)) {
        double sum = 0;
        for (const keyboard::Note note : notes)
            sum += rangeOf(valuesOf(data, note, person));
        const double mean = sum / static_cast<double>(notes.size());
        widest = std::max(widest, mean);
        means << tr("%1 %2").arg(shortName(QString::fromStdString(person)), shownText(mean, data, 1));
    }
    const QString answer = tr("Mean range: %1.").arg(means.join(QStringLiteral(", ")));
    const auto tolerance = narrowestTolerance(data);
    if (!tolerance)
        return answer;
    return tr("%1 The widest is %2 of the narrowest tolerance, %3.")
        .arg(answer, partText(widest / shown(*tolerance, data), data), amountText(data, *tolerance));
}

QString componentsAnswer(const StudyChartData &data)
{
    const auto &variance = data.study.variance;
    if (variance.total == 0)
        return tr("Nothing varies: every trial gave the same value.");
    const auto part = [&](double of) { return wording::numberText(100 * of / variance.total, 0, data.form); };
    const QString answer =
        tr("Of the whole variance %1 % is the notes themselves, %2 % another person, %3 % the same person again.")
            .arg(part(variance.note), part(variance.reproducibility), part(variance.repeatability));
    const auto tolerance = narrowestTolerance(data);
    if (!tolerance)
        return answer;
    return tr("%1 Twice the standard deviation of gauge and people is %2 of half the narrowest tolerance, %3.")
        .arg(answer, partText(2 * data.study.sd.gauge / (*tolerance / 2), data), amountText(data, *tolerance / 2));
}

std::string limitCells(const StudyChartData &data, keyboard::Note note)
{
    const auto found = data.limits.find(note);
    if (found == data.limits.end())
        return ",,,";
    const auto cell = [](const std::optional<units::Amount> &limit) {
        return limit ? units::exactDecimal(*limit) : std::string();
    };
    return ',' + cell(found->second.low) + ',' + cell(found->second.target) + ',' + cell(found->second.high);
}

std::string trialsText(const StudyChartData &data)
{
    if (data.limits.empty())
        return exchange::writeTrialsCsv(data.trials);
    const std::string unit = " (" + std::string(units::displaySymbol(catalogue::infoOf(data.quantity).dimension)) + ")";
    std::string text = "note,person,take,value" + unit + ",low" + unit + ",target" + unit + ",high" + unit + '\n';
    for (const analysis::Trial &trial : data.trials)
        text += exchange::trialRow(trial) + limitCells(data, trial.note) + '\n';
    return text;
}

std::string number(double value)
{
    return QByteArray::number(value, 'g', 10).toStdString();
}

/// Lowest, highest and how far apart, of one person's takes of a note; exact.
std::string rangeLine(const StudyChartData &data, keyboard::Note note, const std::string &person)
{
    std::vector<units::Amount> values;
    for (const analysis::Trial &trial : data.trials)
        if (trial.note == note && trial.person == person)
            values.push_back(trial.value);
    const auto [low, high] = std::ranges::minmax(values);
    const auto tolerance = narrowestTolerance(data);
    return note.name() + ',' + exchange::csvText(person) + ',' + std::to_string(values.size()) + ',' +
           units::exactDecimal(low) + ',' + units::exactDecimal(high) + ',' + units::exactDecimal(high - low) +
           (tolerance ? ',' + number(*tolerance) : std::string()) + '\n';
}

std::string rangesText(const StudyChartData &data)
{
    const std::string unit = " (" + std::string(units::displaySymbol(catalogue::infoOf(data.quantity).dimension)) + ")";
    std::string text = "note,person,takes,lowest" + unit + ",highest" + unit + ",range" + unit;
    text += narrowestTolerance(data) ? ",narrowest_tolerance" + unit + '\n' : "\n";
    for (const std::string &person : peopleOf(data))
        for (const keyboard::Note note : notesOf(data))
            text += rangeLine(data, note, person);
    return text;
}

std::string toleranceLine(const StudyChartData &data)
{
    const auto tolerance = narrowestTolerance(data);
    const char *unit = units::displaySymbol(catalogue::infoOf(data.quantity).dimension);
    return tolerance ? "half_tolerance," + std::string(unit) + ',' + number(*tolerance / 2) + ",,\n" : std::string();
}

std::string componentLine(const char *name, double sd, const analysis::SdInterval &interval, const StudyChartData &data)
{
    return std::string(name) + ',' + units::displaySymbol(catalogue::infoOf(data.quantity).dimension) + ',' +
           number(sd) + ',' + number(interval.low) + ',' + number(interval.high) + '\n';
}

} // namespace

QString titleOf(const StudyChartData &data)
{
    switch (data.question) {
    case StudyQuestion::ValuesByNoteAndPerson:
        return tr("Do people read the same notes alike?");
    case StudyQuestion::RangeByPerson:
        return tr("How closely does each person repeat a reading?");
    case StudyQuestion::Components:
        break;
    }
    return tr("Where does the spread come from?");
}

QString answerOf(const StudyChartData &data)
{
    if (data.trials.empty())
        return {};
    switch (data.question) {
    case StudyQuestion::ValuesByNoteAndPerson:
        return valuesAnswer(data);
    case StudyQuestion::RangeByPerson:
        return rangesAnswer(data);
    case StudyQuestion::Components:
        break;
    }
    return componentsAnswer(data);
}

std::string chartCsv(const StudyChartData &data)
{
    if (data.question == StudyQuestion::ValuesByNoteAndPerson)
        return trialsText(data);
    if (data.question == StudyQuestion::RangeByPerson)
        return rangesText(data);
    const auto &sd = data.study.sd;
    const auto &known = data.intervals;
    return "component,unit,sd,low,high\n" +
           componentLine("repeatability", sd.repeatability, known.repeatability, data) +
           componentLine("reproducibility", sd.reproducibility, known.reproducibility, data) +
           componentLine("gauge", sd.gauge, known.gauge, data) + componentLine("note", sd.note, known.note, data) +
           componentLine("total", sd.total, known.total, data) + toleranceLine(data);
}

std::vector<PlacedNote> renderChart(QPainter &painter, const QRectF &rect, const StudyChartData &data,
                                    const wording::Palette &palette, int pixelSize)
{
    const ChartLook look{palette, pixelSize};
    painter.save();
    StudyFrame frame(painter, rect, data, look);
    frame.addHead();
    switch (data.question) {
    case StudyQuestion::ValuesByNoteAndPerson:
        paintStudyValues(frame);
        break;
    case StudyQuestion::RangeByPerson:
        paintStudyRanges(frame);
        break;
    case StudyQuestion::Components:
        paintStudyComponents(frame);
        break;
    }
    painter.restore();
    return std::move(frame.placed);
}

outcome::Outcome<QString> exportChart(const StudyChartData &data, const QString &path, const wording::Palette &palette)
{
    return exportPicture({.title = titleOf(data),
                          .description = answerOf(data),
                          .render = [&](QPainter &painter, const QRectF &rect, const wording::Palette &ink,
                                        int pixelSize) { renderChart(painter, rect, data, ink, pixelSize); },
                          .csv = [&] { return chartCsv(data); }},
                         path, palette);
}

QString sdText(double sd, units::Dimension dimension, const wording::NumberForm &form)
{
    const double value = wording::inUnit(units::Amount::fromDisplay(dimension, sd), form);
    return wording::numberText(value, form.decimalsFor(dimension) + 1, form) + ' ' + wording::unitText(dimension, form);
}

} // namespace hammerline::charts
