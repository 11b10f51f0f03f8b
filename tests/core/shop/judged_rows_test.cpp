// The rows, the table and the document that another set's judging of a shop ends in.
#include "shop/judge_shop.h"

#include "support/json_schema.h"

#include <gmock/gmock.h>
#include <nlohmann/json.hpp>

namespace hammerline::shop {
namespace {

using catalogue::Quantity;
using tolerance::Status;

tolerance::Tally tally(int in, int marginal, int out)
{
    tolerance::Tally made;
    made.by[static_cast<std::size_t>(Status::In)] = in;
    made.by[static_cast<std::size_t>(Status::Marginal)] = marginal;
    made.by[static_cast<std::size_t>(Status::Out)] = out;
    return made;
}

JudgedTwice judged(Quantity quantity, const TwoSets &counts)
{
    JudgedTwice made{.passes = 1};
    made.by[static_cast<std::size_t>(quantity)] = counts;
    return made;
}

/// 1 gets better, 2 worse by three notes, 3 stays, but closer to its limits; nothing is judged of 4.
ShopJudged shopOfFour()
{
    return {{1, judged(Quantity::LetOff, {tally(5, 0, 5), tally(8, 0, 2)})},
            {2, judged(Quantity::Dip, {tally(9, 0, 1), tally(6, 0, 4)})},
            {3, judged(Quantity::LetOff, {tally(10, 0, 0), tally(8, 2, 0)})},
            {4, judged(Quantity::Blow, {})}};
}

TEST(JudgedRows, QuantitiesComeInTheOrderOfTheCatalogueAndOnlyThoseJudged)
{
    const auto rows = rowsByQuantity(shopOfFour());
    ASSERT_EQ(rows.size(), 2u);
    EXPECT_EQ(rows[0].key, Quantity::LetOff);
    EXPECT_EQ(rows[0].counts, (TwoSets{tally(15, 0, 5), tally(16, 2, 2)}));
    EXPECT_EQ(rows[0].counts.moreOut(), -3);
    EXPECT_EQ(rows[1].key, Quantity::Dip);
}

TEST(JudgedRows, TheWorstChangeComesFirst)
{
    const auto rows = rowsByInstrument(shopOfFour());
    ASSERT_EQ(rows.size(), 3u);
    EXPECT_EQ(rows[0].key, 2);
    EXPECT_EQ(rows[1].key, 3);
    EXPECT_EQ(rows[2].key, 1);
}

TEST(JudgedRows, TheTableHasWhatStandsBesideWhatWouldAndStartsNoFormula)
{
    EXPECT_EQ(
        judgedCsv(rowsByQuantity(shopOfFour())),
        "quantity,now_in,now_marginal,now_out,now_missing,then_in,then_marginal,then_out,then_missing,more_out\r\n"
        "let_off,15,0,5,0,16,2,2,0,-3\r\n"
        "dip,9,0,1,0,6,0,4,0,3\r\n");
    ShopJudged bare = shopOfFour();
    for (auto &[instrument, judged] : bare)
        for (TwoSets &counts : judged.by)
            counts.then = {};
    EXPECT_THAT(judgedCsv(rowsByQuantity(bare)), testing::HasSubstr("let_off,15,0,5,0,0,0,0,0,\r\n"));
    EXPECT_THAT(judgedJson({}, bare, {}), testing::Not(testing::HasSubstr("more_out")));
    const auto table = judgedCsv(rowsByInstrument(shopOfFour()), {{2, "=1+1"}, {3, "Grey, \"old\""}});
    EXPECT_THAT(table, testing::HasSubstr("\r\n2,'=1+1,9,0,1,0,6,0,4,0,3\r\n3,\"Grey, \"\"old\"\"\",10,0,0,0,"));
}

TEST(JudgedRows, TheDocumentKeepsToItsSchema)
{
    Asked asked{.which = Which::Newest};
    asked.set.name = "A maker's \xff own";
    const std::string text = judgedJson(asked, shopOfFour(), {{1, "Grey grand"}});
    EXPECT_THAT(support::JsonSchema("rejudge").faultsOf(text), testing::IsEmpty());
    const auto json = nlohmann::json::parse(text);
    EXPECT_EQ(json["judged_passes"], 4);
    EXPECT_EQ(json["passes"], "newest");
    EXPECT_EQ(json["instruments"][0]["instrument"], 2);
    EXPECT_EQ(json["instruments"][2]["name"], "Grey grand");
    EXPECT_EQ(json["quantities"]["dip"]["then"]["out"], 4);
}

TEST(JudgedRows, WhichPassesIsNamedTheSameBothWays)
{
    for (const Which which : {Which::All, Which::Newest, Which::AsFound, Which::AsLeft})
        EXPECT_EQ(findWhich(idOf(which)), which);
    EXPECT_FALSE(findWhich("some"));
}

} // namespace
} // namespace hammerline::shop
