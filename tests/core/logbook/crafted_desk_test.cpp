// Crafted files, as in crafted_file_test.cpp: what stands in the tables of the lead's desk and of an instrument's file.

#include "core/logbook/logbook_fixture.h"
#include "logbook/gauge_studies.h"
#include "logbook/hand_over.h"
#include "logbook/verify_history.h"
#include "support/small_jpeg.h"

#include <gmock/gmock.h>

namespace hammerline::logbook {
namespace {

using testing::AnyOf;
using testing::HasSubstr;

class CraftedDeskTest : public LogbookTest {
protected:
    /// A logbook with a row in every table on which another program ran this.
    void craft(const std::string &sql) const
    {
        std::filesystem::remove(file());
        writeAll();
        RawDatabase(file()).run("PRAGMA writable_schema = ON; " + sql);
    }
    const analysis::StudyPlan plan{
        .notes = {keyboard::Note(5), keyboard::Note(40)}, .people = {"Ada", "Ben"}, .takes = 2, .seed = 11};

    void writeAll() const
    {
        Logbook book = withPass();
        for (int note = 1; note <= 3; ++note)
            book.enter(1, reading(letOff(note), note), ada);
        decisions::Decision item{.quantity = catalogue::Quantity::LetOff, .note = keyboard::Note(1), .words = "stays"};
        item.value = units::Length::nanometres(1);
        static_cast<void>(book.accept(1, {item}, ada).value());
        item.note = keyboard::Note(2);
        item.value = units::Length::nanometres(2);
        static_cast<void>(book.sendBack(1, {item}, ada).value());
        book.chooseActionSetup(1, {.setup = "full-upright"}, ada);
        static_cast<void>(book.addWork(1, {.what = "hammers"}, ada).value());
        book.sayCondition(1, {}, {.words = "worn"}, ada);
        static_cast<void>(book.addPhotograph(1, {}, support::smallJpeg(8, 8), ada).value());
        book.noteSale(1, {.buyer = "a school"}, ada);
        book.markFault(1, {keyboard::Note(1), "blocking"}, ada);
        book.keepPlan(1, "{}", ada);
        book.logWork(1, "let_off 1 by 1 mm", {}, ada);
        book.chooseRoute(1, {.route = "x"}, ada);
        book.rememberTolerance(1, {.id = "x", .text = "{}"}, ada);
        book.confirmSlip(1, {.place = letOff(1), .value = units::Length::nanometres(1), .suspicion = "x"}, ada);
        GaugeStudies studies(book);
        static_cast<void>(studies.plan({.gauge = {.name = "rule"}, .plan = plan}, ada).value());
        static_cast<void>(studies.enter(1, orderOf(plan).front(), units::Length::nanometres(5), "5", ada).value());
        static_cast<void>(book.signPass(1, {.action = catalogue::ActionKind::Vertical}, {}, ada, "fit").value());
        static_cast<void>(book.beginSpotCheck(
            {.instrument = 1, .began = moment(9)},
            {.checked = 1, .seed = 7, .notes = {keyboard::Note(1)}, .quantities = {catalogue::Quantity::LetOff}}, ada));
    }
    /// All that the desk and the instrument's file would ask of it, and a deed of each.
    [[nodiscard]] std::string useAll() const
    {
        return messageOf([&] {
            Logbook book = Logbook::open(file());
            const auto dossier = book.dossier(1);
            for (const auto &photograph : dossier.photographs)
                static_cast<void>(book.picture(photograph.digest));
            static_cast<void>(book.actionSetup(1));
            static_cast<void>(book.decisions(1));
            static_cast<void>(book.refusal(1));
            for (const auto &check : book.spotChecks(1))
                static_cast<void>(book.spotCheck(check.id));
            const GaugeStudies studies(book);
            for (const auto &study : studies.all()) {
                static_cast<void>(studies.trials(study.id));
                static_cast<void>(studies.undoable(study.id));
            }
            static_cast<void>(book.faultMarks(1));
            static_cast<void>(book.keptPlan(1));
            static_cast<void>(book.workDone(1));
            static_cast<void>(book.route(1));
            static_cast<void>(book.tolerance(1));
            static_cast<void>(book.confirmedSlips(1));
            static_cast<void>(book.handOver(1).ok());
            static_cast<void>(verifyHistory(file()).whole());
            book.noteSale(1, {.buyer = "another"}, ada);
            static_cast<void>(book.reopenPass(1, ada, "a string broke").ok());
        });
    }
};

constexpr const char *tables[] = {"pass_standing", "concession", "sent_back",   "spot_check",
                                  "action_setup",  "work_entry", "sale",        "condition_said",
                                  "photograph",    "picture",    "gauge_study", "gauge_trial"};

TEST_F(CraftedDeskTest, AsItWasWrittenIsUsed)
{
    craft("SELECT 1");
    EXPECT_EQ(useAll(), "nothing was thrown");
    for (const char *table : tables)
        EXPECT_NE(RawDatabase(file()).one("SELECT count(*) FROM " + std::string(table)), "0") << table;
}

TEST_F(CraftedDeskTest, ATriggerOrAViewInAnyTableIsRefused)
{
    for (const std::string table : tables)
        for (const std::string &sql :
             {"CREATE TRIGGER t AFTER INSERT ON " + table + " BEGIN DELETE FROM history; END",
              "CREATE TRIGGER t BEFORE INSERT ON " + table + " BEGIN SELECT load_extension('/tmp/x.so'); END",
              "CREATE TABLE kept AS SELECT * FROM " + table + "; DROP TABLE " + table + "; CREATE VIEW " + table +
                  " AS SELECT * FROM kept",
              "DROP TABLE " + table + "; CREATE VIRTUAL TABLE " + table + " USING fts3(instrument, pass)",
              "CREATE INDEX more ON " + table + "(abs(1))"}) {
            craft(sql);
            EXPECT_THAT(useAll(), HasSubstr(file())) << sql;
        }
}

TEST_F(CraftedDeskTest, WrongWordsAndImpossibleNumbersAreRefusedOrReadAsWhatTheyAre)
{
    for (const char *sql : {
             "UPDATE pass_standing SET standing = 'blessed'",
             "UPDATE pass_standing SET revision = -9223372036854775807 - 1, at = 9223372036854775807",
             "UPDATE concession SET quantity = -1",
             "UPDATE concession SET note = 9223372036854775807",
             "UPDATE concession SET kind = NULL, value = -9223372036854775807 - 1, reason = NULL",
             "UPDATE sent_back SET kind = 'fine', at = -9223372036854775807 - 1",
             "UPDATE sent_back SET version = 9223372036854775807",
             "UPDATE spot_check SET checked = 99, seed = -1, size = 9223372036854775807",
             "UPDATE spot_check SET notes = '99999999999999999999', quantities = 'loudness'",
             "UPDATE spot_check SET notes = replace(hex(zeroblob(200000)), '00', '1 ')",
             "UPDATE spot_check SET checked = pass",
             "UPDATE action_setup SET setup = NULL",
             "UPDATE work_entry SET kind = 'magic', first_note = 9223372036854775807, last_note = -5",
             "UPDATE work_entry SET day = '2026-99-99', minutes = -9223372036854775807 - 1, departure = 77",
             "UPDATE condition_said SET moment = 'never', area = 'nowhere', grade = 9223372036854775807",
             "UPDATE photograph SET width = -9223372036854775807 - 1, height = 0, moment = 'x', view = NULL",
             "UPDATE photograph SET digest = '../../x'",
             "UPDATE photograph SET digest = NULL",
             "UPDATE picture SET jpeg = zeroblob(0)",
             "DELETE FROM picture",
             "UPDATE sale SET buyer = NULL, price = hex(zeroblob(100000))",
             "UPDATE gauge_study SET notes = '400 -9', people = NULL, takes = 9223372036854775807",
             "UPDATE gauge_study SET people = replace(hex(zeroblob(200000)), '00', 'a,')",
             "UPDATE gauge_study SET quantity = 99, seed = -1, unit = 'ell'",
             "UPDATE gauge_study SET resolution = -9223372036854775807 - 1, at = 9223372036854775807, instrument = 77",
             "UPDATE gauge_trial SET note = 9223372036854775807, take = -5",
             "UPDATE gauge_trial SET study = 9, value = -9223372036854775807 - 1, typed = NULL",
             "UPDATE work_done SET seconds = -9223372036854775807 - 1",
             "UPDATE confirmed_slip SET value = 9223372036854775807, quantity = 99",
             "UPDATE fault_mark SET marked = 7, note = 9223372036854775807",
         }) {
        craft(sql);
        EXPECT_THAT(useAll(), AnyOf(HasSubstr(file()), "nothing was thrown")) << sql;
    }
}

TEST_F(CraftedDeskTest, HugeTextsAndBlobsAreRefusedNotLoaded)
{
    for (const char *sql :
         {"UPDATE picture SET jpeg = zeroblob(68000000)", "UPDATE sale SET buyer = hex(zeroblob(34000000))",
          "UPDATE spot_check SET notes = hex(zeroblob(34000000))",
          "UPDATE concession SET reason = hex(zeroblob(34000000))"}) {
        craft(sql);
        EXPECT_THAT(useAll(), HasSubstr(file())) << sql;
    }
}

} // namespace
} // namespace hammerline::logbook
