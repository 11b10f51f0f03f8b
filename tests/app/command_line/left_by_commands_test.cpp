// What commands leave beside a logbook: those that read nothing, those that write the backup of the day.

#include "logbook/logbook.h"
#include "support/command_run.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace hammerline {
namespace {

using test_support::fileText;
using test_support::runCommand;
using test_support::ScratchFolder;
using testing::HasSubstr;

class LeftByCommands : public ::testing::Test {
protected:
    LeftByCommands() { EXPECT_EQ(runCommand({"demo", m_book}).status, 0); }

    [[nodiscard]] test_support::CommandRun import(const std::string &csv) const
    {
        return runCommand({"import", m_book, "--instrument", "1", "--purpose", "recheck", csv});
    }

    ScratchFolder m_elsewhere;
    ScratchFolder m_folder;
    std::string m_book = m_folder.file("shop.hammerline");
    std::string m_csv = m_elsewhere.write("r.csv", "note,let_off\nA0,3\n");
    std::string m_backups = m_book + "-backups";
    std::string m_today = m_backups + "/2026-11-02.hammerline";
};

TEST_F(LeftByCommands, ThoseThatReadLeaveTheLogbookAloneAndAlike)
{
    const std::string before = fileText(m_book);
    for (const std::vector<std::string> &call : std::vector<std::vector<std::string>>{
             {"instruments", m_book},
             {"passes", m_book, "--instrument", "1"},
             {"review", m_book},
             {"verify", m_book},
             {"export", m_book, "--instrument", "1", "--to", m_elsewhere.file("r.out.csv")},
             {"record", m_book, "--instrument", "1", "--to", m_elsewhere.file("r.pdf")},
             {"hand-over", m_book, "--instrument", "1", "--to", m_elsewhere.file("r.json")},
             {"backup", m_book, "--to", m_elsewhere.file("copy")},
             {"rejudge", m_book, "--tolerances", "full-upright"}}) {
        const auto ran = runCommand(call);
        EXPECT_EQ(ran.status, 0) << call.front() << ran.err;
        EXPECT_EQ(m_folder.names(), std::vector<std::string>{"shop.hammerline"}) << call.front();
    }
    EXPECT_EQ(fileText(m_book), before);
}

TEST_F(LeftByCommands, AnImportMakesTheBackupOfTheDayOnce)
{
    EXPECT_EQ(import(m_csv).err, "");
    ASSERT_TRUE(std::filesystem::exists(m_today));
    EXPECT_EQ(runCommand({"verify", m_today}).status, 0);
    const std::string first = fileText(m_today);
    EXPECT_EQ(import(m_csv).err, "");
    EXPECT_EQ(fileText(m_today), first);
    EXPECT_EQ(m_folder.names().size(), 2u);
}

TEST_F(LeftByCommands, WhatIsRefusedMakesNone)
{
    EXPECT_EQ(import(m_elsewhere.write("bad.csv", "note,let_off\nH9,3\n")).status, 2);
    EXPECT_EQ(runCommand({"take-over", m_book, m_csv}).status, 2);
    EXPECT_FALSE(std::filesystem::exists(m_backups));
}

TEST_F(LeftByCommands, WhatIsTakenOverIntoALogbookMakesOne)
{
    const std::string fresh = m_elsewhere.file("fresh");
    const std::string one = m_elsewhere.file("1.json");
    const std::string two = m_elsewhere.file("2.json");
    ASSERT_EQ(runCommand({"hand-over", m_book, "--instrument", "1", "--to", one}).status, 0);
    ASSERT_EQ(runCommand({"hand-over", m_book, "--instrument", "2", "--to", two}).status, 0);
    ASSERT_EQ(runCommand({"take-over", fresh, one, "--new"}).status, 0);
    EXPECT_FALSE(std::filesystem::exists(fresh + "-backups"));
    ASSERT_EQ(runCommand({"take-over", fresh, one}).status, 0);
    EXPECT_FALSE(std::filesystem::exists(fresh + "-backups")) << "nothing was added";
    ASSERT_EQ(runCommand({"take-over", fresh, two}).status, 0);
    EXPECT_TRUE(std::filesystem::exists(fresh + "-backups/2026-11-02.hammerline"));
}

TEST_F(LeftByCommands, ABackupThatCannotBeMadeIsToldAndStopsNothing)
{
    static_cast<void>(m_folder.write("shop.hammerline-backups", "a file of that name"));
    const auto ran = import(m_csv);
    EXPECT_EQ(ran.status, 0);
    EXPECT_THAT(ran.out, HasSubstr("has 1 reading"));
    EXPECT_THAT(ran.err, HasSubstr("the backup of the day was not made"));
}

TEST_F(LeftByCommands, AClockBehindTheNewestEntryIsToldWithBothMoments)
{
    auto book = logbook::Logbook::open(m_book);
    auto changed = book.instrument(1).value();
    changed.remark = "by a machine that is ahead";
    ASSERT_TRUE(book.changeInstrument(changed, {readings::parseRfc3339("2027-01-01T00:00:00Z").value(), "Ada"}, {}));
    static_cast<void>(import(m_csv)); // which is the last entry now
    const auto ran = import(m_csv);
    EXPECT_EQ(ran.status, 0);
    EXPECT_THAT(ran.err, HasSubstr("the clock of this machine says 2026-11-02T09:10:00Z"));
    EXPECT_THAT(ran.err, HasSubstr("is of 2027-01-01T00:00:00Z"));
    EXPECT_EQ(runCommand({"verify", m_book}).status, 0);
}

TEST_F(LeftByCommands, ALongNameLeavesRoomForTheOtherColumns)
{
    const std::string name = std::string(300, 'z');
    ASSERT_EQ(
        runCommand({"import", m_book, "--instrument", "1", "--purpose", "recheck", m_csv, "--person", name}).status, 0);
    const auto told = runCommand({"passes", m_book, "--instrument", "1"}).out;
    EXPECT_THAT(told, HasSubstr("  " + std::string(39, 'z') + "\u2026  "));
    EXPECT_EQ(logbook::Logbook::open(m_book).passes(1).back().person, name);
}

TEST_F(LeftByCommands, AWorkshopWithControlCharactersIsRefused)
{
    const auto ran = runCommand(
        {"record", m_book, "--instrument", "1", "--to", m_elsewhere.file("r.pdf"), "--workshop", "Bell \x07 and sons"});
    EXPECT_EQ(ran.status, 2);
    EXPECT_THAT(ran.err, HasSubstr("--workshop: the text holds the control character U+0007"));
}

} // namespace
} // namespace hammerline
