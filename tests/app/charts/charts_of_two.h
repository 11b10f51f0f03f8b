#pragma once
// What two people read of one instrument and of one gauge, for every kind of chart.

#include "charts/charts.h"
#include "charts/study_chart.h"
#include "support/lively_pass.h"

#include <string>

namespace hammerline::charts {

struct TwoNames {
    std::string first = "Ada";
    std::string second = "Ben";
};

[[nodiscard]] inline ChartData compared(Question question, const TwoNames &names = {})
{
    ChartData data;
    data.question = question;
    data.sections = support::livelySections();
    data.now = support::livelyJudgement(0.45);
    data.before = support::livelyJudgement(1);
    data.form.locale = QLocale::c();
    data.nowPerson = QString::fromStdString(names.first);
    data.beforePerson = QString::fromStdString(names.second);
    data.toldApart = 0.14;
    const auto set = support::livelySet();
    std::vector<analysis::MeasuredPass> passes;
    for (const int month : {0, 6, 13}) {
        readings::Pass pass{.id = month + 1};
        pass.purpose = month == 0 ? readings::Purpose::AsLeft : readings::Purpose::Recheck;
        pass.began = readings::Instant(std::chrono::hours(24 * 30 * month));
        passes.push_back({pass, support::livelyValues(0.3 + 0.02 * month)});
    }
    data.trends = analysis::trendsOf(std::move(passes), data.sections, &set);
    std::erase_if(data.trends, [&data](const auto &trend) { return trend.quantity != data.quantity; });
    return data;
}

[[nodiscard]] inline StudyChartData studied(StudyQuestion question, const TwoNames &names = {})
{
    StudyChartData of{.question = question};
    for (int n = 10; n <= 80; n += 10)
        for (const int take : {1, 2, 3})
            for (const std::string &person : {names.first, names.second})
                of.trials.push_back({keyboard::Note(n), person, take,
                                     units::Length::millimetres(3 + n / 100.0 + 0.01 * ((take * n) % 7) +
                                                                (person == names.first ? 0 : 0.05))});
    of.study = analysis::gaugeStudy(of.trials).value();
    of.intervals = analysis::intervalsOf(of.study);
    of.form.locale = QLocale::c();
    for (int n = 10; n <= 80; n += 10)
        of.limits[keyboard::Note(n)] = {.low = units::Length::millimetres(2.6 + n / 100.0),
                                        .target = units::Length::millimetres(3 + n / 100.0),
                                        .high = units::Length::millimetres(3.4 + n / 100.0)};
    return of;
}

} // namespace hammerline::charts
