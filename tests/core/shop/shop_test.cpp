#include "shop/shop.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <stdexcept>

namespace hammerline::shop {
namespace {

using catalogue::Quantity;
using instrument::State;
using readings::Purpose;
using namespace std::chrono_literals;

constexpr YearMonth january = 2026y / 1;
constexpr YearMonth march = 2026y / 3;

/// Two instruments: the first found by Ada in January and left by Ben in March, the second found by Ada in March.
Tallies shop()
{
    Tallies tallies;
    tallies[1].state = State::SignedOff;
    tallies[1].passes = {{1,
                          Purpose::AsFound,
                          january,
                          {{"Ada", Quantity::LetOff, 88, 88, 44}, {"Ada", Quantity::Blow, 80, 80, 8}},
                          {{WorkPiece::Kind::Planned, "Ada", january, Quantity::LetOff, 90, 0},
                           {WorkPiece::Kind::Taken, "Ben", march, Quantity::LetOff, 75, 2}}},
                         {2, Purpose::AsLeft, march, {{"Ben", Quantity::LetOff, 176, 88, 4}}, {}}};
    tallies[1].other = {{WorkPiece::Kind::Other, "Ada", std::nullopt, std::nullopt, 60, 0}};
    tallies[2].passes = {{3, Purpose::AsFound, march, {{"Ada", Quantity::LetOff, 10, 0, 0}}, {}}};
    return tallies;
}

const Row &rowOf(const std::vector<Row> &rows, const std::string &key)
{
    const auto found = std::ranges::find(rows, key, &Row::key);
    if (found == rows.end())
        throw std::runtime_error("no row " + key);
    return *found;
}

std::vector<std::string> keysOf(const std::vector<Row> &rows)
{
    std::vector<std::string> keys;
    for (const Row &row : rows)
        keys.push_back(row.key);
    return keys;
}

TEST(Shop, EachPersonHasWhatWasReadAndDoneByThem)
{
    const auto rows = rowsOf(shop(), By::Person, {});
    EXPECT_THAT(keysOf(rows), testing::ElementsAre("Ada", "Ben"));
    const Figures ada = rowOf(rows, "Ada").figures;
    EXPECT_EQ(ada.readings, 178);
    EXPECT_EQ(ada.instruments, 2);
    EXPECT_EQ(ada.passes, 2);
    EXPECT_EQ(ada.found, (Share{168, 52}));
    EXPECT_EQ(ada.left, Share());
    EXPECT_EQ(ada.plannedMinutes, 90);
    EXPECT_EQ(ada.otherMinutes, 60);
    const Figures ben = rowOf(rows, "Ben").figures;
    EXPECT_EQ(ben.left, (Share{88, 4}));
    EXPECT_EQ(ben.takenMinutes, 75);
    EXPECT_EQ(ben.untimed, 2);
}

TEST(Shop, QuantitiesStandInTheOrderOfTheCatalogueAndWorkWithoutOneFirst)
{
    EXPECT_THAT(keysOf(rowsOf(shop(), By::Quantity, {})), testing::ElementsAre("", "blow", "let_off"));
    EXPECT_EQ(rowOf(rowsOf(shop(), By::Quantity, {}), "let_off").figures.passes, 3);
}

TEST(Shop, MonthsRiseAndWorkCountsForTheMonthItWasDoneIn)
{
    const auto rows = rowsOf(shop(), By::Month, {});
    EXPECT_THAT(keysOf(rows), testing::ElementsAre("", "2026-01", "2026-03"));
    EXPECT_EQ(rowOf(rows, "2026-01").figures.plannedMinutes, 90);
    EXPECT_EQ(rowOf(rows, "2026-01").figures.takenMinutes, 0);
    EXPECT_EQ(rowOf(rows, "2026-03").figures.takenMinutes, 75);
    EXPECT_EQ(rowOf(rows, "2026-03").figures.instruments, 2);
}

TEST(Shop, TheTotalCountsEachInstrumentAndPassOnce)
{
    const Figures total = totalOf(shop(), {});
    EXPECT_EQ(total.instruments, 2);
    EXPECT_EQ(total.passes, 3);
    EXPECT_EQ(total.readings, 354);
}

TEST(Shop, AFilterLeavesOutOtherMonthsAndStates)
{
    EXPECT_EQ(totalOf(shop(), {.from = march}).readings, 186);
    EXPECT_EQ(totalOf(shop(), {.to = january}).readings, 168);
    EXPECT_EQ(totalOf(shop(), {.from = january}).otherMinutes, 0); // nobody knows when
    EXPECT_EQ(totalOf(shop(), {.states = {State::SignedOff}}).instruments, 1);
    EXPECT_EQ(totalOf(shop(), {.states = {State::Delivered}}), Figures());
}

TEST(Shop, TheShareOutIsUnknownWhereNothingIsJudged)
{
    EXPECT_FALSE(Share().part());
    EXPECT_DOUBLE_EQ((Share{4, 1}).part().value(), 0.25);
}

TEST(Shop, MonthsAreThoseOfUtc)
{
    EXPECT_EQ(monthOf(readings::parseRfc3339("2026-03-31T23:30:00-01:00").value()), 2026y / 4);
    EXPECT_EQ(textOf(2026y / 4), "2026-04");
    EXPECT_THAT(monthsOf(shop()), testing::ElementsAre(january, march));
}

TEST(ShopCsv, HasExactFiguresAndNoNameStartsAFormula)
{
    auto rows = rowsOf(shop(), By::Person, {});
    rows[0].key = "=HYPERLINK(\"x\"),1";
    const std::string csv = shopCsv(By::Person, rows);
    EXPECT_TRUE(csv.starts_with("person,instruments,passes,readings,found_judged,found_out,left_judged,left_out,"
                                "hours_planned,hours_taken,untimed,hours_other\r\n"
                                "\"'=HYPERLINK(\"\"x\"\"),1\",2,2,178,168,52,0,0,1.50,0.00,0,1.00\r\n"
                                "Ben,1,1,176,0,0,88,4,0.00,1.25,2,0.00\r\n"))
        << csv;
}

} // namespace
} // namespace hammerline::shop
