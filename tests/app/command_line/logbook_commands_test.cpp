// demo, import, instruments, passes, export and review on the invented workshop.

#include "support/command_run.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace hammerline {
namespace {

using nlohmann::json;
using test_support::fileText;
using test_support::linesOf;
using test_support::runCommand;
using test_support::sampleData;
using test_support::ScratchFolder;
using testing::HasSubstr;

class LogbookCommands : public ::testing::Test {
protected:
    LogbookCommands() : m_book(m_folder.file("shop.hammerline"))
    {
        const auto made = runCommand({"demo", m_book});
        EXPECT_EQ(made.status, 0) << made.err;
    }
    json instruments() const { return json::parse(runCommand({"instruments", m_book, "--json"}).out)["instruments"]; }
    json passes(const std::string &id) const
    {
        return json::parse(runCommand({"passes", m_book, "--instrument", id, "--json"}).out)["passes"];
    }
    std::string idOf(const std::string &name) const
    {
        for (const json &one : instruments())
            if (one["name"] == name)
                return std::to_string(one["id"].get<int>());
        return "none";
    }
    /// Refused, with nothing on standard output and something that says why.
    static void expectRefused(const std::vector<std::string> &call, const std::string &says)
    {
        const auto ran = runCommand(call);
        EXPECT_EQ(ran.status, 2) << call.front();
        EXPECT_EQ(ran.out, "");
        EXPECT_NE(ran.err.find(says), std::string::npos) << ran.err;
    }

