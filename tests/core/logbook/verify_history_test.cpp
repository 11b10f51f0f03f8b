#include "core/logbook/full_logbook.h"
#include "logbook/verify_history.h"

#include <gmock/gmock.h>

namespace hammerline::logbook {
namespace {

using testing::AllOf;
using testing::HasSubstr;

class VerifyHistoryTest : public FullLogbookTest {
protected:
    /// What the check says after somebody has run `sql` on a copy.
    HistoryCheck after(const std::string &sql) { return verifyHistory(tampered(sql)); }
    std::string textAfter(const std::string &sql)
    {
        std::string text;
        for (const auto &alteration : after(sql).alterations)
            text += alteration.text() + '\n';
        return text;
    }
};

TEST_F(VerifyHistoryTest, AnUntouchedLogbookIsWhole)
{
    const HistoryCheck check = verifyHistory(file());
    EXPECT_TRUE(check.whole()) << check.alterations[0].text();
    EXPECT_EQ(check.deeds, 29);
    EXPECT_EQ(check.rows, 37);
    EXPECT_EQ(check.newestDigest, Logbook::open(file()).digest(29));
}

TEST_F(VerifyHistoryTest, EveryColumnOfEveryRowOfEveryTableAlteredIsFound)
{
    int tried = 0;
    for (const auto &table : tables())
        for (const auto &column : RawDatabase(file()).rows("PRAGMA table_info(" + table + ")"))
            for (const auto &condition : rowConditions(table)) {
                const std::string sql = altering(table, column[1], column[2], condition);
                EXPECT_FALSE(after(sql).whole()) << sql;
                ++tried;
            }
    EXPECT_GT(tried, 250);
}

TEST_F(VerifyHistoryTest, EveryRowRemovedIsFound)
{
    int tried = 0;
    for (const auto &table : tables())
        for (const auto &condition : rowConditions(table)) {
            const std::string sql = "DELETE FROM " + table + " WHERE " + condition;
            EXPECT_FALSE(after(sql).whole()) << sql;
            ++tried;
        }
    EXPECT_GE(tried, 27);
}

TEST_F(VerifyHistoryTest, ARowAddedToAnyTableIsFound)
{
    for (const auto &table : tables()) {
        if (table == "picture") // has a form of its own; see logbook_dossier_test.cpp
            continue;
        ASSERT_FALSE(rowConditions(table).empty()) << table << " has no row to try with";
        const std::string sql = adding(table);
        EXPECT_FALSE(after(sql).whole()) << sql;
    }
}

TEST_F(VerifyHistoryTest, TheEndCutOffIsFound)
{
    EXPECT_THAT(textAfter("DELETE FROM reading WHERE deed = 29; DELETE FROM history WHERE deed = 29"),
                HasSubstr("deed 29, history: the end was removed"));
}

TEST_F(VerifyHistoryTest, AnAlteredReadingIsNamed)
{
    EXPECT_EQ(textAfter("UPDATE reading SET value = 9 WHERE pass = 2 AND note = 4"),
              "deed 8, reading pass 2, quantity 4, note 4, take 1, version 1: was altered\n");
    EXPECT_EQ(textAfter("UPDATE reading SET typed = '9' WHERE pass = 1 AND version = 2"),
              "deed 6, reading pass 1, quantity 4, note 40, take 1, version 2: was altered\n");
}

TEST_F(VerifyHistoryTest, ARemovedRowIsCountedAndItsDeedNamed)
{
    EXPECT_EQ(textAfter("DELETE FROM reading WHERE pass = 2 AND note = 4"),
              "deed 8: 1 of the 6 rows of entry (pass-imported, as-found) were removed\n");
}

TEST_F(VerifyHistoryTest, AnAddedRowIsNamed)
{
    EXPECT_EQ(
        textAfter(
            "INSERT INTO reading(pass, quantity, note, take, version, value, deed) VALUES (2, 4, 77, 1, 1, 5, 8)"),
        "deed 8, reading pass 2, quantity 4, note 77, take 1, version 1: was added\n");
    EXPECT_THAT(
        textAfter(
            "INSERT INTO reading(pass, quantity, note, take, version, value, deed) VALUES (2, 4, 77, 1, 1, 5, 99)"),
        HasSubstr("deed 99, reading pass 2, quantity 4, note 77, take 1, version 1: belongs to no deed"));
}

TEST_F(VerifyHistoryTest, OneAlteredEntryOrDigestBlamesNoOther)
{
    EXPECT_EQ(textAfter("UPDATE history SET reason = 'other' WHERE deed = 6"),
              "deed 6, history: entry (reading-corrected, let_off C4) was altered\n");
    EXPECT_EQ(textAfter("UPDATE history SET digest = zeroblob(32) WHERE deed = 6"),
              "deed 6, history: entry (reading-corrected, let_off C4) was altered\n");
    EXPECT_EQ(textAfter("UPDATE history SET marks = zeroblob(4) WHERE deed = 6"),
              "deed 6, history: entry (reading-corrected, let_off C4) was altered\n");
}

TEST_F(VerifyHistoryTest, AGapIsFound)
{
    EXPECT_THAT(textAfter("DELETE FROM history WHERE deed IN (5, 6)"),
                HasSubstr("deed 5, history: entry 5 to 6 was removed\n"));
}

TEST_F(VerifyHistoryTest, AlteredStructureAndExtraTablesAreFound)
{
    EXPECT_EQ(textAfter("CREATE TABLE extra(x)"), "extra: the table was added\n");
    EXPECT_EQ(textAfter("CREATE TRIGGER t AFTER INSERT ON reading BEGIN DELETE FROM reading; END"),
              "t: the trigger was added\n");
    EXPECT_EQ(textAfter("CREATE VIEW v AS SELECT 1"), "v: the view was added\n");
    EXPECT_EQ(textAfter("DROP INDEX pass_of_instrument"), "pass_of_instrument: the index was removed\n");
    EXPECT_EQ(textAfter("ALTER TABLE reading ADD COLUMN more TEXT"), "reading: the table was altered\n");
    EXPECT_THAT(textAfter("ALTER TABLE reading RENAME TO other"), HasSubstr("reading: the table was removed\n"));
    EXPECT_THAT(textAfter("DROP TABLE fault_mark; CREATE VIEW fault_mark AS SELECT 1 AS pass"),
                HasSubstr("fault_mark: the table was removed\n"));
}

TEST_F(VerifyHistoryTest, AnAlteredHeadOfTheFileIsAnAlterationLikeOthers)
{
    const std::string number = "the number of the structure in the file's head (user_version) was altered: it is ";
    for (const char *other : {"0", "-1", "2", "3", "5", "77", "2147483647"})
        EXPECT_EQ(textAfter(std::string("PRAGMA user_version = ") + other),
                  number + other + ", its tables are those of 4\n");
    EXPECT_EQ(textAfter("PRAGMA application_id = 0"),
              "the mark of a logbook in the file's head (application_id) was altered\n");
    EXPECT_THAT(textAfter("PRAGMA application_id = 1; PRAGMA user_version = 77; UPDATE sale SET buyer = 'Eve'"),
                AllOf(HasSubstr("application_id"), HasSubstr("user_version"), HasSubstr("sale instrument 1")));
    EXPECT_THAT(textAfter("PRAGMA application_id = 1; CREATE TABLE extra(x)"),
                AllOf(HasSubstr("application_id"), HasSubstr("extra: the table was added")));
    EXPECT_THAT(textAfter("PRAGMA user_version = 77; DROP TABLE sale"),
                AllOf(HasSubstr("user_version"), HasSubstr("sale: the table was removed")));
}

TEST_F(VerifyHistoryTest, WhatANewerProgramMayHaveMadeIsNotCalledAltered)
{
    const std::string newer = tampered("PRAGMA user_version = 77; CREATE TABLE of_tomorrow(x)");
    EXPECT_THAT(messageOf([&] { static_cast<void>(verifyHistory(newer)); }), HasSubstr("made by a newer Hammerline"));
}

TEST_F(VerifyHistoryTest, WhatIsNoLogbookIsNotVerifiedButThrown)
{
    RawDatabase(file("other")).run("CREATE TABLE t(x)");
    EXPECT_THAT(messageOf([&] { static_cast<void>(verifyHistory(file("other"))); }),
                HasSubstr("not a Hammerline logbook"));
    EXPECT_THAT(messageOf([&] { static_cast<void>(verifyHistory(file("none"))); }), HasSubstr("cannot be opened"));
}

TEST_F(VerifyHistoryTest, ManyAlterationsAreCutShort)
{
    const auto check = after("WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n WHERE i < 3000) "
                             "INSERT INTO reading(pass, quantity, note, take, version, value, deed) "
                             "SELECT 5, 4, 1, i, 1, 5, 99 FROM n");
    EXPECT_EQ(check.alterations.size(), mostAlterations);
}

} // namespace
} // namespace hammerline::logbook
