// No chart's figures start a formula in a spreadsheet, whatever people and sections are called.
#include "charts/charts.h"
#include "charts/study_chart.h"

#include "exchange/trials_csv.h"
#include "support/formula_cells.h"
#include "support/lively_pass.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace hammerline::charts {
namespace {

using catalogue::Quantity;
using keyboard::Note;
using test_support::formulaCellsOf;
using testing::IsEmpty;

const std::vector<std::string> oddNames{"=HYPERLINK(\"x\",\"y\")",
                                        "+1-1",
                                        "-2+3",
                                        "@SUM(A1)",
                                        "\t=1",
                                        "\r=1",
                                        "'=1",
                                        "a\n=1+1",
                                        "a,=1",
                                        "\"=1",
                                        "a\r\n@b",
                                        "--x, y",
                                        " =1",
                                        "O'Hara \"the\"",
                                        "\n-x"};

ChartData drawn(Question question, const std::string &name)
{
    ChartData data;
    data.question = question;
    data.quantity = Quantity::KeyHeight;
    data.form.locale = QLocale::c();
    const auto shifted = [](double by) {
        readings::ValueTable values;
        for (int note = 1; note <= 88; ++note)
            values.set(Quantity::KeyHeight, Note(note), {support::mm(-1 - by - 0.01 * (note % 7)), 1});
        return values;
    };
    data.now = tolerance::judge(shifted(0), support::livelySet(), {}, {});
    data.before = tolerance::judge(shifted(0.5), support::livelySet(), {}, {});
    readings::Pass pass{.person = name};
    readings::Pass later = pass;
    later.began += std::chrono::hours(2400);
    data.trends = analysis::trendsOf({{pass, shifted(0)}, {later, shifted(0.5)}}, {}, nullptr);
    for (auto &trend : data.trends)
        trend.section = name;
    data.subject = data.nowName = data.beforeName = QString::fromStdString(name);
    return data;
}

StudyChartData studied(StudyQuestion question, const std::string &name)
{
    StudyChartData data;
    data.question = question;
    data.subject = QString::fromStdString(name);
    for (const std::string &person : {name, std::string("Ben")})
        for (int note = 1; note <= 3; ++note)
            for (int take = 1; take <= 2; ++take)
                data.trials.push_back({Note(note), person, take, support::mm(-1 + 0.1 * note + 0.01 * take)});
    data.study = analysis::gaugeStudy(data.trials).value();
    return data;
}

TEST(ChartFormula, NoCellOfAnyChartStartsOne)
{
    for (const std::string &name : oddNames)
        for (int question = 0; question <= static_cast<int>(Question::DoTheyAgree); ++question)
            EXPECT_THAT(formulaCellsOf(chartCsv(drawn(static_cast<Question>(question), name))), IsEmpty())
                << name << " question " << question;
}

TEST(ChartFormula, NegativeFiguresStayFigures)
{
    EXPECT_NE(chartCsv(drawn(Question::WhichNotesMoved, "Ada")).find("1,A0,key_height,mm,-1.51,-1.01,0.5,"),
              std::string::npos);
}

TEST(ChartFormula, NoCellOfAStudyStartsOne)
{
    for (const std::string &name : oddNames)
        for (const auto question :
             {StudyQuestion::ValuesByNoteAndPerson, StudyQuestion::RangeByPerson, StudyQuestion::Components})
            EXPECT_THAT(formulaCellsOf(chartCsv(studied(question, name))), IsEmpty()) << name;
}

TEST(ChartFormula, TrialsAreReadAgainWithTheNamesAsTheyWere)
{
    for (const std::string &name : oddNames) {
        const StudyChartData data = studied(StudyQuestion::ValuesByNoteAndPerson, name);
        const auto again = exchange::readTrialsCsv(chartCsv(data), {.file = "trials.csv"});
        ASSERT_TRUE(again.ok()) << name << ": " << again.fault().text();
        ASSERT_EQ(again.value().size(), data.trials.size());
        EXPECT_EQ(again.value().front().person, name);
    }
}

} // namespace
} // namespace hammerline::charts
