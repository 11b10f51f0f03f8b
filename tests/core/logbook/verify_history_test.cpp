#include "core/logbook/logbook_fixture.h"
#include "logbook/gauge_studies.h"
#include "logbook/verify_history.h"
#include "support/small_jpeg.h"

#include <gmock/gmock.h>

namespace hammerline::logbook {
namespace {

using testing::HasSubstr;

/// A logbook with rows in every table; each test tampers with copies of it.
class VerifyHistoryTest : public LogbookTest {
protected:
    VerifyHistoryTest()
    {
        Logbook logbook = withPass();
        auto piano = logbook.instrument(1).value();
        piano.year = 1900;
        piano.size = units::Length::nanometres(1);
        static_cast<void>(logbook.changeInstrument(piano, ben, "looked inside"));
        logbook.enter(1, reading(letOff(40), 3'000'000, "3"), ada);
        logbook.enter(1, reading(letOff(40), 3'100'000, "3,1"), ben, "misread");
        logbook.undo(*logbook.undoable(1), ada);
        std::vector<readings::Reading> many;
        for (int note = 1; note <= 5; ++note)
            many.push_back(reading(letOff(note), note));
        many[2].person = "Cid";
        many[3].at = moment(9);
        many[4].remark = "cold";
        readings::Pass pass{.instrument = 1, .began = moment(3)};
        pass.climate = {20, 40};
        static_cast<void>(logbook.importPass(pass, many, ben));
        logbook.markFault(1, {keyboard::Note(40), "blocking"}, ada);
        logbook.rememberTolerance(1, {"shop", "{}"}, ada);
        logbook.keepPlan(1, "{}", ada);
        logbook.logWork(1, "let_off 40", std::chrono::seconds(30), ada);
        logbook.chooseRoute(1, {"chromatic", ""}, ada);
        logbook.confirmSlip(1, {letOff(40), units::Length::millimetres(3), "ten-times-off"}, ada);
        logbook.chooseActionSetup(1, {"{}", "in"}, ada);
        logbook.enter(1, reading(letOff(41), 30), ada, {}, "ten-times-off");
        fillDossier(logbook);
        decide(logbook);
        studyGauge(logbook);
        logbook.withdraw(1, letOff(40), ben, "");
    }

    /// What the lead's desk writes.
    static void decide(Logbook &logbook)
    {
        decisions::Decision missing;
        missing.quantity = catalogue::Quantity::LetOff;
        missing.note = keyboard::Note(43);
        missing.kind = decisions::Kind::Missing;
        missing.words = "no hammer";
        EXPECT_TRUE(logbook.accept(1, {missing}, ada));
        missing.note = keyboard::Note(43);
        EXPECT_TRUE(logbook.sendBack(1, {missing}, ada));
        logbook.enter(1, reading(letOff(42), 3'000'000), ada);
        const tolerance::ToleranceSet lenient{.action = catalogue::ActionKind::Vertical};
        EXPECT_TRUE(logbook.signPass(1, lenient, {"shop", "{}"}, ben, "fit to go"));
        EXPECT_TRUE(logbook.reopenPass(1, ben, "a hammer came loose"));
        static_cast<void>(logbook.beginSpotCheck(
            {.instrument = 1, .began = moment(20)},
            {.checked = 1, .seed = 7, .notes = {keyboard::Note(42)}, .quantities = {catalogue::Quantity::LetOff}},
            ben));
    }

    static void studyGauge(Logbook &logbook)
    {
        GaugeStudies studies(logbook);
        const analysis::StudyPlan plan{.notes = {keyboard::Note(1), keyboard::Note(2)}, .people = {"Ada", "Ben"}};
        EXPECT_TRUE(studies.plan({.gauge = {.name = "rule"}, .plan = plan}, ada).ok());
        EXPECT_TRUE(studies.enter(1, {keyboard::Note(2), "Ben", 1}, units::Length::millimetres(3), "3", ben).ok());
    }

    static void fillDossier(Logbook &logbook)
    {
        static_cast<void>(logbook.addWork(1, {.what = "hammers"}, ada));
        logbook.sayCondition(1, {dossier::Moment::AsReceived, dossier::Area::Keys}, {{}, "worn"}, ada);
        static_cast<void>(logbook.addPhotograph(1, {.view = "front"}, support::smallJpeg(8, 8), ada));
        logbook.noteSale(1, {"nobody yet", {}, {}}, ada);
    }

    /// What the check says after somebody has run `sql` on a copy.
    HistoryCheck after(const std::string &sql)
    {
        const std::string copy = file("tampered");
        std::filesystem::copy_file(file(), copy, std::filesystem::copy_options::overwrite_existing);
        RawDatabase(copy).run(sql);
        return verifyHistory(copy);
    }
    std::string textAfter(const std::string &sql)
    {
        std::string text;
        for (const auto &alteration : after(sql).alterations)
            text += alteration.text() + '\n';
        return text;
    }
    std::vector<std::string> tables()
    {
        std::vector<std::string> names;
        for (const auto &row : RawDatabase(file()).rows("SELECT name FROM sqlite_schema WHERE type = 'table'"))
            names.push_back(row[0]);
        return names;
    }
    /// The columns of the primary key and their values: what singles out each row.
    std::vector<std::string> rowConditions(const std::string &table)
    {
        RawDatabase raw(file());
        if (table == "sqlite_sequence")
            return {"1"};
        std::vector<std::string> keys;
        for (const auto &column : raw.rows("PRAGMA table_info(" + table + ")"))
            if (column[5] != "0")
                keys.push_back(column[1]);
        std::string expression = "''";
        for (const auto &key : keys)
            expression += " || ' AND " + key + " = ' || quote(" + key + ")";
        std::vector<std::string> conditions;
        for (const auto &row : raw.rows("SELECT '1' || " + expression + " FROM " + table))
            conditions.push_back(row[0]);
        return conditions;
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
                const std::string &name = column[1];
                const std::string other = column[2] == "INTEGER" ? "coalesce(" + name + ", 0) + 1000"
                                          : column[2] == "BLOB"  ? "zeroblob(32)"
                                                                 : "coalesce(" + name + ", '') || 'x'";
                const std::string sql = "UPDATE " + table + " SET " + name + " = " + other + " WHERE " + condition;
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
        std::string columns;
        std::string values;
        for (const auto &column : RawDatabase(file()).rows("PRAGMA table_info(" + table + ")")) {
            columns += (columns.empty() ? "" : ", ") + column[1];
            const bool moved = column[1] == "version" || (table == "history" && column[1] == "deed");
            values += (values.empty() ? "" : ", ") + column[1] + (moved ? " + 1000" : "");
        }
        const std::string sql =
            "INSERT INTO " + table + "(" + columns + ") SELECT " + values + " FROM " + table + " LIMIT 1";
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
