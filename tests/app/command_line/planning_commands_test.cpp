// plan and fit, called as a script would.

#include "support/command_run.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace hammerline {
namespace {

using nlohmann::json;
using test_support::fileText;
using test_support::runCommand;
using test_support::sampleData;
using test_support::ScratchFolder;

const std::string zirrow = "readings/zirrow-188-as-left.csv";

std::vector<std::string> planCall(const std::vector<std::string> &more)
{
    std::vector<std::string> call{"plan",           sampleData(zirrow), "--tolerances",
                                  "grand-under-2m", "--setup",          "grand-under-2m"};
    call.insert(call.end(), more.begin(), more.end());
    return call;
}

TEST(PlanCommand, BringsTheSampleGrandIn)
{
    const auto ran = runCommand(planCall({"--json"}));
    ASSERT_EQ(ran.status, 0) << ran.err;
    const auto plan = json::parse(ran.out);
    EXPECT_EQ(plan["format"], "hammerline-plan");
    EXPECT_EQ(plan["aim"], "in");
    EXPECT_GT(plan["pairs_in_after"].get<int>(), plan["pairs_in_before"].get<int>());
    EXPECT_FALSE(plan["moves"].empty());
}

TEST(PlanCommand, SaysInWordsWhatTheJsonSays)
{
    const auto plan = json::parse(runCommand(planCall({"--json"})).out);
    const auto text = runCommand(planCall({})).out;
    EXPECT_TRUE(text.starts_with(std::to_string(plan["pairs_in_before"].get<int>()) + " of " +
                                 std::to_string(plan["pairs"].get<int>()) + " pairs are inside, " +
                                 std::to_string(plan["pairs_in_after"].get<int>()) + " after "))
        << text;
    EXPECT_NE(text.find("put in "), std::string::npos);
    EXPECT_NE(text.find("Measure again afterwards"), std::string::npos);
}

TEST(PlanCommand, TheOtherAimSpendsMoreMinutesToComeCloser)
{
    const auto in = json::parse(runCommand(planCall({"--json"})).out);
    const auto target = json::parse(runCommand(planCall({"--json", "--aim", "target"})).out);
    EXPECT_EQ(target["aim"], "target");
    EXPECT_GT(target["minutes"].get<double>(), in["minutes"].get<double>());
    EXPECT_LT(target["closeness"].get<double>(), in["closeness"].get<double>());
}

TEST(PlanCommand, SetSetupAndActionMustAgree)
{
    EXPECT_EQ(runCommand({"plan", sampleData(zirrow), "--tolerances", "grand-under-2m", "--setup", "console"}).status,
              2);
    EXPECT_EQ(runCommand(planCall({"--action", "vertical"})).status, 2);
    EXPECT_EQ(runCommand(planCall({"--action", "grand"})).status, 0);
    EXPECT_EQ(runCommand(planCall({"--aim", "middle"})).status, 2);
    EXPECT_EQ(runCommand({"plan", sampleData(zirrow), "--tolerances", "grand-under-2m"}).status, 2);
}

TEST(PlanCommand, ABrokenSetupIsRefused)
{
    const auto ran = runCommand({"plan", sampleData(zirrow), "--tolerances", "grand-under-2m", "--setup",
                                 sampleData("broken/broken-setup-step-zero.json")});
    EXPECT_EQ(ran.status, 2);
    EXPECT_EQ(ran.out, "");
}

TEST(FitCommand, WritesASetThatCheckTakes)
{
    const ScratchFolder folder;
    const auto to = folder.file("fitted.json");
    const auto ran = runCommand({"fit", sampleData(zirrow), "--tolerances", "grand-under-2m", "--to", to, "--json"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    const auto notes = json::parse(ran.out)["notes"];
    ASSERT_EQ(notes.size(), 88u);
    EXPECT_TRUE(notes[0]["targets"].contains("aftertouch_mm"));
    EXPECT_NE(runCommand({"check", sampleData(zirrow), "--tolerances", to}).status, 2);
}

TEST(FitCommand, OverwritesOnlyWhenForced)
{
    const ScratchFolder folder;
    const auto to = folder.write("fitted.json", "mine");
    const std::vector<std::string> call{"fit", sampleData(zirrow), "--tolerances", "grand-under-2m", "--to", to};
    const auto ran = runCommand(call);
    EXPECT_EQ(ran.status, 2);
    EXPECT_EQ(ran.out, "");
    EXPECT_EQ(fileText(to), "mine");
    auto forced = call;
    forced.push_back("--force");
    EXPECT_EQ(runCommand(forced).status, 0);
    EXPECT_NE(fileText(to), "mine");
}

TEST(FitCommand, ReadingsThatTellNoRatioAreRefused)
{
    const ScratchFolder folder;
    const auto file = folder.write("little.csv", "note,blow\nA0,46\n");
    const auto to = folder.file("fitted.json");
    const auto ran = runCommand({"fit", file, "--tolerances", "grand-under-2m", "--to", to});
    EXPECT_EQ(ran.status, 2);
    EXPECT_NE(ran.err, "");
    EXPECT_EQ(folder.names().size(), 1u);
}

} // namespace
} // namespace hammerline
