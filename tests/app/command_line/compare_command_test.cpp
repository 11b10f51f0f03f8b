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

const std::string before = "readings/quillerby-131-as-found.csv";
const std::string after = "readings/quillerby-131-as-left.csv";

TEST(Compare, CountsMendedNotesOnlyWithASet)
{
    const auto without = runCommand({"compare", sampleData(before), sampleData(after), "--json"});
    ASSERT_EQ(without.status, 0) << without.err;
    const auto plain = json::parse(without.out)["quantities"]["blow"];
    EXPECT_EQ(plain["pairs"], 87);
    EXPECT_FALSE(plain.contains("mended"));
    const auto with =
        runCommand({"compare", sampleData(before), sampleData(after), "--tolerances", "full-upright", "--json"});
    const auto judged = json::parse(with.out)["quantities"]["blow"];
    EXPECT_GT(judged["mended"].get<int>(), 0);
    EXPECT_EQ(judged["out_before"].get<int>() - judged["mended"].get<int>() + judged["spoiled"].get<int>(),
              judged["out_after"].get<int>());
}

TEST(Compare, SaysTheMeanChangeWithItsSign)
{
    const ScratchFolder folder;
    const auto first = folder.write("a.csv", "note,blow\nA0,47\nB0,48\n");
    const auto second = folder.write("b.csv", "note,blow\nA0,46\nB0,46.5\nC1,46\n");
    const auto ran = runCommand({"compare", first, second, "--json"});
    EXPECT_EQ(ran.status, 0);
    const auto blow = json::parse(ran.out)["quantities"]["blow"];
    EXPECT_EQ(blow["pairs"], 2);
    EXPECT_DOUBLE_EQ(blow["mean_change_mm"].get<double>(), -1.25);
    EXPECT_NE(runCommand({"compare", first, second}).out.find("-1.25 mm"), std::string::npos);
}

TEST(Compare, FaultsOfBothFilesAreToldAtOnce)
{
    const ScratchFolder folder;
    const auto first = folder.write("a.csv", "note,blow\nA0,soft\n");
    const auto second = folder.write("b.csv", "note,blow\nQ0,46\n");
    const auto ran = runCommand({"compare", first, second});
    EXPECT_EQ(ran.status, 2);
    EXPECT_EQ(ran.out, "");
    ASSERT_EQ(linesOf(ran.err).size(), 2u) << ran.err;
    EXPECT_TRUE(linesOf(ran.err)[0].starts_with(first + ":2: "));
    EXPECT_TRUE(linesOf(ran.err)[1].starts_with(second + ":2: "));
}

TEST(Compare, WithoutASetEveryQuantityIsTakenUnlessAnActionIsNamed)
{
    const ScratchFolder folder;
    const auto file = folder.write("a.csv", "note,drop\nA0,1\nB0,1.5\n");
    EXPECT_EQ(runCommand({"compare", file, file}).status, 0);
    EXPECT_EQ(runCommand({"compare", file, file, "--action", "grand"}).status, 0);
    EXPECT_EQ(runCommand({"compare", file, file, "--action", "vertical"}).status, 2);
    EXPECT_EQ(runCommand({"compare", file, file, "--tolerances", "full-upright"}).status, 2);
}

TEST(Compare, FilesWithoutACommonNoteAreComparedAsNothing)
{
    const ScratchFolder folder;
    const auto first = folder.write("a.csv", "note,blow\nA0,47\n");
    const auto second = folder.write("b.csv", "note,blow\nB0,47\n");
    const auto ran = runCommand({"compare", first, second, "--json"});
    EXPECT_EQ(ran.status, 0);
    EXPECT_TRUE(json::parse(ran.out)["quantities"].empty());
}

} // namespace
} // namespace hammerline
