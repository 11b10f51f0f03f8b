#pragma once
// A logbook with a row in every table, and what another program may do to a copy of it.

#include "core/logbook/logbook_fixture.h"
#include "logbook/gauge_studies.h"
#include "support/small_jpeg.h"

namespace hammerline::logbook {

/// A logbook with rows in every table; each test tampers with copies of it.
class FullLogbookTest : public LogbookTest {
protected:
    FullLogbookTest()
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

    /// A copy on which somebody has run `sql`.
    std::string tampered(const std::string &sql)
    {
        std::string copy = file("tampered");
        std::filesystem::copy_file(file(), copy, std::filesystem::copy_options::overwrite_existing);
        RawDatabase(copy).run(sql);
        return copy;
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
    /// An UPDATE that gives the column of the rows another value, of the type that it has.
    static std::string altering(const std::string &table, const std::string &column, const std::string &type,
                                const std::string &rows)
    {
        const std::string other = type == "INTEGER" ? "coalesce(" + column + ", 0) + 1000"
                                  : type == "BLOB"  ? "zeroblob(32)"
                                                    : "coalesce(" + column + ", '') || 'x'";
        return "UPDATE " + table + " SET " + column + " = " + other + " WHERE " + rows;
    }
    /// An INSERT of a copy of one row, under a key that is free.
    std::string adding(const std::string &table, const std::string &rows = "1")
    {
        std::string columns;
        std::string values;
        for (const auto &column : RawDatabase(file()).rows("PRAGMA table_info(" + table + ")")) {
            columns += (columns.empty() ? "" : ", ") + column[1];
            const bool moved = column[1] == "version" || (table == "history" && column[1] == "deed");
            values += (values.empty() ? "" : ", ") + column[1] + (moved ? " + 1000" : "");
        }
        return "INSERT INTO " + table + "(" + columns + ") SELECT " + values + " FROM " + table + " WHERE " + rows +
               " LIMIT 1";
    }
};

} // namespace hammerline::logbook
