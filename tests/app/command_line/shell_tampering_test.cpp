// Another program's hand on the logbook is the sqlite3 shell: in every table that the file has, a row is altered, added
// or taken away, and `verify` must find it and name the table; of a row that is gone, the deed that had written it.

#include "app/command_line/shell_tampering.h"

#include <gmock/gmock.h>

namespace hammerline {
namespace {

using test_support::CommandRun;
using test_support::runCommand;
using testing::HasSubstr;

class ShellTamperingTest : public test_support::ShellTampering {
protected:
    /// `sql` on a copy, by the shell; `verify` must find it and say `named`.
    void expectFound(const std::string &named, const std::string &sql) const
    {
        tamper(sql);
        const CommandRun found = runCommand({"verify", copy()});
        EXPECT_EQ(found.status, 1) << sql << '\n' << found.out << found.err;
        EXPECT_THAT(found.out, HasSubstr("EDITED by another program")) << sql;
        EXPECT_THAT(found.out, HasSubstr(named)) << sql;
    }
};

TEST_F(ShellTamperingTest, HasARowInEveryTableAndIsWholeBeforehand)
{
    const auto all = tables();
    EXPECT_GE(all.size(), 23u);
    for (const std::string &table : all)
        EXPECT_NE(shell(book(), "SELECT count(*) FROM " + table)[0], "0") << table;
    const CommandRun found = runCommand({"verify", book()});
    EXPECT_EQ(found.status, 0) << found.out << found.err;
}

TEST_F(ShellTamperingTest, ARowAlteredInAnyTableIsFoundAndNamed)
{
    for (const std::string &table : tables()) {
        // A larger number than was given looks as if entries had been cut off the history.
        expectFound(table == "sqlite_sequence" ? "history" : table, alteringFirstRow(table));
    }
}

TEST_F(ShellTamperingTest, ARowTakenOutOfAnyTableIsFoundByTheDeedThatHadWrittenIt)
{
    for (const std::string &table : tables()) {
        const std::string row = firstRow(table);
        const auto names = columns(table);
        const bool written = std::ranges::find(names, "deed") != names.end();
        const std::string named =
            written ? "deed " + shell(book(), "SELECT deed FROM " + table + " WHERE " + row)[0] : table;
        expectFound(named, "DELETE FROM " + table + " WHERE " + row);
    }
}

TEST_F(ShellTamperingTest, ARowPutIntoAnyTableIsFoundAndNamed)
{
    for (const std::string &table : tables())
        expectFound(table, addingARow(table));
}

TEST_F(ShellTamperingTest, WhatWasAlteredIsNeitherSealedNorHandedOver)
{
    const std::string pdf = m_folder.file("record.pdf"), json = m_folder.file("one.json");
    EXPECT_EQ(runCommand({"hand-over", book(), "--instrument", "1", "--to", json}).status, 0);
    std::filesystem::remove(json);
    shell(book(), "UPDATE concession SET reason = 'as good as new'");
    for (const auto &call : {std::vector<std::string>{"record", book(), "--instrument", "1", "--to", pdf},
                             {"hand-over", book(), "--instrument", "1", "--to", json}}) {
        const CommandRun refused = runCommand(call);
        EXPECT_EQ(refused.status, 2) << refused.out;
        EXPECT_THAT(refused.err, HasSubstr("was edited by another program, in 1 place: deed")) << call.front();
        EXPECT_THAT(refused.err, HasSubstr("concession")) << call.front();
    }
    EXPECT_FALSE(std::filesystem::exists(pdf));
    EXPECT_FALSE(std::filesystem::exists(json));
}

TEST_F(ShellTamperingTest, ATableOfAnotherProgramIsFoundAndNamed)
{
    expectFound("stranger", "CREATE TABLE stranger(words TEXT); INSERT INTO stranger VALUES('hello')");
    expectFound("picture", "DROP TABLE picture; CREATE TABLE picture(digest TEXT); INSERT INTO picture VALUES('x')");
}

} // namespace
} // namespace hammerline
