#include "charts/charts.h"

#include "units/units.h"

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

} // namespace

std::string chartCsv(const ChartData &data)
{
    std::string text = "note,name,quantity,unit,value,low,target,high,status,before\n";
    for (const tolerance::Verdict &verdict : data.now.of(data.quantity))
        text += line(verdict, data);
    return text;
}

} // namespace hammerline::charts
