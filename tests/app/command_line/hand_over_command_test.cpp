// hand-over, take-over and backup on the invented workshop.

#include "logbook/logbook.h"
#include "support/command_run.h"
#include "support/json_schema.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace hammerline {
namespace {

using test_support::fileText;
using test_support::runCommand;
using test_support::ScratchFolder;
using testing::HasSubstr;
using testing::IsEmpty;

class HandOverCommands : public ::testing::Test {
protected:
    HandOverCommands()
    {
        EXPECT_EQ(runCommand({"demo", m_book}).status, 0);
        EXPECT_EQ(runCommand({"demo", m_other}).status, 0);
    }
    /// Instrument `id` of `book` written into `name`.
    std::string handedOver(const std::string &book, const std::string &id, const std::string &name)
    {
        const std::string file = m_folder.file(name);
        const auto ran = runCommand({"hand-over", book, "--instrument", id, "--to", file});
        EXPECT_EQ(ran.status, 0) << ran.err;
        return file;
    }

    ScratchFolder m_folder;
    std::string m_book = m_folder.file("shop.hammerline");
    std::string m_other = m_folder.file("other.hammerline");
};

TEST_F(HandOverCommands, TheDocumentKeepsToItsSchema)
{
    const std::string text = fileText(handedOver(m_book, "1", "piano.json"));
    EXPECT_THAT(support::JsonSchema("hand-over").faultsOf(text), IsEmpty());
}

TEST_F(HandOverCommands, AnInstrumentGoesOverWithEveryReading)
{
    const std::string fresh = m_folder.file("fresh.hammerline");
    ASSERT_TRUE(logbook::Logbook::create(fresh, {}));
    const std::string file = handedOver(m_book, "2", "piano.json");
    const auto taken = runCommand({"take-over", fresh, file});
    ASSERT_EQ(taken.status, 0) << taken.err;
    EXPECT_THAT(taken.out, HasSubstr("is instrument 1, taken over with"));
    const std::string id = "1";
    const std::string here = m_folder.file("here.csv");
    const std::string there = m_folder.file("there.csv");
    ASSERT_EQ(runCommand({"export", m_book, "--instrument", "2", "--to", there}).status, 0);
    ASSERT_EQ(runCommand({"export", fresh, "--instrument", id, "--to", here}).status, 0);
    EXPECT_EQ(fileText(here), fileText(there));
    EXPECT_EQ(fileText(handedOver(fresh, id, "again.json")), fileText(file));
    EXPECT_EQ(runCommand({"verify", fresh}).status, 0);
}

TEST_F(HandOverCommands, TakenOverTwiceIsToldAndAddsNothing)
{
    const std::string file = handedOver(m_book, "1", "piano.json");
    const std::string before = fileText(handedOver(m_book, "1", "before.json"));
    const auto again = runCommand({"take-over", m_book, file});
    EXPECT_EQ(again.status, 0) << again.err;
    EXPECT_THAT(again.out, HasSubstr("was here already"));
    EXPECT_EQ(fileText(handedOver(m_book, "1", "after.json")), before);
}

TEST_F(HandOverCommands, AFileIsOverwrittenOnlyWhenForced)
{
    const std::string file = handedOver(m_book, "1", "piano.json");
    EXPECT_EQ(runCommand({"hand-over", m_book, "--instrument", "2", "--to", file}).status, 2);
    EXPECT_EQ(runCommand({"hand-over", m_book, "--instrument", "2", "--to", file, "--force"}).status, 0);
}

TEST_F(HandOverCommands, WhatIsNoHandOverIsRefusedByName)
{
    const auto ran = runCommand({"take-over", m_book, m_other});
    EXPECT_EQ(ran.status, 2);
    EXPECT_THAT(ran.err, HasSubstr(m_other + ": this is no JSON document"));
    EXPECT_EQ(runCommand({"take-over", m_book, m_folder.file("missing.json")}).status, 2);
}

TEST_F(HandOverCommands, ABackupIsALogbookOfItsOwnAndRestoresTheOther)
{
    const std::string copy = m_folder.file("copy.hammerline");
    const auto ran = runCommand({"backup", m_book, "--to", copy});
    EXPECT_EQ(ran.status, 0) << ran.err;
    EXPECT_THAT(ran.out, HasSubstr("all whole"));
    const std::string before = runCommand({"review", m_book, "--json"}).out;
    std::ofstream(m_book, std::ios::binary | std::ios::trunc) << "spoiled";
    EXPECT_EQ(runCommand({"review", m_book}).status, 2);
    std::filesystem::copy_file(copy, m_book, std::filesystem::copy_options::overwrite_existing);
    EXPECT_EQ(runCommand({"review", m_book, "--json"}).out, before);
    EXPECT_EQ(runCommand({"verify", m_book}).status, 0);
}

TEST_F(HandOverCommands, ABackupNeverOverwrites)
{
    const std::string before = fileText(m_other);
    const auto ran = runCommand({"backup", m_book, "--to", m_other});
    EXPECT_EQ(ran.status, 2);
    EXPECT_EQ(fileText(m_other), before);
}

} // namespace
} // namespace hammerline
