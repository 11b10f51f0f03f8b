#include "charts/charts.h"

#include "exchange/csv_text.h"
#include "units/units.h"

#include <QByteArray>

namespace hammerline::charts {

namespace {

std::string cell(const std::optional<units::Amount> &amount)
{
    return amount ? units::exactDecimal(*amount) : std::string();
}

std::string line(const tolerance::Verdict &verdict, const ChartData &data)
{
    const auto dimension = catalogue::infoOf(verdict.quantity).dimension;
    const tolerance::Verdict *earlier = data.before ? data.before->find(verdict.quantity, verdict.note) : nullptr;
    std::string text = std::to_string(verdict.note.number()) + ',' + verdict.note.name() + ',';
    text += std::string(catalogue::idOf(verdict.quantity)) + ',' + units::displaySymbol(dimension) + ',';
    text += cell(verdict.value) + ',';
    if (verdict.limits)
        text += cell(verdict.limits->low) + ',' + cell(verdict.limits->target) + ',' + cell(verdict.limits->high);
    else
        text += ",,";
    text += ',' + std::string(tolerance::idOf(verdict.status)) + ',';
    return text + (earlier ? cell(earlier->value) : std::string()) + '\n';
}

/// A figure that was worked out, to the ninth place.
std::string figure(const std::optional<double> &value)
{
    return value ? QByteArray::number(*value, 'g', 9).toStdString() : std::string();
}

std::string changeLine(const tolerance::Verdict &verdict, const tolerance::Verdict &earlier)
{
    const auto dimension = catalogue::infoOf(verdict.quantity).dimension;
    std::string text = std::to_string(verdict.note.number()) + ',' + verdict.note.name() + ',';
    text += std::string(catalogue::idOf(verdict.quantity)) + ',' + units::displaySymbol(dimension) + ',';
    text += cell(earlier.value) + ',' + cell(verdict.value) + ',' + cell(*verdict.value - *earlier.value) + ',';
    text += figure((verdict.value->inDisplay() + earlier.value->inDisplay()) / 2) + ',';
    if (verdict.limits)
        text += cell(verdict.limits->low) + ',' + cell(verdict.limits->target) + ',' + cell(verdict.limits->high);
    else
        text += ",,";
    return text + ',' + std::string(tolerance::idOf(verdict.status)) + '\n';
}

std::string changesCsv(const ChartData &data)
{
    std::string text = "note,name,quantity,unit,before,after,change,mean,low,target,high,status\n";
    for (const tolerance::Verdict &verdict : data.now.of(data.quantity)) {
        const auto *earlier = data.before ? data.before->find(verdict.quantity, verdict.note) : nullptr;
        if (verdict.value && earlier != nullptr && earlier->value)
            text += changeLine(verdict, *earlier);
    }
    return text;
}

std::string trendLine(const analysis::Trend &trend, const analysis::TrendPoint &point)
{
    std::string text = std::string(catalogue::idOf(trend.quantity)) + ',' + exchange::csvText(trend.section) + ',';
    text += std::to_string(point.pass.id) + ',' + std::string(readings::idOf(point.pass.purpose)) + ',';
    text += readings::isoDate(point.pass.began) + ',' + exchange::csvText(point.pass.person) + ',';
    text += figure(point.pass.climate.celsius) + ',' + figure(point.pass.climate.relativeHumidityPercent) + ',';
    text += std::to_string(trend.notes.size()) + ',';
    text += units::displaySymbol(catalogue::infoOf(trend.quantity).dimension);
    text += ',' + figure(point.mean);
    if (!point.sinceFirst)
        return text + ",,,\n";
    return text + ',' + figure(point.sinceFirst->meanChange) + ',' + figure(point.sinceFirst->ci95Low) + ',' +
           figure(point.sinceFirst->ci95High) + '\n';
}

std::string trendsCsv(const ChartData &data)
{
    std::string text = "quantity,section,pass,purpose,began,person,celsius,humidity,notes,unit,mean,change,change_low,"
                       "change_high\n";
    for (const analysis::Trend &trend : data.trends)
        for (const analysis::TrendPoint &point : trend.points)
            text += trendLine(trend, point);
    return text;
}

} // namespace

std::string chartCsv(const ChartData &data)
{
    if (data.question == Question::HasItDrifted)
        return trendsCsv(data);
    if (data.question == Question::WhichNotesMoved || data.question == Question::DoTheyAgree)
        return changesCsv(data);
    std::string text = "note,name,quantity,unit,value,low,target,high,status,before\n";
    for (const tolerance::Verdict &verdict : data.now.of(data.quantity))
        text += line(verdict, data);
    return text;
}

} // namespace hammerline::charts
