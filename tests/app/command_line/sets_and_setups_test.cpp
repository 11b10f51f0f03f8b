#include "support/command_run.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace hammerline {
namespace {

using nlohmann::json;
using test_support::fileText;
using test_support::runCommand;
using test_support::ScratchFolder;

const std::vector<std::string> builtIns{"console", "full-upright", "grand-over-2m", "grand-under-2m"};

TEST(Tolerances, ListsTheBuiltInSetsAndWhatOutranksThem)
{
    const auto ran = runCommand({"tolerances"});
    EXPECT_EQ(ran.status, 0);
    for (const std::string &id : builtIns)
        EXPECT_NE(ran.out.find(id), std::string::npos) << id;
    EXPECT_NE(ran.out.find("manual"), std::string::npos);
}

TEST(Tolerances, PrintsOneAsTheFileItIs)
{
    for (const std::string &id : builtIns) {
        const auto ran = runCommand({"tolerances", id});
        EXPECT_EQ(ran.status, 0);
        EXPECT_EQ(json::parse(ran.out)["format"], "hammerline-tolerance-set");
        EXPECT_EQ(ran.out, fileText(std::string(HAMMERLINE_SOURCE_DIR) + "/resources/tolerances/" + id + ".json"));
    }
}

TEST(Tolerances, APrintedSetCanBeGivenBackAsAFile)
{
    const ScratchFolder folder;
    const auto copy = folder.write("copy.json", runCommand({"tolerances", "console"}).out);
    EXPECT_EQ(runCommand({"tolerances", copy}).status, 0);
}

TEST(Setups, ListsAndPrints)
{
    EXPECT_EQ(runCommand({"setups"}).status, 0);
    for (const std::string &id : builtIns)
        EXPECT_EQ(json::parse(runCommand({"setups", id}).out)["format"], "hammerline-action-setup") << id;
}

TEST(Setups, AFileIsCheckedAndPrinted)
{
    const ScratchFolder folder;
    const auto copy = folder.write("copy.json", runCommand({"setups", "console"}).out);
    const auto ran = runCommand({"setups", copy});
    EXPECT_EQ(ran.status, 0);
    EXPECT_EQ(json::parse(ran.out)["action"], "vertical");
}

TEST(TolerancesAndSetups, AnUnknownNameIsRefused)
{
    for (const char *command : {"tolerances", "setups"}) {
        const auto ran = runCommand({command, "no-such-one"});
        EXPECT_EQ(ran.status, 2);
        EXPECT_EQ(ran.out, "");
        EXPECT_NE(ran.err.find("no-such-one"), std::string::npos);
    }
}

} // namespace
} // namespace hammerline
