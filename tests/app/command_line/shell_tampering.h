#pragma once
// A logbook with a row in every table, and the sqlite3 shell as another program's hand on copies of it.

#include "support/command_run.h"
#include "support/small_jpeg.h"

#include "logbook/gauge_studies.h"
#include "logbook/logbook.h"
#include "tolerance/tolerance.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cstdio>
#include <cstdlib>

namespace hammerline::test_support {

inline const logbook::Stamp ada{readings::parseRfc3339("2026-03-05T09:00:00Z").value(), "Ada"};
inline const logbook::Stamp lea{readings::parseRfc3339("2026-03-05T10:00:00Z").value(), "Lea"};
inline constexpr readings::Place letOff40{catalogue::Quantity::LetOff, keyboard::Note(40), 1};

inline decisions::Decision about(int note, decisions::Kind kind, const std::string &words)
{
    decisions::Decision decision{.quantity = catalogue::Quantity::LetOff, .note = keyboard::Note(note)};
    decision.kind = kind;
    decision.words = words;
    return decision;
}

inline void measure(logbook::Logbook &book)
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

inline void fillFile(logbook::Logbook &book)
{
    book.chooseActionSetup(1, {"{}", "in"}, ada);
    ASSERT_TRUE(book.addWork(1, {.what = "hammers"}, ada));
    book.sayCondition(1, {dossier::Moment::AsReceived, dossier::Area::Keys}, {{}, "worn"}, ada);
    ASSERT_TRUE(book.addPhotograph(1, {.view = "front"}, support::smallJpeg(8, 8), ada));
    book.noteSale(1, {"nobody yet", {}, {}}, ada);
}

inline void decide(logbook::Logbook &book)
{
    ASSERT_TRUE(book.accept(1, {about(43, decisions::Kind::Missing, "no hammer")}, lea));
    ASSERT_TRUE(book.sendBack(1, {about(44, decisions::Kind::Missing, "read it")}, lea));
    ASSERT_TRUE(book.signPass(1, {.action = catalogue::ActionKind::Vertical}, {"shop", "{}"}, lea, "fit to go"));
    static_cast<void>(book.beginSpotCheck(
        {.instrument = 1, .began = lea.at},
        {.checked = 1, .seed = 7, .notes = {keyboard::Note(42)}, .quantities = {catalogue::Quantity::LetOff}}, lea));
}

inline void study(logbook::Logbook &book)
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
    /// `sql` on a copy, by the shell; it must do something.
    void tamper(const std::string &sql) const
    {
        std::filesystem::copy_file(book(), copy(), std::filesystem::copy_options::overwrite_existing);
        const auto changed = shell(copy(), sql + "; SELECT changes()");
        ASSERT_EQ(changed.size(), 1u) << sql;
        ASSERT_NE(changed[0], "0") << sql;
    }
    // The last column before the number of the deed is always a value, and none of the key.
    [[nodiscard]] std::string alteringFirstRow(const std::string &table) const
    {
        auto names = columns(table);
        std::erase(names, "deed");
        const std::string &column = names.back();
        const std::string other = table == "picture" || table == "history" ? "zeroblob(40)"
                                  : table == "sqlite_sequence"             ? column + " + 1000"
                                                                           : "coalesce(" + column + ", '') || '1'";
        return "UPDATE " + table + " SET " + column + " = " + other + " WHERE " + firstRow(table);
    }
    [[nodiscard]] std::string addingARow(const std::string &table) const
    {
        std::string names;
        std::string values;
        for (const std::string &column : columns(table)) {
            names += (names.empty() ? "" : ", ") + column;
            const bool moved = column == "version" || (table == "history" && column == "deed");
            const bool renamed = table == "picture" && column == "digest";
            values += (values.empty() ? "" : ", ") + column + (moved ? " + 1000" : renamed ? " || '0'" : "");
        }
        return "INSERT INTO " + table + "(" + names + ") SELECT " + values + " FROM " + table + " WHERE " +
               firstRow(table);
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

} // namespace hammerline::test_support
