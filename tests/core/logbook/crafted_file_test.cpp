// Files that look like ours and were made to do harm: whatever stands in them, opening and reading them runs nothing,
// writes nothing elsewhere and ends in a reading or a refusal, never in a crash.

#include "core/logbook/logbook_fixture.h"
#include "logbook/verify_history.h"

#include <gmock/gmock.h>

namespace hammerline::logbook {
namespace {

using testing::AnyOf;
using testing::HasSubstr;

class CraftedFileTest : public LogbookTest {
protected:
    /// A logbook of three readings on which another program ran this.
    void craft(const std::string &sql) const
    {
        std::filesystem::remove(file());
        {
            Logbook logbook = withPass();
            for (int note = 1; note <= 3; ++note)
                logbook.enter(1, reading(letOff(note), note), ada);
        }
        RawDatabase(file()).run("PRAGMA writable_schema = ON; " + sql);
    }
    /// All that a reader and a writer would do.
    [[nodiscard]] std::string useAll() const
    {
        return messageOf([&] {
            Logbook logbook = Logbook::open(file());
            static_cast<void>(logbook.instruments());
            static_cast<void>(logbook.passes(1));
            static_cast<void>(logbook.readings(1));
            static_cast<void>(logbook.values(1));
            static_cast<void>(logbook.versions(1, letOff(1)));
            static_cast<void>(logbook.deeds(0, 100));
            logbook.enter(1, reading(letOff(1), 5), ada);
            static_cast<void>(logbook.undoable(1));
            static_cast<void>(verifyHistory(file()).whole());
        });
    }
};

TEST_F(CraftedFileTest, ASchemaThatRunsSomethingIsRefused)
{
    for (const char *sql : {
             "CREATE TRIGGER t AFTER INSERT ON reading BEGIN DELETE FROM reading; END",
             "CREATE TRIGGER t BEFORE INSERT ON history BEGIN SELECT load_extension('/tmp/x.so'); END",
             "DROP TABLE kept_plan; CREATE VIEW kept_plan AS SELECT 1 AS pass, 1 AS version, 'x' AS inputs, 1 AS deed",
             "CREATE INDEX more ON reading(abs(value))",
             "DROP TABLE work_done; CREATE VIRTUAL TABLE work_done USING fts3(pass, item)",
             "ALTER TABLE reading ADD COLUMN more GENERATED ALWAYS AS (hex(value))",
             "UPDATE sqlite_schema SET sql = replace(sql, 'take INTEGER', 'take') WHERE name = 'reading'",
             "UPDATE sqlite_schema SET sql = 'CREATE TABLE reading(' WHERE name = 'reading'",
             "UPDATE sqlite_schema SET rootpage = 999999 WHERE name = 'reading'",
             "UPDATE sqlite_schema SET rootpage = (SELECT rootpage FROM sqlite_schema WHERE name = 'history') "
             "WHERE name = 'reading'",
             "INSERT INTO sqlite_schema VALUES ('table', 'sqlite_more', 'sqlite_more', 0, 'CREATE VIRTUAL TABLE "
             "sqlite_more USING nothing()')",
         }) {
        craft(sql);
        EXPECT_THAT(useAll(), HasSubstr(file())) << sql;
    }
}

TEST_F(CraftedFileTest, WrongTypesAndImpossibleNumbersAreRefusedOrReadAsWhatTheyAre)
{
    for (const char *sql : {
             "UPDATE reading SET quantity = -1",
             "UPDATE reading SET note = 9223372036854775807 WHERE note = 3",
             "UPDATE reading SET note = -9223372036854775807 - 1 WHERE note = 3",
             "UPDATE reading SET take = 9223372036854775807 WHERE note = 1",
             "UPDATE reading SET value = 9223372036854775807",
             "UPDATE reading SET value = -9223372036854775807 - 1",
             "UPDATE reading SET at = 9223372036854775807",
             "UPDATE reading SET origin = 99",
             "UPDATE pass SET began = 9223372036854775807",
             "UPDATE pass SET instrument = 77",
             "UPDATE pass SET gauge_resolution = -5, celsius = 9223372036854775807",
             "UPDATE instrument SET first_note = 9223372036854775807",
             "UPDATE instrument SET first_note = 88, last_note = 1",
             "UPDATE instrument SET sections = '[[\"bass\",1,99999999999999999999]]'",
             "UPDATE instrument SET sections = '[[\"bass\",1e300,2]]'",
             "UPDATE instrument SET sections = replace(hex(zeroblob(20000)), '0', '[')",
             "UPDATE instrument SET sections = '{\"a\":1}', dampers = 'x'",
             "UPDATE instrument SET name = NULL",
             "UPDATE instrument SET size = -1, year = 9223372036854775807",
             "UPDATE history SET marks = zeroblob(3), digest = zeroblob(0)",
             "UPDATE history SET undoes = deed",
             "UPDATE history SET deed = 9223372036854775807 WHERE deed = (SELECT max(deed) FROM history)",
         }) {
        craft(sql);
        EXPECT_THAT(useAll(), AnyOf(HasSubstr(file()), "nothing was thrown")) << sql;
    }
}

TEST_F(CraftedFileTest, ValuesOfAnotherTypeThanTheTableSaysAreRefusedOrReadAsNone)
{
    for (const char *change : {"value = 'text'", "value = 1.5", "value = zeroblob(9)", "typed = zeroblob(9)",
                               "person = 5, remark = x'ff00fe'", "at = 'noon', deed = 'first'"}) {
        craft("UPDATE sqlite_schema SET sql = replace(sql, 'STRICT, ', '') WHERE name = 'reading'");
        RawDatabase(file()).run("UPDATE reading SET " + std::string(change));
        RawDatabase(file()).run("PRAGMA writable_schema = ON; UPDATE sqlite_schema SET sql = replace(sql, ') WITHOUT', "
                                "') STRICT, WITHOUT') WHERE name = 'reading'");
        EXPECT_THAT(useAll(), AnyOf(HasSubstr(file()), "nothing was thrown")) << change;
    }
}

TEST_F(CraftedFileTest, ANoteThatNoKeyboardHasIsRefusedWhereItIsRead)
{
    craft("UPDATE reading SET note = 4000000000 WHERE note = 3");
    EXPECT_THAT(messageOf([&] { static_cast<void>(Logbook::open(file()).readings(1)); }), HasSubstr("no note"));
    EXPECT_THAT(messageOf([&] { static_cast<void>(Logbook::open(file()).values(1)); }), HasSubstr("no note"));
}

TEST_F(CraftedFileTest, HugeTextsAndBlobsAreRefusedNotLoaded)
{
    for (const char *sql :
         {"UPDATE reading SET typed = hex(zeroblob(34000000))", "UPDATE history SET marks = zeroblob(68000000)"}) {
        craft(sql);
        EXPECT_THAT(useAll(), HasSubstr(file())) << sql;
    }
}

TEST_F(CraftedFileTest, NamesWithMarksLineEndsAndOtherDirectionsSurviveOrAreRefused)
{
    Logbook logbook = withPass();
    const std::vector<std::string> names{"O'Hara \"the\" `grand`; DROP TABLE reading;--",
                                         "\xE2\x80\xAE"
                                         "thgir \xE2\x80\xAC mark \xE2\x81\xA6x\xE2\x81\xA9",
                                         "%s %n \\0 ?1 :name", "\xD7\xA9\xD7\x9C\xD7\x95\xD7\x9D",
                                         std::string(200, 'x')};
    for (const std::string &name : names) {
        const auto added = logbook.addInstrument(upright(name), {moment(1), name});
        ASSERT_TRUE(added.ok()) << name;
        EXPECT_EQ(logbook.instrument(added.value().id).value().name, name);
        EXPECT_EQ(logbook.deed(logbook.newestDeed()).value().stamp.person, name);
    }
    EXPECT_FALSE(logbook.addInstrument(upright("two\nlines"), ada).ok());
    EXPECT_FALSE(logbook.addInstrument(upright(std::string(10'000, 'x')), ada).ok());
    EXPECT_TRUE(verifyHistory(file()).whole());
}

TEST_F(CraftedFileTest, RemarksAndPersonsOfAnyLengthComeBackLetterByLetter)
{
    Logbook logbook = withPass();
    const std::string odd = "line\nline\r\n\ttab \"quoted\" 'single' \xE2\x80\xAEleft " + std::string(10'000, 'z');
    readings::Reading entered = reading(letOff(5), 7, "1/8");
    entered.remark = odd;
    entered.person = odd;
    logbook.enter(1, entered, {moment(3), odd}, odd);
    const auto found = logbook.readings(1);
    ASSERT_EQ(found.size(), 1u);
    EXPECT_EQ(found[0].remark, odd);
    EXPECT_EQ(found[0].person, odd);
    EXPECT_EQ(logbook.versions(1, letOff(5)).at(0).reason, odd);
    EXPECT_TRUE(verifyHistory(file()).whole());
}

} // namespace
} // namespace hammerline::logbook
