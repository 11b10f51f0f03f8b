// Every deliberately broken file is refused with status 2, one line a fault, and nothing on standard output.

#include "support/command_run.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <ostream>
#include <set>

namespace hammerline {
namespace {

using test_support::linesOf;
using test_support::runCommand;
using test_support::sampleData;

struct Expected {
    std::string file;
    std::vector<int> lines; ///< of the file, in the order of the messages
    std::string says;       ///< part of the first message
};

void PrintTo(const Expected &expected, std::ostream *stream)
{
    *stream << expected.file;
}

const std::vector<Expected> brokenReadings{
#include "broken_readings.inc"
};

class BrokenReadings : public ::testing::TestWithParam<Expected> {};

TEST_P(BrokenReadings, AreRefusedWithALineForEachFault)
{
    const Expected &expected = GetParam();
    const std::string path = sampleData("broken/" + expected.file);
    const auto ran = runCommand({"check", path, "--tolerances", "full-upright"});
    EXPECT_EQ(ran.status, 2);
    EXPECT_EQ(ran.out, "");
    const auto lines = linesOf(ran.err);
    ASSERT_EQ(lines.size(), expected.lines.size()) << ran.err;
    for (std::size_t i = 0; i < lines.size(); ++i)
        EXPECT_TRUE(lines[i].starts_with(path + ":" + std::to_string(expected.lines[i]) + ": ")) << lines[i];
    EXPECT_NE(lines.front().find(expected.says), std::string::npos) << lines.front();
}

INSTANTIATE_TEST_SUITE_P(Files, BrokenReadings, ::testing::ValuesIn(brokenReadings));

std::vector<std::string> brokenFiles(const std::string &beginning, const std::string &ending)
{
    std::vector<std::string> names;
    for (const auto &entry : std::filesystem::directory_iterator(sampleData("broken"))) {
        const std::string name = entry.path().filename().string();
        if (name.starts_with(beginning) && name.ends_with(ending))
            names.push_back(name);
    }
    std::ranges::sort(names);
    return names;
}

TEST(BrokenFiles, EveryReadingsFileIsExpected)
{
    std::set<std::string> expected;
    for (const Expected &one : brokenReadings)
        expected.insert(one.file);
    for (const std::string &name : brokenFiles("broken-", ".csv"))
        EXPECT_TRUE(expected.contains(name)) << name;
    EXPECT_EQ(expected.size(), brokenFiles("broken-", ".csv").size());
}
#include "broken_sets.inc"
} // namespace
} // namespace hammerline
