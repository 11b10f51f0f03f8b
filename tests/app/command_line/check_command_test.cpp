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

constexpr auto letOffSet = R"({"format": "hammerline-tolerance-set", "version": 1, "name": "One quantity",
 "action": "vertical", "quantities": {"let_off": {"points": [{"note": 1, "low_mm": 2, "target_mm": 3, "high_mm": 4}]}}})";

class Check : public ::testing::Test {
protected:
    test_support::CommandRun check(const std::string &csv, const std::vector<std::string> &more = {}) const
    {
        std::vector<std::string> call{"check", m_folder.write("readings.csv", csv), "--tolerances",
                                      m_folder.write("set.json", letOffSet)};
        call.insert(call.end(), more.begin(), more.end());
        return runCommand(call);
    }
    json checkJson(const std::string &csv, std::vector<std::string> more = {}) const
    {
        more.push_back("--json");
        const auto ran = check(csv, more);
        EXPECT_EQ(ran.err, "");
        return json::parse(ran.out);
    }

    ScratchFolder m_folder;
};

TEST_F(Check, EndsWithZeroWhereEveryNoteIsIn)
{
    const auto ran = check("note,let_off\nA0,3\n", {"--first", "A0", "--last", "1"});
    EXPECT_EQ(ran.status, 0);
    EXPECT_EQ(ran.err, "");
    EXPECT_NE(ran.out.find("All 1 pair inside."), std::string::npos) << ran.out;
}

TEST_F(Check, EndsWithOneWhereANoteIsOut)
{
    const auto ran = check("note,let_off\nA0,4.25\n", {"--last", "A0"});
    EXPECT_EQ(ran.status, 1);
    EXPECT_EQ(ran.err, "");
    EXPECT_NE(ran.out.find("1.25 mm too far from the string"), std::string::npos) << ran.out;
}

TEST_F(Check, TellsWhatIsInOnlyByTheDigitsWrittenDown)
{
    const auto coarse = check("note,let_off\nA0,5/32\n", {"--last", "A0"}); // 3.97 mm, read to 1/32 in: 0.458 mm
    EXPECT_EQ(coarse.status, 0);
    EXPECT_NE(coarse.out.find("All 1 pair inside; 1 in, but within the doubt of the reading."), std::string::npos)
        << coarse.out;
    const auto fine = check("note,let_off\nA0,3.969\n", {"--last", "A0"});
    EXPECT_NE(fine.out.find("All 1 pair inside.\n"), std::string::npos) << fine.out;
    EXPECT_EQ(checkJson("note,let_off\nA0,5/32\n", {"--last", "A0"})["readings"][0]["conformance_probability"], 1)
        << "the JSON answer keeps to the set's own uncertainty, which is 0 here";
}

TEST_F(Check, EndsWithOneWhereANoteIsMissing)
{
    const auto ran = check("note,let_off\nA0,3\n", {"--last", "C1"});
    EXPECT_EQ(ran.status, 1);
    EXPECT_NE(ran.out.find("A#0-C1"), std::string::npos) << ran.out;
}

TEST_F(Check, ANegativeFirstNoteIsTakenWithAndWithoutAnEqualsSign)
{
    const std::string csv = "note,let_off\n-8,3\nC#0,3\n";
    for (const std::vector<std::string> &more :
         std::vector<std::vector<std::string>>{{"--first=-8", "--last=-7"},
                                               {"--first", "-8", "--last", "-7"},
                                               {"--first", "C0", "--last=C#0"},
                                               {"--last", "Db0", "--first", "c0"}})
        EXPECT_EQ(check(csv, more).status, 0) << more.front();
}

TEST_F(Check, OptionsMayStandBeforeTheFile)
{
    const auto set = m_folder.write("set.json", letOffSet);
    const auto file = m_folder.write("readings.csv", "note,let_off\nA0,3\n");
    EXPECT_EQ(runCommand({"check", "--last", "1", "--tolerances", set, "--json", file}).status, 0);
    EXPECT_EQ(runCommand({"check", "--tolerances=" + set, file, "--last=1"}).status, 0);
}

