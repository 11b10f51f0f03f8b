// Another program's hand on the logbook is the sqlite3 shell: in every table that the file has, a row is altered, added
// or taken away, and `verify` must find it and name the table; of a row that is gone, the deed that had written it.

#include "support/command_run.h"
#include "support/small_jpeg.h"

#include "logbook/gauge_studies.h"
#include "logbook/logbook.h"
#include "tolerance/tolerance.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cstdio>
#include <cstdlib>

namespace hammerline {
namespace {

using test_support::CommandRun;
using test_support::linesOf;
using test_support::runCommand;
using test_support::ScratchFolder;
using testing::HasSubstr;

const logbook::Stamp ada{readings::parseRfc3339("2026-03-05T09:00:00Z").value(), "Ada"};
const logbook::Stamp lea{readings::parseRfc3339("2026-03-05T10:00:00Z").value(), "Lea"};
constexpr readings::Place letOff40{catalogue::Quantity::LetOff, keyboard::Note(40), 1};

decisions::Decision about(int note, decisions::Kind kind, const std::string &words)
{
    decisions::Decision decision{.quantity = catalogue::Quantity::LetOff, .note = keyboard::Note(note)};
    decision.kind = kind;
    decision.words = words;
    return decision;
}

void measure(logbook::Logbook &book)
{
    for (int note = 40; note <= 42; ++note)
        book.enter(1,
                   {.place = {catalogue::Quantity::LetOff, keyboard::Note(note), 1},
                    .value = units::Length::millimetres(3),
                    .typed = "3"},
                   ada);
    book.markFault(1, {keyboard::Note(40), "blocking"}, ada);
    book.keepPlan(1, "{}", ada);
    book.logWork(1, "let_off 40", std::chrono::seconds(30), ada);
    book.chooseRoute(1, {"chromatic", ""}, ada);
    book.confirmSlip(1, {letOff40, units::Length::millimetres(3), "ten-times-off"}, ada);
}

void fillFile(logbook::Logbook &book)
{
    book.chooseActionSetup(1, {"{}", "in"}, ada);
    ASSERT_TRUE(book.addWork(1, {.what = "hammers"}, ada));
    book.sayCondition(1, {dossier::Moment::AsReceived, dossier::Area::Keys}, {{}, "worn"}, ada);
    ASSERT_TRUE(book.addPhotograph(1, {.view = "front"}, support::smallJpeg(8, 8), ada));
    book.noteSale(1, {"nobody yet", {}, {}}, ada);
}

void decide(logbook::Logbook &book)
{
    ASSERT_TRUE(book.accept(1, {about(43, decisions::Kind::Missing, "no hammer")}, lea));
    ASSERT_TRUE(book.sendBack(1, {about(44, decisions::Kind::Missing, "read it")}, lea));
    ASSERT_TRUE(book.signPass(1, {.action = catalogue::ActionKind::Vertical}, {"shop", "{}"}, lea, "fit to go"));
    static_cast<void>(book.beginSpotCheck(
        {.instrument = 1, .began = lea.at},
        {.checked = 1, .seed = 7, .notes = {keyboard::Note(42)}, .quantities = {catalogue::Quantity::LetOff}}, lea));
}

void study(logbook::Logbook &book)
{
    logbook::GaugeStudies studies(book);
    const auto planned = studies.plan(
        {.gauge = {.name = "depth gauge"},
         .plan = {.notes = {keyboard::Note(40), keyboard::Note(41)}, .people = {"Ada", "Ben"}, .takes = 2, .seed = 7}},
        ada);
    ASSERT_TRUE(planned);
    const auto first = orderOf(planned.value().plan).front();
    ASSERT_TRUE(studies.enter(planned.value().id, first, units::Length::millimetres(3), "3", ada));
}

class ShellTampering : public ::testing::Test {
protected:
    ShellTampering()
    {
        auto made = logbook::Logbook::create(book(), ada).value();
        EXPECT_TRUE(made.addInstrument({.name = "Invented upright", .action = catalogue::ActionKind::Vertical}, ada));
        static_cast<void>(made.beginPass({.instrument = 1, .began = ada.at}, ada));
        measure(made);
        fillFile(made);
        decide(made);
        study(made);
    }
    [[nodiscard]] std::string book() const { return m_folder.file("shop.hammerline"); }
    [[nodiscard]] std::string copy() const { return m_folder.file("copy.hammerline"); }

