// Logbooks of which another program changed the rows, judged and looked through as a whole shop: refused in words, or
// counted as what they are; no number overflows and nothing runs.

#include "core/shop/judged_shop.h"
#include "logbook/to_review.h"
#include "shop/shop_reader.h"

#include <gmock/gmock.h>

namespace hammerline::shop {
namespace {

using testing::AnyOf;
using testing::HasSubstr;

class CraftedShop : public JudgedShop {
protected:
    CraftedShop()
    {
        fill(4);
        auto book = Logbook::open(file());
        book.keepPlan(1, "{}", ada);
        book.rememberTolerance(1, {.id = "x", .text = "{}"}, ada);
    }
    void craft(const std::string &sql) const
    {
        std::filesystem::remove(file("crafted"));
        static_cast<void>(Logbook::open(file()).copyTo(file("crafted")).value());
        RawDatabase(file("crafted")).run(sql);
    }
    [[nodiscard]] std::string judged(unsigned threads) const
    {
        return messageOf([&] {
            for (const Which which : {Which::All, Which::Newest})
                static_cast<void>(run(file("crafted"), {.set = narrow(), .which = which}, threads));
        });
    }
    [[nodiscard]] std::string looked() const
    {
        return messageOf([&] {
            const auto book = Logbook::open(file("crafted"), logbook::Access::ReadOnly);
            ShopReader reader;
            reader.begin(book);
            while (reader.readNext(book)) {
            }
            const tolerance::Judge judge(narrow());
            for (const auto &instrument : book.instruments())
                static_cast<void>(review::queueOf(passesToReview(book, instrument, judge)));
        });
    }
};

TEST_F(CraftedShop, WrongTypesAndImpossibleNumbersAreRefusedOrCountedAsWhatTheyAre)
{
    for (const char *sql : {
             "UPDATE reading SET quantity = -1 - quantity",
             "UPDATE reading SET quantity = 9223372036854775807 - quantity WHERE note < 5",
             "UPDATE reading SET note = 9223372036854775807 WHERE note = 3",
             "UPDATE reading SET note = -9223372036854775807 - 1 WHERE note = 3",
             "UPDATE reading SET take = -9223372036854775807 - 1 WHERE note = 1 AND take = 1",
             "UPDATE reading SET value = 9223372036854775807",
             "UPDATE reading SET value = CASE note % 2 WHEN 0 THEN 9223372036854775807 ELSE -9223372036854775807 - 1 "
             "END",
             "UPDATE reading SET origin = 99, at = 9223372036854775807",
             "UPDATE reading SET pass = pass + 99",
             "UPDATE pass SET began = -9223372036854775807 - 1",
             "UPDATE pass SET instrument = 77",
             "UPDATE pass SET purpose = 'never', unit = 'ell'",
             "UPDATE instrument SET first_note = 88, last_note = 1",
             "UPDATE instrument SET first_note = 9223372036854775807",
             "UPDATE instrument SET sections = '[[\"bass\",1,99999999999999999999]]'",
             "UPDATE instrument SET action = 'harp'",
             "UPDATE instrument SET tolerance_text = replace(hex(zeroblob(20000)), '0', '[')",
             "UPDATE pass_tolerance SET tolerance_text = '{\"name\":'",
             "UPDATE kept_plan SET inputs = replace(hex(zeroblob(20000)), '0', '[')",
         }) {
        SCOPED_TRACE(sql);
        craft(sql);
        for (const unsigned threads : {1u, 3u})
            EXPECT_THAT(judged(threads), AnyOf(HasSubstr(file("crafted")), "nothing was thrown"));
        EXPECT_THAT(looked(), AnyOf(HasSubstr(file("crafted")), "nothing was thrown"));
    }
}

TEST_F(CraftedShop, AnythingThatWouldRunIsRefused)
{
    for (const char *sql : {
             "CREATE TRIGGER t AFTER INSERT ON reading BEGIN DELETE FROM reading; END",
             "DROP TABLE reading; CREATE VIEW reading AS SELECT 1 AS pass",
             "CREATE TABLE kept AS SELECT * FROM pass; DROP TABLE pass; CREATE VIEW pass AS SELECT * FROM kept",
             "CREATE INDEX more ON reading(abs(value))",
             "CREATE VIEW more AS SELECT take_row(1, 2, 3, 4)",
         }) {
        SCOPED_TRACE(sql);
        craft(sql);
        EXPECT_THAT(judged(2), HasSubstr(file("crafted")));
        EXPECT_THAT(looked(), HasSubstr(file("crafted")));
    }
}

} // namespace
} // namespace hammerline::shop