TEST_F(Check, ABareDecimalTakesTheUnitOfTheCall)
{
    const auto answer = checkJson("note,let_off\nA0,.125\n", {"--unit", "in", "--last", "1"});
    EXPECT_DOUBLE_EQ(answer["readings"][0]["value_mm"].get<double>(), 3.175);
}

TEST_F(Check, TheColumnsUnitOutranksTheCalls)
{
    const auto answer = checkJson("note,let_off (mm)\nA0,3.2\n", {"--unit", "in", "--last", "1"});
    EXPECT_DOUBLE_EQ(answer["readings"][0]["value_mm"].get<double>(), 3.2);
}

TEST_F(Check, TheActionMustAgreeWithTheSet)
{
    EXPECT_EQ(check("note,let_off\nA0,3\n", {"--action", "vertical", "--last", "1"}).status, 0);
    const auto ran = check("note,let_off\nA0,3\n", {"--action", "grand", "--last", "1"});
    EXPECT_EQ(ran.status, 2);
    EXPECT_EQ(ran.out, "");
    EXPECT_NE(ran.err.find("--action"), std::string::npos);
}

TEST_F(Check, EachOptionThatMeansNothingIsNamedOnALineOfItsOwn)
{
    const auto ran =
        check("note,let_off\nA0,3\n", {"--action", "square", "--unit", "cm", "--first", "H1", "--last", "zero"});
    EXPECT_EQ(ran.status, 2);
    ASSERT_EQ(linesOf(ran.err).size(), 4u) << ran.err;
    EXPECT_NE(linesOf(ran.err)[2].find("--first"), std::string::npos);
}

TEST_F(Check, AFirstNoteAboveTheLastIsRefused)
{
    EXPECT_EQ(check("note,let_off\nA0,3\n", {"--first", "C4", "--last", "C3"}).status, 2);
}

TEST_F(Check, AFileThatIsNotThereIsRefusedByName)
{
    const auto ran = runCommand({"check", m_folder.file("none.csv"), "--tolerances", "full-upright"});
    EXPECT_EQ(ran.status, 2);
    EXPECT_TRUE(ran.err.starts_with(m_folder.file("none.csv") + ": ")) << ran.err;
}

TEST_F(Check, ASetThatIsNeitherBuiltInNorAFileIsRefused)
{
    const auto file = m_folder.write("readings.csv", "note,let_off\nA0,3\n");
    const auto ran = runCommand({"check", file, "--tolerances", "no-such-set"});
    EXPECT_EQ(ran.status, 2);
    EXPECT_NE(ran.err.find("no-such-set"), std::string::npos);
}

TEST_F(Check, MarginalUnevenAndUnjudgedAloneAreNoFailure)
{
    const auto set = m_folder.write("guarded.json", R"({"format": "hammerline-tolerance-set", "version": 1, "name": "G",
      "action": "vertical", "quantities": {"let_off": {"points": [{"note": 1, "low_mm": 2, "target_mm": 3, "high_mm": 4}],
      "step_mm": 0.1, "expanded_uncertainty_mm": 0.5, "rule": "guarded"}}})");
    const auto file = m_folder.write("readings.csv", "note,let_off,blow\nA0,3.9,47\nA#0,3,47\n");
    const auto ran = runCommand({"check", file, "--tolerances", set, "--last", "2", "--json"});
    EXPECT_EQ(ran.status, 0);
    const auto answer = json::parse(ran.out);
    EXPECT_EQ(answer["quantities"]["let_off"]["marginal"], 1);
    EXPECT_EQ(answer["quantities"]["let_off"]["uneven"], 1);
    EXPECT_EQ(answer["readings"][0]["status"], "unjudged");
}

TEST_F(Check, ReadsFromSampleDataSayTheirWorstFirst)
{
    const auto ran =
        runCommand({"check", sampleData("readings/zirrow-188-as-left.csv"), "--tolerances", "grand-under-2m"});
    EXPECT_EQ(ran.status, 1);
    EXPECT_NE(ran.out.find("Out, worst first"), std::string::npos);
    EXPECT_NE(ran.out.find("drop"), std::string::npos);
}

} // namespace
} // namespace hammerline