    /// What the shell prints for `sql`, a line a row.
    static std::vector<std::string> shell(const std::string &file, const std::string &sql)
    {
        FILE *pipe = popen(("sqlite3 '" + file + "' \"" + sql + "\" 2>&1").c_str(), "r");
        std::string said;
        for (int c = 0; pipe != nullptr && (c = std::fgetc(pipe)) != EOF;)
            said += static_cast<char>(c);
        EXPECT_TRUE(pipe != nullptr && pclose(pipe) == 0) << sql << '\n' << said;
        return linesOf(said);
    }
    [[nodiscard]] std::vector<std::string> tables() const
    {
        return shell(book(), "SELECT name FROM sqlite_master WHERE type = 'table'");
    }
    [[nodiscard]] std::vector<std::string> columns(const std::string &table) const
    {
        return shell(book(), "SELECT name FROM pragma_table_info('" + table + "')");
    }
    /// `sql` on a copy, by the shell; it must do something, and `verify` must find it and say `named`.
    void expectFound(const std::string &named, const std::string &sql) const
    {
        std::filesystem::copy_file(book(), copy(), std::filesystem::copy_options::overwrite_existing);
        const auto changed = shell(copy(), sql + "; SELECT changes()");
        ASSERT_EQ(changed.size(), 1u) << sql;
        ASSERT_NE(changed[0], "0") << sql;
        const CommandRun found = runCommand({"verify", copy()});
        EXPECT_EQ(found.status, 1) << sql << '\n' << found.out << found.err;
        EXPECT_THAT(found.out, HasSubstr("EDITED by another program")) << sql;
        EXPECT_THAT(found.out, HasSubstr(named)) << sql;
    }
    [[nodiscard]] std::string firstRow(const std::string &table) const
    {
        const bool withoutRowid = shell(book(), "SELECT wr FROM pragma_table_list('" + table + "')")[0] == "1";
        if (!withoutRowid)
            return "rowid = (SELECT min(rowid) FROM " + table + ")";
        const auto key = shell(book(), "SELECT name FROM pragma_table_info('" + table + "') WHERE pk > 0");
        std::string names;
        for (const std::string &name : key)
            names += (names.empty() ? "" : ", ") + name;
        return "(" + names + ") = (SELECT " + names + " FROM " + table + " LIMIT 1)";
    }

    ScratchFolder m_folder;
};

TEST_F(ShellTampering, HasARowInEveryTableAndIsWholeBeforehand)
{
    const auto all = tables();
    EXPECT_GE(all.size(), 23u);
    for (const std::string &table : all)
        EXPECT_NE(shell(book(), "SELECT count(*) FROM " + table)[0], "0") << table;
    const CommandRun found = runCommand({"verify", book()});
    EXPECT_EQ(found.status, 0) << found.out << found.err;
}

TEST_F(ShellTampering, ARowAlteredInAnyTableIsFoundAndNamed)
{
    for (const std::string &table : tables()) {
        // The last column before the number of the deed is always a value, and none of the key.
        auto names = columns(table);
        std::erase(names, "deed");
        const std::string &column = names.back();
        const std::string other = table == "picture" || table == "history" ? "zeroblob(40)"
                                  : table == "sqlite_sequence"             ? column + " + 1000"
                                                                           : "coalesce(" + column + ", '') || '1'";
        // A larger number than was given looks as if entries had been cut off the history.
        expectFound(table == "sqlite_sequence" ? "history" : table,
                    "UPDATE " + table + " SET " + column + " = " + other + " WHERE " + firstRow(table));
    }
}

TEST_F(ShellTampering, ARowTakenOutOfAnyTableIsFoundByTheDeedThatHadWrittenIt)
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

TEST_F(ShellTampering, ARowPutIntoAnyTableIsFoundAndNamed)
{
    for (const std::string &table : tables()) {
        std::string names;
        std::string values;
        for (const std::string &column : columns(table)) {
            names += (names.empty() ? "" : ", ") + column;
            const bool moved = column == "version" || (table == "history" && column == "deed");
            const bool renamed = table == "picture" && column == "digest";
            values += (values.empty() ? "" : ", ") + column + (moved ? " + 1000" : renamed ? " || '0'" : "");
        }
        expectFound(table, "INSERT INTO " + table + "(" + names + ") SELECT " + values + " FROM " + table + " LIMIT 1");
    }
}

TEST_F(ShellTampering, WhatWasAlteredIsNeitherSealedNorHandedOver)
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

TEST_F(ShellTampering, ATableOfAnotherProgramIsFoundAndNamed)
{
    expectFound("stranger", "CREATE TABLE stranger(words TEXT); INSERT INTO stranger VALUES('hello')");
    expectFound("picture", "DROP TABLE picture; CREATE TABLE picture(digest TEXT); INSERT INTO picture VALUES('x')");
}

} // namespace
} // namespace hammerline
