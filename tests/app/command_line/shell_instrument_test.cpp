// What the sqlite3 shell does to the rows of an instrument bars that instrument's record and its handing over, and is
// told to whoever reviews; what it does to those of another does not.

#include "app/command_line/shell_tampering.h"

#include <gmock/gmock.h>

namespace hammerline {
namespace {

using test_support::CommandRun;
using test_support::lea;
using test_support::runCommand;
using testing::AllOf;
using testing::AnyOf;
using testing::HasSubstr;
using testing::Not;

class ShellInstrumentTest : public test_support::ShellTampering {
protected:
    ShellInstrumentTest()
    {
        auto made = logbook::Logbook::open(book());
        EXPECT_TRUE(
            made.addInstrument({.name = "Upright by the door", .action = catalogue::ActionKind::Vertical}, lea));
        made.noteSale(2, {"somebody", {}, {}}, lea);
        made.noteSale(1, {"somebody else", {}, {}}, lea);
    }

    [[nodiscard]] CommandRun record(const std::string &instrument) const
    {
        return runCommand({"record", copy(), "--instrument", instrument, "--to", m_folder.file("record.pdf")});
    }
    [[nodiscard]] CommandRun handOver(const std::string &instrument) const
    {
        return runCommand({"hand-over", copy(), "--instrument", instrument, "--to", m_folder.file("one.json")});
    }
    void expectBarred(const std::string &sql) const
    {
        tamper(sql);
        for (const CommandRun &refused : {record("1"), handOver("1")}) {
            EXPECT_EQ(refused.status, 2) << sql << '\n' << refused.out;
            EXPECT_THAT(refused.err, AnyOf(HasSubstr("was edited by another program, in "),
                                           HasSubstr("no instrument 1 is in this logbook")))
                << sql;
        }
        EXPECT_FALSE(std::filesystem::exists(m_folder.file("record.pdf"))) << sql;
        EXPECT_FALSE(std::filesystem::exists(m_folder.file("one.json"))) << sql;
    }
    /// A row of a gauge study is nobody's.
    [[nodiscard]] std::vector<std::string> tablesOfInstruments() const
    {
        auto all = tables();
        std::erase_if(all, [](const std::string &table) { return table.starts_with("gauge_"); });
        return all;
    }
};

TEST_F(ShellInstrumentTest, WhatTheProgramWroteIsHandedOver)
{
    std::filesystem::copy_file(book(), copy());
    EXPECT_EQ(handOver("1").status, 0);
    EXPECT_THAT(record("1").err, Not(HasSubstr("edited")));
    EXPECT_EQ(runCommand({"review", copy()}).err, "");
}

TEST_F(ShellInstrumentTest, ARowAlteredInAnyTableBarsIt)
{
    for (const std::string &table : tablesOfInstruments())
        expectBarred(table == "history" ? "UPDATE history SET digest = zeroblob(32) WHERE instrument = 1"
                                        : alteringFirstRow(table));
}

TEST_F(ShellInstrumentTest, ARowTakenOutOfAnyTableBarsIt)
{
    for (const std::string &table : tablesOfInstruments())
        expectBarred("DELETE FROM " + table + " WHERE " + firstRow(table));
}

TEST_F(ShellInstrumentTest, ARowPutIntoAnyTableBarsIt)
{
    for (const std::string &table : tablesOfInstruments())
        if (table != "picture") // one that no photograph names is nobody's
            expectBarred(addingARow(table));
}

TEST_F(ShellInstrumentTest, WhatIsAlteredElsewhereDoesNotBarIt)
{
    for (const char *sql : {"UPDATE sale SET buyer = 'Eve' WHERE instrument = 2",
                            "DELETE FROM sale WHERE instrument = 2", "UPDATE gauge_trial SET value = 9"}) {
        tamper(sql);
        EXPECT_EQ(handOver("1").status, 0) << sql;
        EXPECT_THAT(record("1").err, Not(HasSubstr("edited"))) << sql;
        EXPECT_EQ(runCommand({"verify", copy()}).status, 1) << sql;
        std::filesystem::remove(m_folder.file("one.json"));
    }
    tamper("UPDATE sale SET buyer = 'Eve' WHERE instrument = 2");
    EXPECT_EQ(handOver("2").status, 2);
}

TEST_F(ShellInstrumentTest, WhoReviewsIsToldWhichInstrumentWasEdited)
{
    const std::string listed = runCommand({"review", book(), "--json"}).out;
    tamper("UPDATE sale SET buyer = 'Eve' WHERE instrument = 2");
    const CommandRun reviewed = runCommand({"review", copy(), "--json"});
    EXPECT_EQ(reviewed.status, 0);
    EXPECT_EQ(reviewed.out, listed);
    EXPECT_THAT(reviewed.err,
                AllOf(HasSubstr("instrument 2, \"Upright by the door\", was edited by another program, in "
                                "1 place: deed"),
                      HasSubstr("sale"), HasSubstr("hammerline verify"), Not(HasSubstr("instrument 1,"))));
}

TEST_F(ShellInstrumentTest, AnAlteredHeadOfTheFileIsAnEditAndNoNewerProgram)
{
    for (const char *sql : {"PRAGMA user_version = 77", "PRAGMA user_version = 1", "PRAGMA application_id = 5"}) {
        std::filesystem::copy_file(book(), copy(), std::filesystem::copy_options::overwrite_existing);
        shell(copy(), sql);
        const CommandRun verified = runCommand({"verify", copy()});
        EXPECT_EQ(verified.status, 1) << sql << verified.err;
        EXPECT_THAT(verified.out, AllOf(HasSubstr("EDITED by another program, in 1 place"), HasSubstr("file's head")));
        EXPECT_THAT(handOver("1").err, HasSubstr("edited by another program")) << sql;
    }
    shell(copy(), "PRAGMA application_id = 1215132236; PRAGMA user_version = 77; CREATE TABLE of_tomorrow(x)");
    const CommandRun newer = runCommand({"verify", copy()});
    EXPECT_EQ(newer.status, 2) << newer.out;
    EXPECT_THAT(newer.err, HasSubstr("newer Hammerline"));
}

TEST_F(ShellInstrumentTest, AnEndCutOffWithItsTracesIsToldByTheDigestNotedBefore)
{
    const auto digest = logbook::Logbook::open(book(), logbook::Access::ReadOnly).digest(1);
    const std::string newest = shell(book(), "SELECT lower(hex(digest)) FROM history ORDER BY deed DESC LIMIT 1")[0];
    tamper("DELETE FROM sale WHERE deed = (SELECT max(deed) FROM history); DELETE FROM history WHERE deed = (SELECT "
           "max(deed) FROM history); UPDATE sqlite_sequence SET seq = (SELECT max(deed) FROM history)");
    const CommandRun whole = runCommand({"verify", copy()});
    EXPECT_EQ(whole.status, 0);
    EXPECT_THAT(whole.out, AllOf(HasSubstr("the history is whole up to deed "), HasSubstr("Newest digest: "),
                                 HasSubstr("the file cannot show"), HasSubstr("--record FILE.pdf")));
    const CommandRun cut = runCommand({"verify", copy(), "--digest", newest});
    EXPECT_EQ(cut.status, 1);
    EXPECT_THAT(cut.out, HasSubstr("REWRITTEN: no deed has the digest noted"));
    const CommandRun held = runCommand({"verify", copy(), "--digest", digest});
    EXPECT_EQ(held.status, 0);
    EXPECT_THAT(held.out, HasSubstr("The digest noted is that of deed 1."));
    EXPECT_EQ(runCommand({"verify", copy(), "--digest", "12ab"}).status, 2);
    EXPECT_EQ(runCommand({"verify", m_folder.write("a.pdf", "%PDF"), "--digest", digest}).status, 2);
}

} // namespace
} // namespace hammerline
