#include "support/command_run.h"

#include <gtest/gtest.h>

#include <fstream>

namespace hammerline {
namespace {

using test_support::linesOf;
using test_support::runCommand;

const std::vector<std::string> commands{"check",       "plan",       "fit",    "compare", "gauge-study",
                                        "spot-check",  "tolerances", "setups", "demo",    "import",
                                        "instruments", "passes",     "export", "review",  "record"};

TEST(CommandLine, HelpNamesEveryCommand)
{
    const auto ran = runCommand({"--help"});
    EXPECT_EQ(ran.status, 0);
    EXPECT_EQ(ran.err, "");
    for (const std::string &command : commands)
        EXPECT_NE(ran.out.find("hammerline " + command + " "), std::string::npos) << command;
}

TEST(CommandLine, VersionIsOneLine)
{
    EXPECT_EQ(runCommand({"--version"}).out, "hammerline 9.8.7\n");
}

TEST(CommandLine, EveryCommandTellsItsArguments)
{
    for (const std::string &command : commands) {
        const auto ran = runCommand({command, "--help"});
        EXPECT_EQ(ran.status, 0) << command;
        EXPECT_NE(ran.out.find("hammerline " + command), std::string::npos) << ran.out;
    }
}

TEST(CommandLine, AnUnknownCommandIsRefusedOnStandardError)
{
    for (const std::vector<std::string> &call :
         std::vector<std::vector<std::string>>{{"chekc", "x"}, {}, {"--jsno"}, {""}}) {
        const auto ran = runCommand(call);
        EXPECT_EQ(ran.status, 2);
        EXPECT_EQ(ran.out, "");
        EXPECT_EQ(linesOf(ran.err).size(), 1u) << ran.err;
    }
}

TEST(CommandLine, AnUnknownOptionIsRefusedByEveryCommand)
{
    for (const std::string &command : commands) {
        const auto ran = runCommand({command, "--colour"});
        EXPECT_EQ(ran.status, 2) << command;
        EXPECT_EQ(ran.out, "");
        EXPECT_TRUE(ran.err.starts_with("hammerline " + command + ": ")) << ran.err;
    }
}

TEST(CommandLine, OptionsAreNotAbbreviatedRepeatedOrLeftWithoutAValue)
{
    EXPECT_EQ(runCommand({"review", "shop", "--jso"}).status, 2);
    EXPECT_EQ(runCommand({"check", "a.csv", "--tolerances"}).status, 2);
    EXPECT_EQ(runCommand({"check", "a.csv", "--tolerances", "console", "--tolerances", "console"}).status, 2);
    EXPECT_EQ(runCommand({"check", "a.csv", "b.csv", "--tolerances", "console"}).status, 2);
}

TEST(CommandLine, AMissingArgumentIsNamed)
{
    EXPECT_NE(runCommand({"check", "--tolerances", "console"}).err.find("READINGS.csv"), std::string::npos);
    EXPECT_NE(runCommand({"check", "a.csv"}).err.find("--tolerances"), std::string::npos);
}

TEST(CommandLine, AnAnswerThatCannotBeWrittenIsNoSuccess)
{
    std::ofstream full("/dev/full");
    std::ostringstream err;
    const int status =
        command_line::run({"--help"}, {.out = full, .err = err, .now = {}, .newUid = {}, .programVersion = "1"});
    EXPECT_EQ(status, 2);
    EXPECT_NE(err.str(), "");
}

TEST(CommandLine, KnowsItsOwnWords)
{
    EXPECT_TRUE(command_line::isCommand("check"));
    EXPECT_TRUE(command_line::isCommand("--help"));
    EXPECT_FALSE(command_line::isCommand("shop.hammerline"));
    EXPECT_FALSE(command_line::isCommand("certify"));
}

} // namespace
} // namespace hammerline
