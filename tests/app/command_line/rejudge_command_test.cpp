// rejudge: what another set would say of the whole invented workshop.

#include "support/command_run.h"
#include "support/json_schema.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace hammerline {
namespace {

using nlohmann::json;
using test_support::fileText;
using test_support::runCommand;
using test_support::ScratchFolder;
using testing::HasSubstr;

class RejudgeCommand : public ::testing::Test {
protected:
    RejudgeCommand() : m_book(m_folder.file("shop.hammerline"))
    {
        const auto made = runCommand({"demo", m_book});
        EXPECT_EQ(made.status, 0) << made.err;
    }
    json rejudged(std::vector<std::string> more) const
    {
        std::vector<std::string> call{"rejudge", m_book, "--json"};
        call.insert(call.end(), more.begin(), more.end());
        const auto ran = runCommand(call);
        EXPECT_EQ(ran.status, 0) << ran.err;
        EXPECT_THAT(support::JsonSchema("rejudge").faultsOf(ran.out), testing::IsEmpty());
        return json::parse(ran.out);
    }

    ScratchFolder m_folder;
    std::string m_book;
};

TEST_F(RejudgeCommand, CountsEveryNoteNowAndThen)
{
    const json all = rejudged({"--tolerances", "full-upright"});
    EXPECT_EQ(all["passes"], "all");
    EXPECT_GT(all["judged_passes"], 1);
    int byQuantity = 0, byInstrument = 0;
    for (const json &one : all["quantities"])
        byQuantity += one["then"]["out"].get<int>();
    for (const json &one : all["instruments"])
        byInstrument += one["then"]["out"].get<int>();
    EXPECT_GT(byQuantity, 0);
    EXPECT_EQ(byQuantity, byInstrument);
    EXPECT_LT(rejudged({"--tolerances", "full-upright", "--passes", "newest"})["judged_passes"], all["judged_passes"]);
}

TEST_F(RejudgeCommand, ByTheSetInForceNothingChanges)
{
    int same = 0;
    const json all = rejudged({"--tolerances", "full-upright"});
    for (const json &one : all["instruments"])
        same += one["now"] == one["then"] && one["more_out"] == 0 ? 1 : 0;
    EXPECT_GT(same, 0) << "uprights of the demo are judged by it already";
    const auto text = runCommand({"rejudge", m_book, "--tolerances", "full-upright"});
    EXPECT_EQ(text.status, 0);
    EXPECT_THAT(text.out, HasSubstr("instrument, worst change first"));
    EXPECT_THAT(text.out, HasSubstr("\nall "));
}

TEST_F(RejudgeCommand, WritesNothing)
{
    const std::string before = fileText(m_book);
    static_cast<void>(rejudged({"--tolerances", "full-upright"}));
    EXPECT_EQ(fileText(m_book), before);
}

TEST_F(RejudgeCommand, RefusesWhatItDoesNotKnow)
{
    for (const std::vector<std::string> &more : {std::vector<std::string>{"--tolerances", "no-such-set"},
                                                 {"--tolerances", "full-upright", "--passes", "some"},
                                                 {}}) {
        std::vector<std::string> call{"rejudge", m_book};
        call.insert(call.end(), more.begin(), more.end());
        const auto ran = runCommand(call);
        EXPECT_EQ(ran.status, 2);
        EXPECT_EQ(ran.out, "");
        EXPECT_NE(ran.err, "");
    }
    EXPECT_EQ(runCommand({"rejudge", m_folder.file("none"), "--tolerances", "full-upright"}).status, 2);
}

} // namespace
} // namespace hammerline
