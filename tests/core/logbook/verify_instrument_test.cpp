#include "core/logbook/full_logbook.h"
#include "logbook/hand_over.h"
#include "logbook/verify_instrument.h"

#include <gmock/gmock.h>

#include <algorithm>

namespace hammerline::logbook {
namespace {

using testing::HasSubstr;

/// Beside the instrument that has a row everywhere stands another, whose deeds lie between the first one's.
class VerifyInstrumentTest : public FullLogbookTest {
protected:
    VerifyInstrumentTest()
    {
        Logbook book = Logbook::open(file());
        static_cast<void>(book.addInstrument(upright("Upright by the door"), ada));
        other = book.beginPass({.instrument = 2, .began = moment(30), .person = "Ben"}, ben).id;
        book.enter(other, reading(letOff(40), 2'000'000), ben);
        book.enter(1, reading(letOff(60), 3'000'000), ada);
        book.enter(other, reading(letOff(41), 2'000'000), ben);
        book.noteSale(2, {"somebody", {}, {}}, ben);
        book.enter(1, reading(letOff(61), 3'000'000), ada);
    }

    bool isWhole(instrument::InstrumentId instrument, const std::string &copy)
    {
        return verifyInstrument(copy, instrument).whole();
    }
    std::string textAfter(const std::string &sql)
    {
        std::string text;
        for (const auto &alteration : verifyInstrument(tampered(sql), 1).alterations)
            text += alteration.text() + '\n';
        return text;
    }
    /// Tables in which an instrument has rows, and which of the rows are the instrument's.
    std::vector<std::pair<std::string, std::string>> rowsOf(instrument::InstrumentId instrument)
    {
        const std::string passes = "pass IN (SELECT pass FROM pass WHERE instrument = " + std::to_string(instrument);
        const std::string own = "instrument = " + std::to_string(instrument);
        std::vector<std::pair<std::string, std::string>> rows;
        for (const std::string &table : tables()) {
            RawDatabase raw(file());
            const auto has = [&](const char *column) {
                return raw.one("SELECT count(*) FROM pragma_table_info('" + table + "') WHERE name = '" + column +
                               "'") != "0";
            };
            if (!table.starts_with("gauge_") && (has("instrument") || has("pass")))
                rows.emplace_back(table, has("instrument") ? own : passes + ")");
        }
        return rows;
    }
    /// Each such row, by its key.
    std::vector<std::string> each(const std::string &table, const std::string &rows)
    {
        auto conditions = rowConditions(table);
        std::erase_if(conditions, [&](const std::string &condition) {
            return RawDatabase(file()).one("SELECT count(*) FROM " + table + " WHERE " + rows + " AND " + condition) ==
                   "0";
        });
        return conditions;
    }