    ScratchFolder m_folder;
    std::string m_book;
};

TEST_F(LogbookCommands, DemoLeavesOneFile)
{
    EXPECT_EQ(m_folder.names().size(), 1u);
}

TEST_F(LogbookCommands, DemoOverwritesOnlyWhenForced)
{
    expectRefused({"demo", m_book}, "--force");
    EXPECT_EQ(runCommand({"demo", m_book, "--force"}).status, 0);
    EXPECT_EQ(instruments().size(), 7u);
}

TEST_F(LogbookCommands, InstrumentsAreListedInBothForms)
{
    const auto all = instruments();
    ASSERT_GE(all.size(), 6u);
    EXPECT_EQ(all[0]["action"], "vertical");
    EXPECT_EQ(all[0]["first_note"], 1);
    EXPECT_EQ(all[0]["last_note"], 88);
    EXPECT_EQ(all[0]["state"], "signed-off");
    const auto text = runCommand({"instruments", m_book}).out;
    for (const json &one : all)
        EXPECT_NE(text.find(one["name"].get<std::string>()), std::string::npos);
}

TEST_F(LogbookCommands, PassesCountTheirReadings)
{
    const auto all = passes(idOf("Quillerby 131"));
    ASSERT_EQ(all.size(), 4u);
    EXPECT_EQ(all[0]["purpose"], "as-found");
    EXPECT_EQ(all[0]["began"], "2024-02-02T09:10:00Z");
    EXPECT_EQ(all[0]["readings"], 87 * 6 - 2);
}

TEST_F(LogbookCommands, ImportMakesAPassOfWhatAFileHolds)
{
    const auto id = idOf("Zirrow 188");
    const auto ran = runCommand({"import", m_book, "--instrument", id, "--purpose", "recheck",
                                 sampleData("readings/zirrow-188-as-left.csv"), "--json"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    const auto answer = json::parse(ran.out);
    EXPECT_EQ(answer["format"], "hammerline-import");
    EXPECT_EQ(answer["readings"], 88 * 6 - 1);
    const auto newest = passes(id).at(2);
    EXPECT_EQ(newest["id"], answer["pass"]);
    EXPECT_EQ(newest["purpose"], "recheck");
    EXPECT_EQ(newest["readings"], answer["readings"]);
}

TEST_F(LogbookCommands, ImportTakesTheCompassAndTheActionOfTheInstrument)
{
    const auto grand = idOf("Hethlyn 275 with extended bass");
    EXPECT_EQ(runCommand({"import", m_book, "--instrument", grand, "--purpose", "recheck",
                          sampleData("readings/hethlyn-275-with-extended-bass-as-left.csv")})
                  .status,
              0);
    const auto upright = idOf("Ondelmark 108");
    expectRefused({"import", m_book, "--instrument", upright, "--purpose", "recheck",
                   m_folder.write("low.csv", "note,blow\n-8,47\n")},
                  ":2: ");
    expectRefused({"import", m_book, "--instrument", upright, "--purpose", "recheck",
                   m_folder.write("drop.csv", "note,drop\nA0,1\n")},
                  ":1: ");
    const auto fine = m_folder.write("fine.csv", "note,blow\nA0,47\n");
    expectRefused({"import", m_book, "--instrument", upright, "--purpose", "recheck", fine, "--action", "grand"},
                  "--action");
    expectRefused({"import", m_book, "--instrument", upright, "--purpose", "recheck", fine, "--last", "A7"}, "--last");
}

TEST_F(LogbookCommands, ARefusedImportLeavesNoPass)
{
    const auto id = idOf("Ondelmark 108");
    const auto count = passes(id).size();
    expectRefused(
        {"import", m_book, "--instrument", id, "--purpose", "recheck", sampleData("broken/broken-three-faults.csv")},
        "broken-three-faults.csv:8: ");
    expectRefused(
        {"import", m_book, "--instrument", id, "--purpose", "later", sampleData("readings/ondelmark-108-as-left.csv")},
        "--purpose");
    EXPECT_EQ(passes(id).size(), count);
}

TEST_F(LogbookCommands, AFileOfManyBatchesIsImportedWholeOrNotAtAll)
{
    const auto id = idOf("Ondelmark 108");
    const auto count = passes(id).size();
    constexpr int takes = 20'000;
    std::string text = "note,quantity,value,take\n";
    for (int take = 1; take <= takes; ++take)
        text += "A4,blow,47," + std::to_string(take) + '\n';
    const auto import = [&](const std::string &name, const std::string &rows) {
        return runCommand(
            {"import", m_book, "--instrument", id, "--purpose", "recheck", m_folder.write(name, text + rows)});
    };
    const auto refused = import("twice.csv", "A4,blow,47,1\nA4,blow,x,20001\n");
    EXPECT_EQ(refused.status, 2);
    EXPECT_EQ(linesOf(refused.err).size(), 2u);
    EXPECT_THAT(refused.err, HasSubstr("twice.csv:20002: blow of note A4, take 1 stands here again, after line 2;"));
    EXPECT_THAT(refused.err, HasSubstr("twice.csv:20003: "));
    EXPECT_EQ(passes(id).size(), count);
    EXPECT_EQ(import("fine.csv", "").status, 0);
    EXPECT_EQ(passes(id).back()["readings"], takes);
    EXPECT_EQ(runCommand({"verify", m_book}).status, 0);
}

TEST_F(LogbookCommands, ExportWritesTheNewestPassExactlyAndImportReadsItBack)
{
    const auto id = idOf("Tamsel & Rook 118");
    const auto out = m_folder.file("out.csv");
    ASSERT_EQ(runCommand({"export", m_book, "--instrument", id, "--to", out}).status, 0);
    EXPECT_TRUE(fileText(out).starts_with("note,quantity,value,unit,take,remark"));
    ASSERT_EQ(runCommand({"import", m_book, "--instrument", id, "--purpose", "as-left", out}).status, 0);
    const auto again = m_folder.file("again.csv");
    ASSERT_EQ(runCommand({"export", m_book, "--instrument", id, "--to", again}).status, 0);
    EXPECT_EQ(fileText(again), fileText(out));
}

TEST_F(LogbookCommands, ExportOfANamedPassKeepsASixtyFourth)
{
    const auto id = idOf("Tamsel & Rook 118");
    const auto pass = std::to_string(passes(id).at(0)["id"].get<int>());
    const auto out = m_folder.file("out.csv");
    ASSERT_EQ(runCommand({"export", m_book, "--instrument", id, "--pass", pass, "--to", out}).status, 0);
    EXPECT_NE(fileText(out).find("lost_motion,0.396875,mm,1,"), std::string::npos);
}

TEST_F(LogbookCommands, ExportOverwritesOnlyWhenForced)
{
    const auto id = idOf("Zirrow 188");
    const auto out = m_folder.write("out.csv", "mine");
    expectRefused({"export", m_book, "--instrument", id, "--to", out}, out);
    EXPECT_EQ(fileText(out), "mine");
    EXPECT_EQ(runCommand({"export", m_book, "--instrument", id, "--to", out, "--force"}).status, 0);
    EXPECT_NE(fileText(out), "mine");
}

TEST_F(LogbookCommands, ExportRefusesAPassOfAnotherInstrument)
{
    const auto other = std::to_string(passes(idOf("Zirrow 188")).at(0)["id"].get<int>());
    expectRefused(
        {"export", m_book, "--instrument", idOf("Quillerby 131"), "--pass", other, "--to", m_folder.file("o.csv")},
        "--pass");
}

TEST_F(LogbookCommands, ReviewPutsTheWorstFirstAndThoseWithoutHalfWidthsLast)
{
    const auto ran = runCommand({"review", m_book, "--json"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    const auto items = json::parse(ran.out)["items"];
    ASSERT_FALSE(items.empty());
    double before = 1e9;
    for (const json &item : items) {
        const double now = item.value("half_widths", -1.0);
        EXPECT_LE(now, before);
        before = now;
    }
}

TEST_F(LogbookCommands, ReviewTellsWhatIsInButWithinTheGaugesDoubtBesideTheQueue)
{
    const json answer = json::parse(runCommand({"review", m_book, "--json"}).out);
    ASSERT_FALSE(answer["in_doubt"].empty());
    double before = 0;
    for (const json &item : answer["in_doubt"]) {
        EXPECT_FALSE(item.contains("kind"));
        EXPECT_GT(item["doubt_mm"], 0) << "the demonstration's gauges state lengths";
        EXPECT_LE(before, item["probability_inside"]);
        EXPECT_LT(item["probability_inside"], 1);
        before = item["probability_inside"];
    }
    for (const json &item : answer["items"])
        EXPECT_EQ(item.contains("doubt_mm") || item.contains("doubt_g"), item.contains("probability_inside"));
    const std::string text = runCommand({"review", m_book}).out;
    EXPECT_THAT(text, HasSubstr("In, but within the gauge's doubt of a limit, least sure first"));
    EXPECT_THAT(text, HasSubstr("sure inside"));
}

TEST_F(LogbookCommands, ReviewLeavesDeliveredInstrumentsAlone)
{
    const auto delivered = std::stoi(idOf("Ondelmark 108"));
    const json answer = json::parse(runCommand({"review", m_book, "--json"}).out);
    for (const json &item : answer["items"])
        EXPECT_NE(item["instrument"], delivered);
    EXPECT_NE(runCommand({"review", m_book}).out.find("Zirrow 188"), std::string::npos);
    EXPECT_THAT(runCommand({"review", m_book}).out, HasSubstr("delivered and not listed.\n"));
}

TEST_F(LogbookCommands, ImportIntoALogbookThatIsNotThereSaysWhatToDo)
{
    const std::string none = m_folder.file("none.hammerline");
    const auto ran = runCommand({"import", none, "--instrument", "1", "--purpose", "recheck",
                                 m_folder.write("r.csv", "note,let_off (mm)\nA0,3.2\n")});
    EXPECT_EQ(ran.status, 2);
    EXPECT_THAT(ran.err, HasSubstr(none + ": no logbook is there; "));
    EXPECT_THAT(ran.err, HasSubstr("hammerline take-over --new"));
    EXPECT_FALSE(std::filesystem::exists(none));
}

TEST_F(LogbookCommands, AnInstrumentThatIsNotThereIsRefused)
{
    for (const char *id : {"99", "0", "-1", "one", "", "1x"}) {
        expectRefused({"passes", m_book, "--instrument", id}, "instrument");
        expectRefused({"export", m_book, "--instrument", id, "--to", m_folder.file("o.csv")}, "instrument");
    }
}

TEST_F(LogbookCommands, WhatIsNoLogbookIsRefusedAndNotMade)
{
    const auto nothing = m_folder.file("none.hammerline");
    const auto text = m_folder.write("text.hammerline", "a letter, not a logbook");
    for (const std::string &book : {nothing, text})
        for (const std::vector<std::string> &call : std::vector<std::vector<std::string>>{
                 {"instruments", book},
                 {"passes", book, "--instrument", "1"},
                 {"review", book},
                 {"export", book, "--instrument", "1", "--to", m_folder.file("o.csv")},
                 {"import", book, "--instrument", "1", "--purpose", "as-left",
                  sampleData("readings/ondelmark-108-as-left.csv")}}) {
            const auto ran = runCommand(call);
            EXPECT_EQ(ran.status, 2) << call.front();
            EXPECT_EQ(ran.out, "");
            EXPECT_NE(ran.err, "");
        }
    EXPECT_EQ(m_folder.names().size(), 2u);
    EXPECT_EQ(fileText(text), "a letter, not a logbook");
}

} // namespace
} // namespace hammerline
