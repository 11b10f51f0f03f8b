// gauge-study and spot-check, called as a script would.

#include "support/command_run.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace hammerline {
namespace {

using nlohmann::json;
using test_support::linesOf;
using test_support::runCommand;
using test_support::sampleData;
using test_support::ScratchFolder;

TEST(GaugeStudyCommand, CountsTheSampleTrials)
{
    const auto ran = runCommand({"gauge-study", sampleData("trials/let-off-gauge.csv"), "--json"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    const auto study = json::parse(ran.out);
    EXPECT_EQ(study["notes"], 10);
    EXPECT_EQ(study["people"], 3);
    EXPECT_EQ(study["takes"], 3);
    EXPECT_DOUBLE_EQ(study["expanded_uncertainty"].get<double>(), 2 * study["sd"]["gauge"].get<double>());
    EXPECT_NE(runCommand({"gauge-study", sampleData("trials/let-off-gauge.csv")}).out.find("another person"),
              std::string::npos);
}

TEST(GaugeStudyCommand, SaysWhatASetTakesOverAndTheSetTakesIt)
{
    const ScratchFolder folder;
    const auto told = runCommand({"gauge-study", sampleData("trials/let-off-gauge.csv")}).out;
    const auto from = told.find("\"expanded_uncertainty_mm\"");
    ASSERT_NE(from, std::string::npos) << told;
    const std::string members = told.substr(from, told.find('\n', from) - from);
    const auto set = folder.write(
        "set.json", R"({"format": "hammerline-tolerance-set", "version": 1, "name": "studied", "action": "vertical",
        "quantities": {"let_off": {"points": [{"note": 1, "low_mm": 2, "target_mm": 3, "high_mm": 4}], )" +
                        members + "}}}");
    const auto readings = folder.write("readings.csv", "note,let_off\nA0,3.999\n");
    const auto ran = runCommand({"check", readings, "--tolerances", set, "--last", "A0", "--json"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    EXPECT_EQ(json::parse(ran.out)["readings"][0]["status"], "marginal");
}

TEST(GaugeStudyCommand, AStudyThatIsNotBalancedIsRefusedByName)
{
    const ScratchFolder folder;
    const auto file = folder.write("trials.csv", "note,person,take,value\nA0,a,1,3.1\nA0,a,2,3.2\nB0,b,1,3.0\n");
    const auto ran = runCommand({"gauge-study", file});
    EXPECT_EQ(ran.status, 2);
    EXPECT_EQ(ran.out, "");
    EXPECT_TRUE(ran.err.starts_with(file + ": ")) << ran.err;
}

TEST(GaugeStudyCommand, EachFaultOfTheFileHasItsLine)
{
    const ScratchFolder folder;
    const auto file = folder.write("trials.csv", "note,person,take,value\nA0,a,1,soft\nZ9,a,1,3.1\n");
    const auto ran = runCommand({"gauge-study", file});
    EXPECT_EQ(ran.status, 2);
    ASSERT_EQ(linesOf(ran.err).size(), 2u) << ran.err;
    EXPECT_TRUE(linesOf(ran.err)[1].starts_with(file + ":3: "));
}

TEST(GaugeStudyCommand, TakesItsFourColumnsOnlyAndSaysWhatToLeaveOutOfAChartsFigures)
{
    const ScratchFolder folder;
    std::string trials = "note,person,take,value (mm)\n", figures = "note,person,take,value (mm),low (mm),high (mm)\n";
    for (const char *row : {"A0,a,1,3.1", "A0,a,2,3.2", "A0,b,1,3.0", "A0,b,2,3.1", "B0,a,1,3.3", "B0,a,2,3.4",
                            "B0,b,1,3", "B0,b,2,3.5"}) {
        trials += row + std::string("\n");
        figures += row + std::string(",2.4,4\n");
    }
    EXPECT_EQ(runCommand({"gauge-study", folder.write("trials.csv", trials)}).status, 0);
    const auto file = folder.write("figures.csv", figures);
    const auto ran = runCommand({"gauge-study", file, "--json"});
    EXPECT_EQ(ran.status, 2);
    EXPECT_EQ(ran.out, "");
    EXPECT_TRUE(ran.err.starts_with(file + ":1: 'low (mm)', 'high (mm)': limits come with the figures")) << ran.err;
    EXPECT_NE(ran.err.find("leaving them out"), std::string::npos) << ran.err;
}

TEST(SpotCheckCommand, GivesTheTableOfTheContract)
{
    const auto ran = runCommand({"spot-check", "--notes", "88", "--sample", "20", "--found", "0", "--json"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    const auto answer = json::parse(ran.out);
    EXPECT_EQ(answer["sample_to_prove"][0]["sample"], 84);
    EXPECT_EQ(answer["sample_to_prove"][1]["sample"], 68);
}

TEST(SpotCheckCommand, RefusesCountsAndConfidencesThatMeanNothing)
{
    using Call = std::vector<std::string>;
    for (const Call &more : {Call{"--notes", "88", "--sample", "89", "--found", "0"},
                             Call{"--notes", "88", "--sample", "8", "--found", "9"},
                             Call{"--notes", "88", "--sample", "-8", "--found", "0"},
                             Call{"--notes", "eighty", "--sample", "8", "--found", "0"},
                             Call{"--notes", "88", "--sample", "8", "--found", "0", "--confidence", "1"},
                             Call{"--notes", "88", "--sample", "8", "--found", "0", "--confidence", "95%"},
                             Call{"--notes", "88", "--sample", "8"}}) {
        Call call{"spot-check"};
        call.insert(call.end(), more.begin(), more.end());
        const auto ran = runCommand(call);
        EXPECT_EQ(ran.status, 2);
        EXPECT_EQ(ran.out, "");
        EXPECT_NE(ran.err, "");
    }
}

} // namespace
} // namespace hammerline