    readings::PassId other = 0;
};

TEST_F(VerifyInstrumentTest, WhatTheProgramWroteIsWhole)
{
    const auto checks = verifyInstruments(file(), {1, 2, 99});
    for (const HistoryCheck &check : checks)
        EXPECT_TRUE(check.whole()) << check.alterations[0].text();
    EXPECT_EQ(checks[1].deeds, 5);
    EXPECT_EQ(checks[1].rows, 5);
    EXPECT_EQ(checks[0].newestDigest, verifyHistory(file()).newestDigest);
    EXPECT_TRUE(historyFaults(file(), 1).empty());
}

TEST_F(VerifyInstrumentTest, EveryColumnOfEveryRowOfTheInstrumentAlteredIsFound)
{
    int tried = 0;
    for (const auto &[table, rows] : rowsOf(1)) {
        const auto conditions = each(table, rows);
        for (const auto &column : RawDatabase(file()).rows("PRAGMA table_info(" + table + ")"))
            for (const auto &condition : conditions) {
                const std::string sql = altering(table, column[1], column[2], condition);
                EXPECT_FALSE(isWhole(1, tampered(sql))) << sql;
                ++tried;
            }
    }
    EXPECT_GT(tried, 250);
}

TEST_F(VerifyInstrumentTest, EveryRowOfTheInstrumentRemovedOrAddedIsFound)
{
    int tried = 0;
    for (const auto &[table, rows] : rowsOf(1)) {
        for (const auto &condition : each(table, rows)) {
            EXPECT_FALSE(isWhole(1, tampered("DELETE FROM " + table + " WHERE " + condition))) << table << condition;
            ++tried;
        }
        EXPECT_FALSE(isWhole(1, tampered(adding(table, rows)))) << table;
    }
    EXPECT_GT(tried, 50);
}

TEST_F(VerifyInstrumentTest, APictureOfTheInstrumentAlteredOrRemovedIsFound)
{
    EXPECT_THAT(textAfter("UPDATE picture SET jpeg = zeroblob(9)"), HasSubstr("picture"));
    EXPECT_THAT(textAfter("UPDATE picture SET digest = 'x'"), HasSubstr("was removed"));
    EXPECT_THAT(textAfter("DELETE FROM picture"), HasSubstr("was removed"));
}

TEST_F(VerifyInstrumentTest, WhatIsAlteredAtAnotherInstrumentDoesNotBarThisOne)
{
    int tried = 0;
    for (const auto &[table, rows] : rowsOf(2)) {
        const auto conditions = each(table, rows);
        for (const auto &column : RawDatabase(file()).rows("PRAGMA table_info(" + table + ")")) {
            const bool moves =
                column[1] == "instrument" || column[1] == "pass" || (table == "history" && column[1] == "deed");
            if (moves)
                continue;
            for (const auto &condition : conditions) {
                const std::string sql = altering(table, column[1], column[2], condition);
                const std::string copy = tampered(sql);
                EXPECT_TRUE(isWhole(1, copy)) << sql;
                EXPECT_FALSE(isWhole(2, copy)) << sql;
                EXPECT_FALSE(verifyHistory(copy).whole()) << sql;
                ++tried;
            }
        }
    }
    EXPECT_GT(tried, 50);
    EXPECT_TRUE(isWhole(1, tampered("DELETE FROM sale WHERE instrument = 2")));
    EXPECT_TRUE(isWhole(1, tampered("UPDATE gauge_trial SET value = 9")));
}

TEST_F(VerifyInstrumentTest, RowsMovedFromOneInstrumentToAnotherBarBoth)
{
    const std::string copy = tampered("UPDATE pass SET instrument = 2 WHERE pass = 1");
    EXPECT_FALSE(isWhole(1, copy));
    EXPECT_FALSE(isWhole(2, copy));
    const std::string entry = tampered("UPDATE history SET instrument = 2 WHERE deed = 6");
    EXPECT_FALSE(isWhole(1, entry));
    EXPECT_FALSE(isWhole(2, entry));
}

TEST_F(VerifyInstrumentTest, ADeedTakenOutWithItsRowsLeavesAGap)
{
    EXPECT_THAT(textAfter("DELETE FROM reading WHERE deed = 6; DELETE FROM history WHERE deed = 6"),
                HasSubstr("entry 6 was removed"));
    // The one before a deed of ours, and the one after it, are missed too.
    EXPECT_THAT(textAfter("DELETE FROM reading WHERE deed = 32; DELETE FROM history WHERE deed = 32"),
                HasSubstr("entry 32 was removed"));
    EXPECT_THAT(textAfter("DELETE FROM reading WHERE deed = 34; DELETE FROM history WHERE deed = 34"),
                HasSubstr("entry 34 was removed"));
    EXPECT_THAT(textAfter("DELETE FROM reading WHERE deed = 36; DELETE FROM history WHERE deed = 36"),
                HasSubstr("the end was removed"));
}

TEST_F(VerifyInstrumentTest, ARowThatNoDeedWroteIsNamed)
{
    const std::string insert = "INSERT INTO reading(pass, quantity, note, take, version, value, deed) VALUES ";
    EXPECT_EQ(textAfter(insert + "(2, 4, 77, 1, 1, 5, 99)"),
              "deed 99, reading pass 2, quantity 4, note 77, take 1, version 1: belongs to no deed that wrote it: was "
              "added or altered, or the deed's entry was removed\n");
    EXPECT_THAT(textAfter(insert + "(2, 4, 77, 1, 1, 5, 32)"), HasSubstr("deed 32, reading pass 2"))
        << "by a deed of another instrument";
}

TEST_F(VerifyInstrumentTest, WhatIsWrongWithTheFileBarsEveryInstrument)
{
    for (const char *sql :
         {"UPDATE sqlite_sequence SET seq = seq + 1", "DELETE FROM sqlite_sequence", "CREATE TABLE extra(x)",
          "DROP INDEX deed_about_instrument", "PRAGMA user_version = 77", "PRAGMA application_id = 7",
          "UPDATE history SET digest = zeroblob(32) WHERE deed = (SELECT max(deed) FROM history)"}) {
        const std::string copy = tampered(sql);
        EXPECT_FALSE(isWhole(1, copy)) << sql;
        EXPECT_FALSE(isWhole(2, copy)) << sql;
    }
}

TEST_F(VerifyInstrumentTest, WhatWasEditedIsNotHandedOver)
{
    const Logbook book = Logbook::open(tampered("UPDATE work_entry SET what = 'all new'"), Access::ReadOnly);
    const auto refused = book.handOver(1);
    ASSERT_FALSE(refused);
    EXPECT_THAT(refused.fault().problem, HasSubstr("was edited by another program, in 1 place: deed"));
    EXPECT_TRUE(book.handOver(2));
}

TEST_F(VerifyInstrumentTest, AnInstrumentWithManyPassesIsCheckedToTheLast)
{
    {
        Logbook book = Logbook::open(file());
        for (int pass = 0; pass < 40; ++pass) {
            const auto begun = book.beginPass({.instrument = 2, .began = moment(40 + pass)}, ben).id;
            book.enter(begun, reading(letOff(1), 1'000'000), ben);
        }
        for (const auto &pass : book.passes(2))
            book.enter(pass.id, reading(letOff(2), 1'000'000), ben);
    }
    EXPECT_TRUE(isWhole(2, file()));
    EXPECT_EQ(
        verifyInstrument(tampered("UPDATE reading SET value = 1 WHERE pass > 20"), 2).alterations.size(),
        static_cast<std::size_t>(std::stoi(RawDatabase(file()).one("SELECT count(*) FROM reading WHERE pass > 20"))));
}

} // namespace
} // namespace hammerline::logbook
